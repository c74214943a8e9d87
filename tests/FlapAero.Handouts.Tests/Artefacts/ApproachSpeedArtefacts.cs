using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>The tests that share one run of the lesson.</summary>
[CollectionDefinition]
public sealed class TestsOfArtefacts : ICollectionFixture<ApproachSpeedArtefacts>;

/// <summary>Everything that is made of the project's approach-speed lesson, from one run with three sheets.</summary>
public sealed class ApproachSpeedArtefacts : IAsyncLifetime
{
    public const string Stem = "04-approach-speed";
    public const string Student = Stem + ".html";
    public const string Instructor = Stem + ".instructor.html";
    public const string Key = Stem + ".key.html";
    public const string Sheet = Stem + ".sheet-2.html";
    public const string SheetKey = Stem + ".sheet-2.key.html";
    public const string Notebook = Stem + ".ipynb";
    public const string Index = "index.html";

    private static readonly int[] Seeds = [1, 4711, -20];

    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-").FullName;

    internal RanLesson Lesson { get; private set; } = null!;

    internal IReadOnlyList<Artefact> All { get; private set; } = [];

    public async ValueTask InitializeAsync()
    {
        using KernelTurn turn = await KernelTurn.TakeAsync();
        LessonNotebook notebook = LessonCopies.Named("approach-speed");
        using var kernel = new InteractiveKernel();
        var outputs = new Dictionary<string, IReadOnlyList<CellOutput>>();
        var changes = new Dictionary<string, IReadOnlyDictionary<string, IReadOnlyList<CellOutput>>>();
        foreach (LessonCell cell in notebook.Cells.Where(c => c.IsCode))
        {
            var values = new Dictionary<string, IReadOnlyList<CellOutput>>();
            foreach (ChangedNumber value in cell.Values.Where(v => !v.IsOwn))
                values[value.Text] = (await RunAsync(kernel, cell.Id, value.Source)).Outputs;
            changes[cell.Id] = values;
            outputs[cell.Id] = (await RunAsync(kernel, cell.Id, cell.Source)).Outputs;
        }
        var sheets = new List<RanSheet>();
        foreach (int seed in Seeds)
        {
            await RunAsync(kernel, "seed", $"lesson = Lesson.Begin(seed: {seed});");
            var problems = new Dictionary<string, IReadOnlyList<CellOutput>>();
            foreach (LessonCell cell in notebook.Cells.Where(c => c.Role == CellRole.Problem))
                problems[cell.Id] = (await RunAsync(kernel, cell.Id, cell.Source)).Outputs;
            sheets.Add(new RanSheet(sheets.Count + 1, seed, problems));
        }
        Lesson = new RanLesson(notebook, outputs) { Changes = changes, Sheets = sheets };
        using var mathematics = new Mathematics();
        All = LessonArtefacts.Of(Lesson, mathematics, ArtefactChoice.All);
        HashSet<string> names = [.. All.Select(a => a.Name), Stem + ".pdf"];
        All = [.. All, new Artefact(Index, IndexPage.ToHtml([notebook], names.Contains), true, true)];
        foreach (Artefact artefact in All)
            await File.WriteAllTextAsync(Path.Combine(_folder, artefact.Name), artefact.Content, TestContext.Current.CancellationToken);
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    public string Address(string name) => new Uri(Path.Combine(_folder, name)).AbsoluteUri;

    internal string Text(string name) => All.Single(a => a.Name == name).Content;

    /// <summary>A page without the scripts and styles that all pages share: some megabytes less to read for each test.</summary>
    internal string LightText(string name) => Regex.Replace(Text(name), "<(script|style)>.*?</\\1>", "", RegexOptions.Singleline);

    private static async Task<CellResult> RunAsync(InteractiveKernel kernel, string id, string code)
    {
        CellResult result = await kernel.RunAsync(code, TestContext.Current.CancellationToken);
        Assert.True(result.Failure is null, $"{id}: {result.Failure}");
        return result;
    }
}
