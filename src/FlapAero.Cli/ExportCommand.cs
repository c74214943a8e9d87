using System.CommandLine;
using System.Globalization;
using FlapAero.Handouts;
using FlapAero.Handouts.Exporting;

namespace FlapAero.Cli;

/// <summary><c>flapaero export</c>: each lesson as one C# file that runs in a terminal.</summary>
internal static class ExportCommand
{
    public static Command Create(TextWriter output, TextWriter error, string workingFolder)
    {
        var lessons = new Option<string[]>("--lesson")
        {
            Description = "Only these lessons, each by its number, its name or its file. Without it: all.",
            HelpName = "NAME",
            AllowMultipleArgumentsPerToken = true,
        };
        var outFolder = new Option<string?>("--out")
        {
            Description = "The folder for the programs. Without it: artifacts/lessons-as-apps in the repository.",
            HelpName = "DIR",
        };
        var notebooks = new Option<string?>("--notebooks")
        {
            Description = "The folder of the lessons. Without it: notebooks in the repository.",
            HelpName = "DIR",
        };
        var edition = new Option<string?>("--edition") { Hidden = true, Arity = ArgumentArity.ZeroOrOne };
        edition.Validators.Add(result => result.AddError(
            "A program holds the whole lesson with its answers, so there is no --edition: a student uses the page or the notebook that \"flapaero handouts\" makes."));
        var packages = new Option<bool>("--packages")
        {
            Description = "The programs take the library as the package FlapAero.Notebooks, from whatever feed is set up, instead of from this repository.",
        };
        var command = new Command("export",
            "Writes each lesson, for the instructor and with its answers, as one C# file that runs in a terminal without a notebook: dotnet run NN-slug.cs. "
            + "If any lesson cannot be, nothing is written.")
        {
            lessons, outFolder, notebooks, edition, packages,
        };
        PathText.NotEmpty(outFolder, notebooks);
        command.SetAction((parsed, _) => RunAsync(
            () => Options(parsed.GetValue(lessons) ?? [], parsed.GetValue(outFolder), parsed.GetValue(notebooks), parsed.GetValue(packages), workingFolder),
            output, error));
        return command;
    }

    private static async Task<int> RunAsync(Func<ExportOptions> options, TextWriter output, TextWriter error)
    {
        try
        {
            ExportOptions wanted = options();
            IReadOnlyList<string> written = LessonExporter.Export(wanted);
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture,
                $"{written.Count} {(written.Count == 1 ? "lesson" : "lessons")} written; start with: dotnet run {Path.Combine(wanted.OutputFolder, written[0])}"));
            return ExitCode.Done;
        }
        catch (UnknownLessonException e)
        {
            await error.WriteLineAsync(e.Message);
            return ExitCode.WrongUsage;
        }
        catch (HandoutException e)
        {
            await error.WriteLineAsync(e.Message);
            return ExitCode.Failed;
        }
    }

    private static ExportOptions Options(string[] lessons, string? outFolder, string? notebooks, bool usesPackages, string workingFolder)
    {
        string? root = RepositoryFolder.Find(workingFolder);
        if (root is null && !usesPackages)
            throw new HandoutException($"No FlapAero.sln stands in {workingFolder} or above it, so there is no project to reference; call from inside the repository or take --packages.");
        return new ExportOptions(
            RepositoryFolder.Named(notebooks, workingFolder, "--notebooks", "notebooks"),
            RepositoryFolder.Named(outFolder, workingFolder, "--out", "artifacts", "lessons-as-apps"),
            lessons,
            usesPackages ? null : Path.Combine(root!, "src", "FlapAero.Notebooks", "FlapAero.Notebooks.csproj"));
    }
}
