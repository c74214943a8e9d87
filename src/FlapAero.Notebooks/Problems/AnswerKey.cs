using FlapAero.Notebooks.Seals;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>What the answer key says of one check or problem, and what a student's copy is made from.</summary>
/// <param name="What">What was asked, or the problem's title.</param>
/// <param name="Answer">The answer in words: with its tolerance and unit, or an option's letter.</param>
/// <param name="Seal">The answer as a student's copy may hold it.</param>
internal sealed record AnswerKey(string What, string Answer, string Seal)
{
    /// <summary>The answer as a number in the wanted unit; null for a choice.</summary>
    public double? Value { get; init; }

    /// <summary>How far off is still right, in the wanted unit; null for a choice.</summary>
    public double? Tolerance { get; init; }

    /// <summary>The unit as it is printed; empty for a pure number and for a choice.</summary>
    public string Sign { get; init; } = "";

    /// <summary>The start value of a student's variable, such as <c>Speed.FromKnots(0)</c>.</summary>
    public string Blank { get; init; } = "\"\"";

    /// <summary>The known mistakes: what they lead to, and what is said.</summary>
    public IReadOnlyList<Line> Mistakes { get; init; } = [];

    /// <summary>The options of a choice in the order of their letters, the right one with <see cref="Line.IsRight"/>.</summary>
    public IReadOnlyList<Line> Choices { get; init; } = [];

    /// <summary>A problem's question as Markdown; empty for a check.</summary>
    public string Question { get; init; } = "";

    /// <summary>A problem's hints as Markdown, step by step.</summary>
    public IReadOnlyList<string> Hints { get; init; } = [];

    /// <summary>What a good reason says, where a decision wants one.</summary>
    public string Reason { get; init; } = "";

    /// <summary>A value or an option, and what is said of it.</summary>
    internal sealed record Line(string Text, string Because, bool IsRight = false)
    {
        /// <summary>What a mistake leads to, as a number in the wanted unit; null of an option.</summary>
        public double? Value { get; init; }

        /// <summary>Whether an option is accepted although another is the right one.</summary>
        public bool IsSafe { get; init; }
    }

    /// <summary>The key of a number.</summary>
    public static AnswerKey Of(string what, string question, IQuantity expected, IQuantity tolerance, IReadOnlyList<Mistake> mistakes)
    {
        Enum unit = tolerance.Unit;
        double value = expected.As(unit), margin = tolerance.As(unit);
        string pattern = Diagnosis.DecimalsOf(margin);
        return new AnswerKey(what, Written(value, margin, unit), SealText.Of(NumberSeal.Of(what, question, expected, tolerance, mistakes)))
        {
            Value = value,
            Tolerance = margin,
            Sign = QuantityText.Abbreviation(unit),
            Blank = BlankOf(tolerance),
            Mistakes = [.. mistakes.Select(m => new Line(QuantityText.InOwnUnit(Quantity.From(m.Value.As(unit), unit), pattern), m.Words) { Value = m.Value.As(unit) })],
            Question = question,
        };
    }

    /// <summary>The answer with its tolerance, such as <c>51.1 ± 0.5 kt</c>.</summary>
    public static string Written(double value, double tolerance, Enum unit) =>
        // A decimal finer than half the tolerance: rounded coarser, the printed range would not be the one that is checked.
        $"{QuantityText.Of(value, Diagnosis.DecimalsOf(tolerance / 2))} ± {QuantityText.InOwnUnit(Quantity.From(tolerance, unit), Diagnosis.ToleranceDigits(tolerance))}";

    private static string BlankOf(IQuantity quantity) =>
        quantity is Scalar ? "0.0" : UnitWords.InCode(quantity.QuantityInfo, quantity.Unit, "0");
}
