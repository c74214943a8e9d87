using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests.Manuals;

/// <summary>How a made manual is.</summary>
internal sealed record ManualStyle
{
    public string GlidePropeller { get; init; } = "idling";

    /// <summary>k of the stopped propeller.</summary>
    public double StoppedDrag { get; init; } = 0.05;

    public LandingPilot Pilot { get; init; } = LandingPilot.Usual;

    public bool HasLandings { get; init; } = true;

    public bool HasLevelFlights { get; init; } = true;

    public bool HasClimbs { get; init; } = true;
}

/// <summary>The manual that an aeroplane's maker would print: the model's numbers, rounded to 1 kt, 5 ft, 10 ft/min, 10 rpm, one decimal of a ratio.</summary>
internal static class ManualMaker
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(Aeroplane aeroplane, ManualStyle style) =>
        Tree(aeroplane, style).ToJsonString(Readable).ReplaceLineEndings("\n") + "\n";

    public static JsonObject Tree(Aeroplane aeroplane, ManualStyle style)
    {
        Configuration up = aeroplane.Configure(aeroplane.FlapsUp);
        var root = new JsonObject
        {
            ["$schema"] = "manual.schema.json",
            ["name"] = aeroplane.Name,
            ["description"] = aeroplane.Description,
            ["masses"] = new JsonObject { ["minimum"] = Kg(aeroplane.MinimumMass), ["maximum"] = Kg(aeroplane.MaximumMass) },
            ["wing"] = new JsonObject
            {
                ["span"] = Text(aeroplane.Wing.Span.Meters, 3, "m"),
                ["area"] = Text(aeroplane.Wing.Area.SquareMeters, 3, "m2"),
                ["position"] = aeroplane.Wing.HeightOnWheels.Meters > 1.2 ? "high" : "low",
            },
            ["engine"] = new JsonObject
            {
                ["speed"] = Text(aeroplane.Propeller.MaximumSpeed.RevolutionsPerMinute, 0, "rpm"),
                ["propellerDiameter"] = Text(aeroplane.Propeller.Diameter.Centimeters, 0, "cm"),
            },
        };
        if (aeroplane.CrosswindLimit is { } crosswind) root["crosswindLimit"] = Text(crosswind.Knots, 0, "kt");
        if (aeroplane.TailLimitAttitude is { } tail) root["tailLimitAttitude"] = Text(tail.Degrees, 0, "deg");
        root["flapSettings"] = new JsonArray([.. aeroplane.FlapSettings.Select(Setting)]);
        root["stallSpeeds"] = new JsonArray([.. Stalls(aeroplane)]);
        root["glides"] = new JsonArray([.. Glides(aeroplane, style)]);
        root["approachSpeeds"] = new JsonArray([.. aeroplane.FlapSettings.Where(setting => setting == aeroplane.FlapsUp || setting == aeroplane.FullFlaps).Select(setting => (JsonNode)new JsonObject
        {
            ["flaps"] = setting.Name,
            ["speed"] = Kcas(style.Pilot.SpeedMultiple * aeroplane.Configure(setting).StallSpeed(Air.StandardSeaLevel).Calibrated.Knots),
        })]);
        if (style.HasLandings) root["landings"] = new JsonArray([.. Landings(aeroplane, style)]);
        if (style.HasLevelFlights)
            root["levelFlights"] = new JsonArray([.. new double[] { 85, 95, 105 }.Select(knots => Level(up, knots)).OfType<JsonNode>()]);
        if (style.HasClimbs) root["climbs"] = new JsonArray([.. new double[] { 0, 4000, 8000 }.Select(feet => Climb(up, feet)).OfType<JsonNode>()]);
        foreach (string key in (string[])["landings", "levelFlights", "climbs"])
            if (root[key] is JsonArray { Count: 0 }) root.Remove(key);
        return root;
    }

    private static JsonNode Setting(FlapSetting setting) => new JsonObject
    {
        ["name"] = setting.Name,
        ["deflection"] = Text(setting.Deflection.Degrees, 0, "deg"),
        ["maximumSpeed"] = $"{Number(setting.MaximumSpeed.Knots, 0)} KIAS",
        ["airspeedCalibration"] = new JsonObject
        {
            ["unit"] = "kt",
            ["rows"] = new JsonArray([.. Enumerable.Range(4, 14).Select(i => 10.0 * i).Where(knots => knots <= setting.MaximumSpeed.Knots).Select(knots => (JsonNode)new JsonObject
            {
                ["indicated"] = knots,
                ["calibrated"] = Math.Round(setting.Calibration.Calibrated(Speed.FromKnots(knots)).Knots),
            })]),
        },
    };

    private static IEnumerable<JsonNode> Stalls(Aeroplane aeroplane)
    {
        foreach (FlapSetting setting in aeroplane.FlapSettings)
            foreach (int bank in (int[])[0, 30, 45, 60])
                foreach (bool isLight in (bool[])[false, true])
                {
                    if (isLight && bank != 0) continue;
                    Mass mass = isLight ? aeroplane.MinimumMass : aeroplane.MaximumMass;
                    double knots = aeroplane.Configure(setting, mass).StallSpeed(Air.StandardSeaLevel, Angle.FromDegrees(bank)).Calibrated.Knots;
                    var row = new JsonObject { ["flaps"] = setting.Name };
                    if (isLight) row["mass"] = Kg(mass);
                    if (bank > 0) row["bank"] = Text(bank, 0, "deg");
                    row["speed"] = Kcas(knots);
                    yield return row;
                }
    }

    private static IEnumerable<JsonNode> Glides(Aeroplane aeroplane, ManualStyle style)
    {
        Configuration up = aeroplane.Configure(aeroplane.FlapsUp);
        double slowest = up.StallSpeed(Air.StandardSeaLevel).True.MetersPerSecond * (1 + 1e-9);
        double best = slowest;
        // Step by step and finer: not the search that the fit uses.
        for (double step = 0.1; step > 1e-6; step /= 4)
        {
            while (Ratio(up, best + step, style) > Ratio(up, best, style)) best += step;
            while (best - step > slowest && Ratio(up, best - step, style) > Ratio(up, best, style)) best -= step;
        }

        yield return new JsonObject
        {
            ["is"] = "best",
            ["propeller"] = style.GlidePropeller,
            ["speed"] = Kcas(Airspeed.FromTrue(Speed.FromMetersPerSecond(best), Air.StandardSeaLevel).Calibrated.Knots),
            ["ratio"] = Rounded(Ratio(up, best, style), 1),
        };
        Configuration full = aeroplane.Configure(aeroplane.FullFlaps);
        double knots = Math.Round(1.3 * full.StallSpeed(Air.StandardSeaLevel).Calibrated.Knots);
        yield return new JsonObject
        {
            ["is"] = "at this speed",
            ["flaps"] = aeroplane.FullFlaps.Name,
            ["propeller"] = style.GlidePropeller,
            ["speed"] = Kcas(knots),
            ["ratio"] = Rounded(Ratio(full, Airspeed.FromCalibrated(Speed.FromKnots(knots), Air.StandardSeaLevel).True.MetersPerSecond, style), 1),
        };
    }

    /// <summary>By the library's public glide, whose thrust is the idling propeller's, the stopped one's, or none.</summary>
    private static double Ratio(Configuration configuration, double speed, ManualStyle style)
    {
        Airspeed airspeed = Airspeed.FromTrue(Speed.FromMetersPerSecond(speed), Air.StandardSeaLevel);
        Force thrust = style.GlidePropeller switch
        {
            "idling" => configuration.IdleThrust(airspeed)!.Value,
            "stopped" => Force.FromNewtons(-PropellerLaws.StoppedDrag(
                airspeed.DynamicPressure.Pascals, configuration.Aeroplane.Propeller.Diameter.Meters, style.StoppedDrag)),
            _ => Force.Zero,
        };
        return 1 / Math.Tan(configuration.Glide(airspeed, thrust).GlideAngle.Radians);
    }

    private static IEnumerable<JsonNode> Landings(Aeroplane aeroplane, ManualStyle style)
    {
        foreach (double feet in (double[])[0, 2000, 4000])
            foreach (double celsius in (double[])[0, 20, 40])
            {
                Air air = Air.AtTemperature(Length.FromFeet(feet), Temperature.FromDegreesCelsius(celsius));
                Outcome<LandingResult, LandingRefusal> landing = Landing.Fly(LandingSetup.For(aeroplane.Configure(aeroplane.FullFlaps), null, style.Pilot, air));
                if (!landing.Happened) continue;
                yield return new JsonObject
                {
                    ["pressureAltitude"] = Text(feet, 0, "ft"),
                    ["temperature"] = Text(celsius, 0, "C"),
                    ["groundRoll"] = Step((landing.Value.StopDistance - landing.Value.TouchdownDistance).Feet, 5, "ft"),
                    ["from50ft"] = Step(landing.Value.StopDistance.Feet, 5, "ft"),
                };
            }
    }

    private static JsonNode? Level(Configuration up, double knots)
    {
        Air air = Air.Standard(Length.FromFeet(2000));
        Airspeed airspeed = Airspeed.FromTrue(Speed.FromKnots(knots), air);
        if (up.EngineSpeedOnPath(airspeed, Angle.Zero) is not { } turning) return null;
        return new JsonObject
        {
            ["pressureAltitude"] = "2000 ft",
            ["engineSpeed"] = Step(turning.RevolutionsPerMinute, 10, "rpm"),
            ["speed"] = Text(knots, 0, "KTAS"),
        };
    }

    private static JsonNode? Climb(Configuration up, double feet)
    {
        Air air = Air.Standard(Length.FromFeet(feet));
        double knots = Math.Round(1.4 * up.StallSpeed(air).Calibrated.Knots);
        double? rate = -up.ClimbAtFullThrottle(Airspeed.FromCalibrated(Speed.FromKnots(knots), air))?.SinkRate.FeetPerMinute;
        if (rate is not > 30) return null;
        return new JsonObject { ["pressureAltitude"] = Text(feet, 0, "ft"), ["speed"] = Kcas(knots), ["rate"] = Step(rate.Value, 10, "ft/min") };
    }

    private static string Kg(Mass mass) => Text(mass.Kilograms, 0, "kg");

    private static string Kcas(double knots) => Text(knots, 0, "KCAS");

    private static string Step(double value, double step, string unit) => Text(Math.Round(value / step) * step, 0, unit);

    private static JsonNode Rounded(double value, int decimals) => JsonNode.Parse(Number(value, decimals))!;

    private static string Text(double value, int decimals, string unit) => $"{Number(value, decimals)} {unit}";

    private static string Number(double value, int decimals) =>
        (Math.Round(value, decimals) + 0.0).ToString(decimals == 1 ? "0.0" : decimals == 0 ? "0" : "0.###", CultureInfo.InvariantCulture);
}
