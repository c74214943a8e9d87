using System.Globalization;
using FlapAero.Charts;
using FlapAero.Notebooks.Seals;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>The texts of a problem; puts problems together and refuses those that cannot be solved or that give themselves away.</summary>
internal sealed record ProblemTexts(string Title, Words Question, IReadOnlyList<Words> Hints, Words Solution)
{
    public IReadOnlyList<Option> Options { get; init; } = [];

    public Words? Reason { get; init; }

    public static string HintName(int index, int count) =>
        count == 1 ? "Hint" : string.Create(CultureInfo.InvariantCulture, $"Hint {index + 1} of {count}");

    /// <summary>A problem whose answer is a number.</summary>
    public Problem Number(IQuantity answer, IQuantity tolerance, IReadOnlyList<Mistake> mistakes)
    {
        RefuseMissing();
        tolerance = CoarseTolerance.Of(answer, tolerance);
        Enum unit = tolerance.Unit;
        double value = answer.As(unit), margin = tolerance.As(unit);
        if (margin <= 0)
            throw Require.RefusedWhole(
                nameof(tolerance),
                $"The tolerance of the problem \"{Title}\" must be above zero: a value read or rounded is never exact.");
        if (Math.Abs(value) <= margin)
            throw Require.RefusedWhole(
                nameof(answer),
                $"The answer of the problem \"{Title}\" is zero within its tolerance: that cannot be told from an answer not given.");
        _ = new Expectation(Title, answer, tolerance, mistakes);
        IReadOnlyList<UnitSpelling> units = UnitSpelling.All(tolerance);
        foreach ((string name, Words words) in ((string, Words)[])[("question", Question), .. Hints.Select(hint => ("hint", hint))])
            if (new WrittenNumbers(words.ToString()).FirstWithin(value, margin, units) is { } told)
                throw Require.RefusedWhole(
                    name,
                    $"The {name} of the problem \"{Title}\" gives its answer away: \"{told}\" is within the tolerance of it. Draw other numbers.");
        string text = AnswerKey.Written(value, margin, unit);
        return new Problem(this, text, QuantityText.Abbreviation(unit), () => Complete(AnswerKey.Of(Title, MarkdownText.Of(Question), answer, tolerance, mistakes)));
    }

    /// <summary>A problem whose answer is one of some options, in an order drawn from the seed.</summary>
    public Problem Choice(int seed)
    {
        RefuseMissing();
        if (Options.Count is < 2 or > 6)
            throw Require.RefusedWhole(
                nameof(seed),
                $"The problem \"{Title}\" has {Options.Count} options: allowed are 2 to 6.");
        if (Options.Count(option => option.IsRight) is not 1 and var right)
            throw Require.RefusedWhole(
                nameof(seed),
                $"The problem \"{Title}\" has {right} right options: needed is exactly one.");
        if (Options.Select(option => option.Text.ToString()).Distinct().Count() < Options.Count)
            throw Require.RefusedWhole(nameof(seed), $"The problem \"{Title}\" has two options that say the same.");
        var draw = new Draw(seed);
        Option[] shuffled = [.. Options];
        for (int i = shuffled.Length - 1; i > 0; i--)
        {
            int j = draw.Between(0, i);
            (shuffled[i], shuffled[j]) = (shuffled[j], shuffled[i]);
        }
        string answer = OptionLetters.Of(Array.FindIndex(shuffled, option => option.IsRight)).ToString();
        ProblemTexts texts = this with { Options = shuffled };
        return new Problem(texts, answer, "", () => texts.Complete(new AnswerKey(Title, answer, SealText.Of(ChoiceSeal.Of(
            Title, Question.ToString(), [.. shuffled.Select(option => (option.Standing, MarkdownText.Plain(option.Because)))])))));
    }

    private AnswerKey Complete(AnswerKey key) => key with
    {
        Question = MarkdownText.Of(Question),
        Hints = [.. Hints.Select(MarkdownText.Of)],
        Reason = Reason is null ? "" : MarkdownText.Of(Reason),
        Choices = [.. Options.Select(option => new AnswerKey.Line(MarkdownText.Of(option.Text), MarkdownText.Of(option.Because), option.IsRight) { IsSafe = option.IsSafe })],
    };

    private void RefuseMissing()
    {
        Require.Words(Title, "title of the problem");
        if (Hints.Count == 0) throw Require.RefusedWhole(nameof(Hints), $"The problem \"{Title}\" has no hint.");
        foreach ((string name, Words words) in ((string, Words)[])[("question", Question), ("solution", Solution), .. Hints.Select(hint => ("hint", hint))])
            if (words is null || words.ToString().Trim().Length == 0)
                throw Require.RefusedWhole(name, $"The problem \"{Title}\" has no {name}.");
    }
}
