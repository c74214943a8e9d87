using FlapAero.Tests.Propulsion;
using UnitsNet;

namespace FlapAero.Tests.Properties;

/// <summary>What is refused says which quantity, its value in the caller's unit, what is allowed, and why.</summary>
public sealed class RefusalTests
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Configuration FlapsUp = Trainer.FlapsUp;
    private static readonly Configuration FullFlaps = Trainer.FullFlaps;

    private static readonly Dictionary<string, Refusal> Refusals = new()
    {
        ["Air.Standard, too high"] = new(() => Air.Standard(Feet(70000)), "altitude: 70000 ft is refused; allowed is -3280.8 ft to 65617 ft."),
        ["Air.Standard, too low"] = new(() => Air.Standard(Feet(-4000)), "altitude: -4000 ft is refused; allowed is -3280.8 ft to 65617 ft."),
        ["Air.AtTemperature, hot"] = new(
            () => Air.AtTemperature(Feet(0), Temperature.FromDegreesFahrenheit(200)),
            "outside air temperature: 200 °F is refused; allowed is -130 °F to 140 °F."),
        ["Air.OffStandard, hot"] = new(
            () => Air.OffStandard(Feet(0), TemperatureDelta.FromDegreesCelsius(80)), "outside air temperature: "),
        ["Air.PressureAltitudeOf, setting"] = new(
            () => Air.PressureAltitudeOf(Feet(0), Pressure.FromInchesOfMercury(20)),
            "altimeter setting: 20 inHg is refused; allowed is 25.1 inHg to 31.892 inHg."),
        ["Air.PressureAltitudeOf, elevation"] = new(
            () => Air.PressureAltitudeOf(Feet(70000), Pressure.FromHectopascals(1013.25)), "altitude: 70000 ft is refused; allowed is "),
        ["Air.GeopotentialOf"] = new(() => Air.GeopotentialOf(Length.FromKilometers(21)), "altitude: 21 km is refused; allowed is -1 km to 20 km."),
        ["Airspeed.FromTrue, rest"] = new(() => Airspeed.FromTrue(Knots(0), SeaLevel), "airspeed: 0 kt is refused; allowed is from 0.1 kt."),
        ["Airspeed.FromTrue, fast"] = new(
            () => Airspeed.FromTrue(Knots(700), SeaLevel),
            "true airspeed: 700 kt is refused; allowed is below the speed of sound, 661.48 kt."),
        ["Airspeed.FromCalibrated"] = new(
            () => Airspeed.FromCalibrated(Speed.FromKilometersPerHour(-5), SeaLevel), "airspeed: -5 km/h is refused; allowed is from 0.1852 km/h."),
        ["Airspeed.FromEquivalent"] = new(() => Airspeed.FromEquivalent(Knots(-1), SeaLevel), "airspeed: -1 kt is refused; allowed is from 0.1 kt."),
        ["AirspeedCalibration.Calibrated"] = new(() => Trainer.Table.Calibrated(Knots(30)), "indicated airspeed: 30 kt is refused; allowed is 40 kt to 150 kt."),
        ["AirspeedCalibration.Indicated"] = new(() => Trainer.Table.Indicated(Knots(150)), "calibrated airspeed: 150 kt is refused; allowed is 44 kt to 146 kt."),
        ["LiftCurve, slope"] = new(
            () => _ = new LiftCurve(7, Degrees(-2), 1.4, Degrees(4)), "lift-curve slope (per radian): 7 is refused; allowed is 2 to 6.2832."),
        ["LiftCurve, zero lift"] = new(() => _ = new LiftCurve(5, Degrees(6), 1.4, Degrees(4)), "zero-lift angle: 6° is refused; allowed is -25° to 5°."),
        ["LiftCurve, maximum"] = new(() => _ = new LiftCurve(5, Degrees(-2), 5, Degrees(4)), "maximum lift coefficient: 5 is refused; allowed is 0.5 to 4."),
        ["LiftCurve, rounding"] = new(() => _ = new LiftCurve(5, Degrees(-2), 1.4, Degrees(11)), "stall rounding: 11° is refused; allowed is 0.5° to 10°."),
        ["LiftCurve, rounding too long"] = new(
            () => _ = new LiftCurve(6, Degrees(-2), 0.5, Degrees(10)), "stall rounding: 10° is refused; allowed is less than 2 C_Lmax/a."),
        ["LiftCurve.LiftCoefficient"] = new(
            () => Trainer.Lift.LiftCoefficient(Degrees(30)), "angle of attack: 30° is refused; allowed is -2° to 20.043°."),
        ["LiftCurve.AngleOfAttack"] = new(() => Trainer.Lift.AngleOfAttack(1.5), "lift coefficient: 1.5 is refused; allowed is 0 to 1.4."),
        ["LiftCurve.EllipticWingSlope"] = new(() => LiftCurve.EllipticWingSlope(6, 3), "aspect ratio: 3 is refused; allowed is 4 to 40."),
        ["LiftCurve.HelmboldSlope"] = new(
            () => LiftCurve.HelmboldSlope(8, 6), "section lift slope (per radian): 8 is refused; allowed is 4 to 7.5."),
        ["DragPolar, drag"] = new(() => _ = new DragPolar(0.001, 0.8, 7), "zero-lift drag coefficient: 0.001 is refused; allowed is 0.005 to 0.4."),
        ["DragPolar, Oswald"] = new(() => _ = new DragPolar(0.03, 1.1, 7), "Oswald factor: 1.1 is refused; allowed is 0.3 to 1."),
        ["DragPolar, aspect ratio"] = new(() => _ = new DragPolar(0.03, 0.8, 2), "aspect ratio: 2 is refused; allowed is 3 to 25."),
        ["DragPolar.DragCoefficient, lift"] = new(
            () => Trainer.Aeroplane.FlapsUp.Drag.DragCoefficient(5), "lift coefficient: 5 is refused; allowed is -4 to 4."),
        ["DragPolar.DragCoefficient, ground"] = new(
            () => Trainer.Aeroplane.FlapsUp.Drag.DragCoefficient(1, 1.5), "ground-effect factor: 1.5 is refused; allowed is 0 to 1."),
        ["GroundEffect.InducedDragFactor, height"] = new(
            () => GroundEffect.InducedDragFactor(Feet(0), Feet(36)), "height of the wing: 0 ft is refused; allowed is a finite value above zero."),
        ["GroundEffect.InducedDragFactor, span"] = new(
            () => GroundEffect.InducedDragFactor(Feet(5), Feet(-36)), "span: -36 ft is refused; allowed is a finite value above zero."),
        ["Gust.Additive, factor"] = new(
            () => Gust.Additive(Speed.FromKilometersPerHour(200)), "gust factor: 200 km/h is refused; allowed is 0 km/h to 111.12 km/h."),
        ["Gust.Additive, share"] = new(() => Gust.Additive(Knots(10), 1.5), "share of the gust factor: 1.5 is refused; allowed is 0 to 1."),
        ["LoadFactor.InTurn, bank"] = new(() => LoadFactor.InTurn(Degrees(86)), "bank: 86° is refused; allowed is -85° to 85°."),
        ["LoadFactor.InTurn, path"] = new(() => LoadFactor.InTurn(Degrees(30), Degrees(-86)), "flight-path angle: -86° is refused; allowed is -85° to 85°."),
        ["Wind, direction"] = new(() => _ = new Wind(Degrees(400), Knots(5)), "wind direction: 400° is refused; allowed is 0° to 360°."),
        ["Wind, speed"] = new(() => _ = new Wind(Degrees(40), Knots(-5)), "wind speed: -5 kt is refused; allowed is 0 kt to 100 kt."),
        ["Wind.Headwind"] = new(() => _ = new Wind(Degrees(40), Knots(5)).Headwind(Degrees(-10)), "heading: -10° is refused; allowed is 0° to 360°."),
        ["Wind.Crosswind"] = new(() => _ = new Wind(Degrees(40), Knots(5)).Crosswind(Degrees(370)), "heading: 370° is refused; allowed is 0° to 360°."),
        ["WindProfile.PowerLaw"] = new(() => WindProfile.PowerLaw(Knots(10), 0.7), "wind profile exponent: 0.7 is refused; allowed is 0 to 0.6."),
        ["WindProfile.Logarithmic"] = new(
            () => WindProfile.Logarithmic(Knots(10), Feet(10)), "roughness length: 10 ft is refused; allowed is "),
        ["WindProfile.At"] = new(() => WindProfile.PowerLaw(Knots(10), 0.2).At(Length.FromMeters(601)), "height: 601 m is refused; allowed is 0 m to 600 m."),
        ["Wing, span"] = new(() => Plan(4, 12), "span: 4 m is refused; allowed is 5 m to 25 m."),
        ["Wing, area"] = new(() => Plan(11, 61), "wing area: 61 m² is refused; allowed is 5 m² to 60 m²."),
        ["Wing, aspect ratio"] = new(() => Plan(24, 6), "aspect ratio b²/S: 96 is refused; allowed is 3 to 25."),
        ["Wing, incidence"] = new(() => Plan(11, 16, 9), "incidence: 9° is refused; allowed is -2° to 8°."),
        ["Wing, height"] = new(() => Plan(11, 16, 1, 5), "height of the wing on its wheels: 5 m is refused; allowed is 0.2 m to 4 m."),
        ["FlapSetting, deflection"] = new(() => Setting(61, 80), "flap deflection: 61° is refused; allowed is 0° to 60°."),
        ["FlapSetting, speed"] = new(() => Setting(20, 160), "maximum speed: 160 kt is refused; allowed is 40 kt to 150 kt."),
        ["Aeroplane, maximum mass"] = new(() => Masses(700, 6000), "maximum mass: 6000 kg is refused; allowed is 200 kg to 5700 kg."),
        ["Aeroplane, minimum mass"] = new(() => Masses(1200, 1100), "minimum mass: 1200 kg is refused; allowed is 100 kg to 1100 kg."),
        ["Aeroplane.FlownBy"] = new(
            () => Trainer.Aeroplane.FlownBy(BriefingRules.Usual with { BankLimit = Degrees(5) }), "bank limit: 5° is refused; allowed is 10° to 45°."),
        ["Aeroplane.Configure"] = new(
            () => Trainer.Aeroplane.Configure(Trainer.Aeroplane.FlapsUp, Mass.FromPounds(3000)),
            "mass: 3000 lb is refused; allowed is 1543.2 lb to 2425.1 lb."),
        ["Configuration.StallSpeed"] = new(() => FlapsUp.StallSpeed(SeaLevel, 7), "load factor: 7 is refused; allowed is 0.01 to 6."),
        ["Configuration.StallSpeed, bank"] = new(() => FlapsUp.StallSpeed(SeaLevel, Degrees(89)), "bank: 89° is refused; allowed is -85° to 85°."),
        ["Configuration.ReferenceSpeed"] = new(
            () => FlapsUp.ReferenceSpeed(SeaLevel, 0.9), "multiple of the stalling speed: 0.9 is refused; allowed is 1 to 2."),
        ["Configuration.StallMargin"] = new(
            () => FlapsUp.StallMargin(Flying(70), 0), "load factor: 0 is refused; allowed is 0.01 to 6."),
        ["Configuration.RequiredLiftCoefficient"] = new(
            () => FlapsUp.RequiredLiftCoefficient(Flying(70), -1), "load factor: -1 is refused; allowed is 0.01 to 6."),
        ["Configuration.Indicated"] = new(() => FlapsUp.Indicated(Flying(20)), "calibrated airspeed: 20 kt is refused; allowed is 40 kt to 156 kt."),
        ["Configuration.AtIndicated"] = new(() => FlapsUp.AtIndicated(Knots(200), SeaLevel), "indicated airspeed: 200 kt is refused; allowed is 30 kt to 160 kt."),
        ["Configuration.Glide, stalled"] = new(() => FullFlaps.Glide(Flying(30)), "airspeed: 30 kt CAS is refused; allowed is from the stall, "),
        ["Configuration.Glide, fast"] = new(() => FullFlaps.Glide(Flying(100)), "airspeed: 100 kt CAS is refused; allowed is up to "),
        ["Configuration.Glide, thrust"] = new(
            () => FlapsUp.Glide(Flying(70), Force.FromPoundsForce(20000)), "thrust: 20000 lbf is refused; allowed is less than weight and drag together"),
        ["Configuration.OnPath"] = new(() => FlapsUp.OnPath(Flying(70), Degrees(-40)), "flight-path angle: -40° is refused; allowed is -30° to 30°."),
        ["Configuration.OnPath, stalled"] = new(() => FlapsUp.OnPath(Flying(45), Degrees(-3)), "airspeed: 45 kt CAS is refused; allowed is from the stall, "),
        ["Configuration.OnPathOverGround, climb"] = new(
            () => FlapsUp.OnPathOverGround(Flying(70), Degrees(-3), Knots(0)), "descent angle: -3° is refused; allowed is 0° to 30°."),
        ["Configuration.OnPathOverGround, wind"] = new(
            () => FlapsUp.OnPathOverGround(Flying(70), Degrees(3), Knots(80)), "headwind: 80 kt is refused; allowed is less than the airspeed, 70 kt."),
        ["Configuration.BestGlideOverGround"] = new(
            () => FlapsUp.BestGlideOverGround(SeaLevel, Knots(500)), "headwind: 500 kt is refused; allowed is -100 kt to 100 kt."),
        ["SteadyFlight.GroundSpeed"] = new(
            () => FlapsUp.Glide(Flying(70)).GroundSpeed(Knots(80)), "headwind: 80 kt is refused; allowed is less than the airspeed, 70 kt."),
        ["SteadyFlight.AngleOverGround"] = new(
            () => FlapsUp.Glide(Flying(70)).AngleOverGround(Knots(80)), "headwind: 80 kt is refused; allowed is less than the airspeed, 70 kt."),
    };

    public static TheoryData<string> Cases => [.. Refusals.Keys];

    [Theory, MemberData(nameof(Cases))]
    public void Refusal_OutOfRange_NamesQuantityValueRangeAndReason(string name)
    {
        (Action call, string message) = Refusals[name];
        RefusedInputException refused = Assert.Throws<RefusedInputException>(call);
        Assert.StartsWith(message, refused.Message, StringComparison.Ordinal);
        Assert.NotEmpty(refused.ParamName!);

        // What is allowed ends in a full stop; a sentence that says why comes after it.
        string why = refused.Message[refused.Message.IndexOf("allowed is", StringComparison.Ordinal)..];
        Assert.Matches(@"[^ ]\. [A-Z0-9][^.]+\.$", why);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void Refusal_AnotherCulture_ReadsTheSame(string culture)
    {
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo(culture);
            RefusedInputException refused = Assert.Throws<RefusedInputException>(() => Air.Standard(Feet(70000.5)));
            Assert.StartsWith("altitude: 70000 ft is refused; allowed is -3280.8 ft to 65617 ft.", refused.Message, StringComparison.Ordinal);
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void AirspeedCalibration_RowsThatDoNotRise_AreRefused()
    {
        (Speed, Speed) first = (Knots(50), Knots(52)), second = (Knots(60), Knots(52));
        Assert.Throws<RefusedInputException>(() => new AirspeedCalibration([first]));
        Assert.Throws<RefusedInputException>(() => new AirspeedCalibration([first, second]));
    }

    [Fact]
    public void Aeroplane_SettingsOutOfOrderOrForeign_AreRefused()
    {
        FlapSetting up = Trainer.Setting("up", 0), full = Trainer.Setting("full", 35);
        Assert.Contains("does not extend further", Assert.Throws<RefusedInputException>(() => With(full, up)).Message, StringComparison.Ordinal);
        Assert.Contains("at least one flap setting", Assert.Throws<RefusedInputException>(() => With()).Message, StringComparison.Ordinal);
        Assert.Contains("no flap setting 'up' of its own", Assert.Throws<RefusedInputException>(() => Trainer.Aeroplane.Configure(up)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Coefficients_NoNumber_AreRefused(double value)
    {
        Assert.Throws<RefusedInputException>(() => Trainer.Lift.AngleOfAttack(value));
        Assert.Throws<RefusedInputException>(() => FlapsUp.StallSpeed(SeaLevel, value));
        Assert.Throws<RefusedInputException>(() => new DragPolar(value, 0.8, 7));
        // The quantities refuse it themselves.
        Assert.Throws<ArgumentException>(() => Knots(value));
    }

    private static Length Feet(double feet) => Length.FromFeet(feet);

    private static Speed Knots(double knots) => Speed.FromKnots(knots);

    private static Angle Degrees(double degrees) => Angle.FromDegrees(degrees);

    private static Airspeed Flying(double calibrated) => Airspeed.FromCalibrated(Knots(calibrated), SeaLevel);

    private static Wing Plan(double span, double area, double incidence = 1, double height = 2) =>
        new(Length.FromMeters(span), Area.FromSquareMeters(area), Degrees(incidence), Length.FromMeters(height));

    private static FlapSetting Setting(double deflection, double knots) =>
        new("any", Degrees(deflection), Trainer.Lift, Trainer.Aeroplane.FlapsUp.Drag, Trainer.Table, Knots(knots));

    private static Aeroplane Masses(double minimum, double maximum) => new(
        "any", "", Trainer.Wing, Mass.FromKilograms(minimum), Mass.FromKilograms(maximum), InventedPropeller.Propeller,
        InventedPropeller.Engine, [Trainer.Setting("up", 0)]);

    private static Aeroplane With(params FlapSetting[] settings) => new(
        "any", "", Trainer.Wing, Mass.FromKilograms(700), Mass.FromKilograms(1100), InventedPropeller.Propeller,
        InventedPropeller.Engine, settings);

    private sealed record Refusal(Action Call, string Message);
}
