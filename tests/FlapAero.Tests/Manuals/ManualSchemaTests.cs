using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FlapAero.AeroplaneFiles;
using FlapAero.Manuals;
using Json.Schema;

namespace FlapAero.Tests.Manuals;

/// <summary>The manual's schema and its reader say the same about a file's form.</summary>
public sealed class ManualSchemaTests
{
    private static string Text { get; } = ManualText.Embedded("manual.schema.json");
    private static JsonNode Definitions { get; } = JsonNode.Parse(Text)!["$defs"]!;

    [Fact]
    public void Schema_Example_IsValid()
    {
        using JsonDocument document = JsonDocument.Parse(ManualText.Example);
        Assert.True(JsonSchema.FromText(Text).Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void Schema_Keys_AreTheReaders()
    {
        Agree("manual", ManualKeys.Manual);
        Agree("masses", ManualKeys.Masses);
        Agree("wing", ManualKeys.Wing);
        Agree("engine", ManualKeys.Engine);
        Agree("flapSetting", ManualKeys.Setting);
        Agree("airspeedCalibration", ManualKeys.Calibration);
        Agree("calibrationRow", FileKeys.Row);
        Agree("stallSpeed", ManualKeys.Stall);
        Agree("glide", ManualKeys.Glide);
        Agree("approachSpeed", ManualKeys.Approach);
        Agree("landing", ManualKeys.Landing);
        Agree("flapsUpLanding", ManualKeys.FlapsUpLanding);
        Agree("levelFlight", ManualKeys.LevelFlight);
        Agree("climb", ManualKeys.Climb);
        // 14 objects, 10 kinds of value and text.
        Assert.Equal(25, Definitions.AsObject().Count);
    }

    [Fact]
    public void Schema_Units_AreTheReaders()
    {
        Agree("mass", UnitSets.Masses.Names);
        Agree("length", UnitSets.Lengths.Names);
        Agree("area", UnitSets.Areas.Names);
        Agree("angle", UnitSets.Angles.Names);
        Agree("speed", UnitSets.Speeds.Names);
        Agree("airspeed", ManualUnits.Airspeeds.Names);
        Agree("rate", ManualUnits.Rates.Names);
        Agree("rotationalSpeed", UnitSets.RotationalSpeeds.Names);
        Agree("power", ManualUnits.Powers.Names);
        Agree("temperature", ManualUnits.Temperatures.Names);
    }

    private static void Agree(string definition, IReadOnlyList<FileKey> keys)
    {
        JsonNode part = Definitions[definition]!;
        Assert.Equal(keys.Select(key => key.Name), part["properties"]!.AsObject().Select(pair => pair.Key));
        Assert.Equal(
            keys.Where(key => !key.Optional).Select(key => key.Name).Order(StringComparer.Ordinal),
            part["required"]!.AsArray().Select(item => (string)item!).Order(StringComparer.Ordinal));
        Assert.False((bool)part["additionalProperties"]!);
    }

    private static void Agree(string definition, IEnumerable<string> units)
    {
        var pattern = new Regex((string)Definitions[definition]!["pattern"]!, RegexOptions.None, TimeSpan.FromSeconds(1));
        Assert.All(units, unit => Assert.Matches(pattern, $"12.5 {unit}"));
        Assert.Equal(units.Count(), ((string)Definitions[definition]!["pattern"]!).Split('|').Length);
    }
}
