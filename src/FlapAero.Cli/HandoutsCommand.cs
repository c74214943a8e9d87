using System.CommandLine;
using System.Globalization;
using FlapAero.Cli.Jupyter;
using FlapAero.Handouts;
using FlapAero.Handouts.InPage;
using FlapAero.Handouts.Kernels;
using FlapAero.Notebooks;

namespace FlapAero.Cli;

/// <summary><c>flapaero handouts</c>: the lessons as pages, keys, sheets and notebooks.</summary>
internal static class HandoutsCommand
{
    public static Command Create(TextWriter output, TextWriter error, string workingFolder)
    {
        var options = new HandoutsArguments();
        var command = new Command("handouts",
            "Runs the lessons and makes of each the student's page, the instructor's page, the answer key, problem sheets with their keys, "
            + "and the student's notebook. If any cell fails, nothing is written and what was there before stays. "
            + "Lessons that have not changed are not run again. "
            + "Exit code 0: done; 1: a lesson, a folder or the machine refused; 2: the call is wrong; 130: stopped. " + Caution.OfTheCommand);
        options.AddTo(command);
        command.SetAction((parsed, cancellationToken) => RunAsync(options, parsed, output, error, workingFolder, cancellationToken));
        return command;
    }

    private static async Task<int> RunAsync(
        HandoutsArguments options, ParseResult parsed, TextWriter output, TextWriter error, string workingFolder, CancellationToken cancellationToken)
    {
        try
        {
            HandoutOptions wanted = Read(options, parsed, workingFolder);
            var limits = new KernelLimits(TimeSpan.FromSeconds(parsed.GetValue(options.TimeLimit)), KernelLimits.StandardCellOutput);
            using var builder = new HandoutBuilder(LessonKernelCommand.ToCall(), limits, parsed.GetValue(options.Processes));
            if (wanted.IsWatched)
                return await WatchedHandouts.RunAsync(builder, wanted, output, error, cancellationToken);
            HandoutReport report = await ProgressLines.ForAsync(output, progress => builder.BuildAsync(wanted, progress, cancellationToken));
            await TellAsync(report, wanted.OutputFolder, output);
            if (parsed.GetValue(options.Engine))
                await AddEngineAsync(wanted, output, workingFolder, cancellationToken);
            if (report.NotPrinted is not { } why)
                return ExitCode.Done;
            await error.WriteLineAsync($"The pages are there, their PDFs are not. {why}");
            return ExitCode.Failed;
        }
        catch (UnknownLessonException e)
        {
            await error.WriteLineAsync(e.Message);
            return ExitCode.WrongUsage;
        }
        catch (Exception e) when (e is HandoutException or SetupException)
        {
            await error.WriteLineAsync(e.Message);
            return ExitCode.Failed;
        }
    }

    private static async Task AddEngineAsync(HandoutOptions wanted, TextWriter output, string workingFolder, CancellationToken cancellationToken)
    {
        await output.WriteLineAsync("Building the engine: about a minute at first …");
        string published = await Checkout.Above(workingFolder).PublishEngineAsync(cancellationToken);
        IReadOnlyList<string> pages = EngineFolder.Write(wanted.OutputFolder, published, wanted.Paper, wanted.SchoolFile);
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture,
            $"{pages.Count} lessons run in their pages; start with {Path.Combine(wanted.OutputFolder, EngineFolder.Name, pages[0])}"));
    }

    private static HandoutOptions Read(HandoutsArguments options, ParseResult parsed, string workingFolder)
    {
        string outPath = RepositoryFolder.Named(parsed.GetValue(options.Out), workingFolder, "--out", "artifacts", "handouts");
        string notebooks = RepositoryFolder.Named(parsed.GetValue(options.Notebooks), workingFolder, "--notebooks", "notebooks");
        string? schoolFile = SchoolFile(parsed.GetValue(options.School), notebooks, workingFolder);
        School? school = schoolFile is null ? null : ReadSchool(schoolFile);
        return new HandoutOptions(notebooks, outPath, parsed.GetValue(options.Lessons) ?? [])
        {
            Editions = options.EditionsIn(parsed),
            Seed = parsed.GetValue(options.Seed),
            Sheets = parsed.GetValue(options.Sheets),
            AeroplaneFile = parsed.GetValue(options.Aeroplane) is { } file ? Path.GetFullPath(file, workingFolder) : null,
            SchoolFile = schoolFile,
            Units = options.UnitsIn(parsed, school),
            Paper = options.PaperIn(parsed, school),
            Pdf = parsed.GetValue(options.Pdf),
            HasEngine = parsed.GetValue(options.Engine),
            IsWatched = parsed.GetValue(options.Watch),
            Fresh = parsed.GetValue(options.Fresh),
            CacheFolder = RepositoryFolder.Cache(workingFolder),
        };
    }

    /// <summary>The named file, or the one that lies among the notebooks or above them.</summary>
    private static string? SchoolFile(string? named, string notebooks, string workingFolder)
    {
        return named is not null ? Path.GetFullPath(named, workingFolder) : SchoolBeside.In(notebooks);
    }

    private static School ReadSchool(string file)
    {
        try
        {
            return School.Read(file);
        }
        catch (AeroplaneFileException e)
        {
            throw new HandoutException(e.Message, e);
        }
    }

    private static async Task TellAsync(HandoutReport report, string folder, TextWriter output)
    {
        if (report.Removed.Count > 0)
            await output.WriteLineAsync($"Removed, for they stem from another seed, aeroplane, paper or version of the lesson: {string.Join(", ", report.Removed)}.");
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture,
            $"{report.Files.Count} files made, {report.CellsRun} cells run; start with {Path.Combine(folder, "index.html")}"));
    }
}
