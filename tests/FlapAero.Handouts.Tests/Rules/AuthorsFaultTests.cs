using System.Text.Json.Nodes;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Handouts.Rules;
using FlapAero.Handouts.Tests.NotebookForm;

namespace FlapAero.Handouts.Tests.Rules;

/// <summary>
/// What an author may do wrong, planted in a lesson of this repository: check tells it in words, with the lesson, the cell, the value and what is allowed,
/// without a run. The faults that need one are in the lessons' own tests.
/// </summary>
public sealed class AuthorsFaultTests
{
    private const string File = "05-power-on-the-approach.ipynb";

    private static readonly (string Name, string Text) Lesson = StoredNotebooks.Committed.Single(notebook => notebook.Name == File);

    /// <summary>Each row: what is done to the lesson, what the message must say beside the lesson's name.</summary>
    private static readonly Dictionary<string, (Action<JsonObject> Plant, string[] Words)> Faults = new()
    {
        ["too many words"] = (n => Append(n, "what-a-path-takes", "\n" + string.Join(' ', Enumerable.Repeat("word", 900))),
            ["words of prose for a student", "allowed are 900", "\"What a path takes\""]),
        ["too many lines"] = (n => Append(n, "what-each-setting-takes", "\n\n\n\n"), ["\"What each setting takes\"", "9 lines", "allowed are 8"]),
        ["too wide a line"] = (n => Append(n, "thrust-that-the-path-takes", "   // " + new string('x', 60)), ["\"Thrust that the path takes\"", "columns, line 3", "allowed are 100"]),
        ["a function of its own"] = (n => Append(n, "thrust-that-the-path-takes", "\nint Twice(int n) => 2 * n;"),
            ["\"Thrust that the path takes\"", "functions of its own: 1", "allowed are none"]),
        ["too many lambdas"] = (n => Append(n, "thrust-that-the-path-takes", "\nFunc<int, int> a = x => x, b = x => x, c = x => x;"),
            ["\"Thrust that the path takes\"", "3 tuples and lambdas", "allowed are 1"]),
        ["too many tuples"] = (n => Append(n, "thrust-that-the-path-takes", "\nvar (a, (b, c)) = (1, (2, 3));\nvar (d, e) = (1, 2);"),
            ["\"Thrust that the path takes\"", "2 tuples and lambdas", "allowed are 1"]),
        ["too long a check"] = (n => Append(n, "is-it-the-speed-of-least-thrust", new string('\n', 9)), ["\"Is it the speed of least thrust?\"", "14 lines", "are 12"]),
        ["too few minutes"] = (n => Ours(n, "and-the-tachometer")["minutes"] = 2, ["\"And the tachometer?\"", "has 2 minutes", "needed are 4"]),
        ["no lesson plan"] = (n => Remove(n, "lesson-plan"), ["0 instructor's cells", "\"plan\"", "exactly one"]),
        ["half a lesson plan"] = (n => Replace(n, "lesson-plan", "**Content.**", "Content:"), ["\"Lesson plan\"", "without Content", "**Name.**"]),
        ["no sources"] = (n => Remove(n, "sources"), ["0 cells of the role sources", "exactly 1"]),
        ["unknown source"] = (n => Replace(n, "sources", "[cfr-23]", "[cfr-2300]"), ["\"Sources\"", "[cfr-2300]", "docs/references.md", "cfr-23"]),
        ["typed number"] = (n => Append(n, "what-a-path-takes", " At 67 kt it is the same."), ["\"What a path takes\"", "\"67 kt\"", "{value}"]),
        ["typed reference multiple in words"] = (n => Append(n, "what-a-path-takes", " At 1.3 times the stall it is the same."), ["\"What a path takes\"", "\"1.3 times\"", "lesson.Multiples()"]),
        ["typed reference multiple in code"] = (n => Replace(n, "the-second-prediction-tested", "upThrust)", "upThrust * 1.3)"), ["\"The second prediction tested\"", "/ upThrust * 1.3\"", "up.ReferenceMultiple"]),
        ["typed multiple asked for"] = (n => Replace(n, "two-drags-flaps-up", "up.ReferenceSpeed(air, 1.1)", "up.ReferenceSpeed(air, 1.3)"), ["\"Two drags, flaps up\"", "typed", "up.ReferenceMultiple"]),
        ["typed number beside computed ones"] = (n => Replace(n, "nice-at-a-price", "Less drag", "At 2 300 rpm: less drag"), ["\"Nice, at a price\"", "300 rpm", "{value}"]),
        ["forgotten $"] = (n => Replace(n, "nice-at-a-price", "lesson.Say($", "lesson.Say("), ["\"Nice, at a price\"", "{fullTurns}", "a $ before"]),
        ["doubled backslash"] = (n => Replace(n, "below-the-reference-speed", "\\mathrm", "\\\\mathrm"), ["\"Below the reference speed\"", "\\\\mathrm", "needed is \\mathrm"]),
        ["doubled backslash in Markdown"] = (n => Replace(n, "what-a-path-takes", "\\gamma", "\\\\gamma"), ["\"What a path takes\"", "\\\\gamma", "needed is \\gamma"]),
        ["duplicate titles"] = (n => Ours(n, "two-drags-flaps-up")["title"] = "What a path takes", ["(two-drags-flaps-up)", "\"What a path takes\" of", "own"]),
        ["predict without commit"] = (n => Remove(n, "my-prediction-the-tachometer", "usual-guess-the-tachometer"), ["\"And the tachometer?\"", "no commit cell follows", "right behind it"]),
        ["commit without compare"] = (n => Replace(n, "the-third-prediction-tested", "lesson.Compare", "lesson.Same"),
            ["\"My prediction: the tachometer\"", "changeGuess", "0 later cells", "exactly 1"]),
        ["change without values"] = (n => Without(n, "a-headwind", "values", "label", "unit"), ["\"A headwind\"", "0 \"values\"", "4 to 9"]),
        ["check without answer"] = (n => Remove(n, "my-speed-of-least-thrust"), ["\"Is it the speed of least thrust?\"", "Is it the right engine speed?", "an answer cell right before it"]),
        ["check of another variable"] = (n => Replace(n, "is-it-the-speed-of-least-thrust", "mySpeed", "least"), ["\"Is it the speed of least thrust?\"", "mySpeed in lesson.Check"]),
        ["setup changed"] = (n => Append(n, "setup", ";"), ["\"Setup\"", "exactly these lines"]),
        ["wrong order"] = (n => Move(n, "read-it-off", before: "and-the-tachometer"), ["\"And the tachometer?\"", "comes after cell \"Read it off\"", "the order is"]),
        ["no caution"] = (n => Replace(n, "power-on-the-approach", "Never fly by its numbers", "Enjoy"), ["\"Power on the approach\"", "the caution", "Never fly by its numbers"]),
        ["too few problems"] = (n => Remove(n, "the-weight-helps", "the-same-recipe-lighter"), ["4 cells of the role problem", "at least 5"]),
    };

    public static TheoryData<string> Names => [.. Faults.Keys];

    [Theory, MemberData(nameof(Names))]
    public void Of_PlantedFault_IsToldWithItsPlaceAndWhatIsAllowed(string name)
    {
        (Action<JsonObject> plant, string[] words) = Faults[name];
        JsonObject broken = JsonNode.Parse(Lesson.Text)!.AsObject();
        plant(broken);

        string[] told = Told(broken);

        Assert.True(told.Any(line => words.Append(File).All(word => line.Contains(word, StringComparison.Ordinal))), $"{name} is not told: {string.Join('\n', told)}");
        Assert.All(told, line => Assert.DoesNotContain('\uFFFC', line));
    }

    [Fact]
    public void Of_SeveralFaults_AreToldAtOnce()
    {
        JsonObject broken = JsonNode.Parse(Lesson.Text)!.AsObject();
        string[] names = ["too many lines", "unknown source", "typed number", "forgotten $", "duplicate titles", "setup changed", "no caution"];
        foreach (string name in names)
            Faults[name].Plant(broken);

        string[] told = Told(broken);

        Assert.All(names, name => Assert.Contains(told, line => Faults[name].Words.All(word => line.Contains(word, StringComparison.Ordinal))));
    }

    [Fact]
    public void Known_Keys_AreThoseOfTheReferences()
    {
        Assert.Contains("anderson-itf", SourceKeys.Known);
        Assert.True(SourceKeys.Known.Count > 10);
    }

    private static string[] Told(JsonObject notebook) => [.. StoredNotebooks.Check(StoredNotebooks.Stored(notebook), File).Faults.Select(fault => fault.Words)];

    private static JsonObject Cell(JsonObject notebook, string id) => StoredForm.CellsOf(notebook).Single(cell => cell["id"]!.GetValue<string>() == id);

    private static JsonObject Ours(JsonObject notebook, string id) => Cell(notebook, id)["metadata"]!["flapaero"]!.AsObject();

    private static void Append(JsonObject notebook, string id, string text) => Cell(notebook, id)["source"] = StoredForm.TextOf(Cell(notebook, id)["source"]) + text;

    private static void Replace(JsonObject notebook, string id, string old, string text)
    {
        string source = StoredForm.TextOf(Cell(notebook, id)["source"])!;
        Assert.Contains(old, source, StringComparison.Ordinal);
        Cell(notebook, id)["source"] = source.Replace(old, text, StringComparison.Ordinal);
    }

    private static void Remove(JsonObject notebook, params string[] ids)
    {
        foreach (string id in ids)
            notebook["cells"]!.AsArray().Remove(Cell(notebook, id));
    }

    private static void Without(JsonObject notebook, string id, params string[] names)
    {
        foreach (string name in names)
            Ours(notebook, id).Remove(name);
    }

    private static void Move(JsonObject notebook, string id, string before)
    {
        JsonArray cells = notebook["cells"]!.AsArray();
        JsonObject cell = Cell(notebook, id);
        cells.Remove(cell);
        cells.Insert(cells.IndexOf(Cell(notebook, before)), cell);
    }
}
