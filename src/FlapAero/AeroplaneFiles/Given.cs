namespace FlapAero.AeroplaneFiles;

/// <summary>A value as the file gives it: read and found in its own range. Immutable.</summary>
/// <param name="Value">The value, with its unit.</param>
/// <param name="Written">How the file writes it: number and unit.</param>
/// <param name="Line">Its line.</param>
/// <param name="Place">The path to it.</param>
internal sealed record Given<T>(T Value, string Written, int Line, string Place);
