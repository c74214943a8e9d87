using FlapAero.Tests.Propulsion;
using UnitsNet;

namespace FlapAero.Tests.Properties;

/// <summary>
/// Every public calculation as numbers in, numbers out, for a test that throws any numbers at it. No answer, where the
/// return type has one, is no number.
/// </summary>
internal static class Calculations
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Configuration FlapsUp = Trainer.FlapsUp;

    public static IReadOnlyDictionary<string, Func<double[], double[]>> ById { get; } = new Dictionary<string, Func<double[], double[]>>
    {
        ["Air.Standard"] = x => Of(Air.Standard(Length.FromFeet(x[0]))),
        ["Air.OfDensity"] = x => Of(Air.OfDensity(Density.FromKilogramsPerCubicMeter(x[0]))),
        ["Air.AtTemperature"] = x => Of(Air.AtTemperature(Length.FromMeters(x[0]), Temperature.FromDegreesCelsius(x[1]))),
        ["Air.OffStandard"] = x => Of(Air.OffStandard(Length.FromMeters(x[0]), TemperatureDelta.FromDegreesCelsius(x[1]))),
        ["Air.PressureAltitudeOf"] = x => [Air.PressureAltitudeOf(Length.FromFeet(x[0]), Pressure.FromHectopascals(x[1])).Meters],
        ["Air.GeopotentialOf"] = x => [Air.GeopotentialOf(Length.FromMeters(x[0])).Meters],
        ["Airspeed.FromTrue"] = x => Of(Airspeed.FromTrue(Speed.FromKnots(x[0]), SeaLevel)),
        ["Airspeed.FromCalibrated"] = x => Of(Airspeed.FromCalibrated(Speed.FromKnots(x[0]), Air.Standard(Length.FromMeters(x[1])))),
        ["Airspeed.FromEquivalent"] = x => Of(Airspeed.FromEquivalent(Speed.FromKnots(x[0]), Air.Standard(Length.FromMeters(x[1])))),
        ["AirspeedCalibration.Calibrated"] = x => [Trainer.Table.Calibrated(Speed.FromKnots(x[0])).Knots],
        ["AirspeedCalibration.Indicated"] = x => [Trainer.Table.Indicated(Speed.FromKnots(x[0])).Knots],
        ["AirspeedCalibration.ctor"] = x => [.. new AirspeedCalibration([Row(x[0], x[1]), Row(x[2], x[3])]).Rows.Select(row => row.Calibrated.Knots)],
        ["LiftCurve.ctor"] = x => [new LiftCurve(x[0], Angle.FromDegrees(x[1]), x[2], Angle.FromDegrees(x[3])).StallAngle.Degrees],
        ["LiftCurve.LiftCoefficient"] = x => [Trainer.Lift.LiftCoefficient(Angle.FromDegrees(x[0]))],
        ["LiftCurve.AngleOfAttack"] = x => [Trainer.Lift.AngleOfAttack(x[0]).Degrees],
        ["LiftCurve.EllipticWingSlope"] = x => [LiftCurve.EllipticWingSlope(x[0], x[1])],
        ["LiftCurve.HelmboldSlope"] = x => [LiftCurve.HelmboldSlope(x[0], x[1])],
        ["DragPolar.ctor"] = x => Of(new DragPolar(x[0], x[1], x[2])),
        ["DragPolar.DragCoefficient"] = x => [new DragPolar(0.03, 0.75, 7).DragCoefficient(x[0], x[1])],
        ["GroundEffect.InducedDragFactor"] = x => [GroundEffect.InducedDragFactor(Length.FromMeters(x[0]), Length.FromMeters(x[1]))],
        ["Gust.Additive"] = x => [Gust.Additive(Speed.FromKnots(x[0]), x[1]).Knots],
        ["LoadFactor.InTurn"] = x => [LoadFactor.InTurn(Angle.FromDegrees(x[0]), Angle.FromDegrees(x[1]))],
        ["Wind.Headwind"] = x => [new Wind(Angle.FromDegrees(x[0]), Speed.FromKnots(x[1])).Headwind(Angle.FromDegrees(x[2])).Knots],
        ["Wind.Crosswind"] = x => [new Wind(Angle.FromDegrees(x[0]), Speed.FromKnots(x[1])).Crosswind(Angle.FromDegrees(x[2])).Knots],
        ["WindProfile.PowerLaw"] = x => [WindProfile.PowerLaw(Speed.FromKnots(x[0]), x[1]).At(Length.FromMeters(5)).Knots],
        ["WindProfile.Logarithmic"] = x => [WindProfile.Logarithmic(Speed.FromKnots(x[0]), Length.FromMeters(x[1])).At(Length.FromMeters(5)).Knots],
        ["WindProfile.At"] = x =>
        [
            WindProfile.PowerLaw(Speed.FromKnots(10), 0.2).At(Length.FromMeters(x[0])).Knots,
            WindProfile.Logarithmic(Speed.FromKnots(10), Length.FromMeters(0.03)).At(Length.FromMeters(x[0])).Knots,
        ],
        ["Wing.ctor"] = x => [new Wing(Length.FromMeters(x[0]), Area.FromSquareMeters(x[1]), Angle.FromDegrees(x[2]), Length.FromMeters(x[3])).AspectRatio],
        ["FlapSetting.ctor"] = x => [new FlapSetting(
            "any", Angle.FromDegrees(x[0]), Trainer.Lift, new DragPolar(0.03, 0.75, 7), Trainer.Table, Speed.FromKnots(x[1])).Deflection.Degrees],
        ["Aeroplane.ctor"] = x => [new Aeroplane(
            "any", "", Trainer.Wing, Mass.FromKilograms(x[0]), Mass.FromKilograms(x[1]), InventedPropeller.Propeller,
            InventedPropeller.Engine, [Trainer.Setting("up", 0)]).MaximumMass.Kilograms],
        ["Aeroplane.FlownBy"] = x =>
            [Trainer.Aeroplane.FlownBy(BriefingRules.Usual with { FlapsUpMultiple = x[0] }).Configure(Trainer.Aeroplane.FlapsUp).ReferenceMultiple],
        ["Aeroplane.Configure"] = x => [Trainer.Aeroplane.Configure(Trainer.Aeroplane.FlapsUp, Mass.FromKilograms(x[0])).Weight.Newtons],
        ["Configuration.StallSpeed"] = x => Of(FlapsUp.StallSpeed(SeaLevel, x[0])),
        ["Configuration.StallSpeed by bank"] = x => Of(FlapsUp.StallSpeed(SeaLevel, Angle.FromDegrees(x[0]))),
        ["Configuration.ReferenceSpeed"] = x => Of(FlapsUp.ReferenceSpeed(SeaLevel, x[0])),
        ["Configuration.StallMargin"] = x => [FlapsUp.StallMargin(Flying(x[0]), x[1], Speed.FromKnots(x[2]))],
        ["Configuration.RequiredLiftCoefficient"] = x => [FlapsUp.RequiredLiftCoefficient(Flying(x[0]), x[1])],
        ["Configuration.StallingBank"] = x => [FlapsUp.StallingBank(Flying(x[0]))?.Degrees ?? 0],
        ["Configuration.Indicated"] = x => [FlapsUp.Indicated(Flying(x[0])).Knots],
        ["Configuration.AtIndicated"] = x => Of(FlapsUp.AtIndicated(Speed.FromKnots(x[0]), Air.Standard(Length.FromMeters(x[1])))),
        ["Configuration.MaximumSpeed"] = x => Of(FlapsUp.MaximumSpeed(Air.Standard(Length.FromMeters(x[0])))),
        ["Configuration.MinimumDragSpeed"] = x => Of(FlapsUp.MinimumDragSpeed(Air.Standard(Length.FromMeters(x[0])))),
        ["Configuration.MinimumPowerSpeed"] = x => Of(FlapsUp.MinimumPowerSpeed(Air.Standard(Length.FromMeters(x[0])))),
        ["Configuration.BestGlide"] = x => Of(FlapsUp.BestGlide(Air.Standard(Length.FromMeters(x[0])))),
        ["Configuration.MinimumSink"] = x => Of(FlapsUp.MinimumSink(Air.Standard(Length.FromMeters(x[0])))),
        ["Configuration.Glide"] = x => Of(FlapsUp.Glide(Flying(x[0]), Force.FromNewtons(x[1]))),
        ["Configuration.OnPath"] = x => Of(FlapsUp.OnPath(Flying(x[0]), Angle.FromDegrees(x[1]))),
        ["Configuration.OnPathOverGround"] = x =>
            Of(FlapsUp.OnPathOverGround(Flying(x[0]), Angle.FromDegrees(x[1]), Speed.FromKnots(x[2]))),
        ["Configuration.BestGlideOverGround"] = x => Of(FlapsUp.BestGlideOverGround(SeaLevel, Speed.FromKnots(x[0]))),
        ["Configuration.EngineSpeedOnPath"] = x => Of(FlapsUp.EngineSpeedOnPath(Flying(x[0]), Angle.FromDegrees(x[1]))),
        ["Configuration.EngineSpeedOnPathOverGround"] = x =>
            Of(FlapsUp.EngineSpeedOnPathOverGround(Flying(x[0]), Angle.FromDegrees(x[1]), Speed.FromKnots(x[2]))),
        ["Configuration.IdleThrust"] = x => [FlapsUp.IdleThrust(Flying(x[0]))?.Newtons ?? 0],
        ["Configuration.ClimbAtFullThrottle"] = x => FlapsUp.ClimbAtFullThrottle(Flying(x[0])) is { } climb ? Of(climb) : [],
        ["Configuration.GlideIdling"] = x => FlapsUp.GlideIdling(Flying(x[0])) is { } glide ? Of(glide) : [],
        ["Configuration.StraightDescent"] = x =>
            FlapsUp.StraightDescent(Flying(x[0]), Length.FromFeet(x[1] + x[2]), Length.FromFeet(x[1]), Length.FromFeet(x[3])) is { Happened: true } down
                ? [.. down.Value.SelectMany(point => new[] { point.Distance.Feet, point.Height.Feet, point.Airspeed.True.Knots, point.EnergyHeight.Feet })] : [],
        ["Battery.ctor"] = x => [new Battery(ElectricCharge.FromAmpereHours(x[0]), Duration.FromHours(x[1]), x[2] / 10, x[3] / 10).RatedCurrent.Amperes],
        ["Battery.Left"] = x => [DemoElectrics.Battery.Left(x[0]).ShareLeft],
        ["Battery.Endurance"] = x => [DemoElectrics.Battery.Endurance(ElectricCurrent.FromAmperes(x[0])).Minutes],
        ["Battery.ShareTaken"] = x => [DemoElectrics.Battery.ShareTaken(ElectricCurrent.FromAmperes(x[0]), Duration.FromMinutes(x[1]))],
        ["Battery.CurrentFor"] = x => [DemoElectrics.Battery.CurrentFor(Duration.FromMinutes(x[0])).Amperes],
        ["ElectricalLoad.ctor"] = x => [new ElectricalLoad("any", ElectricCurrent.FromAmperes(x[0]), x[1] / 10).MeanCurrent.Amperes],
        // A power is a decimal: what that cannot hold is no power to begin with.
        ["ElectricalLoad.ctor by power"] = x => [new ElectricalLoad("any", Power.FromWatts(Math.Abs(x[0]) < 1e20 ? x[0] : 0), ElectricPotential.FromVolts(x[1]), x[2] / 10).MeanCurrent.Amperes],
        ["ElectricalLoad.OnFor"] = x => [DemoElectrics.Transmitting.OnFor(x[0]).MeanCurrent.Amperes],
        ["ElectricalLoad.Together"] = x => [ElectricalLoad.Together([new("any", ElectricCurrent.FromAmperes(x[0])), new("other", ElectricCurrent.FromAmperes(x[1]))]).Amperes],
        ["SteadyFlight.GroundSpeed"] = x => [FlapsUp.BestGlide(SeaLevel).GroundSpeed(Speed.FromKnots(x[0])).Knots],
        ["SteadyFlight.AngleOverGround"] = x => [FlapsUp.BestGlide(SeaLevel).AngleOverGround(Speed.FromKnots(x[0])).Degrees],
    };

    private static Airspeed Flying(double knots) => Airspeed.FromTrue(Speed.FromKnots(knots), SeaLevel);

    private static (Speed, Speed) Row(double indicated, double calibrated) => (Speed.FromKnots(indicated), Speed.FromKnots(calibrated));

    private static double[] Of(Air air) =>
    [
        air.Temperature.Kelvins, air.Pressure.Pascals, air.Density.KilogramsPerCubicMeter, air.DensityAltitude.Meters,
        air.SpeedOfSound.MetersPerSecond, air.PressureAltitude.Meters,
    ];

    private static double[] Of(Airspeed? airspeed) => airspeed is null
        ? []
        : [airspeed.True.Knots, airspeed.Equivalent.Knots, airspeed.Calibrated.Knots, airspeed.Mach, airspeed.DynamicPressure.Pascals];

    private static double[] Of(RotationalSpeed? speed) => speed is { } turning ? [turning.RevolutionsPerMinute] : [];

    private static double[] Of(DragPolar polar) => [polar.InducedFactor, polar.MaximumLiftToDrag];

    private static double[] Of(SteadyFlight flight) =>
    [
        .. Of(flight.Airspeed), flight.PathAngle.Degrees, flight.GlideAngle.Degrees, flight.SinkRate.FeetPerMinute, flight.Thrust.Newtons,
        (double)flight.ThrustPower.Watts, flight.LiftCoefficient, flight.DragCoefficient, flight.LiftToDrag, flight.AngleOfAttack.Degrees,
        flight.PitchAttitude.Degrees,
    ];
}
