using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace FlapAero.Jupyter.Tests;

/// <summary>The plain text of what a cell shows in process, where the handouts' kernel keeps the HTML alone.</summary>
internal sealed class PlainTexts : IObserver<KernelEvent>
{
    private readonly List<Output> _shown = [];

    public IReadOnlyList<Output> Shown => _shown;

    public void OnNext(KernelEvent value)
    {
        if (value is not DisplayEvent shown)
            return;
        string text = shown is StandardOutputValueProduced or StandardErrorValueProduced
            ? shown.FormattedValues.Single().Value
            : FormattedValue.CreateSingleFromObject(shown.Value, PlainTextFormatter.MimeType).Value;
        _shown.Add(new Output("text", text.ReplaceLineEndings("\n").TrimEnd()));
    }

    public void OnCompleted()
    {
    }

    public void OnError(Exception error)
    {
    }
}
