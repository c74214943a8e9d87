using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Charts;
using FlapAero.Handouts.Kernels;

namespace FlapAero.Handouts.Pages;

/// <summary>A piece of HTML from a cell, made fit for a page: maths set, ids its own, nothing fetched, wide tables in a region of their own.</summary>
internal sealed partial class Fragment
{
    private readonly IElement _root;
    private readonly string _where;

    private Fragment(IElement root, string where)
    {
        _root = root;
        _where = where;
    }

    /// <summary>The headings in their order.</summary>
    public IEnumerable<IElement> Headings => _root.QuerySelectorAll("h1, h2, h3, h4, h5, h6");

    public bool HasFigure => _root.QuerySelector("figure.plot") is not null;

    /// <summary>Whether the fragment's first visible thing is a heading (also inside the wrappers our outputs have).</summary>
    public bool StartsWithHeading
    {
        get
        {
            IElement? first = _root.FirstElementChild;
            while (first is IHtmlDivElement { FirstElementChild: { } inner })
                first = inner;
            return first is IHtmlHeadingElement;
        }
    }

    public bool IsEmpty => _root.ChildNodes.All(n => n is not IElement && string.IsNullOrWhiteSpace(n.TextContent));

    public string Text => Spaces().Replace(_root.TextContent, " ").Trim();

    /// <summary>A cell's output as students get it.</summary>
    /// <exception cref="HandoutException">The cell made an answer's HTML by hand: nothing would keep it from students.</exception>
    public static Fragment ForStudents(CellOutput output, string where)
    {
        return output.Read.QuerySelector(".check, .solution") is { } answer
            ? throw new HandoutException($"{where}: its output has class=\"{answer.ClassName}\" of its own making, which students would get; lesson.Check and lesson.Problem keep an answer from them.")
            : new Fragment((IElement)output.Read.Clone(), where);
    }

    /// <summary>A cell's output as the instructor gets it.</summary>
    public static Fragment ForInstructor(CellOutput output, string where) => new((IElement)output.ReadForInstructor.Clone(), where);

    public static Fragment Parse(string html, string where) => new(Read(html, isHtml: true), where);

    /// <summary>A piece of HTML, or a text as it stands, under an element of its own.</summary>
    public static IElement Read(string text, bool isHtml)
    {
        IDocument document = new HtmlParser().ParseDocument("");
        IElement root = document.CreateElement("div");
        root.InnerHtml = isHtml ? text : $"<pre class=\"text\">{HtmlText.Escape(text)}</pre>";
        LiveMarkup.RemoveHidden(root);
        return root;
    }

    public IEnumerable<IElement> All(string selector) => _root.QuerySelectorAll(selector);

    public void Remove(string selector)
    {
        foreach (IElement element in _root.QuerySelectorAll(selector).ToArray())
            element.Remove();
    }

    /// <summary>Puts each match behind a summary: the words are there, but a projector does not give them away.</summary>
    public void Hide(string selector, string cssClass, string summary)
    {
        foreach (IElement element in _root.QuerySelectorAll(selector).ToArray())
        {
            IElement details = Create("details", cssClass);
            IElement head = Create("summary", null);
            head.TextContent = summary;
            element.Replace(details);
            details.Append(head, element);
        }
    }

    public string ToHtml(IdRegistry ids, Mathematics mathematics)
    {
        FigureMarkup.ForPage(_root);
        LiveMarkup.Refuse(_root, _where);
        SetMaths(mathematics);
        ClaimIds(ids);
        MendLinks();
        WrapTables();
        return _root.InnerHtml.Trim() + "\n";
    }

    private void SetMaths(Mathematics mathematics)
    {
        foreach (IElement formula in _root.QuerySelectorAll(".math").ToArray())
        {
            // Markdig leaves $$…$$ on one line a span; alone in its paragraph it is meant to stand by itself.
            bool display = formula is IHtmlDivElement || IsAlone(formula);
            string tex = formula.TextContent.Trim();
            if (tex.StartsWith("\\[", StringComparison.Ordinal) || tex.StartsWith("\\(", StringComparison.Ordinal))
                tex = tex[2..^2].Trim();
            formula.InnerHtml = mathematics.ToMathMl(tex, display, _where);
            if (formula.FirstElementChild is { } math)
                math.SetAttribute("alttext", FormulaWords.Of(math));
            if (!display)
            {
                KeepWithPunctuation(formula);
                continue;
            }
            IElement frame = formula;
            if (formula is not IHtmlDivElement)
            {
                frame = Create("div", "math");
                frame.InnerHtml = formula.InnerHtml;
                formula.ParentElement!.Replace(frame);
            }
            MakeScrollable(frame, "formula");
        }
    }

    /// <summary>A browser may break a line after a formula: a comma must not start the next one.</summary>
    private void KeepWithPunctuation(IElement formula)
    {
        if (formula.NextSibling is not IText { Data: [',' or '.' or ';' or ':' or '?' or '!' or ')', ..] } text)
            return;
        IElement kept = Create("span", "kept");
        formula.Replace(kept);
        kept.Append(formula, _root.Owner!.CreateTextNode(text.Data[..1]));
        text.Data = text.Data[1..];
    }

    private static bool IsAlone(IElement formula) =>
        formula.ParentElement is IHtmlParagraphElement p && p.ChildNodes.All(n => n == formula || string.IsNullOrWhiteSpace(n.TextContent));

    private void ClaimIds(IdRegistry ids)
    {
        var renamed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (IElement element in _root.QuerySelectorAll("[id]"))
        {
            string id = ids.Claim(element.Id!);
            if (id != element.Id)
                renamed[element.Id!] = id;
            element.Id = id;
        }
        foreach (IElement heading in Headings.Where(h => string.IsNullOrEmpty(h.Id)))
            heading.Id = ids.Claim(Markup.Slug(heading.TextContent));
        if (renamed.Count == 0)
            return;
        foreach (IAttr attribute in _root.QuerySelectorAll("*").SelectMany(e => e.Attributes).Where(a => a.Name != "id"))
            if (attribute.Name is "for" or "headers" || attribute.Name.StartsWith("aria-", StringComparison.Ordinal) && attribute.Name != "aria-label")
                attribute.Value = string.Join(' ', attribute.Value.Split(' ').Select(id => renamed.GetValueOrDefault(id, id)));
            else if (attribute.Value.Contains('#', StringComparison.Ordinal))
                attribute.Value = Reference().Replace(attribute.Value, m => renamed.TryGetValue(m.Groups["id"].Value, out string? id) ? m.Value.Replace(m.Groups["id"].Value, id, StringComparison.Ordinal) : m.Value);
    }

    /// <summary>In a room without a network a link out leads nowhere, so its address is printed; a link to a lesson leads to its page.</summary>
    private void MendLinks()
    {
        foreach (IElement link in _root.QuerySelectorAll("a[href]").ToArray())
        {
            string target = link.GetAttribute("href")!;
            if (target.StartsWith('#'))
                continue;
            Match lesson = Lesson().Match(target);
            if (lesson.Success)
            {
                link.SetAttribute("href", lesson.Groups["stem"].Value + ".html" + lesson.Groups["part"].Value);
                continue;
            }
            IElement text = Create("span", "address");
            text.InnerHtml = link.InnerHtml;
            if (Address().IsMatch(target) && link.TextContent.Trim() != target)
                text.Append(_root.Owner!.CreateTextNode($" ({target})"));
            link.Replace(text);
        }
    }

    private void WrapTables()
    {
        foreach (IElement table in _root.QuerySelectorAll("table").ToArray())
        {
            IElement frame = Create("div", "scroll");
            string name = table.QuerySelector("caption")?.TextContent ?? "";
            if (table.Closest("figure")?.QuerySelector("figcaption") is { } caption && name.Length == 0)
                name = "the numbers in the figure: " + caption.TextContent;
            MakeScrollable(frame, name.Length == 0 ? "table" : "table: " + Spaces().Replace(name, " ").Trim());
            table.Replace(frame);
            frame.Append(table);
        }
    }

    /// <summary>What may be wider than a phone scrolls by itself and takes the keyboard's focus; the page's script takes it out of the Tab order where it fits.</summary>
    private static void MakeScrollable(IElement element, string name)
    {
        element.SetAttribute("role", "group");
        element.SetAttribute("aria-label", name);
        element.SetAttribute("tabindex", "0");
        element.ClassList.Add("scroll");
    }

    private IElement Create(string name, string? cssClass)
    {
        IElement element = _root.Owner!.CreateElement(name);
        if (cssClass is not null)
            element.ClassName = cssClass;
        return element;
    }

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex("(?:^|url\\([\"']?)#(?<id>[^\"')]+)", RegexOptions.CultureInvariant)]
    private static partial Regex Reference();

    [GeneratedRegex("^(?:\\./)?(?<stem>[0-9]{2}-[a-z0-9-]+)\\.(?:ipynb|html)(?<part>#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Lesson();

    [GeneratedRegex("^(?:https?:|mailto:)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Address();
}
