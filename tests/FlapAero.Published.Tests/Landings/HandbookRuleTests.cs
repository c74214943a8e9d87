using FlapAero.Equations;
using MathNet.Numerics;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>
/// The handbook's rules of thumb against whole landings of the demo aeroplanes. docs/handbook-rules.md explains each difference;
/// its numbers are held to these by <see cref="HandbookDocumentTests"/>.
/// </summary>
public sealed class HandbookRuleTests
{
    public static TheoryData<string> Names => [.. RuleLandings.All.Select(landings => landings.Name)];

    // The rule's 21 per cent is of the energy at the touchdown. In the model only the float grows: the path down to the round-out, with
    // its power, and the roll stay as they are, so that the whole grows by less than the rule's least.
    [Theory]
    [InlineData("H4, full flaps", 12.6)]
    [InlineData("H4, flaps up", 18.4)]
    [InlineData("L2, full flaps", 12.3)]
    [InlineData("L2, flaps up", 17.6)]
    public void ThresholdSpeed_TenPercentMore_LengthensTheFloatAloneAndTheWholeLessThanTheRule(string name, double percent)
    {
        RuleLandings.Change change = RuleLandings.Named(name).TenPercentFaster;
        Assert.StartsWith("21", PublishedRows.Get("T03-001").Value, StringComparison.Ordinal);
        Assert.Equal(percent, change.Total, 0.5);
        Assert.True(change.Total < 21);
        // Whatever the speed at the threshold, the wheels touch at the same lift.
        Assert.InRange(change.Roll, -0.5, 0.5);
    }

    // By hand: the excess energy height, 0.21 V²/2g, over the slowing with the throttle closed halfway between the two speeds, in g.
    [Theory, MemberData(nameof(Names))]
    public void ThresholdSpeed_TenPercentMore_FloatsTheExcessEnergyOff(string name)
    {
        RuleLandings landings = RuleLandings.Named(name);
        WholeLanding landing = landings.Canonical;
        double metres = landings.TenPercentFaster.Air / 100 * landing.Air;
        double excess = 0.21 * Math.Pow(landing.Input.ThresholdSpeed, 2) / (2 * StandardConstants.Gravity);
        Assert.Equal(excess / RollForces.Airborne(landing, 1.05 * landing.Input.ThresholdSpeed).All, metres, 0.15 * metres);
    }

    // About -18 per cent of the roll.
    [Theory, MemberData(nameof(Names))]
    public void Headwind_TenthOfTheSpeed_ShortensTheRollAboutAsTheRule(string name)
    {
        RuleLandings.Change change = RuleLandings.Named(name).Headwind;
        Assert.InRange(change.Roll, -18 - 3, -18 + 3);
        Assert.True(change.Air > change.Roll && change.Air < 0);
    }

    // About +19 per cent of the roll.
    [Theory, MemberData(nameof(Names))]
    public void Tailwind_TenthOfTheSpeed_LengthensTheRollMoreThanTheHeadwindShortensIt(string name)
    {
        RuleLandings.Change change = RuleLandings.Named(name).Tailwind;
        Assert.InRange(change.Roll, 19 - 4, 19 + 4);
        Assert.True(change.Roll > -RuleLandings.Named(name).Headwind.Roll);
    }

    // V² grows by the rule's 10 per cent and the roll by one or two less, for the idling propeller: at the higher speed it brakes more,
    // and its pull at the end is a smaller share of the weight. In the air only the float grows; the path with power does not know the weight.
    [Theory, MemberData(nameof(Names))]
    public void Weight_TenPercentMore_LengthensTheRollAlmostAsTheRuleAndTheWholeByHalfOfIt(string name)
    {
        RuleLandings.Change change = RuleLandings.Named(name).TenPercentHeavier;
        double rule = PublishedRows.Get("T03-004").Numbers[1].Value;
        Assert.InRange(change.Total, 0.4 * rule, 0.6 * rule);
        Assert.InRange(change.Roll, rule - 2.5, rule);
        // The settling takes the same knots off a higher speed: a trifle more than V².
        Assert.InRange(RuleLandings.Named(name).TenPercentHeavierWithoutIdleThrust.Roll, rule, rule + 0.3);
    }

    // V² grows as the density falls, and the roll by a little less: the idling propeller brakes more at the higher true airspeed.
    [Theory, MemberData(nameof(Names))]
    public void DensityAltitude_ThousandFeet_LengthensTheRollAlmostAsTheDensityFalls(string name)
    {
        RuleLandings.Change change = RuleLandings.Named(name).HigherBy(Length.FromFeet(1000));
        double thinner = 100 * (Air.StandardSeaLevel.Density / Air.Standard(Length.FromFeet(1000)).Density - 1);
        Assert.InRange(change.Roll, thinner - 0.6, thinner);
        Assert.Equal(thinner, RuleLandings.Named(name).HigherWithoutIdleThrust(Length.FromFeet(1000)).Roll, 0.1);
        Assert.True(change.Roll < PublishedRows.Input("T03-005"));
        // The roll is a third of the whole, and the path down to the round-out does not grow: half of the density's share and less.
        Assert.InRange(change.Total, 0.4 * thinner, 0.6 * thinner);
    }

    [Theory, MemberData(nameof(Names))]
    public void DensityAltitude_FiveThousandFeet_LengthensByHalfOfTheRuleAtMost(string name)
    {
        double rule = 5 * PublishedRows.Input("T03-005");
        Assert.InRange(RuleLandings.Named(name).HigherBy(Length.FromFeet(5000)).Total, 0.4 * rule, 0.55 * rule);
    }

    [Fact]
    public void FlapsFailed_BothTrainers_LengthenByMostOfTheHandbooksHalf()
    {
        Assert.Equal("up to 50", PublishedRows.Get("T03-012").Value);
        Assert.All([FlapsFailed.H4, FlapsFailed.L2], failed => Assert.InRange(failed.AgainstFull.Total, 35, 50));
    }

    // Lift and drag of the flaps each make about half of it. Together they make a little less than their sum: the flaps' lift leaves
    // less float for their drag to shorten.
    [Fact]
    public void FlapsFailed_LiftAndDragOneByOne_ExplainTheDifference() => Assert.All([FlapsFailed.H4, FlapsFailed.L2], failed =>
    {
        Assert.InRange(failed.AgainstLiftWithoutDrag.Total, 15, 30);
        Assert.InRange(failed.AgainstDragWithoutLift.Total, 15, 30);
        double sum = failed.AgainstLiftWithoutDrag.Total + failed.AgainstDragWithoutLift.Total;
        Assert.InRange(sum - failed.AgainstFull.Total, 0, 6);
    });

    // A slow aeroplane with external flaps, measured from 50 ft: 930 ft against 480. More than the handbook and the trainers have.
    [Fact]
    public void FlapsFailed_MeasuredInFlight_LengthenedByTwiceTheTrainers()
    {
        IReadOnlyList<PrintedNumber> feet = PublishedRows.Get("T06-004").Numbers;
        double measured = 100 * (feet[0].Value / feet[1].Value - 1);
        Assert.Equal(94, measured, 0.5);
        Assert.All([FlapsFailed.H4, FlapsFailed.L2], failed => Assert.InRange(measured / failed.AgainstFull.Total, 2, 2.5));
    }

    // At the rule's limit drag is still most of what holds back, for the wheels roll easily; but it has lost more than half, and the
    // propeller begins to pull, so that about half of the slowing is left, and below the limit less than a third.
    [Theory, MemberData(nameof(Names))]
    public void Drag_NoseHeldOff_LosesItsWorthAboutWhereTheRuleSays(string name)
    {
        Practice practice = new(RuleLandings.Named(name));
        Assert.Equal("60 to 70", PublishedRows.Get("T03-007").Value);
        Assert.True(practice.DragShareOfTheSlowing(1) > 0.85);
        double[] limit = [0.6, 0.7];
        Assert.All(limit, share => Assert.InRange(practice.DragShareOfTheSlowing(share), 0.55, 0.85));
        Assert.All(limit, share => Assert.InRange(practice.SlowingNoseHigh(share) / practice.SlowingNoseHigh(1), 0.36, 0.56));
        Assert.True(practice.SlowingNoseHigh(0.5) < practice.SlowingNoseHigh(1) / 3);
        // Drag goes with V²: it is halved at 0.71 of the touchdown speed.
        WholeLanding landing = RuleLandings.Named(name).Canonical;
        double half = RollForces.NoseHigh(landing, Math.Sqrt(0.5) * landing.TouchdownSpeed).Drag;
        Assert.Equal(0.5, half / RollForces.NoseHigh(landing, landing.TouchdownSpeed).Drag, 1e-12);
    }

    // On a dry runway the brakes win at any speed; drag is worth less braking friction than a tyre finds on ice.
    [Theory, MemberData(nameof(Names))]
    public void Drag_AgainstBrakesOnADryRunway_LosesAtEverySpeed(string name)
    {
        Practice practice = new(RuleLandings.Named(name));
        Assert.All(Generate.LinearSpaced(11, 0.5, 1), share => Assert.True(practice.SlowingBraked(share) > practice.SlowingNoseHigh(share)));
        Assert.InRange(practice.FrictionThatDragIsWorth(Practice.LimitOfDrag), 0.02, 0.04);
        Assert.True(practice.FrictionThatDragIsWorth(1) < PublishedRows.Input("T07-003"));
        Assert.InRange(practice.DragShareOfTheStop, 0.2, 0.35);
    }

    // Two writings of one balance: the solver's roll and the integral of V/a.
    [Theory, MemberData(nameof(Names))]
    public void Roll_SolverAndIntegralOfTheForces_AgreeOnTheDistance(string name)
    {
        WholeLanding landing = RuleLandings.Named(name).Canonical;
        double touchdown = Math.Sqrt(Math.Pow(landing.TouchdownSpeed, 2) - Math.Pow(landing.Outcome.TouchdownSink, 2));
        double lowered = landing.Input.NoseLowerSpeedFraction * landing.TouchdownSpeed;
        double noseHigh = RollForces.Distance(touchdown, lowered, speed => RollForces.NoseHigh(landing, speed));
        double level = RollForces.Distance(lowered, 0, speed => RollForces.Level(landing, speed, landing.Input.BrakingFriction));
        Assert.Equal(noseHigh, landing.Outcome.NoseLowerDistance - landing.Air, 1e-4 * noseHigh);
        Assert.Equal(level, landing.Outcome.StopDistance - landing.Outcome.NoseLowerDistance, 1e-4 * level);
    }
}
