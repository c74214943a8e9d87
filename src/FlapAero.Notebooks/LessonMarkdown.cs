using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace FlapAero.Notebooks;

/// <summary>The Markdown of lessons, in cells and in what cells say: tables and maths on, raw HTML off, so that text stays text.</summary>
internal static class LessonMarkdown
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseGridTables()
        .UseMathematics()
        .UseEmphasisExtras()
        .DisableHtml()
        .Build();

    /// <summary>The Markdown as HTML, with LF line ends.</summary>
    public static string ToHtml(string markdown) => Markdown.ToHtml(markdown, Pipeline);

    /// <summary>Its headings in their order, each with its words alone.</summary>
    public static IEnumerable<(int Level, string Text)> Headings(string markdown) =>
        Markdown.Parse(markdown, Pipeline).Descendants<HeadingBlock>().Select(h => (h.Level, TextOf(h.Inline)));

    /// <summary>Its links to a place in the same text, in their order: the words, and the place without its mark.</summary>
    public static IEnumerable<(string Text, string Place)> LinksWithin(string markdown) =>
        Markdown.Parse(markdown, Pipeline).Descendants<LinkInline>().Where(link => link.Url is ['#', ..]).Select(link => (TextOf(link), link.Url![1..]));

    private static string TextOf(ContainerInline? words) => words is null ? "" : string.Concat(
        words.Descendants().Select(i => i switch
        {
            LiteralInline literal => literal.Content.ToString(),
            CodeInline code => code.Content,
            _ => "",
        })).Trim();
}
