using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>Common practice, no source: the trade's landing habits on whole landings of the demo aeroplanes, in sign and in size.</summary>
public sealed class LandingPracticeTests
{
    private static readonly Practice Full = new(RuleLandings.H4Full);
    private static readonly Practice Up = new(RuleLandings.H4Up);

    public static TheoryData<string> Names => HandbookRuleTests.Names;

    // Power to idle across the threshold: without flaps it saves a fifth of the way in the air.
    [Theory, InlineData("H4, flaps up"), InlineData("L2, flaps up")]
    public void Throttle_ClosedFromTheThresholdWithoutFlaps_ShortensTheFloatAndNotTheRoll(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        RuleLandings.Change change = RuleLandings.From(landings.Canonical, new Practice(landings).ThrottleClosedFromTheThreshold);
        Assert.InRange(change.Air, -22, -18);
        Assert.InRange(change.Roll, -0.5, 0.5);
    }

    // With full flaps four seconds without power take the speed for the round-out: what the flaps' drag asks of the engine is a twelfth
    // of the weight.
    [Theory, InlineData("H4, full flaps"), InlineData("L2, full flaps")]
    public void Throttle_ClosedFromTheThresholdWithFullFlaps_LeavesNothingToRoundOutWith(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        Assert.InRange(landings.Canonical.Outcome.ApproachThrust / landings.Canonical.Weight, 0.07, 0.09);
        Assert.Equal(LandingRefusal.LiftLimitBeforeRoundOut, new Practice(landings).ThrottleClosedFromTheThreshold.Outcome.Refusal);
    }

    // The threshold speeds are the reference speeds: a little higher without flaps.
    [Fact]
    public void ThresholdSpeed_WithoutFlaps_IsALittleHigher() => Assert.InRange(
        Speed.FromMetersPerSecond(RuleLandings.H4Up.Canonical.Input.ThresholdSpeed - RuleLandings.H4Full.Canonical.Input.ThresholdSpeed).Knots, 5, 15);

    // +10/−5 kt: the upper edge costs a quarter of the landing; the finding of the survey, fast and floating, is the same thing.
    [Theory, MemberData(nameof(Names))]
    public void Speed_TenKnotsFast_FloatsAQuarterOfTheLandingFurther(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        Assert.Equal("1.3; +10/-5", PublishedRows.Get("T03-018").Value);
        RuleLandings.Change change = RuleLandings.From(landings.Canonical, new Practice(landings).TenKnotsFast);
        Assert.InRange(change.Total, 20, 30);
        Assert.InRange(change.Roll, -0.5, 0.5);
    }

    [Fact]
    public void Speed_TenKnotsFastWithoutFlaps_CostsMoreMetresThanWithThem() => Assert.True(
        Up.TenKnotsFast.Total - RuleLandings.H4Up.Canonical.Total > 1.5 * (Full.TenKnotsFast.Total - RuleLandings.H4Full.Canonical.Total));

    // The lower edge, the regulation's demonstration of control at V_REF − 5 kt: with the power kept to the round-out it lands. With the
    // throttle closing across the threshold nothing is left to round out with, flaps or none.
    [Theory, MemberData(nameof(Names))]
    public void Speed_FiveKnotsSlow_NeedsItsPower(string name)
    {
        Practice practice = new(RuleLandings.Named(name));
        Assert.Equal("VREF - 5", PublishedRows.Get("T07-012").Value);
        Assert.True(practice.FiveKnotsSlow.Happens);
        Assert.Equal(LandingRefusal.LiftLimitBeforeRoundOut, practice.FiveKnotsSlowThrottleClosed.Outcome.Refusal);
    }

    // 400 ft beyond the point: what a candidate may miss by is ten knots with full flaps and six without.
    [Fact]
    public void TouchdownTolerance_InKnotsAtTheThreshold_IsAlmostHalfWithoutFlaps()
    {
        Assert.Equal(400, PublishedRows.Input("T03-019"));
        Assert.InRange(Full.KnotsForTheTolerance, 9.5, 10.5);
        Assert.InRange(Up.KnotsForTheTolerance, 5.5, 6.5);
    }

    // From 50 ft the touchdown is in the first third of a runway of 1 100 m with full flaps, of 1 400 m without. A threshold crossed at
    // 30 ft takes 300 m off both: 20 ft at 3.5°, three times.
    [Fact]
    public void FirstThird_OfTheRunway_HoldsTheTouchdownOfALowerThresholdSooner()
    {
        Assert.InRange(Full.RunwayOfThreeTimesTheAir, 1100, 1150);
        Assert.InRange(Up.RunwayOfThreeTimesTheAir, 1400, 1450);
        double twentyFeet = 3 * Length.FromFeet(20).Meters / Math.Tan(LandingPilot.Usual.PathAngle.Radians);
        Assert.All([Full, Up], practice => Assert.Equal(
            practice.RunwayOfThreeTimesTheAir - twentyFeet, 3 * practice.ThirtyFeetOverTheThreshold.Air, 0.02 * twentyFeet));
    }

    // Held off as long as possible for aerodynamic braking: worth it where the brakes stay off, and costs where they would not.
    [Theory, MemberData(nameof(Names))]
    public void NoseWheel_HeldOff_SavesWithoutBrakesAndCostsWithThem(string name)
    {
        Practice practice = new(RuleLandings.Named(name));
        Assert.InRange(practice.NoseHighSavesWithoutBrakes, 15, 90);
        Assert.InRange(practice.NoseHighCostsWithBrakes, 30, 160);
    }

    [Fact]
    public void NoseWheel_HeldOffLonger_GoesOnSavingWithoutBrakes() => Assert.True(
        Full.UnbrakedDistance(0.6) < Full.UnbrakedDistance(LandingPilot.Usual.NoseLowerSpeedFraction));

    // Without brakes the idling propeller pulls almost what the wheels hold: the lighter trainer never stops on a level runway.
    [Fact]
    public void Roll_WithoutBrakes_GoesOnForAKilometreOrForEver()
    {
        Assert.InRange(Full.NoseLoweredAtOnce(brakes: false).Roll, 1000, 1500);
        Assert.Equal(LandingRefusal.DoesNotStop, new Practice(RuleLandings.L2Full).NoseLoweredAtOnce(brakes: false).Outcome.Refusal);
        LandingInput light = RuleLandings.L2Full.Canonical.Input;
        Assert.InRange(light.IdleThrust / (RuleLandings.L2Full.Canonical.Weight * light.RollingFriction), 0.9, 1);
    }

    // Forced on early, the wing still carries most of the weight with full flaps: a push on the stick or a bump, and it flies.
    [Theory, MemberData(nameof(Names))]
    public void Touchdown_ForcedOn_LeavesMoreLiftOnTheWing(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        WholeLanding forced = new Practice(landings).ForcedOn;
        // At a lift coefficient smaller by f to 0.65 the speed is greater by the root, and the lift by the whole.
        double lift = landings.Canonical.Input.TouchdownLiftFraction / Practice.ForcedOnFraction;
        Assert.Equal(Math.Sqrt(lift), forced.TouchdownSpeed / landings.Canonical.TouchdownSpeed, 0.005);
        double more = Practice.LiftWithTheNoseDown(forced) / Practice.LiftWithTheNoseDown(landings.Canonical);
        Assert.Equal(lift, more, 0.01);
        // And rolls further, though it floats less than the same excess held off. With the nose held up the wing brakes best just there,
        // so that the roll grows by less than the energy.
        Assert.InRange(forced.Roll / landings.Canonical.Roll, 1.08, lift);
        Assert.True(forced.Air < new Practice(landings).TenKnotsFast.Air);
    }

    [Fact]
    public void Touchdown_ForcedOnWithFullFlaps_CarriesMostOfTheWeight() =>
        Assert.InRange(Practice.LiftWithTheNoseDown(Full.ForcedOn), 0.6, 0.8);

    // The idling propeller brakes over the threshold and pulls at half that speed; the landing's quadratic has both within 0.2 % of the
    // weight.
    [Theory, MemberData(nameof(Names))]
    public void IdleThrust_OfTheLanding_IsTheIdlingPropellers(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        LandingInput input = landings.Canonical.Input;
        double Idling(double speed) => landings.Configuration.IdleThrust(Airspeed.FromTrue(
            Speed.FromMetersPerSecond(speed), Air.StandardSeaLevel))!.Value.Newtons;
        double[] shares = [0.5, 0.65, 0.8, 0.9, 1];
        Assert.All(shares, share =>
        {
            double speed = share * input.ThresholdSpeed;
            double quadratic = input.IdleThrust + speed * (input.IdleThrustSlope + speed * input.IdleThrustCurvature);
            Assert.Equal(Idling(speed), quadratic, 0.002 * landings.Canonical.Weight);
        });
        Assert.True(Idling(input.ThresholdSpeed) < 0 && Idling(0.5 * input.ThresholdSpeed) > 0);
    }
}
