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

    public override string Argument(int column) => ((LandingVariable)column).ToString();

    public override string Input(int column) => LandingVariables.Words((LandingVariable)column);

    public override string Result(int column) => LandingColumns.ResultWords[column];

    public override string Value(int column, double si) => Written(column, si, Require.Number);

    public override string Shown(int column, double si) => Written(column, si, value => PlainNumber.InWords(value, "g5"));

    public override object Actual(int column, double si) =>
        unit((LandingVariable)column) is { } given && LandingVariables.InUnit((LandingVariable)column, si, given) is var value
        && double.IsFinite(value)
            ? Quantity.From(value, given)
            : si;

    private string Written(int column, double si, Func<double, string> number) => unit((LandingVariable)column) is { } given
        ? Require.WithUnit(number(LandingVariables.InUnit((LandingVariable)column, si, given)), given)
        : number(si);
}
