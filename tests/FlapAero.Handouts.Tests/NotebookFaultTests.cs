using System.Text.Json.Nodes;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Tests;

public sealed class NotebookFaultTests
{
    /// <summary>Each row: what is done to a sound notebook, and what the message must say.</summary>
    private static readonly Dictionary<string, (Action<NotebookText> Break, string[] Words)> Faults = new()
    {
        ["missing role"] = (n => Ours(n, 2).Remove("role"), ["cell \"Why it is so\" (why)", "no role", "opening, setup, scenario"]),
        ["unknown role"] = (n => Ours(n, 2)["role"] = "guess", ["cell \"Why it is so\" (why)", "\"guess\"", "predict, commit, compute"]),
        ["no title"] = (n => Ours(n, 2).Remove("title"), ["cell 3 (why)", "no title"]),
        ["unknown metadata"] = (n => Ours(n, 2)["colour"] = "red", ["\"colour\"", "allows role, title"]),
        ["two openings"] = (n => n.Markdown("opening", "again", "Again", "# A turn to final"), ["(again)", "second opening"]),
        ["no opening"] = (n => n.Cells.RemoveAt(0), ["no opening"]),
        ["opening not first"] = (n => Move(n, 0), ["(opening)", "not the first cell"]),
        ["wrong top heading"] = (n => n.Cells[0]!["source"] = "# Another", ["(opening)", "Another", "\"A turn to final\""]),
        ["top heading elsewhere"] = (n => n.Cells[2]!["source"] = "# Big", ["(why)", "\"# Big\"", "start at ##"]),
        ["no setup"] = (n => n.Cells.RemoveAt(1), ["no setup"]),
        ["setup after code"] = (n => n.Cells.Insert(1, Code("compute", "early").Cells[0]!.DeepClone()), ["(early)", "first code cell", "setup"]),
        ["other setup"] = (n => n.Cells[1]!["source"] = Lesson.SetupCell + " // faster", ["\"Setup\" (setup)", "does not begin as every lesson does", "var lesson = Lesson.Begin(); lesson"]),
        ["two setups"] = (n => n.Code("setup", "again", "Again", "1"), ["(again)", "second setup"]),
        ["stored outputs"] = (n => n.Cells[1]!["outputs"]!.AsArray().Add(new JsonObject()), ["(setup)", "stored outputs"]),
        ["execution count"] = (n => n.Cells[1]!["execution_count"] = 3, ["(setup)", "execution_count 3", "null"]),
        ["duplicate id"] = (n => n.Cells[2]!["id"] = "setup", ["\"Why it is so\"", "\"setup\"", "earlier cell"]),
        ["bad id"] = (n => n.Cells[2]!["id"] = "a b", ["\"a b\"", "letters, digits"]),
        ["markdown where code is due"] = (n => n.Markdown("compute", "c", "C", "x"), ["(c)", "is markdown", "allows code"]),
        ["code where markdown is due"] = (n => n.Code("sources", "s", "S", "1"), ["(s)", "is code", "allows markdown"]),
        ["raw cell"] = (n => n.Cells[2]!["cell_type"] = "raw", ["(why)", "\"raw\"", "code and markdown"]),
        ["empty cell"] = (n => n.Cells[2]!["source"] = " ", ["(why)", "is empty"]),
        ["commit without label"] = (n => n.Code("commit", "c", "C", "var g = 0;", unit: "kt"), ["(c)", "no \"label\"", "label, unit"]),
        ["commit without unit"] = (n => n.Code("commit", "c", "C", "var g = 0;", label: "g"), ["(c)", "no \"unit\""]),
        ["answer without student"] = (n => n.Code("answer", "a", "A", "1", "a", "kt"), ["(a)", "no \"student\""]),
        ["values without label"] = (n => Change(n, "var n = 2;", "1 2 3").Remove("label"), ["(c)", "no \"label\"", "label, unit, values"]),
        ["values that fall"] = (n => Change(n, "var n = 2;", "1 3 2"), ["(c)", "\"1 3 2\"", "3 to 9 rising numbers"]),
        ["values that are words"] = (n => Change(n, "var n = 2;", "one 2 3"), ["(c)", "\"one 2 3\"", "numbers"]),
        ["values without its own"] = (n => Change(n, "var n = 2.5;", "1 2 3"), ["(c)", "\"1 2 3\"", "its own number 2.5"]),
        ["two numbers to change"] = (n => Change(n, "var n = 2 * 3;", "1 2 3"), ["(c)", "2 numbers in its first statement"]),
        ["values elsewhere"] = (n => Ours(n, 2)["values"] = "1 2 3", ["\"values\"", "allows role, title"]),
        ["nbformat"] = (n => n.Root["nbformat_minor"] = 4, ["nbformat 4.4", "4.5"]),
        ["kernel"] = (n => n.Root["metadata"]!["kernelspec"]!["name"] = "python3", ["\"python3\"", "\"flapaero-csharp\""]),
        ["language"] = (n => n.Root["metadata"]!["language_info"]!["name"] = "F#", ["\"F#\"", "\"C#\""]),
        ["no facts"] = (n => n.Root["metadata"]!.AsObject().Remove("flapaero"), ["no \"flapaero\" object"]),
        ["minutes"] = (n => n.Facts["minutes"] = 0, ["\"minutes\": 0", "1 to 600"]),
        ["no summary"] = (n => n.Facts["summary"] = "", ["\"summary\": \"\"", "one line"]),
        ["number"] = (n => n.Facts["lesson"] = -1, ["\"lesson\": -1", "0 to 99"]),
        ["another number"] = (n => n.Facts["lesson"] = 2, ["lesson 2", "says 01"]),
        ["no cells"] = (n => n.Cells.Clear(), ["no cells"]),
    };

    public static TheoryData<string> Names => [.. Faults.Keys];

    [Fact]
    public void Parse_SoundNotebook_GivesItsCells()
    {
        LessonNotebook notebook = LessonNotebook.Parse("01-turn.ipynb", NotebookText.Sound().ToString());

        Assert.Equal(["opening", "setup", "why"], notebook.Cells.Select(c => c.Id));
        Assert.Equal((1, "A turn to final", "turn", 40), (notebook.Number, notebook.Title, notebook.Slug, notebook.Minutes));
    }

    [Fact]
    public void Parse_NumberZero_IsALessonToo() =>
        Assert.Equal(0, LessonNotebook.Parse("00-start.ipynb", NotebookText.Sound(lesson: 0).ToString()).Number);

    [Theory]
    [MemberData(nameof(Names))]
    public void Parse_OneFault_NamesNotebookPlaceAndWhatIsAllowed(string fault)
    {
        NotebookText notebook = NotebookText.Sound();
        Faults[fault].Break(notebook);

        string message = Assert.Throws<HandoutException>(() => LessonNotebook.Parse("01-turn.ipynb", notebook.ToString())).Message;

        Assert.Contains("01-turn.ipynb", message, StringComparison.Ordinal);
        Assert.All(Faults[fault].Words, word => Assert.Contains(word, message, StringComparison.Ordinal));
    }

    [Fact]
    public void Parse_SeveralFaults_ListsAllAtOnce()
    {
        NotebookText notebook = NotebookText.Sound();
        foreach (string fault in new[] { "unknown role", "stored outputs", "minutes", "kernel" })
            Faults[fault].Break(notebook);

        string message = Assert.Throws<HandoutException>(() => LessonNotebook.Parse("01-turn.ipynb", notebook.ToString())).Message;

        Assert.Equal(5, message.Split('\n').Length);
        Assert.Contains("break 4 rules", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{", "valid JSON at line 1")]
    [InlineData("[]", "not a JSON object")]
    [InlineData("{\"cells\": [], \"cells\": []}", "valid JSON")]
    public void Parse_NoNotebook_SaysSo(string json, string words) =>
        Assert.Contains(words, Assert.Throws<HandoutException>(() => LessonNotebook.Parse("01-turn.ipynb", json)).Message, StringComparison.Ordinal);

    [Fact]
    public void Parse_SourceAsLines_JoinsThem()
    {
        NotebookText notebook = NotebookText.Sound();
        notebook.Cells[2]!["source"] = new JsonArray("one\r\n", "two");

        Assert.Equal("one\ntwo", LessonNotebook.Parse("01-turn.ipynb", notebook.ToString()).Cells[2].Source);
    }

    [Fact]
    public void ReadFolder_FaultsInTwoNotebooks_ListsBoth()
    {
        NotebookText first = NotebookText.Sound();
        NotebookText second = NotebookText.Sound(lesson: 2);
        Faults["unknown role"].Break(first);
        Faults["stored outputs"].Break(second);
        using Folder folder = new Folder().With("01-turn.ipynb", first).With("02-turn.ipynb", second);

        string message = Assert.Throws<HandoutException>(() => LessonNotebook.ReadFolder(folder.Notebooks)).Message;

        Assert.Contains("01-turn.ipynb, cell", message, StringComparison.Ordinal);
        Assert.Contains("02-turn.ipynb, cell", message, StringComparison.Ordinal);
    }

    [Fact]
    public void ReadFolder_SameNumberTwice_NamesBoth()
    {
        using Folder folder = new Folder().With("01-turn.ipynb", NotebookText.Sound()).With("01-lull.ipynb", NotebookText.Sound());

        string message = Assert.Throws<HandoutException>(() => LessonNotebook.ReadFolder(folder.Notebooks)).Message;

        Assert.Contains("01-lull.ipynb and 01-turn.ipynb: both are lesson 1", message, StringComparison.Ordinal);
    }

    [Fact]
    public void ReadFolder_MissingOrEmpty_SaysWhich()
    {
        using var folder = new Folder();

        Assert.Contains("holds no notebook", Assert.Throws<HandoutException>(() => LessonNotebook.ReadFolder(folder.Notebooks)).Message, StringComparison.Ordinal);
        Assert.Contains("does not exist", Assert.Throws<HandoutException>(() => LessonNotebook.ReadFolder(folder.Output)).Message, StringComparison.Ordinal);
    }

    private static JsonObject Ours(NotebookText notebook, int cell) => notebook.Cells[cell]!["metadata"]!["flapaero"]!.AsObject();

    private static NotebookText Code(string role, string id) => new NotebookText().Code(role, id, "Early", "1");

    private static JsonObject Change(NotebookText notebook, string source, string values)
    {
        notebook.Code("change", "c", "C", source, label: "n", unit: "");
        var ours = (JsonObject)notebook.Cells[^1]!["metadata"]!["flapaero"]!;
        ours["values"] = values;
        return ours;
    }

    private static void Move(NotebookText notebook, int cell)
    {
        JsonNode moved = notebook.Cells[cell]!;
        notebook.Cells.RemoveAt(cell);
        notebook.Cells.Add(moved);
    }
}
