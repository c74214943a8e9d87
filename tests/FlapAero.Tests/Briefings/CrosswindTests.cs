using UnitsNet;

namespace FlapAero.Tests.Briefings;

/// <summary>Whether a crosswind is within its limit; the demo runway is 24 and its aeroplane's file gives 15 kt.</summary>
public sealed class CrosswindTests
{
    [Theory]
    [InlineData(330, 22, 30.0, CrosswindFit.AboveLimit)]
    [InlineData(150, 22, 30.0, CrosswindFit.AboveLimit)]
    [InlineData(330, 10, 16.0, CrosswindFit.AboveLimit)]
    [InlineData(330, 15, null, CrosswindFit.Within)]
    [InlineData(330, 15.2, null, CrosswindFit.AboveLimit)]
    [InlineData(240, 22, 30.0, CrosswindFit.Within)]
    public void CrosswindFit_AgainstTheFile_CountsTheGusts(double from, double mean, double? gust, CrosswindFit expected) =>
        Assert.Equal(expected, Briefing.For(Flights.With(windFrom: from, wind: mean, gust: gust)).Value.CrosswindFit);

    [Theory]
    [InlineData(null, null, null, CrosswindFit.LimitUnknown)]
    [InlineData(null, 12.0, 12.0, CrosswindFit.Within)]
    [InlineData(null, 9.0, 9.0, CrosswindFit.AboveLimit)]
    [InlineData(15.0, 9.0, 9.0, CrosswindFit.AboveLimit)]
    [InlineData(15.0, 25.0, 15.0, CrosswindFit.Within)]
    public void CrosswindLimit_FileAndInstructor_TheLowerCounts(double? file, double? own, double? counts, CrosswindFit expected)
    {
        Briefing briefing = Made(file, own, DemoBriefings.Flight.Wind);
        Assert.Equal(counts, briefing.CrosswindLimit?.Knots);
        Assert.Equal(expected, briefing.CrosswindFit);
    }

    [Fact]
    public void CrosswindFit_NoLimitAndNoCrosswind_NeedsNone()
    {
        BriefingWind along = new(new Wind(Angle.FromDegrees(240), Speed.FromKnots(12)));
        Assert.Equal(CrosswindFit.Within, Made(null, null, along).CrosswindFit);
    }

    [Theory, InlineData(0), InlineData(-12), InlineData(61)]
    public void CrosswindLimit_OutsideItsRange_IsRefused(double knots)
    {
        string message = Assert.Throws<RefusedInputException>(() => Made(null, knots, DemoBriefings.Flight.Wind)).Message;
        Assert.Contains("is refused; allowed is 1 kt to 60 kt.", message, StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => Made(knots, null, DemoBriefings.Flight.Wind));
    }

    private static Briefing Made(double? file, double? own, BriefingWind wind)
    {
        Aeroplane h4 = DemoAeroplanes.TrainerH4;
        BriefingRequest demo = DemoBriefings.Flight;
        Aeroplane aeroplane = new(
            "Other", "its own limit", h4.Wing, h4.MinimumMass, h4.MaximumMass, h4.Propeller, h4.Engine, h4.FlapSettings, Knots(file));
        return Briefing.For(new(aeroplane, demo.Mass, demo.Runway, demo.Air, wind, crosswindLimit: Knots(own))).Value;
    }

    private static Speed? Knots(double? knots) => knots is { } given ? Speed.FromKnots(given) : null;
}
