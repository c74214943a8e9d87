using System.Text.Json.Nodes;
using FlapAero.Handouts.NotebookForm;

namespace FlapAero.Handouts.Tests.NotebookForm;

public sealed class NotebookCheckTests
{
    /// <summary>Each row: what is done to a sound notebook, what the message must say, whether it can be put right.</summary>
    private static readonly Dictionary<string, (Action<JsonObject> Break, string[] Words, bool CanBePutRight)> Faults = new()
    {
        ["outputs"] = (n => Outputs(n).Add(Stream("51.1 kt")), ["cell \"Setup\" (setup)", "stored outputs (1)"], true),
        ["count"] = (n => Cell(n, 1)["execution_count"] = 12, ["(setup)", "execution count 12", "null"], true),
        ["no count"] = (n => Cell(n, 1).Remove("execution_count"), ["(setup)", "no execution_count"], true),
        ["no outputs list"] = (n => Cell(n, 1).Remove("outputs"), ["(setup)", "no outputs list"], true),
        ["outputs of prose"] = (n => Cell(n, 2)["outputs"] = new JsonArray(), ["(why)", "\"outputs\"", "only code"], true),
        ["no id"] = (n => Cell(n, 2).Remove("id"), ["\"Why it is so\" (no id)", "\"why-it-is-so\""], true),
        ["drawn id"] = (n => Cell(n, 2)["id"] = "3f9a01bc", ["(3f9a01bc)", "at random", "\"why-it-is-so\""], true),
        ["id of a UUID"] = (n => Cell(n, 2)["id"] = "0a1b2c3d-0000-4000-8000-00000000000f", ["at random"], true),
        ["id with capitals"] = (n => Cell(n, 2)["id"] = "Why_1", ["\"Why_1\"", "small letters"], true),
        ["doubled id"] = (n => Cell(n, 2)["id"] = "setup", ["\"Why it is so\" (setup)", "of an earlier cell"], true),
        ["folded"] = (n => Meta(n, 1)["collapsed"] = true, ["(setup)", "\"collapsed\""], true),
        ["folded by nbformat"] = (n => Meta(n, 1)["jupyter"] = new JsonObject { ["outputs_hidden"] = true }, ["\"jupyter.outputs_hidden\""], true),
        ["timings"] = (n => Meta(n, 1)["execution"] = new JsonObject { ["iopub.status.busy"] = "2026-01-01T10:00:00Z" }, ["\"execution\""], true),
        ["trusted"] = (n => n["metadata"]!["trusted"] = true, ["\"trusted\""], true),
        ["widgets"] = (n => n["metadata"]!["widgets"] = new JsonObject(), ["\"widgets\""], true),
        ["older nbformat"] = (n => n["nbformat_minor"] = 4, ["nbformat 4.4", "4.5"], true),
        ["other nbformat"] = (n => n["nbformat"] = 3, ["nbformat 3.5", "4.5"], false),
        ["path in a source"] = (n => Cell(n, 2)["source"] = "See /home/ada/flap/notes.txt", ["(why)", "/home/ada/flap/notes.txt", "source", "by hand"], false),
        ["path in metadata"] = (n => Ours(n, 2)["title"] = "C:\\Users\\ada\\x", ["the machine's path C:\\Users\\ada\\x", "metadata"], false),
        ["address in a source"] = (n => Cell(n, 2)["source"] = "Open http://localhost:8888/tree", ["the host's address http://localhost:8888"], false),
        ["path in an output"] = (n => Outputs(n).Add(Stream("/tmp/kernel-1.json")), ["(setup)", "/tmp/kernel-1.json", "outputs"], true),
        ["address in an output"] = (n => Outputs(n).Add(Stream("probeAddresses: 172.17.0.2:2048")), ["172.17.0.2:2048", "outputs"], true),
        ["line ends in a source"] = (n => Cell(n, 2)["source"] = new JsonArray("a\r\n", "b"), ["(why)", "other than LF"], false),
        ["no role"] = (n => Ours(n, 2).Remove("role"), ["(why)", "no role"], false),
        ["more code than a person reads"] = (n => MakeCode(n, 2, string.Join('\n', Enumerable.Repeat("var a = 1;", 9))), ["(why)", "9 lines", "allowed are 8"], false),
        ["code wider than a page"] = (n => MakeCode(n, 2, "var a = 1;\nvar b = 2;" + new string(' ', 91)), ["(why)", "101 columns", "line 2", "allowed are 100"], false),
        ["numbers before prose"] = (
            n =>
            {
                MakeCode(n, 2, "var a =" + new string(' ', 92) + "1;\nlesson.Say($\"{a}\")", "explain");
                ((JsonArray)n["cells"]!).Add(JsonNode.Parse("""{"cell_type": "code", "id": "sum", "metadata": {"flapaero": {"role": "compute", "title": "Sum"}}, "source": "a + 1", "execution_count": null, "outputs": []}"""));
            },
            ["(why)", "101 columns"], false),
        ["kernel"] = (n => n["metadata"]!["kernelspec"]!["name"] = "python3", ["\"python3\""], false),
    };

    public static TheoryData<string> Names => [.. Faults.Keys];

    [Fact]
    public void Of_CommittedNotebooks_FindsNothing()
    {
        Assert.NotEmpty(StoredNotebooks.Committed);
        Assert.All(StoredNotebooks.Committed, notebook =>
        {
            NotebookCheck check = StoredNotebooks.Check(notebook.Text, notebook.Name);
            Assert.Empty(check.Faults.Select(fault => fault.Words));
            Assert.False(check.HasBetter);
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Of_OneFault_NamesItAndPutsRightOnlyWhatIsNotAPersons(string name)
    {
        (Action<JsonObject> @break, string[] words, bool canBePutRight) = Faults[name];
        JsonObject broken = Parse(StoredNotebooks.Sound);
        @break(broken);
        string text = StoredNotebooks.Stored(broken);

        NotebookCheck check = StoredNotebooks.Check(text);

        Assert.Contains(check.Faults, fault => words.Append(StoredNotebooks.Name).All(word => fault.Words.Contains(word, StringComparison.Ordinal)) && fault.CanBePutRight == canBePutRight);
        Assert.Equal(canBePutRight, check.HasBetter);
        Assert.Equal(canBePutRight ? 0 : check.Faults.Count, StoredNotebooks.Check(StoredNotebooks.PutRight(text)).Faults.Count);
    }

    [Fact]
    public void Of_SeveralFaults_ListsAllAtOnce()
    {
        JsonObject broken = Parse(StoredNotebooks.Sound);
        string[] names = ["outputs", "count", "doubled id", "trusted", "path in a source", "kernel"];
        foreach (string name in names)
            Faults[name].Break(broken);

        Assert.Equal(names.Length, StoredNotebooks.Check(StoredNotebooks.Stored(broken)).Faults.Count);
    }

    [Theory]
    [InlineData("\r\n", "line ends")]
    [InlineData("\n ", "laid out")]
    public void Of_LinesOtherwise_SaysSoAndPutsThemRight(string lineEnd, string words)
    {
        string text = StoredNotebooks.Sound.Replace("\n", lineEnd, StringComparison.Ordinal);

        Assert.Contains(words, Assert.Single(StoredNotebooks.Check(text).Faults).Words, StringComparison.Ordinal);
        Assert.Equal(StoredNotebooks.Sound, StoredNotebooks.PutRight(text));
    }

    [Theory]
    [InlineData("{", "valid JSON at line 1")]
    [InlineData("[]", "not a JSON object")]
    [InlineData("{\"cells\": [], \"cells\": []}", "doubled names")]
    [InlineData("{\"cells\": [{\"source\": \"\\ud83d\"}]}", "surrogate")]
    public void Of_NoNotebook_SaysSoAndLeavesItAlone(string text, string words)
    {
        NotebookCheck check = StoredNotebooks.Check(text);

        Assert.Contains(words, Assert.Single(check.Faults).Words, StringComparison.Ordinal);
        Assert.False(check.HasBetter);
        Assert.Equal(text, StoredNotebooks.PutRight(text));
    }

    [Fact]
    public void Of_BytesThatAreNoUtf8_SaysSo() =>
        Assert.Contains("not UTF-8", Assert.Single(NotebookCheck.Of("01-turn.ipynb", [0x7b, 0xff, 0x7d]).Faults).Words, StringComparison.Ordinal);

    [Fact]
    public void PutRight_NamesItDoesNotKnow_StayAsTheyWere()
    {
        JsonObject notebook = Parse(StoredNotebooks.Sound);
        Meta(notebook, 2)["author's"] = JsonNode.Parse("""{"zeta": 1.50e+02, "alpha": [-0, 1E400, 12345678901234567890123], "text": "°😀\u0007\u2028"}""");
        Outputs(notebook).Add(Stream("gone"));

        string text = StoredNotebooks.PutRight(StoredNotebooks.Stored(notebook));

        Assert.Contains("\"zeta\": 1.50e+02,\n", text, StringComparison.Ordinal);
        Assert.Contains("-0,\n", text, StringComparison.Ordinal);
        Assert.Contains("1E400,\n", text, StringComparison.Ordinal);
        Assert.Contains("12345678901234567890123\n", text, StringComparison.Ordinal);
        Assert.Contains("\"text\": \"°😀\\u0007\u2028\"", text, StringComparison.Ordinal);
        Assert.True(text.IndexOf("zeta", StringComparison.Ordinal) < text.IndexOf("alpha", StringComparison.Ordinal));
        Assert.DoesNotContain("gone", text, StringComparison.Ordinal);
    }

    [Fact]
    public void PutRight_IdOfAnAuthorsOwn_Stays()
    {
        JsonObject notebook = Parse(StoredNotebooks.Sound);
        Cell(notebook, 2)["id"] = "an-older-title";
        Ours(notebook, 2)["title"] = "Setup";
        notebook["cells"]!.AsArray().Add(Cell(notebook, 2).DeepClone());

        string text = StoredNotebooks.PutRight(StoredNotebooks.Stored(notebook));

        Assert.Equal(["opening", "setup", "an-older-title", "setup-2"], Parse(text)["cells"]!.AsArray().Select(cell => cell!["id"]!.GetValue<string>()));
    }

    [Theory]
    [InlineData("and/or, ft/min, $1/\\cos\\varphi$, 14 CFR 23.73, n:\\quad x, http://example.org/home/of/it, ../artifacts/lessons/x.dll, 1.2.3, ~5 kt, ~/")]
    [InlineData("$\\frac{1}{2}\\rho V^2$ and \\\\text{kt}\\\\ and bank:/flaps, version 1.0.0.beta, https://www.nasa.gov/tmp/x")]
    public void In_Prose_FindsNoTrace(string text) => Assert.Empty(MachineTraces.In(text));

    [Theory]
    [InlineData("#r \"/work/x/FlapAero.dll\"", "/work/x/FlapAero.dll")]
    [InlineData("(/Users/ada/x)", "/Users/ada/x")]
    [InlineData("D:\\lessons\\x.ipynb", "D:\\lessons\\x.ipynb")]
    [InlineData("\\\\server\\share\\x", "\\\\server\\share\\x")]
    [InlineData("file:///C:/x", "file:///C:/x")]
    [InlineData("~/.nuget/packages", "~/.nuget/packages")]
    [InlineData("at 192.168.0.17.", "192.168.0.17")]
    [InlineData("http://[::1]:8080/x", "http://[::1]:8080")]
    [InlineData("http://10.0.0.2:2048/", "10.0.0.2:2048")]
    public void In_Trace_GivesIt(string text, string trace) => Assert.EndsWith(" " + trace, Assert.Single(MachineTraces.In(text)), StringComparison.Ordinal);

    private static JsonObject Parse(string text) => JsonNode.Parse(text)!.AsObject();

    private static JsonObject Cell(JsonObject notebook, int number) => notebook["cells"]![number]!.AsObject();

    /// <summary>Makes a cell of prose one of code.</summary>
    private static void MakeCode(JsonObject notebook, int number, string source, string role = "compute")
    {
        JsonObject cell = Cell(notebook, number);
        cell["cell_type"] = "code";
        cell["source"] = source;
        cell["execution_count"] = null;
        cell["outputs"] = new JsonArray();
        Ours(notebook, number)["role"] = role;
    }

    private static JsonObject Meta(JsonObject notebook, int number) => Cell(notebook, number)["metadata"]!.AsObject();

    private static JsonObject Ours(JsonObject notebook, int number) => Meta(notebook, number)["flapaero"]!.AsObject();

    private static JsonArray Outputs(JsonObject notebook) => Cell(notebook, 1)["outputs"]!.AsArray();

    private static JsonObject Stream(string text) => new() { ["name"] = "stdout", ["output_type"] = "stream", ["text"] = new JsonArray(text) };
}
