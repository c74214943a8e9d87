using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlapAero.Explorer;
using FlapAero.Handouts.InPage;
using FlapAero.Notebooks;
using Microsoft.CodeAnalysis;
using UnitsNet;

namespace FlapAero.Handouts.Tests.InPage;

/// <summary>What a reader is told while writing a cell. The place is marked by "|".</summary>
public sealed class NamesAtAPlaceTests
{
    private static readonly MetadataReference[] References =
    [
        .. new[] { "System.Private.CoreLib", "System.Runtime", "System.Linq", "System.Collections", "netstandard" }
            .Select(name => Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, name + ".dll"))
            .Concat(new[] { typeof(Aeroplane), typeof(Lesson), typeof(Speed) }.Select(type => type.Assembly.Location))
            .Select(file => MetadataReference.CreateFromFile(file)),
    ];

    private static readonly byte[] Docs = DocTexts.ToJson();

    private readonly CellNames _names;

    public NamesAtAPlaceTests()
    {
        var chain = new CellChain();
        foreach (MetadataReference reference in References)
            chain.Refer(reference);
        chain.Keep(chain.Read("using FlapAero; using UnitsNet;\nSpeed approach = Speed.FromKnots(65);\nint Twice(int n) => 2 * n;"));
        _names = new CellNames(chain);
        _names.Learn(Docs);
    }

    [Theory]
    [InlineData("app|", "approach", "variable")]
    [InlineData("Tw|ice(3)", "Twice", "method")]
    [InlineData("approach.|", "Knots", "value")]
    [InlineData("approach.Kno|\nvar other = 2;", "Knots", "value")]
    [InlineData("Speed.|", "FromKnots", "method")]
    [InlineData("DemoAeroplanes.|", "TrainerH4", "value")]
    [InlineData("FlapAero.|", "Landing", "type")]
    [InlineData("new[] { 1, 2 }.Sel|", "Select", "method")]
    [InlineData("string? s = null;\ns?.|", "Length", "value")]
    [InlineData("Length? height = null;\nheight?.|", "Feet", "value")]
    [InlineData("var wide = 2;\nwi|", "wide", "variable")]
    [InlineData("Landing.Fly(|)", "conditions", "argument")]
    [InlineData("Landing.Fly(null, c|)", "conditions", "argument")]
    [InlineData("#r \"nuget: FlapAero.Notebooks\"\napproach.|", "Knots", "value")]
    [InlineData("$\"{approach.|}\"", "Knots", "value")]
    [InlineData("if (approach.Kno|\nvar other = 2;", "Knots", "value")]
    [InlineData("var a = app|\nvar other = 2;", "approach", "variable")]
    [InlineData("\"a\" + app|", "approach", "variable")]
    [InlineData("new[] { 1 }.Select(n => n.Com|)", "CompareTo", "method")]
    public void At_NameThatCanStandThere_IsTold(string code, string name, string kind) =>
        Assert.Contains((name, kind), Names(code));

    [Theory]
    [InlineData("approach.|", "FromKnots")]
    [InlineData("Speed.|", "Knots")]
    [InlineData("DemoAeroplanes.|", "approach")]
    [InlineData("approach.Nothing.|", "Knots")]
    [InlineData("app|", "Submission")]
    [InlineData("var a = later;\na|;\nvoid F() { int inside = 1; }", "inside")]
    public void At_NameThatCannotStandThere_IsNotTold(string code, string name) =>
        Assert.DoesNotContain(Names(code), told => told.Name.StartsWith(name, StringComparison.Ordinal));

    [Theory]
    [InlineData("\"app|roach\"")]
    [InlineData("// app|")]
    [InlineData("1 + 2|5")]
    [InlineData("/* a| */ 1")]
    [InlineData("$\"app|\"")]
    [InlineData("$\"{approach} app|\"")]
    [InlineData("\"app|")]
    public void At_InTextAndNumbers_NothingIsTold(string code) => Assert.Empty(Names(code));

    [Fact]
    public void At_PlaceBeyondTheCell_IsItsEnd()
    {
        Assert.Contains("\"approach\"", _names.At("app", 99), StringComparison.Ordinal);
        Assert.Contains("\"approach\"", _names.At("", -1), StringComparison.Ordinal);
    }

    [Fact]
    public void At_ReadersOwnNames_ComeFirstThenTheLessons()
    {
        string[] told = [.. Names("|").Select(n => n.Name)];

        Assert.True(Array.IndexOf(told, "approach") < Array.IndexOf(told, "Landing"));
        Assert.True(Array.IndexOf(told, "Landing") < Array.IndexOf(told, "Math"));
        Assert.Equal(told.Distinct(), told);
    }

    [Theory]
    [InlineData("Landing.|", "Fly", "Landing.Fly(", "setup: ")]
    [InlineData("DemoAeroplanes.|", "TrainerH4", "Aeroplane DemoAeroplanes.TrainerH4", "")]
    [InlineData("app|", "approach", "Speed approach", "")]
    public void Meaning_OfATold_IsHowItIsWrittenAndItsDocComment(string code, string name, string written, string words)
    {
        Names(code);

        JsonNode meaning = JsonNode.Parse(_names.Meaning(name))!;

        Assert.Contains(written, (string)meaning["code"]!, StringComparison.Ordinal);
        Assert.Contains(words, (string)meaning["words"]!, StringComparison.Ordinal);
        Assert.Equal(name == "approach", ((string)meaning["words"]!).Length == 0);
        Assert.DoesNotContain("<", (string)meaning["words"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void Meaning_OfANameThatWasNotTold_IsEmpty() =>
        Assert.Equal("", (string)JsonNode.Parse(_names.Meaning("Nothing"))!["code"]!);

    [Fact]
    public void DocTexts_PublicTypesOfTheLibrary_AreThereInPlainWords()
    {
        IReadOnlyDictionary<string, string> texts = DocTexts.All();

        foreach (Type type in new[] { typeof(Aeroplane), typeof(Lesson), typeof(Charts.Palette) }.SelectMany(t => t.Assembly.GetExportedTypes()).Where(t => !t.IsNested && !t.IsGenericType))
            Assert.True(texts.ContainsKey("T:" + type.FullName), type.FullName);
        Assert.DoesNotContain(texts, t => t.Value.Length == 0 || t.Value.Contains("cref", StringComparison.Ordinal) || t.Value.Contains("  ", StringComparison.Ordinal));
        Assert.Equal(texts, JsonSerializer.Deserialize<Dictionary<string, string>>(Encoding.UTF8.GetString(DocTexts.ToJson())));
    }

    private List<(string Name, string Kind)> Names(string marked)
    {
        int place = marked.IndexOf('|', StringComparison.Ordinal);
        JsonNode told = JsonNode.Parse(_names.At(marked.Remove(place, 1), place))!;
        return [.. told["names"]!.AsArray().Select(n => ((string)n![0]!, (string)n[1]!))];
    }
}
