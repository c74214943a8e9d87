using CsCheck;
using UnitsNet;
using static FlapAero.Tests.Circuits.Plans;

namespace FlapAero.Tests.Circuits;

/// <summary>Any finite and some other numbers: a circuit, a refusal or an argument error, and never a NaN.</summary>
public sealed class FuzzTests
{
    // Of these about 6 000 are circuits (5 000 of them flown forwards too), 78 000 refusals, 16 000 argument errors.
    private const int Tries = 100_000;

    private static readonly double[] OddNumbers = [double.NaN, double.PositiveInfinity, double.MaxValue, double.Epsilon, -1];

    private static readonly Gen<double> Odd = Gen.Int[0, OddNumbers.Length - 1].Select(at => OddNumbers[at]);

    // Anything now and then, and else the edges and the inside of the range that the argument has.
    private static Gen<double> Near(double low, double high) => Gen.Frequency(
        (500, Gen.Double[low, high]), (2, Gen.OneOf(Gen.Const(low), Gen.Const(high), Gen.Const(0.0))),
        (1, Gen.Double), (1, Odd));

    private static Gen<Func<Descent>> Descents => Gen.Frequency(
        (1, Gen.Bool.Select<bool, Func<Descent>>(_ => () => Descent.Level)),
        (3, Gen.OneOf(Near(-300, 700), Near(-500, 3000)).Select<double, Func<Descent>>(value => () => Descent.AtThrust(Force.FromNewtons(value)))),
        // Power counts in decimals: it cannot even be made of more.
        (2, Near(-20, 100).Select<double, Func<Descent>>(value => () => Descent.AtPower(Power.FromKilowatts(Math.Clamp(value, -1e20, 1e20))))),
        (2, Near(10, 3000).Select<double, Func<Descent>>(value => () => Descent.AtSinkRate(Speed.FromFeetPerMinute(value)))));

    private static Gen<Func<CircuitFix?>> Fixes => Gen.OneOf(
        Gen.Bool.Select<bool, Func<CircuitFix?>>(_ => () => null),
        Gen.OneOf(Near(20, 60), Near(-60, 80)).Select<double, Func<CircuitFix?>>(value => () => CircuitFix.BaseTurnAt(Degrees(value))),
        Gen.OneOf(Near(-1000, 1000), Near(-20000, 20000)).Select<double, Func<CircuitFix?>>(value => () => CircuitFix.PowerReducedAt(Length.FromMeters(value))),
        Near(1, 3000).Select<double, Func<CircuitFix?>>(value => () => CircuitFix.RollOutAt(Length.FromMeters(value))));

    private static Gen<Func<CircuitPlan>> AnyPlans =>
        from speeds in Near(50, 84).Array[3]
        from banks in Gen.OneOf(Near(5, 40), Near(1, 80)).Array[2]
        from descents in Descents.Array[4]
        from fix in Fixes
        from shape in Gen.Select(
            Gen.OneOf(Near(200, 600), Near(30, 3000)), Gen.OneOf(Near(800, 3000), Near(50, 20000)), Gen.OneOf(Near(2, 6), Near(1, 15)), Near(5, 60))
        from air in Gen.Select(Near(0, 360), Gen.OneOf(Near(0, 25), Near(0, 100)), Near(0, 360))
        from established in Near(60, 120)
        from detent in Gen.Int[0, 3]
        from hand in Gen.Enum<CircuitHand>()
        select (Func<CircuitPlan>)(() => new CircuitPlan(
            new Runway { Direction = Degrees(air.Item1) }, WindOf(air.Item3, air.Item2), hand,
            Length.FromMeters(shape.Item1), Length.FromMeters(shape.Item2),
            new CircuitLegs(
                new(H4(0), Knots(speeds[0]), descents[0]()), new(H4(detent), Knots(speeds[1]), descents[1](), Degrees(banks[0])),
                new(H4(detent), Knots(speeds[1]), descents[2]()), new(H4(detent), Knots(speeds[1]), descents[3](), Degrees(banks[1])),
                new(H4(detent), Knots(speeds[2]), Degrees(shape.Item3))),
            new ThrustRange(Force.FromNewtons(-1500), Force.FromNewtons(6000)), Degrees(80), fix(),
            Length.FromMeters(established), Length.FromMeters(shape.Item4)));

    [Fact]
    public void Backwards_AnyNumbers_GiveACircuitARefusalOrAnArgumentError()
    {
        int circuits = 0, refusals = 0, arguments = 0, forwards = 0;
        Gen.Select(AnyPlans, Near(-120, 120).Array[3]).Sample(
            (plan, late) =>
            {
                try
                {
                    Outcome<Circuit, CircuitRefusal> outcome = Circuit.Backwards(plan());
                    if (!outcome.Happened)
                    {
                        Interlocked.Increment(ref refusals);
                        Assert.All(outcome.Refusal!.Values, shown => Assert.True(double.IsFinite((double)shown.Value.Value), outcome.Refusal.Message));
                        return;
                    }

                    Interlocked.Increment(ref circuits);
                    AllFinite(outcome.Value);
                    Outcome<FlownCircuit, CircuitRefusal> flown = outcome.Value.Forwards(new(Seconds(late[0] / 4), Seconds(late[1] / 4), Seconds(late[2] / 4)));
                    if (!flown.Happened) return;
                    AllFinite(flown.Value);
                    Interlocked.Increment(ref forwards);
                }
                catch (ArgumentException)
                {
                    Interlocked.Increment(ref arguments);
                }
            },
            iter: Tries);
        Assert.True(
            circuits > 3000 && refusals > 40_000 && arguments > 5000 && forwards > 2000,
            FormattableString.Invariant($"Of {Tries}: {circuits} circuits, {refusals} refusals, {arguments} argument errors, {forwards} forwards."));
    }

    private static void AllFinite(Circuit circuit)
    {
        Finite(circuit.PowerReducedPastAbeam, circuit.BaseTurnPastAbeam, circuit.AngleBehindWing, circuit.LengthOfFinal,
            circuit.HeightRollingOut, circuit.TimeToThreshold, circuit.Ledger.HeightLost, circuit.Ledger.Distance, circuit.Ledger.Time);
        AllFinite(circuit.Legs);
    }

    private static void AllFinite(FlownCircuit flown)
    {
        Finite(flown.PastCentreline, flown.HeightErrorRollingOut, flown.AbovePath, flown.ExtraFinal, flown.PathAngleNeeded,
            flown.ThrustNeeded ?? Force.Zero, flown.MeetsGroundAt, flown.BankForCentreline ?? Angle.Zero, flown.Ledger.HeightLost);
        Assert.True(double.IsFinite(flown.StallMarginThere ?? 0));
        AllFinite(flown.Legs);
    }

    private static void AllFinite(IEnumerable<CircuitLeg> legs)
    {
        foreach (CircuitLeg leg in legs)
        {
            Finite(leg.Time, leg.HeightLost, leg.Distance, leg.Thrust, leg.ThrustPower, leg.PathAngle, leg.SinkRate, leg.Bank,
                leg.TurnRadius ?? Length.Zero, leg.GroundSpeed ?? Speed.Zero, leg.Crab ?? Angle.Zero, leg.HeightWorthOfSlowing);
            Finite(leg.Begin.X, leg.Begin.Y, leg.Begin.Height, leg.Begin.Time, leg.Begin.Heading,
                leg.End.X, leg.End.Y, leg.End.Height, leg.End.Time, leg.End.Heading);
            Assert.True(double.IsFinite(leg.StallMargin) && leg.StallMargin > -1e-6);
            Assert.InRange(leg.Time.Seconds, -1e-9, 1e9);
        }
    }

    private static void Finite(params IQuantity[] quantities) =>
        Assert.All(quantities, quantity => Assert.True(double.IsFinite((double)quantity.Value)));
}
