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
    internal static void Register()
    {
        Register<Figure>(figure => figure.ToHtml(), figure => figure.ToString());
        Register<LessonResult>(result => result.ToHtml(), result => result.ToString());
        Register<Briefing>(briefing => BriefingSheet.Of(briefing).ToHtml(), briefing => BriefingSheet.Of(briefing).ToString());
        Register<NumbersTable>(numbers => numbers.ToHtml(), numbers => numbers.ToString());
        Register<IQuantity>(
            quantity => $"<span class=\"quantity\">{SecurityElement.Escape(QuantityText.Of(quantity))}</span>",
            quantity => QuantityText.Of(quantity));
    }

    private static void Register<T>(Func<T, string> html, Func<T, string> text)
    {
        Formatter.Register<T>((value, writer) => writer.Write(html(value)), HtmlFormatter.MimeType);
        Formatter.Register<T>((value, writer) => writer.Write(text(value)), PlainTextFormatter.MimeType);
        Formatter.SetPreferredMimeTypesFor(typeof(T), HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
    }
}
