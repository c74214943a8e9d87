using CsCheck;
using UnitsNet;

namespace FlapAero.Tests.Circuits;

/// <summary>Circuits of Trainer H4 for tests: a plain one to change, and random ones over wide ranges.</summary>
internal static class Plans
{
    public static readonly Wind Calm = new(Angle.Zero, Speed.Zero);

    public static readonly Gen<Wind> Winds = Gen.Select(Gen.Double[0, 360], Gen.Double[0, 25], WindOf);

    private static readonly Gen<Descent> Descents = Gen.OneOf(
        Gen.Double[-150, 700].Select(thrust => Descent.AtThrust(Force.FromNewtons(thrust))),
        Gen.Double[0, 25].Select(power => Descent.AtPower(Power.FromKilowatts(power))),
        Gen.Double[200, 800].Select(sink => Descent.AtSinkRate(Speed.FromFeetPerMinute(sink))));

    private static readonly Gen<Descent> AnyDescent = Gen.Frequency((4, Descents), (1, Gen.Const(Descent.Level)));

    private static readonly Gen<CircuitLegs> RandomLegs =
        from detent in Gen.Int[0, 3]
        from downwindSpeed in Gen.Double[70, 83]
        from baseSpeed in Gen.Double[65, 80]
        from finalSpeed in Gen.Double[60, 75]
        from bank in Gen.Double[10, 30]
        from otherBank in Gen.Double[10, 30]
        from downwind in AnyDescent
        from toBase in AnyDescent
        from baseLeg in AnyDescent
        from toFinal in AnyDescent
        from path in Gen.Double[2, 5]
        select new CircuitLegs(
            new(H4(0), Knots(downwindSpeed), downwind),
            new(H4(detent / 2), Knots(baseSpeed), toBase, Degrees(bank)),
            new(H4(detent / 2), Knots(baseSpeed), baseLeg),
            new(H4(detent / 2), Knots(baseSpeed), toFinal, Degrees(otherBank)),
            new(H4(detent), Knots(finalSpeed), Degrees(path)));

    private static readonly Gen<CircuitFix> Fixes = Gen.OneOf(
        Gen.Double[20, 60].Select(angle => CircuitFix.BaseTurnAt(Degrees(angle))),
        Gen.Double[-500, 500].Select(past => CircuitFix.PowerReducedAt(Length.FromMeters(past))),
        Gen.Double[310, 600].Select(height => CircuitFix.RollOutAt(Length.FromFeet(height))));

    public static readonly Gen<CircuitPlan> Random =
        from direction in Gen.Double[0, 360]
        from wind in Winds
        from right in Gen.Bool
        from height in Gen.Double[800, 1500]
        from spacing in Gen.Double[0.5, 1.5]
        from legs in RandomLegs
        from fix in Fixes
        from threshold in Gen.Double[30, 60]
        select new CircuitPlan(
            new Runway { Direction = Degrees(direction) }, wind, right ? CircuitHand.Right : CircuitHand.Left,
            Length.FromFeet(height), Length.FromNauticalMiles(spacing), legs,
            new ThrustRange(Force.FromNewtons(-400), Force.FromNewtons(2600)), Degrees(30),
            legs.Downwind.Descent.IsLevel ? null : fix, thresholdHeight: Length.FromFeet(threshold));

    public static Configuration H4(int detent) => DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapSettings[detent]);

    public static Airspeed Knots(double calibrated) => Airspeed.FromCalibrated(Speed.FromKnots(calibrated), Air.StandardSeaLevel);

    public static Angle Degrees(double degrees) => Angle.FromDegrees(degrees);

    public static Wind WindOf(double from, double knots) => new(Degrees(from), Speed.FromKnots(knots));

    public static Duration Seconds(double seconds) => Duration.FromSeconds(seconds);

    /// <summary>A right-hand flapless circuit to runway 36 in calm, at one speed, with level turns and base where asked.</summary>
    public static CircuitPlan Plain(
        double knots = 75, double bank = 20, Descent? downwind = null, Descent? turns = null, Descent? baseLeg = null,
        double spacing = 1500, double height = 300, CircuitFix? fix = null, Wind? wind = null)
    {
        Descent reduced = Descent.AtThrust(Force.FromNewtons(400));
        CircuitLegs legs = new(
            new(H4(0), Knots(knots), downwind ?? reduced),
            new(H4(0), Knots(knots), turns ?? reduced, Degrees(bank)),
            new(H4(0), Knots(knots), baseLeg ?? reduced),
            new(H4(0), Knots(knots), turns ?? reduced, Degrees(bank)),
            new(H4(0), Knots(70), Degrees(3.5)));
        return new(
            new Runway { Direction = Angle.Zero }, wind ?? Calm, CircuitHand.Right, Length.FromMeters(height),
            Length.FromMeters(spacing), legs, new ThrustRange(Force.FromNewtons(-200), Force.FromNewtons(2600)), Degrees(45), fix,
            Length.FromMeters(40));
    }

    public static CircuitLegs WithFinal(CircuitLegs legs, FinalLeg final) =>
        new(legs.Downwind, legs.TurnToBase, legs.Base, legs.TurnToFinal, final);

    public static CircuitLegs WithTurnToFinal(CircuitLegs legs, TurnLeg turn) =>
        new(legs.Downwind, legs.TurnToBase, legs.Base, turn, legs.Final);

    public static CircuitLegs WithDownwind(CircuitLegs legs, StraightLeg downwind) =>
        new(downwind, legs.TurnToBase, legs.Base, legs.TurnToFinal, legs.Final);

    public static Circuit Solve(CircuitPlan plan) => Circuit.Backwards(plan).Value;

    /// <summary>Runs the check on the circuits among random plans.</summary>
    public static void EachCircuit(Action<Circuit> check, int iterations = Properties.Generators.Many) =>
        Random.Sample(
            plan =>
            {
                if (Circuit.Backwards(plan) is { Happened: true } outcome) check(outcome.Value);
            },
            iter: iterations);

    public static void Same(CircuitPoint expected, CircuitPoint actual, double tolerance = 1e-7)
    {
        Assert.Equal(expected.X.Meters, actual.X.Meters, tolerance);
        Assert.Equal(expected.Y.Meters, actual.Y.Meters, tolerance);
        Assert.Equal(expected.Height.Meters, actual.Height.Meters, tolerance);
        Assert.Equal(expected.Time.Seconds, actual.Time.Seconds, tolerance);
        SameHeading(expected.Heading.Degrees, actual.Heading.Degrees);
    }

    public static void SameHeading(double expected, double actual) =>
        Assert.Equal(0, Math.IEEERemainder(expected - actual, 360), 1e-8);
}
