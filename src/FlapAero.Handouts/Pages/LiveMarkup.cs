using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using FlapAero.Charts;

namespace FlapAero.Handouts.Pages;

/// <summary>
/// What a cell's output must not bring into a page: what runs, what fetches, what leads a reader elsewhere. A
/// page's scripts are its own alone; a cell gives them data.
/// </summary>
internal static partial class LiveMarkup
{
    /// <summary>Attributes that a browser fetches from.</summary>
    private static readonly HashSet<string> Fetching = new(StringComparer.OrdinalIgnoreCase)
        { "src", "poster", "data", "background", "action", "formaction", "manifest" };

    /// <summary>Attributes that hold a page, or several addresses in one.</summary>
    private static readonly HashSet<string> Holding = new(StringComparer.OrdinalIgnoreCase) { "srcdoc", "srcset", "imagesrcset", "ping" };

    private static readonly HashSet<string> Foreign = new(StringComparer.OrdinalIgnoreCase)
        { "link", "iframe", "frame", "frameset", "object", "embed", "applet", "base", "meta", "portal", "template", "noscript", "noembed", "plaintext", "xmp" };

    /// <summary>What an SVG moves or links with: it can set an attribute that nobody wrote.</summary>
    private static readonly HashSet<string> Moving = new(StringComparer.OrdinalIgnoreCase)
        { "set", "animate", "animatetransform", "animatemotion", "foreignobject" };

    /// <summary>Refuses an output that is more than words, pictures and data.</summary>
    /// <exception cref="HandoutException">Something in it would run, fetch or lead elsewhere.</exception>
    public static void Refuse(IElement root, string where)
    {
        foreach (IElement element in root.QuerySelectorAll("*"))
        {
            bool isData = element is IHtmlScriptElement { Type: "application/json" } data && data.GetAttribute("src") is null;
            if (element.LocalName.Equals("script", StringComparison.OrdinalIgnoreCase) && !isData)
                throw new HandoutException($"{where}: its output has a script; a page takes only data from a cell (application/json).");
            if (Foreign.Contains(element.LocalName))
                throw new HandoutException($"{where}: its output has <{element.LocalName}>; a page stands alone and fetches nothing.");
            if (Moving.Contains(element.LocalName))
                throw new HandoutException($"{where}: its output has <{element.LocalName}>, which can change the page; a picture in a page stands still.");
            string style = element.LocalName.Equals("style", StringComparison.OrdinalIgnoreCase) ? element.TextContent : element.GetAttribute("style") ?? "";
            if (Fetch().IsMatch(style))
                throw new HandoutException($"{where}: its output has a style that fetches something; a page stands alone.");
            foreach (IAttr attribute in element.Attributes)
                RefuseAttribute(element, attribute, where);
        }
    }

    /// <summary>Takes away what nobody sees: comments, and control characters in texts and attributes.</summary>
    public static void RemoveHidden(INode node)
    {
        foreach (INode child in node.ChildNodes.ToArray())
            if (child is IComment or IProcessingInstruction)
                node.RemoveChild(child);
            else if (child is ICharacterData text && HtmlText.Visible(text.Data) is var seen && seen != text.Data)
                text.Data = seen;
            else
                RemoveHidden(child);
        if (node is IElement element)
            foreach (IAttr attribute in element.Attributes)
                if (HtmlText.Visible(attribute.Value) is var seen && seen != attribute.Value)
                    attribute.Value = seen;
    }

    private static void RefuseAttribute(IElement element, IAttr attribute, string where)
    {
        string name = attribute.LocalName, value = attribute.Value;
        if (name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
            throw new HandoutException($"{where}: its output has {name}=\"…\", which would run as a script; a page takes only words, pictures and data from a cell.");
        if (Holding.Contains(name))
            throw new HandoutException($"{where}: its output has {name}=\"…\"; a page stands alone and fetches nothing, so a picture must be drawn by the cell.");
        // Browsers read past spaces and control characters in an address.
        string address = NotRead().Replace(value, "");
        if (Running().IsMatch(address))
            throw new HandoutException($"{where}: its output has {name}=\"{value}\", which would run as a script; a link leads to an address or a place in the page.");
        // A link's address is printed; any other element fetches what it refers to.
        bool isReference = name.Equals("href", StringComparison.OrdinalIgnoreCase) && element is not IHtmlAnchorElement && !value.StartsWith('#');
        if ((isReference || Fetching.Contains(name)) && !Picture().IsMatch(address))
            throw new HandoutException($"{where}: it refers to {name}=\"{value}\"; a page stands alone and fetches nothing, so a picture must be drawn by the cell.");
    }

    [GeneratedRegex("@import|url\\(\\s*[\"']?(?!#|data:)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Fetch();

    [GeneratedRegex("^(?:(?:javascript|vbscript|livescript):|data:(?:text/html|application/xhtml|text/xml|application/xml|text/javascript|application/javascript))",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Running();

    [GeneratedRegex("^data:(?:image|audio|video)/", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Picture();

    [GeneratedRegex(@"[\p{C}\s]+", RegexOptions.CultureInvariant)]
    private static partial Regex NotRead();
}
