using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FlapAero.AeroplaneFiles;
using FlapAero.Manuals;
using FlapAero.Schools;
using Json.Schema;

namespace FlapAero.Tests.Schools;

/// <summary>The school's schema and its reader say the same about a file's form.</summary>
public sealed class SchoolSchemaTests
{
    private static string Text { get; } = SchoolText.Embedded("school.schema.json");

    /// <summary>Read once: a schema is registered under its name.</summary>
    private static JsonSchema Schema { get; } = JsonSchema.FromText(Text);

    private static JsonNode Definitions { get; } = JsonNode.Parse(Text)!["$defs"]!;

    [Theory]
    [InlineData("{ \"name\": \"A\" }")]
    [InlineData(null)]
    public void Schema_Example_IsValid(string? school)
    {
        using JsonDocument document = JsonDocument.Parse(school ?? SchoolText.Example);
        Assert.True(Schema.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void Schema_Keys_AreTheReaders()
    {
        Agree("school", SchoolKeys.School);
        Agree("aerodrome", SchoolKeys.Aerodrome);
        Agree("runway", SchoolKeys.Runway);
        Agree("landmark", SchoolKeys.Landmark);
        Agree("day", SchoolKeys.Day);
        Agree("rules", SchoolKeys.Rules);
        Agree("referenceMultiples", SchoolKeys.Multiples);
        Agree("gusts", SchoolKeys.Gusts);
        Agree("margin", SchoolKeys.Margin);
        Agree("surfaceFactor", SchoolKeys.SurfaceFactor);
        Agree("tolerances", SchoolKeys.Tolerances);
        Agree("circuit", SchoolKeys.Circuit);
        // 12 objects, 11 kinds of value and text.
        Assert.Equal(23, Definitions.AsObject().Count);
    }

    [Fact]
    public void Schema_Units_AreTheReaders()
    {
        Agree("length", UnitSets.Lengths.Names);
        Agree("distance", SchoolUnits.Distances.Names);
        Agree("angle", UnitSets.Angles.Names);
        Agree("speed", UnitSets.Speeds.Names);
        Agree("circuitSpeed", SchoolUnits.CircuitSpeeds.Names);
        Agree("slope", SchoolUnits.Slopes.Names);
        Agree("temperature", ManualUnits.Temperatures.Names);
        Agree("pressure", SchoolUnits.Pressures.Names);
        Assert.Equal(RunwaySurface.ByName.Keys, Definitions["surface"]!["enum"]!.AsArray().Select(item => (string)item!));
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
