namespace FlapAero;

/// <summary>To which side a circuit turns.</summary>
public enum CircuitHand
{
    /// <summary>All turns to the left; the downwind leg lies to the left of the runway.</summary>
    Left,

    /// <summary>All turns to the right.</summary>
    Right,
}
