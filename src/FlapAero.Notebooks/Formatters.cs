using System.Security;
using FlapAero.Charts;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// The one place that knows the kernel's formatting: figures, quantities and results as HTML first, as words second.
/// A later registration replaces an earlier one, so that a lesson may begin again.
/// </summary>
internal static class Formatters
{
    internal static void Register(DisplayUnits units)
    {
        Register<Lesson>(lesson => lesson.ToHtml(), lesson => lesson.ToString());
        Register<Figure>(figure => figure.In(units).ToNotebookHtml(), figure => figure.In(units).ToString());
        Register<MovingFigure>(figure => figure.In(units).ToNotebookHtml(), figure => figure.In(units).ToString());
        Register<LessonResult>(result => result.ToHtml(), result => result.ToString());
        Register<Briefing>(briefing => BriefingSheet.Of(briefing).ToHtml(), briefing => BriefingSheet.Of(briefing).ToString());
        Register<NumbersTable>(numbers => numbers.ToHtml(), numbers => numbers.ToString());
        Register<IQuantity>(
            quantity => $"<span class=\"quantity\">{SecurityElement.Escape(QuantityText.Of(quantity, null, units))}</span>",
            quantity => QuantityText.Of(quantity, null, units));
    }

    /// <summary>What a notebook shows of a value where it shows plain text.</summary>
    internal static string Text(object value) => value.ToDisplayString(PlainTextFormatter.MimeType);

    private static void Register<T>(Func<T, string> html, Func<T, string> text)
    {
        Formatter.Register<T>((value, writer) => writer.Write(html(value)), HtmlFormatter.MimeType);
        Formatter.Register<T>((value, writer) => writer.Write(text(value)), PlainTextFormatter.MimeType);
        Formatter.SetPreferredMimeTypesFor(typeof(T), HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
    }
}
