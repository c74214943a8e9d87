using System.Globalization;
using FlapAero.Handouts;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Handouts.Rules.AfterARun;

namespace FlapAero.Cli;

/// <summary>The part of <c>flapaero check --run</c> that runs lessons, folder by folder.</summary>
internal static class LessonsOfACheck
{
    private static readonly TimeSpan CellTime = TimeSpan.FromSeconds(60);

    /// <summary>Tells the faults that a run shows.</summary>
    /// <returns>How many there are.</returns>
    public static async Task<int> RunAsync(
        IReadOnlyList<string> files, TextWriter output, TextWriter error, string workingFolder, CancellationToken cancellationToken)
    {
        int faults = 0;
        using var check = new RunCheck(
            LessonKernelCommand.ToCall(), new KernelLimits(CellTime, KernelLimits.StandardCellOutput), Environment.ProcessorCount, RepositoryFolder.Cache(workingFolder));
        foreach (IGrouping<string, string> folder in files.GroupBy(file => Path.GetDirectoryName(file)!))
        {
            HashSet<string> asked = [.. folder.Select(file => Path.GetFileName(file))];
            var lessons = new List<LessonNotebook>();
            foreach (string file in NotebookFiles.Find(folder.Key))
                if (Read(file) is { } lesson)
                    lessons.Add(lesson);
                else if (asked.Remove(Path.GetFileName(file)))
                    await error.WriteLineAsync($"{Path.GetFileName(file)} is not run: mend first what stands above.");
            if (asked.Count == 0)
                continue;
            int done = 0;
            void Tell(LessonNotebook lesson) => output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{lesson.Slug} has run ({Interlocked.Increment(ref done)})"));
            IReadOnlyList<string> found = await check.FaultsAsync(lessons, asked, Tell, cancellationToken);
            foreach (string words in found)
                await error.WriteLineAsync(words);
            faults += found.Count;
        }
        return faults;
    }

    /// <summary>A notebook that can be run; null of one whose faults were told already.</summary>
    private static LessonNotebook? Read(string file)
    {
        try
        {
            return LessonNotebook.Parse(Path.GetFileName(file), LessonNotebook.ReadText(file));
        }
        catch (HandoutException)
        {
            return null;
        }
    }
}
