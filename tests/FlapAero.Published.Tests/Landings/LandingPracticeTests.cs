using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>Common practice, no source: the trade's landing habits on whole landings of the demo aeroplanes, in sign and in size.</summary>
public sealed class LandingPracticeTests
{
    private static readonly Practice Full = new(RuleLandings.H4Full);
    private static readonly Practice Up = new(RuleLandings.H4Up);

    public static TheoryData<string> Names => HandbookRuleTests.Names;

    // Power to idle across the threshold: kept to the round-out, it has to be floated off.
    [Theory, MemberData(nameof(Names))]
    public void Power_KeptToTheRoundOut_LengthensTheFloatAndNotTheRoll(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        RuleLandings.Change change = RuleLandings.From(landings.Canonical, new Practice(landings).PowerKeptToTheRoundOut);
        Assert.InRange(change.Air, 5, 40);
        Assert.InRange(change.Roll, -0.5, 0);
    }

    // The threshold speeds are the reference speeds: a little higher without flaps.
    [Fact]
    public void ThresholdSpeed_WithoutFlaps_IsALittleHigher() => Assert.InRange(
        Speed.FromMetersPerSecond(RuleLandings.H4Up.Canonical.Input.ThresholdSpeed - RuleLandings.H4Full.Canonical.Input.ThresholdSpeed).Knots, 5, 15);

    // +10/−5 kt: the upper edge costs a third of the landing; the finding of the survey, fast and floating, is the same thing.
    [Theory, MemberData(nameof(Names))]
    public void Speed_TenKnotsFast_FloatsAThirdOfTheLandingFurther(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        Assert.Equal("1.3; +10/-5", PublishedRows.Get("T03-018").Value);
        RuleLandings.Change change = RuleLandings.From(landings.Canonical, new Practice(landings).TenKnotsFast);
        Assert.InRange(change.Total, 28, 38);
        Assert.InRange(change.Roll, -0.5, 0);
    }

    [Fact]
    public void Speed_TenKnotsFastWithoutFlaps_CostsMoreMetresThanWithThem() => Assert.True(
        Up.TenKnotsFast.Total - RuleLandings.H4Up.Canonical.Total > 1.5 * (Full.TenKnotsFast.Total - RuleLandings.H4Full.Canonical.Total));

    // The lower edge: with full flaps and the throttle closing across the threshold nothing is left to round out with. With the
    // power kept to the round-out, or without flaps, it lands: the regulation's demonstration of control at V_REF − 5 kt.
    [Fact]
    public void Speed_FiveKnotsSlow_NeedsItsPowerWithFullFlaps()
    {
        Assert.Equal("VREF - 5", PublishedRows.Get("T07-012").Value);
        Assert.Equal(LandingRefusal.LiftLimitBeforeRoundOut, Full.FiveKnotsSlow.Outcome.Refusal);
        Assert.True(Full.PowerKeptToTheRoundOut.Faster(-Speed.FromKnots(5)).Happens);
        Assert.True(Up.FiveKnotsSlow.Happens);
    }

    // 400 ft beyond the point: what a candidate may miss by is nine knots with full flaps and five without.
    [Fact]
    public void TouchdownTolerance_InKnotsAtTheThreshold_IsHalfWithoutFlaps()
    {
        Assert.Equal(400, PublishedRows.Input("T03-019"));
        Assert.InRange(Full.KnotsForTheTolerance, 8, 10);
        Assert.InRange(Up.KnotsForTheTolerance, 4, 6);
    }

    // The canonical pilot touches down in the first third of a 900 m runway with full flaps; without flaps it takes 1 500 m.
    [Fact]
    public void FirstThird_OfAShortRunway_HoldsTheTouchdownWithFlapsOnly()
    {
        Assert.InRange(Full.RunwayOfThreeTimesTheAir, 800, 900);
        Assert.InRange(Up.RunwayOfThreeTimesTheAir, 1400, 1500);
    }

    // Held off as long as possible for aerodynamic braking: worth it where the brakes stay off, and costs where they would not.
    [Theory, MemberData(nameof(Names))]
    public void NoseWheel_HeldOff_SavesWithoutBrakesAndCostsWithThem(string name)
    {
        Practice practice = new(RuleLandings.Named(name));
        Assert.InRange(practice.NoseHighSavesWithoutBrakes, 5, 60);
        Assert.InRange(practice.NoseHighCostsWithBrakes, 30, 160);
    }

    [Fact]
    public void NoseWheel_HeldOffLonger_GoesOnSavingWithoutBrakes() => Assert.True(
        Full.NoseLowered(0.6, brakes: false).Roll < Full.NoseLowered(0.85, brakes: false).Roll);

    // Forced on early, the wing still carries most of the weight with full flaps: a push on the stick or a bump, and it flies.
    [Theory, MemberData(nameof(Names))]
    public void Touchdown_ForcedOn_LeavesMoreLiftOnTheWing(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        WholeLanding forced = new Practice(landings).ForcedOn;
        Assert.True(forced.TouchdownSpeed > 1.15 * landings.Canonical.TouchdownSpeed);
        double more = Practice.LiftWithTheNoseDown(forced) / Practice.LiftWithTheNoseDown(landings.Canonical);
        Assert.InRange(more, 1.3, 1.5);
        // And rolls further, though it floats less than the same excess held off.
        Assert.True(forced.Roll > 1.2 * landings.Canonical.Roll);
        Assert.True(forced.Air < new Practice(landings).TenKnotsFast.Air);
    }

    [Fact]
    public void Touchdown_ForcedOnWithFullFlaps_CarriesMostOfTheWeight() =>
        Assert.InRange(Practice.LiftWithTheNoseDown(Full.ForcedOn), 0.6, 0.8);

    // One value in place of T_i(V): the aeroplane's own idling propeller brakes more over the threshold and pulls at half that speed.
    [Theory, MemberData(nameof(Names))]
    public void IdleThrust_InPlaceOfTheIdlingPropellers_LiesInsideIts(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        double Idling(double share) => landings.Configuration.IdleThrust(Airspeed.FromTrue(
            Speed.FromMetersPerSecond(share * landings.Canonical.Input.ThresholdSpeed), Air.StandardSeaLevel))!.Value.Newtons;
        Assert.InRange(landings.Canonical.Input.IdleThrust / Idling(1), 0.25, 0.75);
        Assert.True(Idling(0.5) > 0);
    }
}
