using FlapAero.Tests.Propulsion;
using UnitsNet;

namespace FlapAero.Tests.Properties;

/// <summary>One invented aeroplane with round numbers, where a test needs a certain one.</summary>
internal static class Trainer
{
    private static readonly Wing Plan = new(
        Length.FromMeters(11), Area.FromSquareMeters(16), Angle.FromDegrees(1.5), Length.FromMeters(2));

    public static Aeroplane Aeroplane { get; } = Make(InventedPropeller.Propeller, InventedPropeller.Engine);

    public static Configuration FlapsUp { get; } = Aeroplane.Configure(Aeroplane.FlapsUp);

    public static Configuration FullFlaps { get; } = Aeroplane.Configure(Aeroplane.FullFlaps);

    public static LiftCurve Lift { get; } = new(5, Angle.FromDegrees(-2), 1.4, Angle.FromDegrees(4));

    public static AirspeedCalibration Table { get; } = new([
        (Speed.FromKnots(40), Speed.FromKnots(44)), (Speed.FromKnots(80), Speed.FromKnots(80)), (Speed.FromKnots(150), Speed.FromKnots(146))]);

    public static Wing Wing => Plan;

    /// <summary>Flaps up, with another propeller or engine.</summary>
    public static Configuration With(Propeller propeller, ClosedThrottleEngine engine)
    {
        Aeroplane aeroplane = Make(propeller, engine);
        return aeroplane.Configure(aeroplane.FlapsUp);
    }

    public static FlapSetting Setting(string name, double deflection) => new(
        name,
        Angle.FromDegrees(deflection),
        new LiftCurve(5, Angle.FromDegrees(-2 - deflection / 5), 1.4 + deflection / 50, Angle.FromDegrees(4)),
        new DragPolar(0.03 + deflection / 700, 0.75, Plan.AspectRatio),
        new AirspeedCalibration([
            (Speed.FromKnots(30), Speed.FromKnots(40)), (Speed.FromKnots(80), Speed.FromKnots(80)), (Speed.FromKnots(160), Speed.FromKnots(156))]),
        Speed.FromKnots(deflection > 0 ? 85 : 150));

    private static Aeroplane Make(Propeller propeller, ClosedThrottleEngine engine) => new(
        "Invented", "", Plan, Mass.FromKilograms(700), Mass.FromKilograms(1100), propeller, engine, [Setting("up", 0), Setting("full", 35)]);
}
