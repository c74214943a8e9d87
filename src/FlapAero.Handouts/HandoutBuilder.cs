using System.Globalization;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts;

/// <summary>Makes the pages: reads, runs, builds all in memory, and only then writes.</summary>
public sealed class HandoutBuilder
{
    private readonly Func<ILessonKernel> _newKernel;

    /// <summary>Makes a builder that runs lessons in this process.</summary>
    public HandoutBuilder()
        : this(() => new InteractiveKernel())
    {
    }

    /// <summary>Makes a builder over another kernel.</summary>
    /// <param name="newKernel">Gives a fresh kernel for each lesson.</param>
    public HandoutBuilder(Func<ILessonKernel> newKernel)
    {
        ArgumentNullException.ThrowIfNull(newKernel);
        _newKernel = newKernel;
    }

    /// <summary>Builds the pages of the wanted lessons and the index of all.</summary>
    /// <param name="options">Where from, where to, and which.</param>
    /// <param name="progress">Told of each cell, on the thread that runs the lessons.</param>
    /// <param name="cancellationToken">Stops before anything is written.</param>
    /// <returns>The names of the files written, in their order.</returns>
    /// <exception cref="HandoutException">A notebook, a cell, a check, a formula or a folder refused; nothing was written.</exception>
    public async Task<IReadOnlyList<string>> BuildAsync(
        HandoutOptions options, IProgress<HandoutProgress>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(options);
        IReadOnlyList<LessonNotebook> notebooks = LessonNotebook.ReadFolder(options.NotebooksFolder);
        IReadOnlyList<LessonNotebook> wanted = Wanted(notebooks, options.Lessons);
        var output = new PageFiles(options.OutputFolder);
        output.MakeSureOfFolder();

        try
        {
            Dictionary<string, string> pages = await MakePagesAsync(wanted, progress, cancellationToken).ConfigureAwait(false);
            pages.Add("index.html", IndexPage.ToHtml(notebooks, name => pages.ContainsKey(name) || output.Has(name)));
            cancellationToken.ThrowIfCancellationRequested();
            output.Write(pages);
            return [.. pages.Keys];
        }
        finally
        {
            output.LeaveNoEmptyFolder();
        }
    }

    private async Task<Dictionary<string, string>> MakePagesAsync(
        IReadOnlyList<LessonNotebook> wanted, IProgress<HandoutProgress>? progress, CancellationToken cancellationToken)
    {
        var pages = new Dictionary<string, string>(StringComparer.Ordinal);
        using var mathematics = new Mathematics();
        foreach (LessonNotebook notebook in wanted)
        {
            RanLesson lesson = await LessonRunner.RunAsync(notebook, _newKernel, progress, cancellationToken).ConfigureAwait(false);
            foreach (Artefact artefact in LessonArtefacts.Of(lesson, mathematics, new ArtefactChoice(new HashSet<Edition> { Edition.Student, Edition.Instructor })))
                pages.Add(artefact.Name, artefact.Content);
        }
        return pages;
    }

    private static IReadOnlyList<LessonNotebook> Wanted(IReadOnlyList<LessonNotebook> notebooks, IReadOnlyList<string> names)
    {
        if (names.Count == 0)
            return notebooks;
        List<string> unknown = [.. names.Where(name => !notebooks.Any(n => IsNamed(n, name)))];
        if (unknown.Count > 0)
            throw new UnknownLessonException(unknown, [.. notebooks.Select(n => n.Slug)]);
        return [.. notebooks.Where(n => names.Any(name => IsNamed(n, name)))];
    }

    private static bool IsNamed(LessonNotebook notebook, string name) =>
        name == notebook.Slug || name == notebook.Stem || name == notebook.FileName
        || int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number == notebook.Number;
}
