namespace FlapAero;

/// <summary>
/// Kinds of trailing-edge flap whose increments can be estimated. Split and Fowler flaps are not among them.
/// </summary>
public enum FlapKind
{
    /// <summary>A hinged trailing edge without a gap, to 60°.</summary>
    Plain,

    /// <summary>One slot between wing and flap, to 40°.</summary>
    Slotted,
}
