namespace FlapAero;

/// <summary>What ends a hold-off. Thread-safe: a plain value.</summary>
public enum HoldOffEnd
{
    /// <summary>The touchdown's share of C_Lmax.</summary>
    Lift = 0,

    /// <summary>The attitude that keeps the tail clear, before the wing gave that share.</summary>
    Tail,
}
