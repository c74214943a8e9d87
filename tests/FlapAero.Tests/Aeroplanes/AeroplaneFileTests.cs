using System.Globalization;
using System.Text.Json.Nodes;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Tests.Aeroplanes;

/// <summary>What a good file gives: its numbers, whatever its units and the reader's culture.</summary>
public sealed class AeroplaneFileTests
{
    private static Dictionary<string, (string Unit, double Factor)> Imperial { get; } = new()
    {
        ["m"] = ("ft", 1 / 0.3048),
        ["m2"] = ("ft2", 1 / (0.3048 * 0.3048)),
        ["deg"] = ("rad", Math.PI / 180),
        ["kg"] = ("lb", 1 / 0.45359237),
        ["kt"] = ("mph", 1852 / 1609.344),
        ["1/rad"] = ("1/deg", Math.PI / 180),
        ["rpm"] = ("rev/s", 1 / 60.0),
        ["N.m"] = ("lbf.ft", 1 / (0.45359237 * 9.80665 * 0.3048)),
    };

    private static Dictionary<string, (string Unit, double Factor)> Metric { get; } = new() { ["m"] = ("cm", 100), ["kt"] = ("km/h", 1.852) };

    private static Dictionary<string, (string Unit, double Factor)> Mixed { get; } = new() { ["m"] = ("in", 1 / 0.0254), ["kt"] = ("m/s", 1852 / 3600.0) };

    [Fact]
    public void Demo_BothAeroplanes_AreRead()
    {
        Assert.Equal(["Trainer H4", "Trainer L2"], DemoAeroplanes.All.Select(aeroplane => aeroplane.Name));
        Assert.Equal(["up", "10°", "20°", "35°"], DemoAeroplanes.TrainerH4.FlapSettings.Select(setting => setting.Name));
        Assert.Equal(["up", "15°", "35°"], DemoAeroplanes.TrainerL2.FlapSettings.Select(setting => setting.Name));
        Assert.Same(DemoAeroplanes.TrainerH4, DemoAeroplanes.TrainerH4);
        Assert.Same(DemoAeroplanes.TrainerL2, DemoAeroplanes.All[1]);
    }

    [Fact]
    public void Demo_TrainerH4_HasTheFilesNumbers()
    {
        Aeroplane aeroplane = DemoAeroplanes.TrainerH4;

        Assert.StartsWith("Invented four-seat", aeroplane.Description, StringComparison.Ordinal);
        Assert.Equal(10.9, aeroplane.Wing.Span.Meters);
        Assert.Equal(16.6, aeroplane.Wing.Area.SquareMeters);
        Assert.Equal(1.5, aeroplane.Wing.Incidence.Degrees);
        Assert.Equal(2.0, aeroplane.Wing.HeightOnWheels.Meters);
        Assert.Equal(700, aeroplane.MinimumMass.Kilograms);
        Assert.Equal(1090, aeroplane.MaximumMass.Kilograms);
        Assert.Equal(1.93, aeroplane.Propeller.Diameter.Meters);
        Assert.Equal(2700, aeroplane.Propeller.MaximumSpeed.RevolutionsPerMinute);
        Assert.Equal(15, aeroplane.Propeller.Table.Rows.Count);
        Assert.Equal((0.8, 0.0275, 0.0325), aeroplane.Propeller.Table.Rows[8]);
        Assert.Equal(110, aeroplane.Engine.TorqueAtStandstill.NewtonMeters);
        Assert.Equal(880, aeroplane.Engine.FreeSpeed.RevolutionsPerMinute);
        FlapSetting full = aeroplane.FullFlaps;
        Assert.Equal(35, full.Deflection.Degrees);
        Assert.Equal(4.85, full.Lift.SlopePerRadian);
        Assert.Equal(-10.3, full.Lift.ZeroLiftAngle.Degrees);
        Assert.Equal(2.0, full.Lift.MaximumLiftCoefficient);
        Assert.Equal(4, full.Lift.StallRounding.Degrees);
        Assert.Equal(0.034 + 0.052, full.Drag.ZeroLiftDragCoefficient);
        Assert.Equal(0.7, full.Drag.OswaldFactor);
        Assert.Equal(85, full.MaximumSpeed.Knots);
        Assert.Equal(8, full.Calibration.Rows.Count);
        Assert.Equal((20, 34.5), (full.Calibration.Rows[0].Indicated.Knots, full.Calibration.Rows[0].Calibrated.Knots));
    }

    [Fact]
    public void Demo_BothPropellers_IdleFromRestToTheHighestSpeed()
    {
        foreach (Aeroplane aeroplane in DemoAeroplanes.All)
            foreach (FlapSetting setting in aeroplane.FlapSettings)
            {
                Configuration configuration = aeroplane.Configure(setting);
                Assert.NotNull(aeroplane.Propeller.IdlingAtRest(Air.StandardSeaLevel, aeroplane.Engine));
                Assert.NotNull(configuration.GlideIdling(configuration.StallSpeed(Air.StandardSeaLevel)));
                Assert.NotNull(configuration.IdleThrust(configuration.MaximumSpeed(Air.StandardSeaLevel)));
            }
    }

    [Theory]
    // V_S = √(2 m g/(ρ₀ S C_Lmax)), ρ₀ = 1.225: √(2·1090·9.80665/(1.225·16.6·1.4)) = √(21378.5/28.469) = 27.403 m/s = 53.27 kt,
    // with C_Lmax 2.0: √(21378.5/40.670) = 22.927 m/s = 44.57 kt. L2: √(13337.0/(1.225·12.4·1.38)) = √636.23 = 25.224 m/s = 49.03 kt.
    [InlineData(0, "up", 53.27), InlineData(0, "35°", 44.57), InlineData(1, "up", 49.03)]
    public void Demo_StallAtSeaLevel_IsTheHandComputedOne(int which, string flaps, double knots)
    {
        Aeroplane aeroplane = DemoAeroplanes.All[which];
        FlapSetting setting = aeroplane.FlapSettings.Single(setting => setting.Name == flaps);

        Assert.Equal(knots, aeroplane.Configure(setting).StallSpeed(Air.StandardSeaLevel).Calibrated.Knots, 0.005);
    }

    [Fact]
    public void Demo_EverySetting_CanBeReadAtItsStallAtEveryMass()
    {
        foreach (Aeroplane aeroplane in DemoAeroplanes.All)
            foreach (FlapSetting setting in aeroplane.FlapSettings)
                foreach (Mass mass in (Mass[])[aeroplane.MinimumMass, aeroplane.MaximumMass])
                {
                    Configuration configuration = aeroplane.Configure(setting, mass);
                    Speed indicated = configuration.Indicated(configuration.StallSpeed(Air.StandardSeaLevel));
                    Assert.InRange(indicated.Knots, 15, setting.MaximumSpeed.Knots);
                }
    }

    [Theory]
    [InlineData("trainer-h4.json", "imperial"), InlineData("trainer-l2.json", "imperial")]
    [InlineData("trainer-h4.json", "metric"), InlineData("trainer-h4.json", "mixed")]
    public void Parse_OtherUnits_GivesTheSameNumbers(string name, string units)
    {
        JsonNode root = AeroplaneText.Good(name);
        Convert(root, units switch { "imperial" => Imperial, "metric" => Metric, _ => Mixed });

        Aeroplane converted = AeroplaneFile.Parse(AeroplaneText.Written(root), name);

        Assert.DoesNotContain("\"kt\"", AeroplaneText.Written(root), StringComparison.Ordinal);
        Assert.Equal(
            Numbers(AeroplaneFile.Parse(AeroplaneText.Embedded(name), name)), Numbers(converted),
            (expected, actual) => Math.Abs(expected - actual) <= 1e-12 * (1 + Math.Abs(expected)));
    }

    [Fact]
    public void Parse_InFeet_NamesTheRangeInFeet()
    {
        AeroplaneFault fault = Assert.Single(AeroplaneText.Refused(AeroplaneText.Edited(root =>
            root.Set("wing.span", """{ "value": 10.9, "unit": "ft", "origin": "invented" }"""))).Faults);

        Assert.Equal("span 10.9 ft is refused", fault.Problem);
        Assert.Matches(@"^allowed is 16\.4\d* ft to 82\.02\d* ft", fault.Expected);
    }

    [Fact]
    public void Parse_GermanCulture_ReadsAndSpeaksAlike()
    {
        string text = AeroplaneText.Embedded("trainer-h4.json");
        string bad = string.Join('\n', BadFile.OfSense.Values.Select(file => AeroplaneText.Refused(AeroplaneText.Edited(file.Edit)).Message));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            Assert.Equal(Numbers(DemoAeroplanes.TrainerH4), Numbers(AeroplaneFile.Parse(text, "trainer.json")));
            Assert.Equal(
                bad, string.Join('\n', BadFile.OfSense.Values.Select(file => AeroplaneText.Refused(AeroplaneText.Edited(file.Edit)).Message)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("invented"), InlineData("published: a report, table 3"), InlineData("measured:2 m")]
    public void Parse_Origins_AreAccepted(string origin) =>
        Assert.NotNull(AeroplaneFile.Parse(AeroplaneText.Edited(root => root["wing"]!["span"]!["origin"] = origin), "trainer.json"));

    [Fact]
    public void Parse_NoSchemaKey_IsAccepted() =>
        Assert.NotNull(AeroplaneFile.Parse(AeroplaneText.Edited(root => root.Remove("$schema")), "trainer.json"));

    // 61 kt is 31.38 m/s: ½ · 1.225 · 31.38² · 16.6 · 2.0 N are 2 042 kg with full flaps.
    [Theory, InlineData("2040"), InlineData("720"), InlineData("1400")]
    public void Parse_HeavyAsALightAeroplaneMayBe_IsAccepted(string kilograms) => Assert.NotNull(AeroplaneFile.Parse(
        AeroplaneText.Edited(root => root.Set("masses.maximum.value", kilograms)), "trainer.json"));

    [Fact]
    public void Parse_WithoutACrosswindLimit_HasNone()
    {
        Assert.Null(AeroplaneFile.Parse(AeroplaneText.Edited(root => root.Remove("crosswindLimit")), "trainer.json").CrosswindLimit);
        Assert.Null(AeroplaneFile.Parse(AeroplaneText.Edited(root => root.Remove("tailLimitAttitude")), "trainer.json").TailLimitAttitude);
        Assert.Equal(15, DemoAeroplanes.TrainerH4.CrosswindLimit!.Value.Knots, 1e-9);
    }

    private static void Convert(JsonNode? node, Dictionary<string, (string Unit, double Factor)> units)
    {
        if (node is JsonArray list)
            foreach (JsonNode? item in list) Convert(item, units);
        if (node is not JsonObject owner) return;
        if ((owner["unit"] as JsonValue)?.GetValue<string>() is { } unit && units.TryGetValue(unit, out (string Unit, double Factor) other))
        {
            owner["unit"] = other.Unit;
            Scale(owner, other.Factor);
            foreach (JsonNode? row in owner["rows"] as JsonArray ?? []) Scale(row!.AsObject(), other.Factor);
        }

        foreach ((_, JsonNode? value) in owner.ToArray()) Convert(value, units);
    }

    private static void Scale(JsonObject owner, double factor)
    {
        foreach (string key in (string[])["value", "indicated", "calibrated"])
            if (owner[key] is JsonValue value) owner[key] = value.GetValue<double>() * factor;
    }

    private static double[] Numbers(Aeroplane aeroplane) =>
    [
        aeroplane.Wing.Span.Meters, aeroplane.Wing.Area.SquareMeters, aeroplane.Wing.Incidence.Radians, aeroplane.Wing.HeightOnWheels.Meters,
        aeroplane.MinimumMass.Kilograms, aeroplane.MaximumMass.Kilograms,
        aeroplane.Propeller.Diameter.Meters, aeroplane.Propeller.MaximumSpeed.RevolutionsPerMinute,
        aeroplane.Engine.TorqueAtStandstill.NewtonMeters, aeroplane.Engine.FreeSpeed.RevolutionsPerMinute,
        .. aeroplane.Propeller.Table.Rows.SelectMany(row => (double[])[row.AdvanceRatio, row.ThrustCoefficient, row.PowerCoefficient]),
        .. aeroplane.FlapSettings.SelectMany(setting => (double[])
        [
            setting.Deflection.Radians, setting.Lift.SlopePerRadian, setting.Lift.ZeroLiftAngle.Radians,
            setting.Lift.MaximumLiftCoefficient, setting.Lift.StallRounding.Radians, setting.Drag.ZeroLiftDragCoefficient,
            setting.Drag.OswaldFactor, setting.Drag.AspectRatio, setting.MaximumSpeed.As(SpeedUnit.MeterPerSecond),
            .. setting.Calibration.Rows.SelectMany(row => (double[])[row.Indicated.MetersPerSecond, row.Calibrated.MetersPerSecond]),
        ]),
    ];
}
