using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Wings;

/// <summary>The lifting line against closed forms and remembered tables.</summary>
public sealed class LiftingLineTests
{
    [Theory, InlineData(5), InlineData(8), InlineData(15)]
    public void SlopePerRadian_EllipticWing_IsPrandtls(double aspectRatio)
    {
        LiftingLine line = Planforms.Line(Planforms.Elliptic(aspectRatio), terms: 16);
        Assert.Equal(LiftCurve.EllipticWingSlope(Planforms.ThinSlope, aspectRatio), line.SlopePerRadian, 1e-6);
        Assert.Equal(0, line.InducedDrag.PlanformFactor, 1e-9);
        Assert.Equal(1, line.InducedDrag.SpanEfficiency(1), 1e-9);
    }

    [Theory, InlineData(6), InlineData(8), InlineData(10), InlineData(12)]
    public void SlopePerRadian_WingsOfLightAeroplanes_IsWithinFourPerCentOfHelmbolds(double aspectRatio)
    {
        double helmbold = LiftCurve.HelmboldSlope(Planforms.ThinSlope, aspectRatio);
        Assert.InRange(helmbold / Planforms.Line(Planforms.Elliptic(aspectRatio)).SlopePerRadian, 0.96, 1);
        Assert.InRange(helmbold / Planforms.Line(Planforms.Tapered(aspectRatio, 0.5)).SlopePerRadian, 0.96, 1.04);
        Assert.InRange(helmbold / Planforms.Line(Planforms.Tapered(aspectRatio, 1)).SlopePerRadian, 0.96, 1.04);
    }

    // Glauert's table for rectangular wings, from memory: A/a0, tau, delta. He solved for four terms, which is a few per
    // cent short of where the series ends; the tolerance is that, and his rounding.
    [Theory]
    [InlineData(0.75, 0.14, 0.034)]
    [InlineData(1, 0.17, 0.049)]
    [InlineData(1.25, 0.20, 0.063)]
    [InlineData(1.5, 0.22, 0.076)]
    [InlineData(1.75, 0.24, 0.088)]
    public void Factors_RectangularWings_AreGlauertsAsRemembered(double aspectOverSlope, double slopeFactor, double dragFactor)
    {
        double aspectRatio = aspectOverSlope * Planforms.ThinSlope;
        LiftingLine line = Planforms.Line(Planforms.Tapered(aspectRatio, 1));
        Assert.Equal(slopeFactor, FiniteWingLaws.SlopeFactor(line.SlopePerRadian, Planforms.ThinSlope, aspectRatio), 0.0081);
        Assert.InRange(line.InducedDrag.PlanformFactor, dragFactor, dragFactor * 1.08);
    }

    [Fact]
    public void Factors_Taper_IsBestBetweenPointedAndStraight()
    {
        double[] factors = [.. new[] { 0.1, 0.4, 1.0 }
            .Select(taper => Planforms.Line(Planforms.Tapered(2 * Math.PI, taper)).InducedDrag.PlanformFactor)];
        Assert.True(factors[1] < factors[0] && factors[1] < factors[2]);
        // The textbook's figure shows less than one per cent at its best for this aspect ratio: from memory.
        Assert.InRange(factors[1], 0.005, 0.012);
    }

    [Theory, InlineData(false), InlineData(true)]
    public void Solution_MoreTerms_Converges(bool flapDown)
    {
        WingPlanform planform = Planforms.Tapered(7, 0.7, -2);
        PartSpanFlap? flap = flapDown ? Planforms.HalfSpanFlap : null;
        LiftingLine limit = Planforms.Line(planform, flap, terms: 400);

        double[] slopes = [.. Errors(line => line.SlopePerRadian)];
        double[] drags = [.. Errors(line => line.InducedDrag.At(1))];
        double[] zeroLifts = [.. Errors(line => line.ZeroLiftAngle.Degrees)];

        // The chord's kink at the centreline leaves an order of two: doubling the terms quarters the error.
        Assert.All(slopes.Zip(slopes.Skip(1)), pair => Assert.InRange(pair.First / pair.Second, 3, 5.5));
        Assert.InRange(slopes[^1], 0, 1e-4);
        Assert.InRange(drags[^1], 0, 5e-6);
        Assert.InRange(zeroLifts[^1], 0, 5e-4);

        IEnumerable<double> Errors(Func<LiftingLine, double> result) => new[] { 16, 32, 64 }
            .Select(terms => Math.Abs(result(Planforms.Line(planform, flap, terms: terms)) - result(limit)));
    }

    [Fact]
    public void Loading_PartSpanFlap_HasNoRipple()
    {
        LiftingLine line = Planforms.Line(Planforms.Tapered(7, 1), new PartSpanFlap(0, 0.6, Angle.FromDegrees(-10), 0.9));
        double[] lifts = [.. Enumerable.Range(0, 98).Select(i => line.LoadAt(i * 0.01, 0).SectionLiftCoefficient)];
        // At no lift of the wing the flapped part pulls up and the rest down, and the load falls from the centreline until
        // it has crossed the flap's end; then it only recovers towards the tip.
        int lowest = Array.IndexOf(lifts, lifts.Min());
        Assert.InRange(lowest, 61, 85);
        for (int i = 1; i <= lowest; i++) Assert.True(lifts[i] < lifts[i - 1], $"rises at {i} %");
        for (int i = lowest + 1; i < lifts.Length; i++) Assert.True(lifts[i] > lifts[i - 1], $"falls at {i} %");
    }

    [Fact]
    public void ZeroLiftAngle_FullSpanFlap_IsTheSections()
    {
        LiftingLine line = Planforms.Line(Planforms.Tapered(7, 0.7), new PartSpanFlap(0, 1, Angle.FromDegrees(-8), 0.9));
        Assert.Equal(-8, line.ZeroLiftAngle.Degrees, 1e-9);
        Assert.Equal(Planforms.Line(Planforms.Tapered(7, 0.7)).InducedDrag.At(0.8), line.InducedDrag.At(0.8), 1e-7);
    }

    [Fact]
    public void FirstStall_RectangularWing_IsAtTheRoot() =>
        Assert.Equal(0, Planforms.Line(Planforms.Tapered(7, 1)).FirstStall().Section.Station, 1e-6);

    [Fact]
    public void FirstStall_MoreTaper_MovesOut()
    {
        double[] stations = [.. new[] { 1, 0.7, 0.5, 0.3 }
            .Select(taper => Planforms.Line(Planforms.Tapered(7, taper)).FirstStall().Section.Station)];
        Assert.All(stations.Zip(stations.Skip(1)), pair => Assert.True(pair.Second > pair.First));
        Assert.InRange(stations[^1], 0.6, 0.9);
    }

    [Fact]
    public void FirstStall_Washout_MovesIn() =>
        Assert.True(
            Planforms.Line(Planforms.Tapered(7, 0.5, -3)).FirstStall().Section.Station
            < Planforms.Line(Planforms.Tapered(7, 0.5)).FirstStall().Section.Station);

    [Fact]
    public void FirstStall_FlapDown_AddsLift_AndMovesItInward()
    {
        WingPlanform planform = Planforms.Tapered(7, 0.6);
        StallOnset up = Planforms.Line(planform).FirstStall();
        StallOnset down = Planforms.Line(planform, Planforms.HalfSpanFlap).FirstStall();
        Assert.InRange(down.MaximumLiftCoefficient - up.MaximumLiftCoefficient, 0.2, 0.6);
        Assert.True(down.AngleOfAttack < up.AngleOfAttack, "With the flap the wing stalls at a lower angle of its chord.");
        Assert.Equal(down.Section.SectionMaximum, down.Section.SectionLiftCoefficient, 1e-9);
        Assert.Equal(up.Section.SectionMaximum, up.Section.SectionLiftCoefficient, 1e-9);
    }

    [Fact]
    public void Twist_TableOfStations_IsTheStraightOneThatItHolds()
    {
        WingPlanform straight = Planforms.Tapered(7, 0.6, -3);
        WingPlanform table = new(
            Planforms.Span,
            new[] { 0, 0.3, 0.8, 1.0 }.Select(share => (share, straight.Chord(share), straight.Twist(share))));
        Assert.Equal(Planforms.Line(straight).ZeroLiftAngle.Degrees, Planforms.Line(table).ZeroLiftAngle.Degrees, 1e-9);
        Assert.Equal(straight.Area.SquareMeters, table.Area.SquareMeters, 1e-12);
    }

    [Fact]
    public void Parabola_WithFlap_GoesThroughBothPoints()
    {
        InducedDragPolar polar = Planforms.Line(Planforms.Tapered(7, 0.7, -2), Planforms.HalfSpanFlap).InducedDrag;
        (double oswald, double offset) = polar.Parabola(0.7, 1.6);
        foreach (double lift in new[] { 0.7, 1.6 })
            Assert.Equal(polar.At(lift), offset + lift * lift / (Math.PI * polar.AspectRatio * oswald), 1e-12);
        Assert.True(offset > 0.005, "A part-span flap costs induced drag that no lift explains.");
        Assert.True(polar.SpanEfficiency(1.2) < 0.95);
    }
}
