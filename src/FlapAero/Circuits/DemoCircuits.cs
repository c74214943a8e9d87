using UnitsNet;

namespace FlapAero;

/// <summary>
/// Circuits of the invented Trainer H4 at its maximum mass, over an invented aerodrome at sea level: runway 09, left-hand,
/// calm. Speeds, the 45° and the height are common practice without a source; spacing, banks and thrusts are invented.
/// </summary>
public static class DemoCircuits
{
    private static readonly Angle Bank = Angle.FromDegrees(20);

    /// <summary>Flaps up: 85 kt on downwind, 75 kt on base, 70 kt on final.</summary>
    public static CircuitPlan FlapsUp
    {
        get
        {
            Configuration up = Flaps(0);
            Descent reduced = Descent.AtThrust(Force.FromNewtons(450));
            return Plan(new(
                new(up, Knots(85), reduced), new(up, Knots(75), reduced, Bank), new(up, Knots(75), reduced),
                new(up, Knots(75), reduced, Bank), new(up, Knots(70), PathAngle)));
        }
    }

    /// <summary>Full flaps on final, one more detent on each leg: 85 kt on downwind, 70 kt on base, 60 kt on final.</summary>
    public static CircuitPlan FullFlaps
    {
        get
        {
            Configuration first = Flaps(1), second = Flaps(2);
            Descent reduced = Descent.AtThrust(Force.FromNewtons(700));
            return Plan(new(
                new(first, Knots(85), reduced), new(second, Knots(70), reduced, Bank), new(second, Knots(70), reduced),
                new(second, Knots(70), reduced, Bank), new(Flaps(3), Knots(60), PathAngle)));
        }
    }

    private static Angle PathAngle => Angle.FromDegrees(3.5);

    private static CircuitPlan Plan(CircuitLegs legs) => new(
        new CircuitRunway(Angle.FromDegrees(90), Length.FromFeet(50)),
        new Wind(Angle.FromDegrees(90), Speed.Zero),
        CircuitHand.Left,
        height: Length.FromFeet(1000),
        spacing: Length.FromNauticalMiles(0.9),
        legs,
        new ThrustRange(Force.FromNewtons(-200), Force.FromNewtons(2600)),
        bankLimit: Angle.FromDegrees(30));

    private static Configuration Flaps(int detent) =>
        DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapSettings[detent]);

    private static Airspeed Knots(double calibrated) => Airspeed.FromCalibrated(Speed.FromKnots(calibrated), Air.StandardSeaLevel);
}
