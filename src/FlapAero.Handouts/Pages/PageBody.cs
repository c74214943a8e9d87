using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using FlapAero.Charts;

namespace FlapAero.Handouts.Pages;

/// <summary>The main part of a page while it grows: its ids, the level of its headings, its table of contents.</summary>
internal sealed class PageBody(Mathematics mathematics)
{
    private readonly IdRegistry _ids = Ids();
    private readonly StringBuilder _html = new();
    private readonly List<(string Id, string Text)> _contents = [];
    private int _level = 1;

    /// <summary>Whether a figure came by, which needs a script of its own.</summary>
    public bool HasFigure { get; private set; }

    /// <summary>The text of the last heading of the second level.</summary>
    public string LastPart => _contents.Count == 0 ? "" : _contents[^1].Text;

    public string ToHtml() => _html.ToString();

    public void Add(string html) => _html.Append(html);

    public string ClaimId(string words) => _ids.Claim(Markup.Slug(words));

    /// <summary>Adds a piece of a cell's output and refuses headings that jump.</summary>
    public void Add(Fragment part, string where)
    {
        string html = part.ToHtml(_ids, mathematics);
        foreach (IElement heading in part.Headings)
        {
            int level = heading.LocalName[1] - '0';
            if (level == 1 || level > _level + 1)
                throw new HandoutException(string.Create(CultureInfo.InvariantCulture,
                    $"{where}: its heading \"{heading.TextContent.Trim()}\" has level {level}; allowed here are 2 to {_level + 1}, since a heading may go only one level deeper than the one before."));
            Note(level, heading.Id!, heading.TextContent.Trim());
        }
        HasFigure |= part.HasFigure;
        _html.Append(html);
    }

    public void Heading(string text, int level)
    {
        level = Math.Min(level, _level + 1);
        string id = ClaimId(text);
        Note(level, id, text);
        _html.Append(CultureInfo.InvariantCulture, $"<h{level} id=\"{id}\">{HtmlText.Escape(text)}</h{level}>\n");
    }

    public string Contents()
    {
        var nav = new StringBuilder("<nav class=\"contents\" aria-labelledby=\"contents\">\n<p id=\"contents\">Contents</p>\n<ol>\n");
        foreach ((string id, string text) in _contents)
            nav.Append(CultureInfo.InvariantCulture, $"<li><a href=\"#{id}\">{HtmlText.Escape(text)}</a></li>\n");
        return nav.Append("</ol>\n</nav>\n").ToString();
    }

    private void Note(int level, string id, string text)
    {
        _level = level;
        if (level == 2)
            _contents.Add((id, text));
    }

    private static IdRegistry Ids()
    {
        var ids = new IdRegistry();
        ids.Claim("content");
        return ids;
    }
}
