using System.Security;
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

    internal Said(Words words, UnitSystem units) => (_html, _text) = (Prose.Html(words, units), words.ToString(units));

    /// <inheritdoc/>
    public override string ToHtml() => $"<div class=\"said\">{_html}</div>";

    /// <inheritdoc/>
    public override string ToString() => _text;
}

/// <summary>A prediction against the result. Immutable.</summary>
public sealed class Compared : LessonResult
{
    private readonly string _text;

    internal Compared(string text) => _text = text;

    /// <inheritdoc/>
    public override string ToHtml() => $"<p class=\"compared\">{SecurityElement.Escape(_text)}</p>";

    /// <inheritdoc/>
    public override string ToString() => _text;
}

/// <summary>A problem with its answer and worked solution. Immutable.</summary>
public sealed class Problem : LessonResult
{
    private readonly Words _question;
    private readonly Words _hint;
    private readonly Words _solution;

    internal Problem(string title, Words question, Words hint, string answer, string unit, Words solution) =>
        (Title, _question, _hint, Answer, Unit, _solution) = (title, question, hint, answer, unit, solution);

    /// <summary>The title.</summary>
    public string Title { get; }

    /// <summary>The answer with its tolerance and unit, for example <c>51.1 ± 0.5 kt</c>.</summary>
    public string Answer { get; }

    /// <summary>The unit that the answer is wanted in; empty for a plain number.</summary>
    public string Unit { get; }

    /// <inheritdoc/>
    public override string ToHtml() =>
        $"<section class=\"problem\" data-unit=\"{SecurityElement.Escape(Unit)}\"><h3>{SecurityElement.Escape(Title)}</h3><div class=\"question\">{Prose.Html(_question)}</div>"
        + $"<details class=\"hint\"><summary>Hint</summary>{Prose.Html(_hint)}</details>"
        + $"<div class=\"solution\"><p class=\"answer\">{SecurityElement.Escape(Answer)}</p>{Prose.Html(_solution)}</div></section>";

    /// <inheritdoc/>
    public override string ToString() => $"{Title}\n{_question}\nHint: {_hint}\nAnswer: {Answer}\n{_solution}";
}
