using System.Globalization;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace FlapAero.Jupyter.Tests;

/// <summary>What a lesson's cells say in plain text, run in process: the handouts' kernel keeps the HTML alone.</summary>
internal static class PlainTexts
{
    public static async Task<Dictionary<string, IReadOnlyList<Output>>> InProcessAsync(LessonNotebook lesson)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        var texts = new Dictionary<string, IReadOnlyList<Output>>();
        using var kernel = new CompositeKernel { new CSharpKernel().UseKernelHelpers() };
        string assembly = typeof(Lesson).Assembly.Location;
        foreach (LessonCell cell in lesson.Cells.Where(cell => cell.IsCode))
        {
            string code = cell.Source.Replace("../artifacts/lessons/FlapAero.Notebooks.dll", assembly, StringComparison.Ordinal);
            KernelCommandResult result = await kernel.SendAsync(new SubmitCode(code), TestContext.Current.CancellationToken);
            Assert.DoesNotContain(result.Events, e => e is CommandFailed);
            texts.Add(cell.Id, [.. result.Events.OfType<DisplayEvent>()
                .SelectMany(shown => shown.FormattedValues)
                .Where(value => value.MimeType == PlainTextFormatter.MimeType)
                .Select(value => new Output("text", value.Value.ReplaceLineEndings("\n").TrimEnd()))]);
        }
        return texts;
    }
}
