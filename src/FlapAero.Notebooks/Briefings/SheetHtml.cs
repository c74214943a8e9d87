using System.Globalization;
using System.Text;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>A sheet's parts as HTML.</summary>
internal static class SheetHtml
{
    public static string Of(string title, string caution, IReadOnlyList<SheetPart> parts, int level)
    {
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"<section class=\"briefing\" aria-label=\"{HtmlText.Escape(title)}\">\n<h{level} class=\"sheet-title\">{HtmlText.Escape(title)}</h{level}>\n");
        html.Append(CultureInfo.InvariantCulture, $"<p class=\"sheet-caution\"><strong>Caution.</strong> {HtmlText.Escape(caution)}</p>\n");
        foreach (SheetPart part in parts) Append(html, part, level + 1);
        return html.Append("</section>").ToString();
    }

    private static void Append(StringBuilder html, SheetPart part, int level)
    {
        html.Append(CultureInfo.InvariantCulture, $"<div class=\"sheet-part {part.Name}\">");
        if (part.Heading is { } heading)
            html.Append(CultureInfo.InvariantCulture, $"<h{level}>{HtmlText.Escape(heading)}</h{level}>");
        switch (part)
        {
            case StatementPart statement:
                html.Append(CultureInfo.InvariantCulture, $"<p class=\"verdict\"><strong>{HtmlText.Escape(statement.Loud)}</strong> {HtmlText.Escape(statement.Quiet)}</p>");
                break;
            case FactsPart facts:
                html.Append("<dl>").AppendJoin("", facts.Facts.Select(f => $"<div><dt>{HtmlText.Escape(f.Term)}</dt> <dd>{HtmlText.Escape(f.Fact)}</dd></div>")).Append("</dl>");
                break;
            case GlancePart glance:
                html.Append("<dl>").AppendJoin("", glance.Numbers.Select(n =>
                    $"<div><dt>{HtmlText.Escape(n.Label)}</dt> <dd><b>{HtmlText.Escape(n.Number)}</b> {HtmlText.Escape(n.With)}</dd></div>")).Append("</dl>");
                break;
            case TablePart table:
                html.Append(new Table(table.Caption, table.Headings, table.Rows).ToHtml());
                break;
            case ListPart list:
                html.Append("<ol>").AppendJoin("", list.Items.Select(item => $"<li>{HtmlText.Escape(item)}</li>")).Append("</ol>");
                break;
            case StepsPart steps:
                html.Append("<ol>").AppendJoin("", steps.Steps.Select(step => Item(step, level + 1))).Append("</ol>");
                break;
            case DrillsPart drills:
                html.Append("<ol>").AppendJoin("", drills.Drills.Select(drill => Item(drill, level + 1))).Append("</ol>");
                break;
            case NotePart note:
                html.Append(CultureInfo.InvariantCulture, $"<p>{HtmlText.Escape(note.Text)}</p>");
                break;
            case BlanksPart blanks:
                html.Append("<ul>").AppendJoin("", blanks.Labels.Select(label => $"<li><span>{HtmlText.Escape(label)}</span></li>")).Append("</ul>");
                break;
        }

        html.Append("</div>\n");
    }

    private static string Item(Step step, int level)
    {
        string numbers = step.Numbers.Length > 0 ? $" <b class=\"numbers\">{HtmlText.Escape(step.Numbers)}</b>" : "";
        return string.Create(CultureInfo.InvariantCulture, $"""
            <li><h{level}>{HtmlText.Escape(step.Name)}</h{level}> <p>{HtmlText.Escape(step.Do)}{numbers}</p> <p class="error"><em>Often wrong:</em> {HtmlText.Escape(step.Error)}</p> <p class="why">Lesson {step.Lesson}</p></li>
            """);
    }

    private static string Item(Drill drill, int level)
    {
        (string Label, string Text, string Class)[] said =
        [
            ("Cue", drill.Cue, "cue"), ("Action", drill.Action, "action"), ("Numbers", drill.Numbers, "numbers"),
            ("Limit", drill.Limit, "limit"), ("Go around", drill.GoAround, "around"),
        ];
        return $"<li><h{level}>{HtmlText.Escape(drill.Name)}</h{level}>"
            + string.Concat(said.Select(part => $" <p class=\"{part.Class}\"><b>{part.Label}.</b> {HtmlText.Escape(part.Text)}</p>")) + "</li>";
    }
}
