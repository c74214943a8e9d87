using System.Text.Json;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>What a helper of a lesson hands to a cell: HTML for a page, words for a terminal. Immutable.</summary>
public abstract class LessonResult
{
    /// <summary>Only the results of this assembly are results.</summary>
    private protected LessonResult()
    {
    }

    /// <summary>The result for a page: one HTML element with semantic classes only.</summary>
    /// <returns>HTML.</returns>
    public abstract string ToHtml();

    /// <summary>The result for a terminal.</summary>
    /// <returns>Plain text.</returns>
    public abstract override string ToString();
}

/// <summary>Prose with values in it. Immutable.</summary>
public sealed class Said : LessonResult
{
    private readonly string _html;
    private readonly string _text;

    private readonly string _markdown;

    internal Said(Words words) => (_html, _text, _markdown) = (Prose.Html(words), words.ToString(), Prose.Markdown(words));

    /// <inheritdoc/>
    public override string ToHtml() => $"<div class=\"said\">{_html}</div>";

    /// <inheritdoc/>
    public override string ToString() => _text;

    /// <summary>The prose for a cell of a notebook that is prose.</summary>
    internal KeyOutput Kept() => new(ToHtml()) { Markdown = _markdown };
}

/// <summary>A prediction against the result. Immutable.</summary>
public sealed class Compared : LessonResult
{
    private static readonly JsonSerializerOptions CamelCase = new(JsonSerializerDefaults.Web);

    private readonly string _text;

    internal Compared(string text, ComparedFacts facts) => (_text, Facts) = (text, facts);

    internal ComparedFacts Facts { get; }

    /// <inheritdoc/>
    public override string ToHtml() =>
        $"<p class=\"compared\" data-facts=\"{HtmlText.Escape(JsonSerializer.Serialize(Facts, CamelCase))}\">{HtmlText.Escape(_text)}</p>";

    /// <inheritdoc/>
    public override string ToString() => _text;
}
