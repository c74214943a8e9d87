using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <content>Problems whose numbers come from the lesson's seed.</content>
public sealed partial class Lesson
{
    /// <summary>The numbers of one of the lesson's problems, drawn from the lesson's seed.</summary>
    /// <param name="problem">Which problem, so that each has numbers of its own.</param>
    /// <returns>A fresh draw; the same seed and problem give the same numbers.</returns>
    public Draw Draw(int problem = 1) => new(unchecked(Seed * 1_000_003 + problem));

    /// <summary>A problem with one hint, an answer and its worked solution.</summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="title">The title.</param>
    /// <param name="question">The question, with the numbers that were drawn.</param>
    /// <param name="hint">A first step.</param>
    /// <param name="answer">The answer, computed.</param>
    /// <param name="tolerance">How far off is still right; its unit is the unit that the answer wants.</param>
    /// <param name="solution">The way to the answer, with its numbers.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="RefusedInputException">
    /// The answer is not finite or zero, the tolerance is not positive, a text is missing, or question or hint give the
    /// answer away.
    /// </exception>
    public Problem Problem<T>(string title, Words question, Words hint, T answer, T tolerance, Words solution) where T : IQuantity =>
        Problem(title, question, [hint], answer, tolerance, solution);

    /// <summary>A problem with one hint whose answer is a plain number.</summary>
    /// <param name="title">The title.</param>
    /// <param name="question">The question, with the numbers that were drawn.</param>
    /// <param name="hint">A first step.</param>
    /// <param name="answer">The answer, computed.</param>
    /// <param name="tolerance">How far off is still right.</param>
    /// <param name="solution">The way to the answer, with its numbers.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="RefusedInputException">
    /// The answer is not finite or zero, the tolerance is not positive, a text is missing, or question or hint give the
    /// answer away.
    /// </exception>
    public Problem Problem(string title, Words question, Words hint, double answer, double tolerance, Words solution) =>
        Problem(title, question, [hint], answer, tolerance, solution);

    /// <summary>A problem with hints in steps, an answer and its worked solution.</summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="title">The title.</param>
    /// <param name="question">The question, with the numbers that were drawn.</param>
    /// <param name="hints">From a nudge to nearly there; never the answer.</param>
    /// <param name="answer">The answer, computed.</param>
    /// <param name="tolerance">How far off is still right; its unit is the unit that the answer wants.</param>
    /// <param name="solution">The way to the answer, with its numbers.</param>
    /// <param name="mistakes">Common errors, tried in order.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="RefusedInputException">
    /// The answer is not finite or zero, the tolerance is not positive, a text is missing, or question or hints give
    /// the answer away.
    /// </exception>
    public Problem Problem<T>(string title, Words question, IReadOnlyList<Words> hints, T answer, T tolerance, Words solution, params Mistake[] mistakes) where T : IQuantity =>
        Texts(title, question, hints, solution).Number(answer, Wanted(tolerance), mistakes);

    /// <summary>A problem with hints in steps whose answer is a plain number.</summary>
    /// <param name="title">The title.</param>
    /// <param name="question">The question, with the numbers that were drawn.</param>
    /// <param name="hints">From a nudge to nearly there; never the answer.</param>
    /// <param name="answer">The answer, computed.</param>
    /// <param name="tolerance">How far off is still right.</param>
    /// <param name="solution">The way to the answer, with its numbers.</param>
    /// <param name="mistakes">Common errors, tried in order.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="RefusedInputException">
    /// The answer is not finite or zero, the tolerance is not positive, a text is missing, or question or hints give
    /// the answer away.
    /// </exception>
    public Problem Problem(string title, Words question, IReadOnlyList<Words> hints, double answer, double tolerance, Words solution, params Mistake[] mistakes) =>
        Texts(title, question, hints, solution).Number(
            FiniteNumber.Of(answer, $"The answer of the problem \"{title}\""), FiniteNumber.Of(tolerance, $"The tolerance of the problem \"{title}\""), mistakes);

    /// <summary>A choice among options, one of them right; their order is drawn from the lesson's seed.</summary>
    /// <param name="title">The title.</param>
    /// <param name="question">The question, with the numbers that were drawn.</param>
    /// <param name="options">Two to six options, each with its reason.</param>
    /// <param name="hints">From a nudge to nearly there.</param>
    /// <param name="solution">The way to the answer, with its numbers.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="RefusedInputException">
    /// There is not exactly one right option, two options say the same, or a text is missing.
    /// </exception>
    public Problem Choose(string title, Words question, IReadOnlyList<Option> options, IReadOnlyList<Words> hints, Words solution) =>
        (Texts(title, question, hints, solution) with { Options = InUnits(options) }).Choice(OrderOf(title));

    /// <summary>A decision: a choice among options and, in the student's own words, the reason for it.</summary>
    /// <param name="title">The title.</param>
    /// <param name="question">The situation, with the numbers that were drawn.</param>
    /// <param name="options">Two to six options, each with its reason.</param>
    /// <param name="reason">What a good reason says, for the answer key.</param>
    /// <param name="hints">From a nudge to nearly there.</param>
    /// <param name="solution">The way to the decision, with its numbers.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="RefusedInputException">
    /// There is not exactly one right option, two options say the same, or a text is missing.
    /// </exception>
    public Problem Decide(string title, Words question, IReadOnlyList<Option> options, Words reason, IReadOnlyList<Words> hints, Words solution)
    {
        Require.Words(reason?.ToString()!, "reason of the problem", nameof(reason));
        return (Texts(title, question, hints, solution) with { Options = InUnits(options), Reason = reason!.In(Units) }).Choice(OrderOf(title));
    }

    /// <summary>The texts with their quantities in the lesson's units; a text that is missing is refused with the problem.</summary>
    private ProblemTexts Texts(string? title, Words question, IReadOnlyList<Words> hints, Words solution) => new(
        title?.Trim() ?? "", question?.In(Units)!, [.. hints.Select(hint => hint?.In(Units)!)], solution?.In(Units)!);

    private IReadOnlyList<Option> InUnits(IReadOnlyList<Option> options) =>
        [.. options.Select(option => option.In(Units))];

    /// <summary>The seed of the order of options: of the lesson's seed and the title, the same on every machine.</summary>
    private int OrderOf(string? title) => BinaryPrimitives.ReadInt32LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes($"{Seed.ToString(System.Globalization.CultureInfo.InvariantCulture)}\n{title}")));
}
