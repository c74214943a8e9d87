using System.Text.Json.Nodes;
using FlapAero.Tests;
using UnitsNet;

namespace FlapAero.Charts.Tests.WhatIfs;

/// <summary>What the what-if page shows is what the library computes, and a setting that cannot be says why.</summary>
public sealed class WhatIfTests
{
    private static readonly WhatIf Model = new();

    [Fact]
    public void Land_TwoHundredRandomSettings_EqualsTheLibrary()
    {
        var random = new Random(20);
        int landed = 0, refused = 0;
        for (int i = 0; i < 200; i++)
        {
            JsonObject setting = Drawn(random);
            JsonObject answer = Land(setting);
            for (int side = 0; side < 2; side++)
            {
                Outcome<LandingResult, LandingRefusal>? expected = Fly(setting, side, out Configuration? configuration, out LandingSetup? landing);
                JsonNode? shown = answer["sides"]?[side];
                if (expected is not { Happened: true })
                {
                    refused++;
                    Assert.True(shown is null ? answer["faults"]!.AsArray().Count > 0 : ((string)shown["refusal"]!).Length > 20);
                    continue;
                }

                landed++;
                JsonNode numbers = shown!["numbers"]!;
                LandingResult result = expected.Value;
                Close(result.TouchdownDistance.Meters, numbers["touchdown"]);
                Close(result.NoseLowerDistance.Meters, numbers["noseDown"]);
                Close(result.StopDistance.Meters, numbers["stop"]);
                Close(result.StopTime.Seconds, numbers["time"]);
                Close(result.FlareHeight.Feet, numbers["roundOut"]);
                Close(result.TouchdownAirspeed.Knots, numbers["touchdownSpeed"]);
                Close(configuration!.StallSpeed(landing!.Air).Calibrated.Knots, numbers["stall"]);
                Close(configuration.ReferenceSpeed(landing.Air, MultipleOf(setting, configuration)).Calibrated.Knots, numbers["reference"]);
                Close(landing.Technique.ThresholdSpeed.Knots, numbers["approachTrue"]);
            }
        }

        Assert.True(landed > 200, $"{landed}");
        Assert.True(refused >= 10, $"{refused}");
    }

    [Fact]
    public void Land_DrawnPath_LiesOnTheLandingsOwnMoments()
    {
        foreach (double along in (double[])[-5, 0, 20])
        {
            JsonObject setting = new() { ["along"] = along };
            JsonArray drawn = Land(setting)["sides"]![0]!["path"]!.AsArray();
            (double X, double Y)[] path = [.. drawn.Chunk(2).Select(pair => ((double)pair[0]! / 100, (double)pair[1]! / 100))];
            LandingResult flown = Fly(setting, 0, out _, out _)!.Value;

            foreach (LandingPoint moment in flown.Trajectory.Where(p => p.Stage <= LandingStage.HoldOff))
            {
                int after = Math.Max(1, Array.FindIndex(path, p => p.X >= moment.Distance.Meters - 0.01));
                ((double x0, double y0), (double x1, double y1)) = (path[after - 1], path[after]);
                double share = x1 > x0 ? (moment.Distance.Meters - x0) / (x1 - x0) : 0;
                Assert.Equal(moment.Height.Meters, y0 + share * (y1 - y0), 0.15);
            }
        }
    }

    [Fact]
    public void Land_SeveralFaults_AreSaidAtOnceWithTheirRanges()
    {
        JsonArray faults = Land(new() { ["gust"] = 99, ["slope"] = "steep", ["surface"] = "custard", ["aeroplane"] = "Nobody's" })["faults"]!.AsArray();

        Assert.Equal(["aeroplane", "gust", "slope", "surface"], faults.Select(fault => (string)fault!["field"]!).Order());
        Assert.Contains("Allowed is 0\u00A0kt to 30\u00A0kt", (string)faults.First(fault => (string)fault!["field"]! == "gust")!["text"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void Land_MangledSettings_AnswerWithFaults()
    {
        var random = new Random(7);
        string good = Drawn(random).ToJsonString();
        for (int i = 0; i < 500; i++)
        {
            char[] text = good.ToCharArray();
            for (int j = 0; j < 3; j++) text[random.Next(text.Length)] = (char)random.Next(32, 127);
            JsonNode answer = JsonNode.Parse(Model.Land(new string(text)))!;
            Assert.True(answer["faults"] is not null ^ answer["sides"] is not null);
        }
    }

    [Fact]
    public void Land_MassOfAnotherAeroplane_SaysBetweenWhichItIsFlown()
    {
        JsonObject answer = Land(new() { ["mass"] = 2400 });

        Assert.Contains("flown between them", answer.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Land_MultipleOfOneFlapSetting_MovesThatSideAlone()
    {
        JsonArray usual = Land(new())["sides"]!.AsArray(), faster = Land(new() { ["multipleUp"] = 1.5 })["sides"]!.AsArray();

        Assert.Equal((double)usual[0]!["numbers"]!["stall"]! * 1.5, (double)faster[0]!["numbers"]!["reference"]!, 6);
        Assert.True((double)faster[0]!["numbers"]!["stop"]! > (double)usual[0]!["numbers"]!["stop"]! + 50);
        Assert.Equal(usual[1]!.ToJsonString(), faster[1]!.ToJsonString());
    }

    [Fact]
    public void Picture_NoseInAWind_ShowsThePathOverTheGroundAndTheNoseTurnedIntoTheWind()
    {
        JsonObject setting = new() { ["along"] = 15, ["across"] = 10 };
        JsonNode numbers = Land(setting)["sides"]![0]!["numbers"]!;
        double crab = double.RadiansToDegrees(Math.Asin(10 / ((double)numbers["approachTrue"]!
            * Math.Cos(Math.Asin((double)numbers["sinkOnPath"]! * 0.3048 / 60 * 3600 / 1852 / (double)numbers["approachTrue"]!)))));
        string still = Nose(new()), windy = Nose(setting), mirrored = Nose(new() { ["along"] = 15, ["across"] = -10 });

        Assert.Contains($"nose {(double)numbers["pitch"]!:+0.0;\u22120.0}°", windy, StringComparison.Ordinal);
        Assert.Contains($"The nose points {crab:0.0}° to the right.", windy, StringComparison.Ordinal);
        Assert.Contains($"The nose points {crab:0.0}° to the left.", mirrored, StringComparison.Ordinal);
        Assert.Equal(2, Nose(new() { ["across"] = 30 }).Split("data-part=\"runway\"").Length - 1);
        Assert.DoesNotContain("The nose points", still, StringComparison.Ordinal);
        Assert.DoesNotContain("still air", windy, StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_Circuit_DrawsBothFlapSettings()
    {
        string html = Picture(new() { ["across"] = 5 }, "circuit");

        Assert.Equal(2, html.Split("data-part=\"track\"").Length - 1);
    }

    [Fact]
    public void Help_PathSteeperThanTheGlide_OffersChangesThatLand()
    {
        JsonObject setting = new() { ["path"] = 7.5 };
        Assert.NotNull(Land(setting)["sides"]![0]!["refusal"]);

        JsonArray help = JsonNode.Parse(Model.Help(setting.ToJsonString()))!["help"]!.AsArray();

        Assert.NotEmpty(help);
        foreach (JsonNode? change in help)
        {
            JsonObject better = setting.DeepClone().AsObject();
            better[(string)change!["field"]!] = (double)change["value"]!;
            if ((string)change["field"]! == "cut") better["cutsWithRoundOut"] = false;
            Assert.All(Land(better)["sides"]!.AsArray(), side => Assert.NotNull(side!["path"]));
        }
    }

    [Fact]
    public void Take_AnAeroplanesFile_LandsWithIt()
    {
        string text = File.ReadAllText(Directory.GetFiles(RepositoryRoot.Path("data/aeroplanes"), "*.json").First(file => !file.EndsWith("schema.json", StringComparison.Ordinal)));
        string renamed = text.Replace("\"Trainer H4\"", "\"Our own\"", StringComparison.Ordinal).Replace("\"Trainer L2\"", "\"Our own\"", StringComparison.Ordinal);

        JsonNode taken = JsonNode.Parse(Model.Take("own.json", renamed))!;

        Assert.Equal("Our own", (string)taken["name"]!);
        Assert.All(Land(new() { ["aeroplane"] = "Our own" })["sides"]!.AsArray(), side => Assert.NotNull(side!["path"]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("{\"name\": 3}")]
    [InlineData("GIF89a\0\u0001")]
    public void Take_ABadFile_SaysWhy(string text) =>
        Assert.NotEmpty(JsonNode.Parse(Model.Take("bad.json", text))!["faults"]!.AsArray());

    [Fact]
    public void Spread_OneBatch_IsTheSameEachTimeAndFilled()
    {
        string setting = new JsonObject { ["along"] = 8, ["gust"] = 6 }.ToJsonString();

        string first = Model.Spread(setting, 3, 8);

        Assert.Equal(first, Model.Spread(setting, 3, 8));
        Assert.NotEqual(first, Model.Spread(setting, 4, 8));
        Assert.All(JsonNode.Parse(first)!["sides"]!.AsArray(), side =>
            Assert.Equal(8, side!["touchdown"]!.AsArray().Count + (int)side["refused"]!));
    }

    [Theory]
    [InlineData("nose")]
    [InlineData("side")]
    [InlineData("energy")]
    [InlineData("circuit")]
    public void Picture_UsualSetting_IsAFigureOfBothInTheUnitsChosen(string name)
    {
        string html = (string)JsonNode.Parse(Model.Picture("{\"along\": 8, \"across\": -4, \"units\": \"si\"}", name))!["html"]!;

        Assert.Contains("<svg", html, StringComparison.Ordinal);
        Assert.Contains("flaps up", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("\u00A0ft", html, StringComparison.Ordinal);
    }

    private static JsonObject Land(JsonObject setting) => JsonNode.Parse(Model.Land(setting.ToJsonString()))!.AsObject();

    private static void Close(double expected, JsonNode? shown) =>
        Assert.True(Math.Abs(expected - (double)shown!) <= 1e-9 * Math.Max(1, Math.Abs(expected)), $"{expected:R} and {shown}");

    private static JsonObject Drawn(Random random)
    {
        Aeroplane aeroplane = DemoAeroplanes.All[random.Next(2)];
        JsonObject setting = new() { ["aeroplane"] = aeroplane.Name };
        foreach (WhatIfField field in WhatIfField.All)
        {
            // Half of the way to each end: far enough for refusals, near enough for landings.
            double least = (field.Least + field.Usual) / 2, most = (field.Most + field.Usual) / 2;
            if (field.Key == "mass") (least, most) = (aeroplane.MinimumMass.Kilograms, aeroplane.MaximumMass.Kilograms);
            setting[field.Key] = least + random.NextDouble() * (most - least);
        }

        setting["first"] = random.Next(aeroplane.FlapSettings.Count);
        setting["second"] = random.Next(aeroplane.FlapSettings.Count);
        setting["cutsWithRoundOut"] = random.Next(2) == 0;
        setting["surface"] = RunwaySurface.ByName.Keys.Order().ElementAt(random.Next(RunwaySurface.ByName.Count));
        return setting;
    }

    private static string Nose(JsonObject setting) => Picture(setting, "nose");

    private static string Picture(JsonObject setting, string name) =>
        (string)JsonNode.Parse(Model.Picture(setting.ToJsonString(), name))!["html"]!;

    private static double MultipleOf(JsonObject setting, Configuration configuration)
    {
        IReadOnlyList<FlapSetting> all = configuration.Aeroplane.FlapSettings;
        string key = configuration.Flaps == all[0] ? "multipleUp" : configuration.Flaps == all[^1] ? "multipleFull" : "multiplePart";
        return (double?)setting[key] ?? 1.3;
    }

    /// <summary>The same landing put together by hand from the library's public parts.</summary>
    private static Outcome<LandingResult, LandingRefusal>? Fly(JsonObject setting, int side, out Configuration? configuration, out LandingSetup? landing)
    {
        double Of(string key) => setting[key] is { } given ? (double)given : key == "mass" ? DemoAeroplanes.TrainerH4.MaximumMass.Kilograms : WhatIfField.Of(key).Usual;
        (configuration, landing) = (null, null);
        try
        {
            Aeroplane aeroplane = DemoAeroplanes.All.First(one => one.Name == ((string?)setting["aeroplane"] ?? "Trainer H4"));
            int place = setting[side == 0 ? "first" : "second"] is { } at ? (int)at : side * (aeroplane.FlapSettings.Count - 1);
            configuration = aeroplane.Configure(aeroplane.FlapSettings[place], Mass.FromKilograms(Of("mass")));
            Air air = Air.AtTemperature(Length.FromFeet(Of("altitude")), Temperature.FromDegreesCelsius(Of("temperature")));
            Speed reference = configuration.ReferenceSpeed(air, MultipleOf(setting, configuration)).Calibrated;
            double forGusts = Math.Min(Of("gust") * Of("gustShare") / 100, Of("gustMost"));
            bool cuts = setting["cutsWithRoundOut"] is not { } with || (bool)with;
            landing = new LandingSetup
            {
                Aeroplane = LandingAeroplane.FromConfiguration(configuration, air, LandingPilot.Usual.TouchdownLiftFraction),
                Technique = new()
                {
                    ThresholdHeight = Length.FromFeet(Of("height")),
                    ThresholdSpeed = Airspeed.FromCalibrated(reference + Speed.FromKnots(forGusts + Of("speed")), air).True,
                    PathAngle = Angle.FromDegrees(Of("path")),
                    FlareTimeConstant = Duration.FromSeconds(Of("round")),
                    HoldOffHeight = LandingPilot.Usual.HoldOffHeight,
                    TouchdownLiftFraction = LandingPilot.Usual.TouchdownLiftFraction,
                    PowerCutHeight = cuts ? null : Length.FromFeet(Of("cut")),
                    PowerCutTime = LandingPilot.Usual.PowerCutTime,
                    NoseLowerSpeedFraction = LandingPilot.Usual.NoseLowerSpeedFraction,
                    BrakingShare = Of("braking") / 100,
                },
                Runway = new Runway { Slope = Of("slope") / 100, Surface = RunwaySurface.ByName[(string?)setting["surface"] ?? "paved"], LengthAvailable = Length.FromMeters(Of("length") - Of("displaced")) },
                Air = air,
                Headwind = Speed.FromKnots(Of("along")),
            };
            return Landing.Fly(landing, interval: Duration.FromSeconds(0.1));
        }
        catch (RefusedInputException)
        {
            return null;
        }
    }
}
