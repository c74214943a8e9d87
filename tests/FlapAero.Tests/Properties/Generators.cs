using CsCheck;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Properties;

/// <summary>Invented light aeroplanes and the air they fly in, over wide ranges.</summary>
internal static class Generators
{
    public const int Many = 2000;

    /// <summary>Low enough that no stall here comes near the speed of sound.</summary>
    public static readonly Gen<Air> Airs = Gen.Select(
        Gen.Double[-1000, 6000], Gen.Double[-30, 25],
        (altitude, offset) => Air.OffStandard(Length.FromMeters(altitude), TemperatureDelta.FromDegreesCelsius(offset)));

    public static readonly Gen<Air> StandardAirs = Gen.Double[-1000, 20000].Select(altitude => Air.Standard(Length.FromMeters(altitude)));

    public static readonly Gen<LiftCurve> LiftCurves = Lifts(Gen.Double[0.8, 3.5]);

    public static readonly Gen<Configuration> Configurations =
        Gen.Select(Aeroplanes(), Gen.Bool, Gen.Double[0, 1], (aeroplane, full, load) => aeroplane.Configure(
            full ? aeroplane.FullFlaps : aeroplane.FlapsUp,
            aeroplane.MinimumMass + load * (aeroplane.MaximumMass - aeroplane.MinimumMass)));

    /// <summary>An aeroplane, the air, and an airspeed from its stall to three times that.</summary>
    public static readonly Gen<(Configuration Configuration, Airspeed Airspeed)> Flying =
        Gen.Select(Configurations, Airs, Gen.Double[1.0001, 3], (configuration, air, multiple) =>
            (configuration, Airspeed.FromTrue(configuration.StallSpeed(air).True * multiple, air)));

    public static Gen<Aeroplane> Aeroplanes() =>
        from span in Gen.Double[7, 16]
        from aspectRatio in Gen.Double[5, 12]
        from wingLoading in Gen.Double[350, 1200]
        from up in Settings("up", 0, Gen.Double[0.9, 1.7])
        from more in Gen.Double[1, 2]
        from full in Settings("full", 35, Gen.Const(up.Lift * more))
        select Build(span, aspectRatio, wingLoading, up, full);

    private static Gen<LiftCurve> Lifts(Gen<double> maximum) =>
        Gen.Select(Gen.Double[3.5, 6], Gen.Double[-12, 2], maximum, Gen.Double[0.5, 8], (slope, zeroLift, most, rounding) =>
            new LiftCurve(slope, Angle.FromDegrees(zeroLift), most, Angle.FromDegrees(rounding)));

    private static Gen<Setting> Settings(string name, double deflection, Gen<double> maximumLift) =>
        Gen.Select(maximumLift, Gen.Double[0.015, 0.15], Gen.Double[0.5, 1], Gen.Double[4, 6], Gen.Double[0.9, 1.1], (lift, drag, oswald, slope, needle) =>
            new Setting(name, deflection, lift, drag, oswald, slope, needle));

    private static Aeroplane Build(double span, double aspectRatio, double wingLoading, params Setting[] settings)
    {
        double area = Math.Max(span * span / aspectRatio, 5);
        Wing wing = new(Length.FromMeters(span), Area.FromSquareMeters(area), Angle.FromDegrees(1.5), Length.FromMeters(1));
        double most = Math.Clamp(wingLoading * area / StandardConstants.Gravity, 210, 5700);
        return new Aeroplane(
            "Invented", "", wing, Mass.FromKilograms(most * 0.6), Mass.FromKilograms(most),
            settings.Select(setting => setting.For(wing)));
    }

    private sealed record Setting(
        string Name, double Deflection, double Lift, double Drag, double Oswald, double Slope, double Needle)
    {
        // A needle that reads to 450 kt: no property here is about the highest speed.
        public FlapSetting For(Wing wing) => new(
            Name,
            Angle.FromDegrees(Deflection),
            new LiftCurve(Slope, Angle.FromDegrees(-2 - Deflection / 5), Lift, Angle.FromDegrees(4)),
            new DragPolar(Drag, Oswald, wing.AspectRatio),
            new AirspeedCalibration([
                (Speed.FromKnots(5), Speed.FromKnots(5 * Needle)),
                (Speed.FromKnots(60), Speed.FromKnots(58)),
                (Speed.FromKnots(450), Speed.FromKnots(450 * Needle)),
            ]),
            Speed.FromKnots(450));
    }
}
