namespace FlapAero;

/// <summary>The legs of a circuit by name, in the order of flight.</summary>
public static class LegName
{
    /// <summary>Downwind at circuit height, until power is reduced.</summary>
    public const string DownwindLevel = "downwind, level";

    /// <summary>Downwind from where power is reduced.</summary>
    public const string Downwind = "downwind, descending";

    /// <summary>The turn to base.</summary>
    public const string TurnToBase = "turn to base";

    /// <summary>Base.</summary>
    public const string Base = "base";

    /// <summary>The turn to final.</summary>
    public const string TurnToFinal = "turn to final";

    /// <summary>Final, to the threshold.</summary>
    public const string Final = "final";

    /// <summary>The final path continued from the threshold to the runway: in an aeroplane, the round-out takes its place.</summary>
    public const string PastThreshold = "threshold to aiming point";
}
