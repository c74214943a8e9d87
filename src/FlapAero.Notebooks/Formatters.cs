using FlapAero.Charts;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// The one place that knows the kernel's formatting: figures, quantities and results as HTML first, as words second.
/// A later registration replaces an earlier one, so that a lesson may begin again in other units.
/// </summary>
internal static class Formatters
{
    private static readonly ITypeFormatter[] Aviation = [.. Showing(DisplayUnits.Aviation)];

    private static readonly ITypeFormatter[] Si = [.. Showing(DisplayUnits.SI)];

    private static readonly ITypeFormatter[] Kilograms = [.. Showing(DisplayUnits.AviationKilograms)];

    internal static void Register(DisplayUnits units)
    {
        ITypeFormatter[] wanted = units switch { DisplayUnits.SI => Si, DisplayUnits.AviationKilograms => Kilograms, _ => Aviation };
        // The kernel keeps every registration and sorts them all for each new type: a lesson begun a thousand times must not add to them.
        if (Newest() is { } newest && wanted.Contains(newest))
            return;
        foreach (ITypeFormatter formatter in wanted)
            Formatter.Register(formatter);
        foreach (Type type in wanted.Select(f => f.Type).Distinct())
            Formatter.SetPreferredMimeTypesFor(type, HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
    }

    /// <summary>
    /// From now on, in this process, checks and problems leave a kernel in two outputs: what students may see, and the
    /// key; prose leaves it as HTML and as Markdown. The kernel that makes the handouts asks for it; a notebook in Jupyter never
    /// holds a key.
    /// </summary>
    internal static void KeepKeysApart()
    {
        if (Formatter.GetPreferredMimeTypesFor(typeof(Problem)).Contains(KeyOutput.MimeType))
            return;
        ITypeFormatter[] apart =
        [
            new HtmlFormatter<Problem>((problem, context) => context.Writer.Write(problem.QuestionHtml())),
            new KeyFormatter<Problem>(problem => problem.Kept()),
            new HtmlFormatter<CheckResult>((_, _) => { }),
            new KeyFormatter<CheckResult>(check => check.Kept()),
            new KeyFormatter<Said>(said => said.Kept()),
        ];
        foreach (ITypeFormatter formatter in apart)
            Formatter.Register(formatter);
        foreach (Type type in apart.Select(f => f.Type).Distinct())
            Formatter.SetPreferredMimeTypesFor(type, HtmlFormatter.MimeType, PlainTextFormatter.MimeType, KeyOutput.MimeType);
    }

    /// <summary>What a notebook shows of a value where it shows plain text.</summary>
    internal static string Text(object value) => value.ToDisplayString(PlainTextFormatter.MimeType);

    private static ITypeFormatter? Newest() =>
        Formatter.RegisteredFormatters(includeDefaults: false).FirstOrDefault(f => Aviation.Contains(f) || Si.Contains(f) || Kilograms.Contains(f));

    private static IEnumerable<ITypeFormatter> Showing(DisplayUnits units) =>
    [
        .. Of<Lesson>(lesson => lesson.ToHtml(), lesson => lesson.ToString()),
        .. Of<Figure>(figure => figure.In(units).ToNotebookHtml(), figure => figure.In(units).ToString()),
        .. Of<MovingFigure>(figure => figure.In(units).ToNotebookHtml(), figure => figure.In(units).ToString()),
        .. Of<Picture>(picture => picture.In(units).ToNotebookHtml(), picture => picture.In(units).ToString()),
        .. Of<MovingPicture>(picture => picture.In(units).ToNotebookHtml(), picture => picture.In(units).ToString()),
        .. Of<LessonResult>(result => result.ToHtml(), result => result.ToString()),
        .. Of<Briefing>(briefing => BriefingSheet.Of(briefing).ToHtml(), briefing => BriefingSheet.Of(briefing).ToString()),
        .. Of<NumbersTable>(numbers => numbers.ToHtml(), numbers => numbers.ToString()),
        .. Of<IQuantity>(
            quantity => $"<span class=\"quantity\">{HtmlText.Escape(QuantityText.Of(quantity, null, units))}</span>",
            quantity => QuantityText.Of(quantity, null, units)),
    ];

    private static IEnumerable<ITypeFormatter> Of<T>(Func<T, string> html, Func<T, string> text) =>
    [
        new HtmlFormatter<T>((value, context) => context.Writer.Write(html(value))),
        new PlainTextFormatter<T>((value, context) => context.Writer.Write(text(value))),
    ];

    private sealed class KeyFormatter<T>(Func<T, KeyOutput> kept) : ITypeFormatter
    {
        public string MimeType => KeyOutput.MimeType;

        public Type Type => typeof(T);

        public bool Format(object instance, FormatContext context)
        {
            if (instance is not T value)
                return false;
            context.Writer.Write(kept(value).ToJson());
            return true;
        }
    }
}
