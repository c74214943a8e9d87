using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>What a check found.</summary>
public enum CheckOutcome
{
    /// <summary>There is no answer yet.</summary>
    Open,

    /// <summary>The answer is within the tolerance.</summary>
    Passed,

    /// <summary>The answer is not within the tolerance.</summary>
    Wrong,
}

/// <summary>A common error of a lesson: the value that it leads to, and what to say to the student. Immutable.</summary>
public sealed class Mistake
{
    /// <summary>An error that leads to a quantity.</summary>
    /// <param name="value">The value it leads to.</param>
    /// <param name="words">What went wrong, in a sentence; it must not give the answer away.</param>
    public Mistake(IQuantity value, string words)
    {
        ArgumentNullException.ThrowIfNull(value);
        Require.Words(words, "words of the mistake");
        (Value, Words) = (value, words.Trim());
    }

    /// <summary>An error that leads to a plain number.</summary>
    /// <param name="value">The value it leads to.</param>
    /// <param name="words">What went wrong, in a sentence; it must not give the answer away.</param>
    public Mistake(double value, string words)
        : this(FiniteNumber.Of(value, $"The mistake \"{words}\""), words)
    {
    }

    /// <summary>What to say to the student.</summary>
    public string Words { get; }

    internal IQuantity Value { get; }
}

/// <summary>The verdict on an answer, in words. Immutable.</summary>
public sealed class CheckResult : LessonResult
{
    private readonly Func<AnswerKey>? _key;

    internal CheckResult(CheckOutcome outcome, string words, Func<AnswerKey>? key = null) => (Outcome, Words, _key) = (outcome, words, key);

    /// <summary>What was found.</summary>
    public CheckOutcome Outcome { get; }

    /// <summary>The verdict: what the answer is, and what is wrong with it. The expected value is never in it.</summary>
    public string Words { get; }

    /// <summary>The verdict for a page.</summary>
    /// <returns>HTML.</returns>
    public override string ToHtml() =>
        $"<div class=\"check\" data-outcome=\"{Outcome.ToString().ToLowerInvariant()}\">{HtmlText.Escape(Words)}</div>";

    /// <inheritdoc/>
    public override string ToString() => Words;

    /// <summary>All of it: a verdict on the right answer says the answer. A sealed check has no key.</summary>
    internal KeyOutput Kept() => new(ToHtml()) { Key = _key?.Invoke(), Outcome = Outcome, Words = Words };

    internal CheckResult With(Func<AnswerKey> key) => new(Outcome, Words, key);
}
