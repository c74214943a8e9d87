using FlapAero.Notebooks.Seals;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <content>Checks of a student's answers.</content>
public sealed partial class Lesson
{
    /// <summary>Tests a student's answer and says in words what is wrong with it, never what would be right.</summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="what">What was asked.</param>
    /// <param name="answer">The answer; zero where there is none yet.</param>
    /// <param name="expected">What is right; not zero.</param>
    /// <param name="tolerance">How far off is still right; its unit is the unit that the answer wants.</param>
    /// <param name="mistakes">The lesson's common errors, tried in order.</param>
    /// <returns>The verdict; a wrong answer is a verdict too, not an exception.</returns>
    /// <exception cref="RefusedInputException">
    /// The check itself is at fault: no finite expected value, no positive tolerance, or a mistake of another quantity.
    /// </exception>
    public CheckResult Check<T>(string what, T answer, T expected, T tolerance, params Mistake[] mistakes) where T : IQuantity =>
        Judge(what, answer, expected, tolerance, mistakes);

    /// <summary>Tests a plain number, such as a coefficient, and says in words what is wrong with it.</summary>
    /// <param name="what">What was asked.</param>
    /// <param name="answer">The answer; zero where there is none yet.</param>
    /// <param name="expected">What is right; not zero.</param>
    /// <param name="tolerance">How far off is still right.</param>
    /// <param name="mistakes">The lesson's common errors, tried in order.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="RefusedInputException">
    /// The check itself is at fault: no finite expected value, no positive tolerance, or a mistake of another quantity.
    /// </exception>
    public CheckResult Check(string what, double answer, double expected, double tolerance, params Mistake[] mistakes)
    {
        Scalar right = FiniteNumber.Of(expected, $"The expected value of the check \"{what}\"");
        Scalar margin = FiniteNumber.Of(tolerance, $"The tolerance of the check \"{what}\"");
        return double.IsFinite(answer) ? Judge(what, Scalar.FromAmount(answer), right, margin, mistakes) : Diagnosis.OfNoNumber(what);
    }

    /// <summary>Tests an answer against a seal: a student's copy of a lesson checks like this, without holding the answer.</summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="answer">The answer; zero where there is none yet.</param>
    /// <param name="seal">The seal, from the lesson's handouts.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="RefusedInputException">The seal is damaged or of another kind of answer.</exception>
    public CheckResult CheckSealed<T>(T answer, string seal) where T : IQuantity
    {
        NumberSeal number = NumberSeal.Parse(seal);
        return answer.QuantityInfo.Name == number.Quantity
            ? new Diagnosis(number.What, answer, number.WantedUnit(), number.Tolerance, number).Verdict()
            : Diagnosis.OfOtherQuantity(number.What, answer, number.WantedUnit(), number.Quantity);
    }

    /// <summary>Tests a plain number against a seal.</summary>
    /// <param name="answer">The answer; zero where there is none yet.</param>
    /// <param name="seal">The seal, from the lesson's handouts.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="RefusedInputException">The seal is damaged or of another kind of answer.</exception>
    public CheckResult CheckSealed(double answer, string seal) =>
        double.IsFinite(answer) ? CheckSealed(Scalar.FromAmount(answer), seal) : Diagnosis.OfNoNumber(NumberSeal.Parse(seal).What);

    /// <summary>Tests the letter of an option against a seal.</summary>
    /// <param name="choice">The letter; empty where there is none yet.</param>
    /// <param name="seal">The seal, from the lesson's handouts.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="RefusedInputException">The seal is damaged or of another kind of answer.</exception>
    public CheckResult CheckSealed(string choice, string seal)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return ChoiceSeal.Parse(seal).Verdict(choice);
    }

    private CheckResult Judge(string what, IQuantity answer, IQuantity expected, IQuantity tolerance, IReadOnlyList<Mistake> mistakes)
    {
        Require.Words(what, "name of the check");
        tolerance = CoarseTolerance.Of(expected, Wanted(tolerance));
        var expectation = new Expectation(what.Trim(), expected, tolerance, mistakes);
        return new Diagnosis(what, answer, tolerance.Unit, tolerance.As(tolerance.Unit), expectation).Verdict()
            .With(() => AnswerKey.Of(what.Trim(), "", expected, tolerance, mistakes));
    }

    /// <summary>The tolerance in the lesson's units: what it is given in is what the answer is wanted in.</summary>
    private IQuantity Wanted(IQuantity tolerance) => tolerance.ToUnit(Units.UnitFor(tolerance.Unit));
}
