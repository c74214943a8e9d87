using UnitsNet;

namespace FlapAero.Published.Tests.Wings;

/// <summary>
/// The lifting line's images below the ground against what handbook and theory print, at equal lift: an elliptic wing, as in
/// the theory. The model's own ground effect is held to the same rows in <see cref="PublishedValueTests"/>.
/// </summary>
public sealed class GroundImageTests
{
    // Percentage points. The handbook's 1 h/b is twice the theory's: it rounds down what is left there, and the images say
    // 2.9.
    [Theory]
    [InlineData("T04-003", 0.1, 2)]
    [InlineData("T04-002", 0.25, 1)]
    [InlineData("T04-001", 1, 1.6)]
    public void Reduction_Images_IsNearTheHandbooks(string id, double heightOverSpan, double tolerance) =>
        Assert.Equal(PublishedRows.Input(id), Reduction(heightOverSpan), tolerance);

    // Prandtl's quotient is a fit for up to half a span, and falls off before its end.
    [Theory]
    [InlineData(0, 0.1, 1)]
    [InlineData(1, 0.25, 0.5)]
    [InlineData(2, 0.5, 2.5)]
    public void Reduction_Images_IsNearPrandtlsQuotient(int index, double heightOverSpan, double tolerance) =>
        Assert.Equal(PublishedRows.Get("T04-005").Numbers[index].Value, Reduction(heightOverSpan), tolerance);

    // The horseshoe of the introductory textbook takes off about half as much.
    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(1, 0.25)]
    public void Reduction_Images_IsFarFromTheHorseshoes(int index, double heightOverSpan) =>
        Assert.True(Reduction(heightOverSpan) > 1.5 * PublishedRows.Get("T04-018").Numbers[index].Value);

    private static double Reduction(double heightOverSpan)
    {
        Length span = Length.FromMeters(10);
        WingPlanform planform = WingPlanform.Elliptic(span, Length.FromMeters(1.8));
        WingSection section = new(2 * Math.PI, Angle.Zero, 1.5);
        double near = new LiftingLine(planform, section, height: span * heightOverSpan).InducedDrag.At(0.8);
        return 100 * (1 - near / new LiftingLine(planform, section).InducedDrag.At(0.8));
    }
}
