using CsCheck;
using FlapAero.Tests.Properties;
using UnitsNet;
using static FlapAero.Tests.Circuits.Plans;

namespace FlapAero.Tests.Circuits;

public sealed class CircuitProperties
{
    [Fact]
    public void RandomPlans_ManyOfThem_AreFlyable()
    {
        int flyable = 0;
        Plans.Random.Sample(plan => { if (Circuit.Backwards(plan).Happened) Interlocked.Increment(ref flyable); }, iter: 1000);
        Assert.InRange(flyable, 200, 999);
    }

    [Fact]
    public void Ledger_AnyCircuit_AddsUpToTheCircuitHeight() => EachCircuit(circuit =>
    {
        Assert.Equal(circuit.Plan.Height.Meters, circuit.Ledger.HeightLost.Meters, 1e-9);
        Assert.Equal(circuit.Plan.Height.Meters, circuit.Legs[0].Begin.Height.Meters, 1e-9);
        Assert.Equal(circuit.Legs[6].End.Time.Seconds, circuit.Ledger.Time.Seconds, 1e-9);
        Assert.Equal(0, circuit.Legs[0].Begin.Time.Seconds, 1e-9);
        Assert.All(circuit.Legs, leg =>
        {
            Assert.Equal(leg.HeightLost.Meters, (leg.Begin.Height - leg.End.Height).Meters, 1e-9);
            Assert.True(leg.Time.Seconds >= 0 && leg.HeightLost.Meters >= -1e-6);
        });
    });

    [Fact]
    public void Legs_AnyCircuit_JoinUpFromSpacingToAimingPoint() => EachCircuit(circuit =>
    {
        foreach ((CircuitLeg before, CircuitLeg after) in circuit.Legs.Zip(circuit.Legs.Skip(1)))
        {
            // The heading changes at once where two straight legs of different speed or path meet.
            Assert.Equal(before.End.X.Meters, after.Begin.X.Meters, 1e-7);
            Assert.Equal(before.End.Y.Meters, after.Begin.Y.Meters, 1e-7);
            Assert.Equal(before.End.Height.Meters, after.Begin.Height.Meters, 1e-9);
            Assert.Equal(before.End.Time.Seconds, after.Begin.Time.Seconds, 1e-9);
            if (before.IsTurn || after.IsTurn) SameHeading(before.End.Heading.Degrees, after.Begin.Heading.Degrees);
        }

        double side = circuit.Plan.Hand == CircuitHand.Right ? 1 : -1;
        Assert.All(circuit.Legs.Take(2), leg => Assert.Equal(side * circuit.Plan.Spacing.Meters, leg.End.Y.Meters, 1e-6));
        Assert.Equal(circuit.Base.Begin.X.Meters, circuit.Base.End.X.Meters, 1e-6);
        Assert.All(circuit.Legs.Skip(5), leg => Assert.Equal(0, leg.Begin.Y.Meters, 1e-6));
        Assert.Equal(0, circuit.Final.End.X.Meters, 1e-6);
        Assert.Equal(circuit.Plan.ThresholdHeight.Meters, circuit.Final.End.Height.Meters, 1e-9);
        Assert.Equal(circuit.Plan.AimingPoint.Meters, circuit.Legs[6].End.X.Meters, 1e-9);
        Assert.Equal(0, circuit.Legs[6].End.Height.Meters, 1e-9);
    });

    [Fact]
    public void FirstPoint_AnyCircuit_IsAbeamOrWherePowerIsReduced() => EachCircuit(circuit =>
    {
        double abeam = circuit.Plan.TouchdownPoint.Meters, power = abeam - circuit.PowerReducedPastAbeam.Meters;
        Assert.Equal(Math.Max(abeam, power), circuit.Legs[0].Begin.X.Meters, 1e-6);
    });

    [Fact]
    public void Headings_AnyCircuit_RunFromNoughtToThreeSixty() => EachCircuit(circuit =>
        Assert.All(circuit.Track, point => Assert.InRange(point.Heading.Degrees, 0, 360)));

    [Fact]
    public void Final_AnyWind_DescendsAtItsAngleOverTheGround() => EachCircuit(circuit => Assert.Equal(
        Math.Tan(circuit.Plan.Legs.Final.PathAngle.Radians), circuit.Final.HeightLost / circuit.Final.Distance, 1e-9));

    [Fact]
    public void StraightLegs_AnyWind_HoldTheirTrackByTheStatedCrab() => EachCircuit(circuit =>
    {
        foreach (CircuitLeg leg in circuit.Legs.Where(leg => !leg.IsTurn))
        {
            double track = leg.Begin.Heading.Degrees - leg.Crab!.Value.Degrees;
            double across = circuit.Plan.Wind.Speed.MetersPerSecond * Math.Sin(circuit.Plan.Wind.From.Radians - track * Math.PI / 180);
            double horizontal = leg.Airspeed.True.MetersPerSecond * Math.Cos(leg.PathAngle.Radians);
            Assert.Equal(across / horizontal, Math.Sin(leg.Crab.Value.Radians), 1e-9);
            Assert.Equal(leg.Distance.Meters, (leg.GroundSpeed!.Value * leg.Time).Meters, 1e-6);
        }
    });

    [Fact]
    public void OtherHand_MirroredWind_IsTheMirrorImage() => EachCircuit(circuit =>
    {
        CircuitPlan plan = circuit.Plan;
        double runway = plan.Runway.Direction.Degrees;
        double from = (2 * runway - plan.Wind.From.Degrees + 720) % 360;
        Circuit mirrored = Solve(plan.With(
            wind: WindOf(from, plan.Wind.Speed.Knots), hand: plan.Hand == CircuitHand.Left ? CircuitHand.Right : CircuitHand.Left));
        foreach ((CircuitPoint here, CircuitPoint there) in circuit.Track.Zip(mirrored.Track))
        {
            Assert.Equal(here.X.Meters, there.X.Meters, 1e-6);
            Assert.Equal(here.Y.Meters, -there.Y.Meters, 1e-6);
            Assert.Equal(here.Height.Meters, there.Height.Meters, 1e-7);
            SameHeading(here.Heading.Degrees - runway, runway - there.Heading.Degrees);
        }

        Assert.All(circuit.Legs.Zip(mirrored.Legs), pair => Assert.Equal(pair.First.Thrust.Newtons, pair.Second.Thrust.Newtons, 1e-6));
        Assert.Equal(circuit.Base.Crab!.Value.Degrees, -mirrored.Base.Crab!.Value.Degrees, 1e-9);
    });

    [Fact]
    public void Runway_TurnedWithTheWind_ChangesHeadingsOnly() => Gen.Select(Plans.Random, Gen.Double[0, 360]).Sample(
        (plan, turned) =>
        {
            if (Circuit.Backwards(plan) is not { Happened: true } outcome) return;
            Circuit circuit = outcome.Value, other = Solve(plan.With(
                runway: plan.Runway with { Direction = Degrees((plan.Runway.Direction.Degrees + turned) % 360) },
                wind: WindOf((plan.Wind.From.Degrees + turned) % 360, plan.Wind.Speed.Knots)));
            Assert.Equal(circuit.LengthOfFinal.Meters, other.LengthOfFinal.Meters, 1e-6);
            Assert.Equal(circuit.Track[0].X.Meters, other.Track[0].X.Meters, 1e-6);
            SameHeading(circuit.Base.Begin.Heading.Degrees + turned, other.Base.Begin.Heading.Degrees);
        },
        iter: Generators.Many / 4);

    [Fact]
    public void Calm_FromAnyDirection_IsCalm() => Gen.Select(Plans.Random, Gen.Double[0, 360]).Sample(
        (plan, from) =>
        {
            Outcome<Circuit, CircuitRefusal> one = Circuit.Backwards(plan.With(wind: Calm)), other = Circuit.Backwards(plan.With(wind: WindOf(from, 0)));
            Assert.Equal(one.Refusal?.Reason, other.Refusal?.Reason);
            if (!one.Happened) return;
            Assert.Equal(one.Value.Ledger.Time.Seconds, other.Value.Ledger.Time.Seconds);
            Assert.All(one.Value.Legs.Where(leg => !leg.IsTurn), leg => Assert.Equal(0, leg.Crab!.Value.Degrees, 1e-12));
        },
        iter: Generators.Many / 4);

    /// <summary>The path of final is fixed over the ground: the wind does not make it longer, but calls for an earlier base turn.</summary>
    [Fact]
    public void BaseTurn_MoreHeadwindOnFinal_BeginsNearerAbeam() => Gen.Select(Gen.Double[-8, 18], Gen.Double[0.1, 5]).Sample(
        (headwind, more) =>
        {
            Circuit less = Solve(Against(headwind)), stronger = Solve(Against(headwind + more));
            Assert.Equal(less.LengthOfFinal.Meters, stronger.LengthOfFinal.Meters, 1e-6);
            Assert.True(stronger.BaseTurnPastAbeam < less.BaseTurnPastAbeam);
            Assert.True(stronger.Final.Time > less.Final.Time);
            Assert.True(stronger.Final.Thrust > less.Final.Thrust);
        },
        iter: Generators.Many / 4);

    [Fact]
    public void Base_MoreSpacing_IsLongerByThatMuch() => EachCircuit(circuit =>
    {
        if (circuit.Plan.Legs.Base.Descent.IsLevel && circuit.Plan.Fix?.RollOutHeight is not null
            && Circuit.Backwards(circuit.Plan.With(spacing: circuit.Plan.Spacing + Length.FromMeters(100))) is { Happened: true } wider)
            Assert.Equal(circuit.Base.Distance.Meters + 100, wider.Value.Base.Distance.Meters, 1e-6);
    });

    [Fact]
    public void PowerReduced_MoreThrustOnDownwind_IsEarlier() => Gen.Select(Gen.Double[-150, 600], Gen.Double[5, 100]).Sample(
        (thrust, more) =>
        {
            Circuit less = Solve(Plain(height: 400, downwind: Descent.AtThrust(Force.FromNewtons(thrust))));
            Circuit stronger = Solve(Plain(height: 400, downwind: Descent.AtThrust(Force.FromNewtons(thrust + more))));
            Assert.True(stronger.PowerReducedPastAbeam < less.PowerReducedPastAbeam);
            Assert.Equal(less.BaseTurnPastAbeam.Meters, stronger.BaseTurnPastAbeam.Meters, 1e-6);
        },
        iter: Generators.Many / 4);

    [Fact]
    public void Turns_SteeperBank_LoadMoreSinkFasterAndLeaveLessMargin() => Gen.Select(Gen.Double[5, 40], Gen.Double[0.5, 4]).Sample(
        (bank, more) =>
        {
            CircuitLeg less = Solve(Plain(bank: bank, height: 900, spacing: 4500)).TurnToBase;
            CircuitLeg steeper = Solve(Plain(bank: bank + more, height: 900, spacing: 4500)).TurnToBase;
            Assert.True(steeper.LoadFactor > less.LoadFactor && steeper.SinkRate > less.SinkRate);
            Assert.True(steeper.StallMargin < less.StallMargin && steeper.TurnRadius < less.TurnRadius);
        },
        iter: Generators.Many / 4);

    private static CircuitPlan Against(double headwind) => Plain(
        height: 400, fix: CircuitFix.RollOutAt(Length.FromMeters(110)), wind: WindOf(headwind < 0 ? 180 : 0, Math.Abs(headwind)));
}
