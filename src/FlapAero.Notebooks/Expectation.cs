using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>What a check holds an answer against: values in the unit that the answer wants.</summary>
internal interface IExpectation
{
    /// <summary>Whether the value is within the tolerance of the right one.</summary>
    bool IsRight(double value);

    /// <summary>The words of the first known mistake that leads to the value, or null.</summary>
    string? MistakeIn(double value);

    /// <summary>What is said of a value that nothing else explains.</summary>
    string Distance(double value);
}

/// <summary>An expectation whose value is at hand.</summary>
internal sealed class Expectation : IExpectation
{
    private readonly double _expected;
    private readonly double _tolerance;
    private readonly Enum _unit;
    private readonly IReadOnlyList<Mistake> _mistakes;

    internal Expectation(string what, IQuantity expected, IQuantity tolerance, IReadOnlyList<Mistake> mistakes)
    {
        _unit = tolerance.Unit;
        _expected = expected.As(_unit);
        _tolerance = tolerance.As(_unit);
        _mistakes = mistakes;
        if (_tolerance <= 0) throw Refusal("its tolerance must be above zero");
        if (IsNear(_expected, 0))
            throw Refusal("its expected value is zero within the tolerance, which cannot be told from an answer not given");
        foreach (Mistake mistake in mistakes)
            if (mistake.Value.QuantityInfo.Name != tolerance.QuantityInfo.Name)
                throw Refusal($"the mistake \"{mistake.Words}\" is of another quantity ({mistake.Value.QuantityInfo.Name}, not {tolerance.QuantityInfo.Name})");

        RefusedInputException Refusal(string why) => Require.RefusedWhole(null, $"The check \"{what}\" is refused: {why}.");
    }

    /// <inheritdoc/>
    public bool IsRight(double value) => IsNear(value, _expected);

    /// <inheritdoc/>
    public string? MistakeIn(double value) =>
        _mistakes.FirstOrDefault(mistake => IsNear(value, mistake.Value.As(_unit)))?.Words;

    /// <inheritdoc/>
    public string Distance(double value) =>
        $"is {(Math.Abs(value - _expected) <= 4 * _tolerance ? "a little " : "")}too {(value > _expected ? "high" : "low")}";

    /// <summary>A hair is added, so that an answer at the very edge of the tolerance is within it.</summary>
    private bool IsNear(double a, double b) => Math.Abs(a - b) <= _tolerance * (1 + 1e-9);
}
