using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// The voice of a program that gave its landing in quantities: their names, and values in the units that they were given in.
/// </summary>
/// <param name="unit">The unit that an input was given in; none for a plain number.</param>
internal sealed class QuantityVoice(Func<LandingVariable, Enum?> unit) : LandingVoice
{
    public override string Finite => "a finite value";

    public override string Argument(LandingVariable variable) => variable.ToString();

    public override string Input(LandingVariable variable) => LandingVariables.Words(variable);

    public override string Result(int column) => ResultColumns.Words[column];

    public override string Value(LandingVariable variable, double si) => Written(variable, si, Require.Number);

    public override string Shown(LandingVariable variable, double si) => Written(variable, si, value => PlainNumber.InWords(value, "g5"));

    public override object Actual(LandingVariable variable, double si) =>
        unit(variable) is { } given && LandingVariables.InUnit(variable, si, given) is var value
        && double.IsFinite(value)
            ? Quantity.From(value, given)
            : si;

    private string Written(LandingVariable variable, double si, Func<double, string> number) => unit(variable) is { } given
        ? Require.WithUnit(number(LandingVariables.InUnit(variable, si, given)), given)
        : number(si);
}
