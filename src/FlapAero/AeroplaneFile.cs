namespace FlapAero;

/// <summary>Placeholder.</summary>
public static class AeroplaneFile { }
