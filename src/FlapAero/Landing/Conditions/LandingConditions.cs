namespace FlapAero;

/// <summary>
/// What a landing meets that the canonical one leaves out, each a stated change and none of them by default. Immutable, thread-safe.
/// </summary>
public sealed record LandingConditions
{
    /// <summary>None: the canonical landing.</summary>
    public static LandingConditions Canonical { get; } = new();

    /// <summary>T_i(V) in place of the aeroplane's constant idle thrust.</summary>
    public IdleThrustCurve? IdleThrust { get; init; }

    /// <summary>Headwind by height of the wing, in place of the runway's headwind.</summary>
    public WindProfile? Wind { get; init; }

    /// <summary>A gust or lull on top of the wind.</summary>
    public OneCosineGust? Gust { get; init; }

    /// <summary>Nose down and brakes on from the touchdown: no roll with the nose held off.</summary>
    public bool BrakesFromTouchdown { get; init; }

    /// <summary>A surface, in place of the runway's two coefficients.</summary>
    public RunwaySurface? Surface { get; init; }
}
