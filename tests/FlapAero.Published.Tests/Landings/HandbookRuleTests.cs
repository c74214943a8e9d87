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

    // What a plausible trainer's canonical landing gives, within a few points: about 21 per cent.
    [Theory, MemberData(nameof(Names))]
    public void ThresholdSpeed_TenPercentMore_LengthensAboutAsTheRule(string name)
    {
        RuleLandings.Change change = RuleLandings.Named(name).TenPercentFaster;
        Assert.StartsWith("21", PublishedRows.Get("T03-001").Value, StringComparison.Ordinal);
        Assert.InRange(change.Total, 21 - 3, 21 + 3);
        // All of it in the float: whatever the speed at the threshold, the wheels touch at the same lift.
        Assert.InRange(change.Roll, -0.5, 0);
        Assert.True(change.Air > 25);
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

    // About +8 per cent in all; the roll alone keeps the rule's 10.
    [Theory, MemberData(nameof(Names))]
    public void Weight_TenPercentMore_LengthensTheRollAsTheRuleAndTheWholeLess(string name)
    {
        RuleLandings.Change change = RuleLandings.Named(name).TenPercentHeavier;
        double rule = PublishedRows.Get("T03-004").Numbers[1].Value;
        Assert.InRange(change.Total, 8 - 1, 8 + 1);
        Assert.InRange(change.Roll, rule, rule + 1.5);
    }

    [Theory, MemberData(nameof(Names))]
    public void DensityAltitude_ThousandFeet_LengthensTheRollAsTheDensityFalls(string name)
    {
        RuleLandings.Change change = RuleLandings.Named(name).HigherBy(Length.FromFeet(1000));
        double thinner = 100 * (Air.StandardSeaLevel.Density / Air.Standard(Length.FromFeet(1000)).Density - 1);
        Assert.Equal(thinner, change.Roll, 0.1);
        Assert.True(change.Roll < PublishedRows.Input("T03-005"));
        Assert.InRange(change.Total, 2, 2.5);
    }

    // About +12 per cent.
    [Theory, MemberData(nameof(Names))]
    public void DensityAltitude_FiveThousandFeet_LengthensByAnEighth(string name) =>
        Assert.InRange(RuleLandings.Named(name).HigherBy(Length.FromFeet(5000)).Total, 11, 13);

    // +60 to +80 per cent, where the handbook says up to 50.
    [Fact]
    public void FlapsFailed_BothTrainers_LengthenMoreThanTheHandbookSays()
    {
        Assert.Equal("up to 50", PublishedRows.Get("T03-012").Value);
        Assert.All([FlapsFailed.H4, FlapsFailed.L2], failed => Assert.InRange(failed.AgainstFull.Total, 60, 80));
    }

    // Lift and drag of the flaps each give less than the handbook's half; the two together are the whole, within a few points.
    [Fact]
    public void FlapsFailed_LiftAndDragOneByOne_ExplainTheDifference() => Assert.All([FlapsFailed.H4, FlapsFailed.L2], failed =>
    {
        Assert.InRange(failed.AgainstLiftWithoutDrag.Total, 20, 50);
        Assert.InRange(failed.AgainstDragWithoutLift.Total, 20, 50);
        Assert.Equal(failed.AgainstFull.Total, failed.AgainstLiftWithoutDrag.Total + failed.AgainstDragWithoutLift.Total, 3.0);
    });

    // A slow aeroplane with external flaps, measured from 50 ft: 930 ft against 480.
    [Fact]
    public void FlapsFailed_MeasuredInFlight_LengthenMoreThanTheHandbookSaysToo()
    {
        IReadOnlyList<PrintedNumber> feet = PublishedRows.Get("T06-004").Numbers;
        double measured = 100 * (feet[0].Value / feet[1].Value - 1);
        Assert.Equal(94, measured, 0.5);
        Assert.All([FlapsFailed.H4, FlapsFailed.L2], failed => Assert.InRange(failed.AgainstFull.Total, 50, measured));
    }

    // Above the rule's limit drag does most of the slowing while the nose is up; below it less than half is left of its worth.
    [Theory, MemberData(nameof(Names))]
    public void Drag_NoseHeldOff_LosesItsWorthAboutWhereTheRuleSays(string name)
    {
        Practice practice = new(RuleLandings.Named(name));
        Assert.Equal("60 to 70", PublishedRows.Get("T03-007").Value);
        Assert.True(practice.DragShareOfTheSlowing(1) > 0.75);
        double[] limit = [0.6, 0.7];
        Assert.All(limit, share => Assert.InRange(practice.DragShareOfTheSlowing(share), 0.35, 0.7));
        Assert.True(practice.DragShareOfTheSlowing(0.5) < 0.5);
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
        Assert.InRange(practice.FrictionThatDragIsWorth(Practice.LimitOfDrag), 0.03, 0.06);
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
