using FlapAero.Equations;
using MathNet.Numerics.Integration;

namespace FlapAero.Tests.Wings;

/// <summary>
/// The images below the ground, at equal lift, against the model's exponential form and Prandtl's quotient.
/// </summary>
public sealed class GroundImageTests
{
    [Theory, InlineData(0.05, 0.3), InlineData(0.2, 1.2), InlineData(1, 0.01)]
    public void Influence_ClosedForm_IsTheIntegral(double heightOverSpan, double station)
    {
        double distance = 4 * heightOverSpan;
        double[] influence = new GroundImage(heightOverSpan).Influence(station, 6);
        for (int i = 0; i < influence.Length; i++)
        {
            int n = 2 * i + 1;
            double integral = GaussLegendreRule.Integrate(Integrand, 0, station, 512) + GaussLegendreRule.Integrate(Integrand, station, Math.PI, 512);
            Assert.Equal(integral / Math.PI, influence[i], 1e-9);

            double Integrand(double angle)
            {
                double across = Math.Cos(angle) - Math.Cos(station);
                return Math.Cos(n * angle) * across / (across * across + distance * distance);
            }
        }
    }

    // Tolerances by range, for the elliptic wing: the exponential form is a fit to Prandtl's theory and leaves the images
    // slowly above half a span.
    [Theory]
    [InlineData(0.05, 0.02)]
    [InlineData(0.1, 0.01)]
    [InlineData(0.15, 0.01)]
    [InlineData(0.2, 0.01)]
    [InlineData(0.25, 0.01)]
    [InlineData(0.3, 0.01)]
    [InlineData(0.5, 0.015)]
    [InlineData(0.75, 0.02)]
    [InlineData(1, 0.02)]
    public void InducedDrag_EllipticWingAtEqualLift_IsNearTheModelsForm(double heightOverSpan, double tolerance) =>
        Assert.Equal(Form(heightOverSpan), Remaining(Planforms.Elliptic(7), null, heightOverSpan), tolerance);

    // Wings that are not elliptic, and flaps, keep a little more of their drag: their own share does not know the ground.
    [Theory]
    [InlineData(0.05, 0.065)]
    [InlineData(0.1, 0.055)]
    [InlineData(0.25, 0.04)]
    [InlineData(0.5, 0.02)]
    [InlineData(1, 0.02)]
    public void InducedDrag_TaperedWingAndFlapAtEqualLift_IsNearTheModelsForm(double heightOverSpan, double tolerance)
    {
        double clean = Remaining(Planforms.Tapered(7, 0.7), null, heightOverSpan);
        double flapped = Remaining(Planforms.Tapered(7, 0.7), Planforms.HalfSpanFlap, heightOverSpan);
        Assert.Equal(Form(heightOverSpan), clean, tolerance);
        Assert.Equal(Form(heightOverSpan), flapped, tolerance);
        Assert.True(flapped > clean);
    }

    [Fact]
    public void InducedDrag_Higher_Rises()
    {
        double[] remaining = [.. Enumerable.Range(1, 10).Select(i => Remaining(Planforms.Tapered(7, 0.7), Planforms.HalfSpanFlap, 0.15 * i))];
        Assert.All(remaining.Zip(remaining.Skip(1)), pair => Assert.True(pair.Second > pair.First));
        Assert.True(remaining[^1] < 1);
    }

    [Fact]
    public void InducedDrag_FarUp_IsTheFreeWings() =>
        Assert.Equal(1, Remaining(Planforms.Tapered(7, 0.7), Planforms.HalfSpanFlap, 1000), 1e-6);

    [Fact]
    public void SlopePerRadian_NearTheGround_IsSteeper()
    {
        // The model leaves this out and says so.
        WingPlanform planform = Planforms.Tapered(7, 0.7);
        double ratio = Planforms.Line(planform, heightOverSpan: 0.1).SlopePerRadian / Planforms.Line(planform).SlopePerRadian;
        Assert.InRange(ratio, 1.08, 1.14);
    }

    private static double Remaining(WingPlanform planform, PartSpanFlap? flap, double heightOverSpan) =>
        Planforms.Line(planform, flap, heightOverSpan).InducedDrag.At(1) / Planforms.Line(planform, flap).InducedDrag.At(1);

    private static double Form(double heightOverSpan) => GroundEffect.InducedDragFactor(Planforms.Span * heightOverSpan, Planforms.Span);
}
