using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// Finds out what is wrong with an answer: a common error of the lesson, a sign, a unit, a factor of two or ten, else whether
/// it is high or low where that is known. Compares in the wanted unit; never says the expected value.
/// </summary>
internal sealed class Diagnosis
{
    private readonly string _what;
    private readonly IQuantity _answer;
    private readonly Enum _unit;
    private readonly double _value;
    private readonly double _tolerance;
    private readonly IExpectation _expectation;

    internal Diagnosis(string what, IQuantity answer, Enum unit, double tolerance, IExpectation expectation)
    {
        Require.Words(what, "name of the answer");
        _what = what.Trim();
        _answer = answer;
        _unit = unit;
        _value = answer.As(_unit);
        _tolerance = tolerance;
        _expectation = expectation;
    }

    /// <summary>Of an answer that came out of a calculation without one. A quantity cannot hold such a value, a number can.</summary>
    internal static CheckResult OfNoNumber(string what) => new(CheckOutcome.Wrong,
        $"{what.Trim()}: the answer is not a finite number: look for a division by zero or the root of a negative number.");

    /// <summary>Of an answer of another kind: it says what to write. The unit is the one that the lesson shows.</summary>
    internal static CheckResult OfOtherQuantity(string what, IQuantity answer, Enum wanted, string quantity)
    {
        QuantityInfo info = Quantity.Infos.First(i => i.Name == quantity);
        if (answer is Scalar bare)
        {
            double typed = bare.Amount;
            return typed == 0
                ? new CheckResult(CheckOutcome.Open, $"{what}: not answered yet.")
                : new CheckResult(CheckOutcome.Wrong, $"{what}: {Typed(typed)} has no unit. If you mean {UnitWords.Of(wanted)}, write {UnitWords.InCode(info, wanted, Typed(typed))}.");
        }
        string write = info.Name == nameof(Scalar) ? "a number without a unit, such as 1.5" : $"{UnitWords.InCode(info, wanted, "…")} with your number for the dots";
        return new CheckResult(CheckOutcome.Wrong, $"{what}: the answer is a {answer.QuantityInfo.Name}; wanted is a {(info.Name == nameof(Scalar) ? "plain number" : quantity)}. Write {write}.");
    }

    /// <summary>A number as it can be written in C#.</summary>
    private static string Typed(double number) => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    internal CheckResult Verdict()
    {
        double own = _answer.As(_answer.Unit);
        if (own == 0)
            return new CheckResult(CheckOutcome.Open, $"{_what}: not answered yet.");
        if (_expectation.IsRight(_value))
            return new CheckResult(CheckOutcome.Passed, $"{_what}: {Wanted(_value)} is right, within {QuantityText.InOwnUnit(Quantity.From(_tolerance, _unit), ToleranceDigits(_tolerance))}.");

        if (_expectation.MistakeIn(_value) is { } words)
            return Wrong($"{Answer} is not right. {words}");
        if (_expectation.IsRight(-_value))
            return Wrong($"{Answer} has the right size but the wrong sign");
        if (OtherUnit(own) is { } unit)
            return Wrong(_answer.Unit.Equals(_unit)
                ? $"{Answer} is not right. That would be right in {UnitWords.Of(unit)}; the answer wants {UnitWords.Of(_unit)}"
                : $"{Answer} is not right. The number would be right in {UnitWords.Of(unit)}, but it was given in {UnitWords.Of(_answer.Unit)}");
        if (_expectation.IsRight(_value / 2))
            return Wrong($"{Answer} is twice what it should be: look for a factor of two");
        if (_expectation.IsRight(2 * _value))
            return Wrong($"{Answer} is half of what it should be: look for a factor of two");
        if (_expectation.IsRight(_value / 10))
            return Wrong($"{Answer} is ten times what it should be: look at the decimal point");
        if (_expectation.IsRight(10 * _value))
            return Wrong($"{Answer} is a tenth of what it should be: look at the decimal point");
        return Wrong($"{Answer} {_expectation.Distance(_value)}");
    }

    /// <summary>A value in the unit that was asked for, whatever unit the answer was computed in.</summary>
    private string Wanted(double value) => QuantityText.InOwnUnit(Quantity.From(value, _unit), DecimalsOf(_tolerance));

    private string Answer => QuantityText.InOwnUnit(_answer, _answer.Unit.Equals(_unit) ? DecimalsOf(_tolerance) : null);

    private CheckResult Wrong(string words) =>
        new(CheckOutcome.Wrong, $"{_what}: {words}{(words.EndsWith('.') || words.EndsWith('?') || words.EndsWith('!') ? "" : ".")}");

    /// <summary>The unit in which the number alone, as typed, would have been right.</summary>
    private Enum? OtherUnit(double number) => UnitWords.MistakenFor(_answer)
        .FirstOrDefault(unit => !unit.Equals(_answer.Unit) && _expectation.IsRight(Quantity.From(number, unit).As(_unit)));

    /// <summary>One decimal finer than the tolerance, so that the answer reads as the student gave it.</summary>
    internal static string DecimalsOf(double tolerance)
    {
        int decimals = CountDecimals(tolerance);
        return decimals == 0 ? "0" : "0." + new string('0', decimals);
    }

    /// <summary>A tolerance has up to two digits, such as 1.5: it is printed as it is tested, never rounded.</summary>
    internal static string ToleranceDigits(double tolerance) => DecimalsOf(tolerance) is var digits && digits.Contains('.', StringComparison.Ordinal) ? digits + "#" : digits + ".#";

    internal static int CountDecimals(double tolerance) => Math.Clamp((int)Math.Ceiling(-Math.Log10(tolerance) - 1e-9), 0, 8);
}
