namespace FlapAero.Published.Tests.Landings;

/// <summary>The inputs of T08-019, as its row has them; the span is T08-021's.</summary>
internal static class BusinessJet
{
    public const double Weight = 54966.4;
    public const double Area = 29.54;
    public const double Span = 16.25;
    public const double MaximumLift = 2.5;

    /// <summary>0.02 and a tenth more.</summary>
    public const double ZeroLiftDrag = 0.022;

    public const double BrakingFriction = 0.4;
}
