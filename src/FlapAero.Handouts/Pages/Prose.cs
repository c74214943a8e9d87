using Markdig;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace FlapAero.Handouts.Pages;

/// <summary>Markdown cells: tables and maths on, raw HTML off, so that a cell's text stays text.</summary>
internal static class Prose
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseGridTables()
        .UseMathematics()
        .UseEmphasisExtras()
        .DisableHtml()
        .Build();

    public static string ToHtml(string markdown)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        renderer.Render(Markdown.Parse(markdown, Pipeline));
        return writer.ToString();
    }

    public static IEnumerable<(int Level, string Text)> Headings(string markdown) =>
        Markdown.Parse(markdown, Pipeline).Descendants<HeadingBlock>().Select(h => (h.Level, TextOf(h)));

    private static string TextOf(HeadingBlock heading) => heading.Inline is null ? "" : string.Concat(
        heading.Inline.Descendants().Select(i => i switch
        {
            LiteralInline literal => literal.Content.ToString(),
            CodeInline code => code.Content,
            _ => "",
        })).Trim();
}
