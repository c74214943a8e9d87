using System.CommandLine;
using System.Globalization;
using FlapAero.Files;
using FlapAero.Handouts.NotebookForm;

namespace FlapAero.Cli;

/// <summary><c>flapaero check</c>: whether notebooks are fit to be stored, and putting them right.</summary>
internal static class CheckCommand
{
    public static Command Create(TextWriter output, TextWriter error, string workingFolder)
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "Notebooks, or folders of them. Without one: notebooks in the repository.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var fix = new Option<bool>("--fix")
        {
            Description = "Puts right what can be without losing anything a person wrote: clears outputs, counts and editors' metadata, "
                + "gives cells ids from their titles, and lays the file out as notebooks are stored.",
        };
        var run = new Option<bool>("--run")
        {
            Description = "Also runs the lessons, and those before them in their folders, for the rules that need a run: a mistake that passes as the answer, "
                + "an answer above its own box, a prediction that is given away. Unchanged lessons are not run again.",
        };
        var command = new Command("check",
            "Refuses notebooks that are not fit to be stored: outputs, execution counts, unstable ids, paths and addresses of a machine, "
            + "editors' metadata, broken rules of a lesson (docs/authoring.md gives each with its reason). Lists all faults at once, those that --fix puts right in one line a notebook. Exit code 0: none is left; 1: some are; 2: there is no such notebook.")
        {
            paths, fix, run,
        };
        PathText.NotEmpty(paths);
        command.SetAction((parsed, cancellationToken) =>
            RunAsync(parsed.GetValue(paths) ?? [], parsed.GetValue(fix), parsed.GetValue(run), output, error, workingFolder, cancellationToken));
        return command;
    }

    private static async Task<int> RunAsync(
        string[] paths, bool isFixing, bool isRunning, TextWriter output, TextWriter error, string workingFolder, CancellationToken cancellationToken)
    {
        var files = new List<string>();
        try
        {
            if (paths.Length == 0)
                paths = [StandardFolder(workingFolder)];
            foreach (string path in paths)
            {
                IReadOnlyList<string> found = NotebookFiles.Find(Path.GetFullPath(path, workingFolder));
                if (found.Count == 0)
                    throw new FileNotFoundException($"{Path.GetFullPath(path, workingFolder)}: this folder holds no notebook (NN-slug.ipynb).");
                files.AddRange(found.Except(files));
            }
        }
        catch (FileNotFoundException e)
        {
            error.WriteLine(e.Message);
            return ExitCode.WrongUsage;
        }

        string reading = "";
        try
        {
            int left = 0;
            int fixable = 0;
            foreach (string file in files)
            {
                reading = file;
                NotebookCheck check = NotebookCheck.Of(Path.GetFileName(file), NotebookFiles.Read(file));
                bool isFixed = isFixing && check.HasBetter;
                if (isFixed)
                    NotebookFiles.Replace(file, check.PutRight);
                NotebookFault[] mendable = [.. check.Faults.Where(fault => fault.CanBePutRight)];
                if (mendable.Length > 0)
                    (isFixed ? output : error).WriteLine(InOneLine(Path.GetFileName(file), mendable, isFixed));
                foreach (string words in Listing.Capped([.. check.Faults.Where(fault => !fault.CanBePutRight).Select(fault => fault.Words)]))
                    error.WriteLine(words);
                left += check.Faults.Count(fault => !(isFixed && fault.CanBePutRight));
                fixable += check.Faults.Count(fault => !isFixed && fault.CanBePutRight);
            }
            if (isRunning)
                left += await LessonsOfACheck.RunAsync(files, output, error, workingFolder, cancellationToken);
            output.WriteLine(Summary(files.Count, left, fixable));
            return left == 0 ? ExitCode.Done : ExitCode.Failed;
        }
        catch (UnfitFileException e)
        {
            error.WriteLine($"{reading} is not read: {e.Message}.");
            return ExitCode.WrongUsage;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"A notebook cannot be read or written, and what stood there before still does: {e.Message}");
            return ExitCode.Failed;
        }
    }

    /// <summary>A notebook that was run has dozens of what one call takes away; the rest must not drown in it.</summary>
    private static string InOneLine(string file, NotebookFault[] mendable, bool isFixed)
    {
        if (mendable.Length == 1)
            return isFixed ? $"put right: {mendable[0].Words}" : mendable[0].Words;
        string what = string.Create(CultureInfo.InvariantCulture,
            $"{file}: {string.Join(", ", mendable.Select(fault => fault.Kind).Distinct())} ({mendable.Length} places)");
        return isFixed ? $"put right: {what}." : $"{what}; check --fix puts them right and loses nothing that a person wrote.";
    }

    private static string Summary(int notebooks, int left, int fixable)
    {
        string of = string.Create(CultureInfo.InvariantCulture, $"{notebooks} {(notebooks == 1 ? "notebook" : "notebooks")} checked");
        if (left == 0)
            return $"{of}: fit to be stored.";
        string faults = string.Create(CultureInfo.InvariantCulture, $"{of}: {left} {(left == 1 ? "fault" : "faults")}");
        return fixable == 0 ? $"{faults}, to be mended by hand."
            : string.Create(CultureInfo.InvariantCulture, $"{faults}, of which check --fix puts {fixable} right.");
    }

    private static string StandardFolder(string workingFolder) =>
        RepositoryFolder.Find(workingFolder) is { } root ? Path.Combine(root, "notebooks")
        : throw new FileNotFoundException($"No FlapAero.sln stands in {workingFolder} or above it, so there is no standard folder of notebooks; name one.");
}
