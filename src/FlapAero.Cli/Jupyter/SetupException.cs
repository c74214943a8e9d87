namespace FlapAero.Cli.Jupyter;

/// <summary>Why the lessons cannot be set up, in words for the person at the keyboard.</summary>
internal sealed class SetupException(string message) : Exception(message);
