using UnitsNet;

namespace FlapAero.Tests;

public sealed class LandingTests
{
    private static readonly LandingSetup Usual = UsualLanding.Setup;

    private static double Stop(LandingSetup setup) => Landing.Fly(setup).Value.StopDistance.Meters;

    [Fact]
    public void Fly_Usual_StagesAddUpToTheStop()
    {
        LandingResult result = Landing.Fly(Usual).Value;
        Assert.Equal(result.StopDistance.Meters, result.Stages.Sum(s => s.Length.Meters), 1e-9);
        Assert.Equal(result.StopTime.Seconds, result.Stages.Sum(s => s.Lasts.Seconds), 1e-9);
        Assert.Equal(Enum.GetValues<LandingStage>(), result.Stages.Select(s => s.Stage));
        Assert.All(result.Stages, stage => Assert.Same(stage, result.Stage(stage.Stage)));
        Assert.StartsWith(
            "stage: 5 is refused; allowed is Approach, HoldOff, Settling, RollNoseHigh, RollBraking.",
            Assert.Throws<RefusedInputException>(() => result.Stage((LandingStage)5)).Message, StringComparison.Ordinal);
        Assert.Equal(result.StopDistance.Meters, result.Trajectory[^1].Distance.Meters, 1e-2);
        Assert.Equal(50, result.Trajectory[0].Height.Feet, 1e-9);
        Assert.Equal(result.GroundRoll.Meters, result.StopDistance.Meters - result.TouchdownDistance.Meters, 1e-9);
    }

    [Fact]
    public void Fly_FastOrHigh_GoesFurther()
    {
        Assert.True(Stop(Usual with { Technique = Usual.Technique with { ThresholdSpeed = Speed.FromKnots(67) } }) > Stop(Usual) + 20);
        Assert.True(Stop(Usual with { Technique = Usual.Technique with { ThresholdHeight = Length.FromFeet(70) } }) > Stop(Usual) + 50);
        Assert.True(Stop(Usual with { Aeroplane = Usual.Aeroplane with { IdleThrust = Force.FromNewtons(150) } }) > Stop(Usual) + 20);
    }

    [Fact]
    public void RoundingOutFrom_ItsOwnHeight_ChangesNothing()
    {
        LandingResult usual = Landing.Fly(Usual).Value;
        LandingSetup same = Usual.RoundingOutFrom(usual.FlareHeight);
        Assert.Equal(2, same.Technique.FlareTimeConstant.Seconds, 1e-9);
        Assert.Equal(usual.StopDistance.Meters, Stop(same), 1e-6);
        Assert.Equal(7, Landing.Fly(Usual.RoundingOutFrom(Length.FromMeters(7))).Value.FlareHeight.Meters, 1e-9);
        Assert.Contains("above the hold-off height", Assert.Throws<RefusedInputException>(
            () => Usual.RoundingOutFrom(Length.FromMeters(0.4))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Fly_RoundOutAboveTheThreshold_IsReportedNotThrown()
    {
        Outcome<LandingResult, LandingRefusal> report = Landing.Fly(Usual.RoundingOutFrom(Length.FromMeters(16)));
        Assert.Equal(LandingRefusal.RoundOutAboveThresholdHeight, report.Refusal);
        Assert.False(report.Happened);
        Assert.EndsWith(" Cross the threshold higher, or round out later.", report.Explanation, StringComparison.Ordinal);
        Assert.Equal(report.Explanation, Assert.Throws<InvalidOperationException>(() => report.Value).Message);
        Assert.Contains("a wheel height of 52.493 ft, and the threshold is crossed at 50 ft", report.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void ForceOn_EarlyTouchdown_CarriesMostOfTheWeightAndSaysItBounces()
    {
        ForcedTouchdown forced = Landing.ForceOn(Usual, 0.6);
        LandingResult usual = Landing.Fly(Usual).Value;
        LandingResult result = forced.Outcome.Value;
        Assert.True(result.TouchdownDistance < usual.TouchdownDistance);
        Assert.True(result.TouchdownAirspeed > usual.TouchdownAirspeed);
        Assert.True(forced.LiftAvailable > 1.3);
        double q = 0.5 * 1.225 * Math.Pow(result.TouchdownAirspeed.MetersPerSecond, 2);
        Assert.Equal(q * 16 * 1.2 / (1050 * 9.80665), forced.WeightCarried, 1e-5);
        Assert.Equal(q * 16 * 0.5 / (1050 * 9.80665), forced.WeightCarriedNoseDown, 1e-5);
        Assert.Contains("It will bounce", forced.Explanation, StringComparison.Ordinal);
        Assert.Contains("no height is given", forced.Explanation, StringComparison.Ordinal);
        Assert.True(forced.HeightGivenUp > Length.FromMeters(0.4));
        Assert.Throws<RefusedInputException>(() => Landing.ForceOn(Usual, 0.85));
    }

    [Fact]
    public void EnergyHeight_SpeedAndHeight_AreEachOthersInverse()
    {
        var fast = Speed.FromKnots(70);
        Length worth = EnergyHeight.OfExcessSpeed(fast, Speed.FromKnots(5));
        Assert.Equal(5, EnergyHeight.OfExcessHeight(fast, worth).Knots, 1e-9);
        Assert.Equal(
            worth.Meters, EnergyHeight.Of(Length.Zero, Speed.FromKnots(75)).Meters - EnergyHeight.Of(Length.Zero, fast).Meters, 1e-9);
        Assert.Throws<RefusedInputException>(() => EnergyHeight.OfExcessHeight(fast, Length.FromMeters(-67)));
        Assert.Throws<RefusedInputException>(() => EnergyHeight.TimeToLose(Length.FromMeters(1), Speed.Zero));
    }
}
