using CsCheck;
using FlapAero.Equations;
using FlapAero.Tests.Propulsion;
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

    public static readonly Gen<LiftCurve> LiftCurves = Gen.Select(
        Gen.Double[3.5, 6], Gen.Double[-12, 2], Gen.Double[0.8, 3.5], Gen.Double[0.5, 8],
        (slope, zeroLift, maximum, rounding) =>
            new LiftCurve(slope, Angle.FromDegrees(zeroLift), maximum, Angle.FromDegrees(rounding)));

    public static readonly Gen<Configuration> Configurations =
        Gen.Select(Aeroplanes(), Gen.Bool, Gen.Double[0, 1], (aeroplane, full, load) => aeroplane.Configure(
            full ? aeroplane.FullFlaps : aeroplane.FlapsUp,
            aeroplane.MinimumMass + load * (aeroplane.MaximumMass - aeroplane.MinimumMass)));

    /// <summary>An aeroplane, the air, and an airspeed from its stall to twice that.</summary>
    public static readonly Gen<(Configuration Configuration, Airspeed Airspeed)> Flying =
        Gen.Select(Configurations, Airs, Gen.Double[1.0001, 2], (configuration, air, multiple) =>
            (configuration, Airspeed.FromTrue(configuration.StallSpeed(air).True * multiple, air)));

    public static Gen<Aeroplane> Aeroplanes() =>
        from span in Gen.Double[7, 16]
        from aspectRatio in Gen.Double[5, 12]
        from wingLoading in Gen.Double[350, 1200]
        from up in Settings("up", 0, Gen.Double[0.9, 1.7], Gen.Double[0.02, 0.05])
        from lift in Gen.Double[1.2, 2]
        from drag in Gen.Double[0.03, 0.07]
        from full in Settings("full", 35, Gen.Const(up.Lift * lift), Gen.Const(up.Drag + drag))
        select Build(span, aspectRatio, wingLoading, up, full);

    private static Gen<Setting> Settings(string name, double deflection, Gen<double> maximumLift, Gen<double> parasiteDrag) =>
        Gen.Select(
            maximumLift, parasiteDrag, Gen.Double[0.65, 1], Gen.Double[4, 6], Gen.Double[0.9, 1.1],
            (lift, drag, oswald, slope, needle) => new Setting(name, deflection, lift, drag, oswald, slope, needle));

    private static Aeroplane Build(double span, double aspectRatio, double wingLoading, params Setting[] settings)
    {
        double area = Math.Max(span * span / aspectRatio, 5);
        Wing wing = new(Length.FromMeters(span), Area.FromSquareMeters(area), Angle.FromDegrees(1.5), Length.FromMeters(1));
        double most = Math.Clamp(wingLoading * area / StandardConstants.Gravity, 210, 5700);
        return new Aeroplane(
            "Invented", "", wing, Mass.FromKilograms(most * 0.75), Mass.FromKilograms(most), InventedPropeller.Propeller,
            InventedPropeller.Engine,
            settings.Select(setting => setting.For(wing, most * StandardConstants.Gravity)));
    }

    private sealed record Setting(
        string Name, double Deflection, double Lift, double Drag, double Oswald, double Slope, double Needle)
    {
        public FlapSetting For(Wing wing, double weight)
        {
            double stall = StallLaws.Speed(weight, 1, StandardConstants.SeaLevelDensity, wing.Area.SquareMeters, Lift);
            return new FlapSetting(
                Name,
                Angle.FromDegrees(Deflection),
                new LiftCurve(Slope, Angle.FromDegrees(-2 - Deflection / 5), Lift, Angle.FromDegrees(4)),
                new DragPolar(Drag, Oswald, wing.AspectRatio),
                new AirspeedCalibration([Row(stall * 0.1), Row(stall), Row(stall * 3)]),
                Speed.FromMetersPerSecond(stall * Fastest));
        }

        // Slow enough that it can still be reached in a steady glide.
        private double Fastest => Deflection > 0 ? 2.3 : 2.9;

        // The needle's error is largest at low speed.
        private (Speed Indicated, Speed Calibrated) Row(double calibrated) =>
            (Speed.FromMetersPerSecond(calibrated * (calibrated < 20 ? Needle : 1)), Speed.FromMetersPerSecond(calibrated));
    }
}
