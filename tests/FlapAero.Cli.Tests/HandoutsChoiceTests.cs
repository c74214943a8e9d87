using System.Text.RegularExpressions;

namespace FlapAero.Cli.Tests;

/// <summary>Editions, seeds, sheets, aeroplanes, PDFs: what is asked for is what comes out.</summary>
[Trait("Speed", "slow")]
public sealed partial class HandoutsChoiceTests : IDisposable
{
    private const string Problem = """
        var knots = lesson.Draw(1).Between(40, 90);
        lesson.Problem("A sum", question: $"Fly at {knots + 0:0} kt for two hours. How far?", hint: $"Time and speed.", answer: Length.FromNauticalMiles(2.0 * knots + 0.37), tolerance: Length.FromNauticalMiles(0.1), solution: $"Twice {knots + 0:0}.")
        """;

    private readonly HandoutsFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Handouts_SeveralSheets_DifferAndStayTheSameForTheSameSeed()
    {
        Put(Problem);

        Assert.Equal(0, await _folder.RunAsync("--sheets", "3", "--seed", "7"));
        string[] three = [.. Enumerable.Range(1, 3).Select(Question)];
        Assert.Equal(3, three.Distinct().Count());
        Assert.All(Enumerable.Range(1, 3), n => Assert.Contains(FormattableString.Invariant($"01-turn.sheet-{n}.key.html"), _folder.Names()));
        string page = Read("01-turn.html");

        Assert.Equal(0, await _folder.RunAsync("--sheets", "2", "--seed", "7", "--fresh", "--out", "again"));
        Assert.Equal(three[..2], Enumerable.Range(1, 2).Select(n => Words(Path.Combine(_folder.Root, "again", FormattableString.Invariant($"01-turn.sheet-{n}.html")))));
        Assert.Equal(page, File.ReadAllText(Path.Combine(_folder.Root, "again", "01-turn.html")));
    }

    [Fact]
    public async Task Handouts_AnotherSeed_TakesAwayWhatWouldDisagreeAndSaysSo()
    {
        Put(Problem);
        await _folder.RunAsync("--seed", "7");
        File.WriteAllText(Path.Combine(_folder.Pages, "notes.txt"), "mine");
        File.AppendAllText(Path.Combine(_folder.Pages, "01-turn.instructor.html"), "<!-- mine, too -->");

        Assert.Equal(0, await _folder.RunAsync("--seed", "8", "--edition", "student", "sheets"));

        Assert.Contains("Removed, for they stem from another seed", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Contains("01-turn.key.html", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Equal(
            ["01-turn.html", "01-turn.instructor.html", "01-turn.sheet-1.html", "01-turn.sheet-1.key.html", "index.html", "notes.txt"], _folder.Names());
        Assert.Equal("mine", Read("notes.txt"));
    }

    [Fact]
    public async Task Handouts_AnotherEditionOfTheSame_LeavesWhatAgrees()
    {
        Put(Problem);
        await _folder.RunAsync("--edition", "student");
        await _folder.RunAsync("--edition", "key");

        Assert.Equal(["01-turn.html", "01-turn.key.html", "index.html"], _folder.Names());
        Assert.DoesNotContain("Removed", _folder.Output.ToString(), StringComparison.Ordinal);
        Assert.Contains("unchanged", _folder.Output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_AeroplaneNamed_IsWhatTheLessonIsAbout()
    {
        Put("lesson.Say($\"It is the {lesson.Aeroplane.Name}.\")");
        string file = Path.Combine(_folder.Root, "ours.json");
        File.Copy(FlapAero.Tests.RepositoryRoot.Path("data/aeroplanes/trainer-l2.json"), file);
        string name = AeroplaneFile.Read(file).Name;

        Assert.Equal(0, await _folder.RunAsync());
        Assert.DoesNotContain(name, Read("01-turn.html"), StringComparison.Ordinal);
        Assert.Equal(0, await _folder.RunAsync("--aeroplane", "ours.json"));
        Assert.Contains($"It is the {name}", Read("01-turn.html"), StringComparison.Ordinal);
        Assert.DoesNotContain(_folder.Root, Read("01-turn.html"), StringComparison.Ordinal);
    }

    /// <summary>Another school, and another state of its file, is another page: the cache keeps them apart.</summary>
    [Fact]
    public async Task Handouts_SchoolBesideOrNamed_LessonFliesItsRules()
    {
        Put("lesson.Say($\"Fly {lesson.Multiples()} times the stall, {lesson.Rules.BankLimit:0} of bank.\")");
        string beside = Path.Combine(_folder.Root, "notebooks", School.FileName), named = Path.Combine(_folder.Root, "other.json");
        static string Json(double multiple, int bank) => FormattableString.Invariant(
            $$"""{ "name": "A", "rules": { "referenceMultiples": { "flapsUp": {{multiple}}, "fullFlaps": {{multiple}} }, "bankLimit": "{{bank}} deg" } }""");
        await File.WriteAllTextAsync(beside, Json(1.4, 15), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(named, Json(1.25, 25), TestContext.Current.CancellationToken);

        Assert.Equal(0, await _folder.RunAsync());
        Assert.Contains("Fly 1.4 times the stall, 15° of bank", Read("01-turn.html"), StringComparison.Ordinal);
        Assert.Equal(0, await _folder.RunAsync("--school", "other.json"));
        Assert.Contains("Fly 1.25 times the stall, 25° of bank", Read("01-turn.html"), StringComparison.Ordinal);
        Assert.Contains("school: School.Parse(", Read("01-turn.ipynb"), StringComparison.Ordinal);
        await File.WriteAllTextAsync(named, Json(3, 25), TestContext.Current.CancellationToken);
        Assert.Equal(1, await _folder.RunAsync("--school", "other.json"));
        Assert.Contains("other.json: 2 faults", _folder.Error.ToString(), StringComparison.Ordinal);
        File.Delete(beside);
        Assert.Equal(0, await _folder.RunAsync());
        Assert.Contains("Fly 1.3 times the stall, 30° of bank", Read("01-turn.html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handouts_AeroplaneWithFaults_ListsThemAndReturnsOne()
    {
        Put("1");
        string text = File.ReadAllText(FlapAero.Tests.RepositoryRoot.Path("data/aeroplanes/trainer-l2.json"));
        File.WriteAllText(Path.Combine(_folder.Root, "ours.json"), text.Replace("\"name\"", "\"nom\"", StringComparison.Ordinal));

        Assert.Equal(1, await _folder.RunAsync("--aeroplane", "ours.json"));
        Assert.Contains("ours.json", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Contains("nom", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, await _folder.RunAsync("--aeroplane", "none.json"));
        Assert.Contains("none.json", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder.Pages));
    }

    [Fact]
    public async Task Handouts_PdfWithoutABrowser_WritesPagesSaysWhatToDoAndReturnsOne()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "1");
        string? before = Environment.GetEnvironmentVariable("FLAPAERO_BROWSER");
        try
        {
            Environment.SetEnvironmentVariable("FLAPAERO_BROWSER", "/no/such/browser");
            Assert.Equal(1, await _folder.BeginAsync("--pdf"));
        }
        finally
        {
            Environment.SetEnvironmentVariable("FLAPAERO_BROWSER", before);
        }
        Assert.StartsWith("The pages are there, their PDFs are not. ", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Contains("/no/such/browser", _folder.Error.ToString(), StringComparison.Ordinal);
        Assert.Contains("01-turn.html", _folder.Names());
        Assert.DoesNotContain("01-turn.pdf", _folder.Names());
    }

    [Fact]
    public async Task Handouts_PdfTwice_GivesTheSameBytesBesideEachPage()
    {
        _folder.Put("01-turn.ipynb", 1, "A turn", "1");
        int code = await _folder.BeginAsync("--pdf");
        if (code != 0 && Environment.GetEnvironmentVariable("CI") != "true")
            Assert.Skip(_folder.Error.ToString());

        Assert.Equal("", _folder.Error.ToString());
        Assert.Equal(
            ["01-turn.html", "01-turn.instructor.html", "01-turn.instructor.pdf", "01-turn.ipynb", "01-turn.key.html", "01-turn.key.pdf", "01-turn.pdf", "index.html"],
            _folder.Names());
        Dictionary<string, string> first = _folder.Hashes();
        Assert.Equal(0, await _folder.RunAsync("--pdf", "--fresh"));
        Assert.Equal(first, _folder.Hashes());
    }

    private void Put(string step) => _folder.Put("01-turn.ipynb", 1, "A turn", step);

    private string Read(string name) => File.ReadAllText(Path.Combine(_folder.Pages, name));

    private string Question(int sheet) => Words(Path.Combine(_folder.Pages, FormattableString.Invariant($"01-turn.sheet-{sheet}.html")));

    private static string Words(string path) => FlyAt().Match(File.ReadAllText(path)).Value is { Length: > 0 } words ? words : throw new InvalidDataException(path);

    [GeneratedRegex("Fly at [0-9]+ kt")]
    private static partial Regex FlyAt();
}
