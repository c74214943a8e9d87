using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// Finds out what is wrong with an answer: a common error of the lesson, a sign, a unit, a factor of two, else whether
/// it is high or low. Compares in the unit of the tolerance; never says the expected value.
/// </summary>
internal sealed class Diagnosis
{
    private readonly string _what;
    private readonly IQuantity _answer;
    private readonly Enum _unit;
    private readonly double _value;
    private readonly double _expected;
    private readonly double _tolerance;
    private readonly IReadOnlyList<Mistake> _mistakes;

    internal Diagnosis(string what, IQuantity answer, IQuantity expected, IQuantity tolerance, IReadOnlyList<Mistake> mistakes)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(what);
        _what = what.Trim();
        _answer = answer;
        _unit = tolerance.Unit;
        _value = answer.As(_unit);
        _expected = expected.As(_unit);
        _tolerance = tolerance.As(_unit);
        _mistakes = mistakes;
        Refuse();
    }

    /// <summary>Of an answer that came out of a calculation without one. A quantity cannot hold such a value, a number can.</summary>
    internal static CheckResult OfNoNumber(string what) => new(CheckOutcome.Wrong,
        $"{what.Trim()}: the answer is not a finite number: look for a division by zero or the root of a negative number.");

    internal CheckResult Verdict()
    {
        double own = _answer.As(_answer.Unit);
        if (own == 0)
            return new CheckResult(CheckOutcome.Open, $"{_what}: not answered yet.");
        if (IsNear(_value, _expected, _tolerance))
            return new CheckResult(CheckOutcome.Passed, $"{_what}: {Answer} is right, within {QuantityText.InOwnUnit(Quantity.From(_tolerance, _unit), DecimalsOf(_tolerance))}.");

        foreach (Mistake mistake in _mistakes)
            if (IsNear(_value, mistake.Value.As(_unit), _tolerance))
                return Wrong($"{Answer} is not right. {mistake.Words}");
        if (IsNear(_value, -_expected, _tolerance))
            return Wrong($"{Answer} has the right size but the wrong sign");
        if (OtherUnit(own) is { } unit)
            return Wrong(_answer.Unit.Equals(_unit)
                ? $"{Answer} is not right. That would be right in {UnitWords.Of(unit)}; the answer wants {UnitWords.Of(_unit)}"
                : $"{Answer} is not right. The number would be right in {UnitWords.Of(unit)}, but it was given in {UnitWords.Of(_answer.Unit)}");
        if (IsNear(_value, 2 * _expected, 2 * _tolerance))
            return Wrong($"{Answer} is twice what it should be: look for a factor of two");
        if (IsNear(2 * _value, _expected, _tolerance))
            return Wrong($"{Answer} is half of what it should be: look for a factor of two");
        string much = Math.Abs(_value - _expected) <= 4 * _tolerance ? "a little " : "";
        return Wrong($"{Answer} is {much}too {(_value > _expected ? "high" : "low")}");
    }

    private string Answer => QuantityText.InOwnUnit(_answer, _answer.Unit.Equals(_unit) ? DecimalsOf(_tolerance) : null);

    private CheckResult Wrong(string words) =>
        new(CheckOutcome.Wrong, $"{_what}: {words}{(words.EndsWith('.') || words.EndsWith('?') || words.EndsWith('!') ? "" : ".")}");

    /// <summary>The unit in which the number alone, as typed, would have been right.</summary>
    private Enum? OtherUnit(double number)
    {
        foreach (Enum unit in UnitWords.MistakenFor(_answer))
        {
            if (unit.Equals(_answer.Unit)) continue;
            double low = Quantity.From(_expected - _tolerance, _unit).As(unit), high = Quantity.From(_expected + _tolerance, _unit).As(unit);
            if (number >= Math.Min(low, high) && number <= Math.Max(low, high)) return unit;
        }
        return null;
    }

    /// <summary>A hair is added, so that an answer at the very edge of the tolerance is within it.</summary>
    private static bool IsNear(double a, double b, double tolerance) =>
        Math.Abs(a - b) <= tolerance * (1 + 1e-9);

    /// <summary>One decimal finer than the tolerance, so that the answer reads as the student gave it.</summary>
    internal static string DecimalsOf(double tolerance)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(tolerance) - 1e-9), 0, 8);
        return decimals == 0 ? "0" : "0." + new string('0', decimals);
    }

    private void Refuse()
    {
        if (_tolerance <= 0) throw Refusal("its tolerance must be above zero");
        if (IsNear(_expected, 0, _tolerance))
            throw Refusal("its expected value is zero within the tolerance, which cannot be told from an answer not given");
        foreach (Mistake mistake in _mistakes)
            if (mistake.Value.QuantityInfo.Name != _answer.QuantityInfo.Name)
                throw Refusal($"the mistake \"{mistake.Words}\" is of another quantity ({mistake.Value.QuantityInfo.Name}, not {_answer.QuantityInfo.Name})");
    }

    private ArgumentException Refusal(string why) => new($"The check \"{_what}\" is refused: {why}.");
}
