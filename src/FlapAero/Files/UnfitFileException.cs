namespace FlapAero.Files;

/// <summary>What a path names is no file that can be read or replaced. The message is what is wrong with it and what is wanted.</summary>
internal sealed class UnfitFileException(string message) : IOException(message);
