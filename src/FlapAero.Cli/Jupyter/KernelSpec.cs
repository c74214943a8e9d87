using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Cli.Jupyter;

/// <summary>
/// The project's own entry among the user's Jupyter kernels. It differs from the tool's own in that the kernel listens
/// on loopback alone, writes no address into notebooks, shows errors in words and says what is missing where it cannot start.
/// </summary>
internal sealed class KernelSpec
{
    public const string DisplayName = LessonNotebook.KernelDisplayName;

    private const string StartAssembly = "FlapAero.KernelStart.dll";

    /// <summary>Beside the start assembly: the runtime that it asks for is the one that the kernel's program asks for.</summary>
    private const string StartRuntime = "FlapAero.KernelStart.runtimeconfig.json";

    private const string SpecFile = "kernel.json";

    /// <summary>What the start assembly reads the folder from; it spells it likewise.</summary>
    private const string LessonFolderVariable = "FLAPAERO_LESSONS";

    /// <summary>
    /// The tool takes the first free port of its range and lets go of it for a moment: kernels that start together all
    /// take the same. In this range the system chooses the port, at random.
    /// </summary>
    private const string PortOfTheSystem = "0-0";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly string _kernels;

    public KernelSpec(string jupyterDataFolder)
    {
        _kernels = Path.Combine(jupyterDataFolder, "kernels");
        Folder = Path.Combine(_kernels, LessonNotebook.KernelName);
    }

    /// <summary>Where the entry is or would be.</summary>
    public string Folder { get; }

    private string SpecPath => Path.Combine(Folder, SpecFile);

    /// <summary>Writes the entry, over an earlier one of ours.</summary>
    /// <param name="tool">The kernel's program.</param>
    /// <param name="lessonAssemblies">The folder of what a notebook references; a student's notebook lies anywhere and finds it by this.</param>
    public void Install(KernelTool tool, string lessonAssemblies)
    {
        try
        {
            // What an earlier setup made is remembered, so that undoing the second undoes both.
            JsonArray made = FoldersMade() ?? [.. MissingFolders().Select(folder => JsonValue.Create(folder))];
            Directory.CreateDirectory(Folder);
            using (Stream assembly = Assembly.GetExecutingAssembly().GetManifestResourceStream(StartAssembly)!)
            using (FileStream file = File.Create(Path.Combine(Folder, StartAssembly)))
                assembly.CopyTo(file);
            File.WriteAllBytes(Path.Combine(Folder, StartRuntime), File.ReadAllBytes(Path.ChangeExtension(tool.Assembly, ".runtimeconfig.json")));
            File.WriteAllText(SpecPath, Spec(tool, lessonAssemblies, made).ToJsonString(Readable) + "\n");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SetupException($"Jupyter's folder {Folder} cannot be written: {e.Message}");
        }
    }

    /// <summary>Removes what <see cref="Install"/> made and nothing else.</summary>
    /// <returns>Whether there was anything.</returns>
    public bool Remove()
    {
        if (!File.Exists(SpecPath))
            return false;
        try
        {
            JsonArray made = FoldersMade() ?? [];
            File.Delete(SpecPath);
            File.Delete(Path.Combine(Folder, StartAssembly));
            File.Delete(Path.Combine(Folder, StartRuntime));
            foreach (string folder in made.Select(folder => folder!.GetValue<string>()))
                if (Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any())
                    Directory.Delete(folder);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SetupException($"Jupyter's folder {Folder} cannot be cleaned: {e.Message}");
        }
    }

    private JsonObject Spec(KernelTool tool, string lessonAssemblies, JsonArray made) => new()
    {
        ["argv"] = new JsonArray(
            Dotnet.Path, Path.Combine(Folder, StartAssembly), tool.Assembly, "jupyter", "--default-kernel", "csharp",
            "--http-local-only", "--http-port-range", PortOfTheSystem, "{connection_file}"),
        ["display_name"] = DisplayName,
        ["language"] = "C#",
        ["env"] = new JsonObject
        {
            [LessonFolderVariable] = lessonAssemblies,
            // One notebook on a laptop: not a heap for each core, not a line in the log for each start.
            ["DOTNET_gcServer"] = "0",
            // A lesson is over before what profiling learns pays.
            ["DOTNET_TieredPGO"] = "0",
            // Jupyter mostly kills a kernel: the three files that the runtime keeps for a debugger would stay in the temporary folder.
            ["DOTNET_EnableDiagnostics"] = "0",
            ["Logging__LogLevel__Default"] = "Warning",
            ["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1",
            ["DOTNET_INTERACTIVE_SKIP_FIRST_TIME_EXPERIENCE"] = "1",
        },
        ["metadata"] = new JsonObject { ["flapaero"] = new JsonObject { ["foldersMade"] = made } },
    };

    /// <summary>The folders that setting up has to make, the innermost first.</summary>
    private IEnumerable<string> MissingFolders()
    {
        for (string? folder = Folder; folder is not null && !Directory.Exists(folder); folder = Path.GetDirectoryName(folder))
            yield return folder;
    }

    /// <summary>What the present entry says that its setup made, or null where there is none.</summary>
    private JsonArray? FoldersMade()
    {
        if (!File.Exists(SpecPath))
            return null;
        try
        {
            JsonArray? made = JsonNode.Parse(File.ReadAllText(SpecPath))?["metadata"]?["flapaero"]?["foldersMade"] as JsonArray;
            return made?.DeepClone().AsArray() ?? throw new SetupException(
                $"{SpecPath} is there and not of this command's making; take that folder away, then run this again.");
        }
        catch (JsonException)
        {
            // Half written, by a setup that was stopped.
            return [JsonValue.Create(Folder)];
        }
    }
}
