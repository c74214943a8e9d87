using FlapAero.Handouts.Cache;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Printing;

/// <summary>Prints the pages of lessons, those that have not changed not at all.</summary>
internal static class PdfFiles
{
    /// <summary>Adds a PDF beside each page that can be printed.</summary>
    /// <returns>Why there are none, where no browser is there; else null.</returns>
    /// <exception cref="HandoutException">The browser failed.</exception>
    public static async Task<string?> AddAsync(
        IReadOnlyList<MadeLesson> lessons, HandoutOptions options, ContentCache cache, IProgress<HandoutProgress>? progress, CancellationToken cancellationToken)
    {
        (MadeLesson Lesson, Artefact Page)[] pages = [.. lessons.SelectMany(l => l.Artefacts.Where(a => a.IsPrintable).Select(a => (l, a)))];
        PdfPrinter? printer = null;
        try
        {
            string browser = InstalledBrowser.Identity();
            int done = 0;
            foreach ((MadeLesson lesson, Artefact page) in pages)
            {
                cancellationToken.ThrowIfCancellationRequested();
                string key = new ContentKey("pdf").With(Build.Id).With(browser).With(options.Paper.ToString()).With(page.Content) + ".pdf";
                byte[]? pdf = options.Fresh ? null : cache.Find(key);
                if (pdf is null)
                {
                    printer ??= await PdfPrinter.StartAsync(cancellationToken).ConfigureAwait(false);
                    pdf = await printer.PrintAsync(page.Content, options.Paper, cancellationToken).ConfigureAwait(false);
                    cache.Keep(key, pdf);
                }
                lesson.Files.Add(Path.ChangeExtension(page.Name, ".pdf"), pdf);
                progress?.Report(new HandoutProgress(HandoutProgress.Printing, ++done, pages.Length, 0));
            }
            return null;
        }
        catch (BrowserMissingException e)
        {
            return e.Message;
        }
        finally
        {
            if (printer is not null)
                await printer.DisposeAsync().ConfigureAwait(false);
        }
    }
}
