using System.Diagnostics;
using System.Security.Cryptography;
using System.Text.Json.Nodes;

namespace FlapAero.Cli.Tests;

/// <summary>A checkout in small: notebooks, a place for pages, a cache of its own; gone after the test.</summary>
internal sealed class HandoutsFolder : IDisposable
{
    private const string Kernel = "flapaero-csharp";

    private const string Setup = "#r \"../artifacts/lessons/FlapAero.Notebooks.dll\"\n"
        + "using FlapAero; using FlapAero.Charts; using FlapAero.Notebooks; using UnitsNet; var lesson = Lesson.Begin(); lesson";

    /// <summary>What the lessons of a folder put out when a test began with them, by the texts of their notebooks.</summary>
    private static readonly Dictionary<string, IReadOnlyDictionary<string, byte[]>> Begun = [];

    public HandoutsFolder()
    {
        Directory.CreateDirectory(Path.Combine(Root, "notebooks"));
        File.WriteAllText(Path.Combine(Root, "FlapAero.sln"), "");
    }

    public string Root { get; } = Directory.CreateTempSubdirectory("flapaero-cli-").FullName;

    public StringWriter Output { get; } = new() { NewLine = "\n" };

    public StringWriter Error { get; } = new() { NewLine = "\n" };

    public string Pages => Path.Combine(Root, "artifacts", "handouts");

    public string Cache => Path.Combine(Root, "artifacts", "cache");

    public void Dispose()
    {
        Directory.Delete(Root, recursive: true);
        Output.Dispose();
        Error.Dispose();
    }

    /// <summary>Calls the command in this process; only what it says this time is in its outputs afterwards.</summary>
    public Task<int> RunAsync(params string[] arguments)
    {
        Output.GetStringBuilder().Clear();
        Error.GetStringBuilder().Clear();
        return CommandLine.RunAsync(["handouts", .. arguments], Output, Error, Root, TestContext.Current.CancellationToken);
    }

    /// <summary>
    /// As <see cref="RunAsync"/>, for the pages that a test begins with: lessons that another test began with are in the cache already.
    /// A cold kernel takes two seconds, and what it puts out is not what such a test is about.
    /// </summary>
    public async Task<int> BeginAsync(params string[] arguments)
    {
        string notebooks = string.Join('\n', Directory.GetFiles(Path.Combine(Root, "notebooks")).Order(StringComparer.Ordinal).Select(File.ReadAllText));
        Directory.CreateDirectory(Cache);
        foreach ((string name, byte[] run) in Begun.GetValueOrDefault(notebooks, new Dictionary<string, byte[]>()))
            await File.WriteAllBytesAsync(Path.Combine(Cache, name), run, TestContext.Current.CancellationToken);
        int code = await RunAsync(arguments);
        Begun[notebooks] = Directory.GetFiles(Cache, "*.run").ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes);
        return code;
    }

    /// <summary>Starts the command in a process of its own, behind a shell's or a tool's own words where there are any.</summary>
    public Process Start(string[] before, params string[] arguments)
    {
        var call = LessonKernelCommand.ToCall();
        string[] words = [.. before, call.Program, .. call.Arguments.SkipLast(1), "handouts", .. arguments];
        var start = new ProcessStartInfo(words[0], words[1..])
        {
            WorkingDirectory = Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            // The runtime maps its code twice through a large file, which a limit on files would forbid.
            Environment = { ["DOTNET_EnableWriteXorExecute"] = "0" },
        };
        return Process.Start(start)!;
    }

    public string[] Names(string? folder = null) => [.. Directory.GetFiles(folder ?? Pages).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    /// <summary>The hash of every page.</summary>
    public Dictionary<string, string> Hashes(string? folder = null) => Directory.GetFiles(folder ?? Pages)
        .ToDictionary(f => Path.GetFileName(f), f => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f))));

    /// <summary>Puts a lesson, a cell a step, into the folder of notebooks.</summary>
    public void Put(string name, int number, string title, params string[] steps) => PutInto("notebooks", name, number, title, steps);

    /// <summary>Puts a lesson into another folder of notebooks.</summary>
    public void PutInto(string folder, string name, int number, string title, params string[] steps)
    {
        var cells = new JsonArray
        {
            Cell("markdown", "opening", "opening", "Opening", $"# {title}"),
            Cell("code", "setup", "setup", "Setup", Setup),
        };
        for (int n = 1; n <= steps.Length; n++)
            cells.Add(Cell("code", steps[n - 1].Contains("lesson.Problem(", StringComparison.Ordinal) ? "problem" : "compute",
                FormattableString.Invariant($"step-{n}"), FormattableString.Invariant($"Step {n}"), steps[n - 1]));
        var notebook = new JsonObject
        {
            ["cells"] = cells,
            ["metadata"] = new JsonObject
            {
                ["flapaero"] = new JsonObject { ["lesson"] = number, ["title"] = title, ["summary"] = "A small one.", ["minutes"] = 10 },
                ["kernelspec"] = new JsonObject { ["name"] = Kernel },
                ["language_info"] = new JsonObject { ["name"] = "C#" },
            },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        };
        Directory.CreateDirectory(Path.Combine(Root, folder));
        File.WriteAllText(Path.Combine(Root, folder, name), notebook.ToJsonString());
    }

    private static JsonObject Cell(string kind, string role, string id, string title, string source)
    {
        var cell = new JsonObject
        {
            ["cell_type"] = kind,
            ["id"] = id,
            ["metadata"] = new JsonObject { ["flapaero"] = new JsonObject { ["role"] = role, ["title"] = title } },
            ["source"] = source,
        };
        if (kind == "code")
        {
            cell["execution_count"] = null;
            cell["outputs"] = new JsonArray();
        }
        return cell;
    }
}
