using System.Globalization;
using System.Text;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>A problem with hints, an answer and its worked solution. Immutable.</summary>
public sealed class Problem : LessonResult
{
    private readonly ProblemTexts _texts;
    private readonly Func<AnswerKey> _key;

    internal Problem(ProblemTexts texts, string answer, string unit, Func<AnswerKey> key) =>
        (_texts, Answer, Unit, _key) = (texts, answer, unit, key);

    /// <summary>The title.</summary>
    public string Title => _texts.Title;

    /// <summary>The answer with its tolerance and unit, for example <c>51.1 ± 0.5 kt</c>, or the letter of the right option.</summary>
    public string Answer { get; }

    /// <summary>The unit that the answer is wanted in; empty for a plain number and for a choice.</summary>
    public string Unit { get; }

    /// <summary>The options of a choice, in the order of their letters; empty where the answer is a number.</summary>
    public IReadOnlyList<Option> Options => _texts.Options;

    /// <summary>The problem with its answer and its worked solution, as an instructor's notebook shows it.</summary>
    /// <returns>HTML.</returns>
    public override string ToHtml() => Section(Solution());

    /// <summary>The problem as students get it: question, options and hints.</summary>
    internal string QuestionHtml() => Section("");

    /// <summary>What students do not get.</summary>
    internal KeyOutput Kept() => new(ToHtml()) { Key = _key() };

    private string Section(string end)
    {
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"<section class=\"problem\" data-unit=\"{HtmlText.Escape(Unit)}\"><h3>{HtmlText.Escape(Title)}</h3><div class=\"question\">{Prose.Html(_texts.Question)}</div>");
        if (Options.Count > 0)
            html.Append("<ol class=\"options\" type=\"a\">").AppendJoin("", Options.Select(o => $"<li>{Prose.Html(o.Text)}</li>")).Append("</ol>");
        if (_texts.Reason is not null)
            html.Append("<p class=\"reason\">Give your reason in a sentence.</p>");
        for (int i = 0; i < _texts.Hints.Count; i++)
            html.Append(CultureInfo.InvariantCulture, $"<details class=\"hint\"><summary>{HintName(i)}</summary>{Prose.Html(_texts.Hints[i])}</details>");
        return html.Append(end).Append("</section>").ToString();
    }

    private string Solution()
    {
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"<div class=\"solution\"><p class=\"answer\">{HtmlText.Escape(Answer)}</p>{Prose.Html(_texts.Solution)}");
        if (_texts.Reason is { } reason)
            html.Append(CultureInfo.InvariantCulture, $"<div class=\"good-reason\"><p>A good reason says:</p>{Prose.Html(reason)}</div>");
        if (Options.Count > 0)
            html.Append("<ol class=\"because\" type=\"a\">").AppendJoin("", Options.Select(o => $"<li>{Judged(o)}{Inline(o.Because)}</li>")).Append("</ol>");
        return html.Append("</div>").ToString();
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var text = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{Title}\n{_texts.Question}\n");
        for (int i = 0; i < Options.Count; i++) text.Append(CultureInfo.InvariantCulture, $"  {OptionLetters.Of(i)}. {Options[i].Text}\n");
        for (int i = 0; i < _texts.Hints.Count; i++) text.Append(CultureInfo.InvariantCulture, $"{HintName(i)}: {_texts.Hints[i]}\n");
        return text.Append(CultureInfo.InvariantCulture, $"Answer: {Answer}\n{_texts.Solution}").ToString();
    }

    /// <summary>What the key says of an option before its reason.</summary>
    private static string Judged(Option option) => option.Standing switch
    {
        Standing.Right => "<strong>Right.</strong> ",
        Standing.Safe => "<strong>Accepted too, as safe.</strong> ",
        _ => "",
    };

    private string HintName(int index) => ProblemTexts.HintName(index, _texts.Hints.Count);

    /// <summary>A single paragraph without its element, to stand after a word of ours.</summary>
    private static string Inline(Words words)
    {
        string html = Prose.Html(words);
        return html.StartsWith("<p>", StringComparison.Ordinal) && html.IndexOf("</p>", StringComparison.Ordinal) == html.Length - 4 ? html[3..^4] : html;
    }
}
