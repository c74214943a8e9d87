using System.CommandLine;
using System.Globalization;
using FlapAero.Handouts;

namespace FlapAero.Cli;

/// <summary><c>flapaero handouts</c>: the lessons as pages.</summary>
internal static class HandoutsCommand
{
    public static Command Create(TextWriter output, TextWriter error, string workingFolder)
    {
        var outFolder = new Option<string?>("--out")
        {
            Description = "The folder for the pages. Without it: artifacts/handouts in the repository.",
            HelpName = "DIR",
        };
        var lessons = new Option<string[]>("--lesson")
        {
            Description = "Only these lessons, each by its number, its name or its file. Without it: all.",
            HelpName = "NAME",
            AllowMultipleArgumentsPerToken = true,
        };
        var notebooks = new Option<string?>("--notebooks")
        {
            Description = "The folder of the lessons. Without it: notebooks in the repository.",
            HelpName = "DIR",
        };
        var command = new Command("handouts",
            "Runs the lessons and makes pages of them, for students and for the instructor. If any cell fails, nothing is written.")
        {
            outFolder, lessons, notebooks,
        };
        command.SetAction((parsed, cancellationToken) => RunAsync(
            parsed.GetValue(outFolder), parsed.GetValue(lessons) ?? [], parsed.GetValue(notebooks),
            output, error, workingFolder, cancellationToken));
        return command;
    }

    private static async Task<int> RunAsync(
        string? outFolder, string[] lessons, string? notebooks, TextWriter output, TextWriter error, string workingFolder, CancellationToken cancellationToken)
    {
        try
        {
            string outPath = Folder(outFolder, workingFolder, "--out", "artifacts", "handouts");
            var options = new HandoutOptions(Folder(notebooks, workingFolder, "--notebooks", "notebooks"), outPath, lessons);
            IReadOnlyList<string> written = await ProgressLines.ForAsync(output,
                progress => new HandoutBuilder().BuildAsync(options, progress, cancellationToken));
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture,
                $"{written.Count} pages written; start with {Path.Combine(outPath, "index.html")}"));
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

    /// <summary>A named folder counts from the working folder, a default one from the repository's root.</summary>
    private static string Folder(string? named, string workingFolder, string option, params string[] standard)
    {
        if (named is not null)
            return Path.GetFullPath(named, workingFolder);
        for (DirectoryInfo? folder = new(workingFolder); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "FlapAero.sln")))
                return Path.Combine([folder.FullName, .. standard]);
        throw new HandoutException(
            $"No FlapAero.sln stands in {workingFolder} or above it, so there is no standard place for {option}; call from inside the repository or name a folder with {option}.");
    }
}
