using System.Text.Json;
using System.Text.Json.Nodes;
using FlapAero.AeroplaneFiles;
using Json.Schema;

namespace FlapAero.Tests.Aeroplanes;

/// <summary>The schema and the reader say the same about a file's form.</summary>
public sealed class SchemaTests
{
    private static string Text { get; } = AeroplaneText.Embedded("aeroplane.schema.json");
    private static JsonSchema Schema { get; } = JsonSchema.FromText(Text);
    private static JsonNode Definitions { get; } = JsonNode.Parse(Text)!["$defs"]!;

    public static TheoryData<string> Demos => [.. AeroplaneText.DemoFiles];

    public static TheoryData<string> Form => [.. BadFile.OfForm.Keys];

    public static TheoryData<string> Sense => [.. BadFile.OfSense.Keys];

    [Theory, MemberData(nameof(Demos))]
    public void Schema_DemoFile_IsValid(string name) => Assert.True(IsValid(AeroplaneText.Embedded(name)));

    [Theory, MemberData(nameof(Form))]
    public void Schema_FaultOfForm_IsRefusedAsByTheReader(string which) =>
        Assert.False(IsValid(AeroplaneText.Edited(BadFile.OfForm[which].Edit)));

    [Theory, MemberData(nameof(Sense))]
    public void Schema_FaultOfSense_IsTheReadersAlone(string which) =>
        // Past the range of a double no schema library need follow.
        Assert.True(which == "too large a number" || IsValid(AeroplaneText.Edited(BadFile.OfSense[which].Edit)));

    [Theory, MemberData(nameof(Demos))]
    public void Schema_AnyKeyGoneOrRenamed_IsRefused(string name)
    {
        foreach (string key in AeroplaneText.Keys(AeroplaneText.Good(name)).Where(key => key != "$schema"))
        {
            JsonNode without = AeroplaneText.Good(name);
            without.Remove(key);
            Assert.Equal(key is "crosswindLimit" or "tailLimitAttitude" or "propeller.fullThrottleTorque", IsValid(AeroplaneText.Written(without)));
            JsonNode renamed = AeroplaneText.Good(name);
            renamed.Rename(key, "somethingElse");
            Assert.False(IsValid(AeroplaneText.Written(renamed)), $"{key} renamed");
        }
    }

    [Fact]
    public void Schema_Keys_AreTheReaders()
    {
        Agree("aeroplane", FileKeys.Aeroplane);
        Agree("wing", FileKeys.Wing);
        Agree("masses", FileKeys.Masses);
        Agree("propeller", FileKeys.Propeller);
        Agree("closedThrottle", FileKeys.ClosedThrottle);
        Agree("propellerTable", FileKeys.PropellerTable);
        Agree("propellerRow", FileKeys.PropellerRow);
        Agree("flapSetting", FileKeys.FlapSetting);
        Agree("airspeedCalibration", FileKeys.Calibration);
        Agree("calibrationRow", FileKeys.Row);
        foreach (string value in (string[])["length", "area", "angle", "mass", "speed", "rotationalSpeed", "torque", "slope", "coefficient"])
            Agree(value, FileKeys.Value);
        // 10 parts, 9 kinds of value, origin and text: a definition that nobody compared would show here.
        Assert.Equal(21, Definitions.AsObject().Count);
    }

    [Fact]
    public void Schema_Units_AreTheReaders()
    {
        Agree("length", UnitSets.Lengths.Names);
        Agree("area", UnitSets.Areas.Names);
        Agree("angle", UnitSets.Angles.Names);
        Agree("mass", UnitSets.Masses.Names);
        Agree("speed", UnitSets.Speeds.Names);
        Agree("rotationalSpeed", UnitSets.RotationalSpeeds.Names);
        Agree("torque", UnitSets.Torques.Names);
        Agree("slope", UnitSets.Slopes.Names);
        Agree("coefficient", UnitSets.Coefficients.Names);
    }

    [Fact]
    public void Schema_Origin_IsTheReaders() =>
        Assert.Equal(FileKeys.OriginPattern, (string?)Definitions["origin"]!["pattern"]);

    private static bool IsValid(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static void Agree(string definition, IReadOnlyList<FileKey> keys)
    {
        JsonNode part = Definitions[definition]!;
        Assert.Equal(keys.Select(key => key.Name), part["properties"]!.AsObject().Select(pair => pair.Key));
        Assert.Equal(
            keys.Where(key => !key.Optional).Select(key => key.Name),
            part["required"]!.AsArray().Select(item => (string?)item));
        Assert.False((bool)part["additionalProperties"]!);
    }

    private static void Agree(string definition, IEnumerable<string> units) =>
        Assert.Equal(units, Definitions[definition]!["properties"]!["unit"]!["enum"]!.AsArray().Select(item => (string)item!));
}
