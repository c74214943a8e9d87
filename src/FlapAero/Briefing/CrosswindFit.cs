namespace FlapAero;

/// <summary>How a crosswind stands to its limit.</summary>
public enum CrosswindFit
{
    /// <summary>There is none, or it is not above the limit.</summary>
    Within,

    /// <summary>There is a crosswind, and neither the aeroplane's file nor the instructor gives a limit: nothing is said to fit.</summary>
    LimitUnknown,

    /// <summary>It is above the limit.</summary>
    AboveLimit,
}
