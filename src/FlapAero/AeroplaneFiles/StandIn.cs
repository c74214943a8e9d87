using UnitsNet;

namespace FlapAero.AeroplaneFiles;

/// <summary>Parts of no aeroplane in particular, of middling values, in which one value of a file is tried.</summary>
internal static class StandIn
{
    public static Wing Wing(Length? span = null, Area? area = null, Angle? incidence = null, Length? heightOnWheels = null) => new(
        span ?? Length.FromMeters(10), area ?? Area.FromSquareMeters(14), incidence ?? Angle.Zero, heightOnWheels ?? Length.FromMeters(1));

    public static LiftCurve Lift(
        double slopePerRadian = 5, Angle? zeroLiftAngle = null, double maximumLiftCoefficient = 1.4, Angle? stallRounding = null) =>
        new(slopePerRadian, zeroLiftAngle ?? Angle.Zero, maximumLiftCoefficient, stallRounding ?? Angle.FromDegrees(0.5));

    public static DragPolar Drag(double zeroLiftDragCoefficient = 0.03, double oswaldFactor = 0.7, double? aspectRatio = null) =>
        new(zeroLiftDragCoefficient, oswaldFactor, aspectRatio ?? Wing().AspectRatio);

    public static FlapSetting Flaps(
        Angle? deflection = null, LiftCurve? lift = null, DragPolar? drag = null, AirspeedCalibration? calibration = null,
        Speed? maximumSpeed = null)
    {
        AirspeedCalibration table = calibration
            ?? new AirspeedCalibration([(Speed.Zero, Speed.Zero), (Speed.FromKnots(200), Speed.FromKnots(200))]);
        return new FlapSetting(
            "any", deflection ?? Angle.Zero, lift ?? Lift(), drag ?? Drag(), table, maximumSpeed ?? table.Rows[0].Indicated);
    }

    private static PropellerTable Table { get; } =
        new([(0, 0.1, 0.06), (0.4, 0.08, 0.055), (0.8, 0.02, 0.03), (1, -0.02, 0.005), (1.4, -0.1, -0.07)]);

    public static Propeller Propeller(Length? diameter = null, RotationalSpeed? maximumSpeed = null) => new(
        diameter ?? Length.FromMeters(1.8), Table, maximumSpeed ?? RotationalSpeed.FromRevolutionsPerMinute(2700));

    public static ClosedThrottleEngine Engine(Torque? torqueAtStandstill = null, RotationalSpeed? freeSpeed = null) => new(
        torqueAtStandstill ?? Torque.FromNewtonMeters(100), freeSpeed ?? RotationalSpeed.FromRevolutionsPerMinute(900));

    public static FullThrottleEngine FullThrottle(Torque torqueAtSeaLevel) => new(torqueAtSeaLevel);

    public static Aeroplane Aeroplane(
        Wing? wing = null, Mass? minimumMass = null, Mass? maximumMass = null, double maximumLiftCoefficient = 1.4,
        Speed? crosswindLimit = null, Angle? tailLimitAttitude = null)
    {
        Wing lifting = wing ?? Wing();
        FlapSetting flaps = Flaps(lift: Lift(maximumLiftCoefficient: maximumLiftCoefficient), drag: Drag(aspectRatio: lifting.AspectRatio));
        return new Aeroplane(
            "any", "", lifting, minimumMass ?? Mass.FromKilograms(100), maximumMass ?? Mass.FromKilograms(5700),
            Propeller(), Engine(), [flaps], crosswindLimit, tailLimitAttitude);
    }

    /// <summary>Calibrated 1 g stalling speed; at sea level, where it is lowest for a given equivalent airspeed.</summary>
    public static Speed StallSpeed(Wing wing, Mass mass, double maximumLiftCoefficient)
    {
        Aeroplane any = Aeroplane(wing, maximumLiftCoefficient: maximumLiftCoefficient);
        return any.Configure(any.FlapsUp, mass).StallSpeed(Air.StandardSeaLevel).Calibrated;
    }
}
