using UnitsNet;

namespace FlapAero.Charts;

/// <summary>Where a reader's prediction lies in a figure: on one axis, at a place that moves with it. Immutable.</summary>
/// <param name="Name">The prediction's name in the lesson.</param>
/// <param name="IsAcross">Whether it lies on the horizontal axis.</param>
/// <param name="From">Where a prediction of nothing would lie, in the axis' unit.</param>
/// <param name="Times">How far one unit of the prediction goes.</param>
/// <param name="Value">What was predicted; zero where nothing was, or where a page will be told.</param>
/// <param name="Unit">The prediction's unit; none for a plain number.</param>
internal sealed record Prediction(string Name, bool IsAcross, double From, double Times, double Value, Enum? Unit)
{
    internal const string Label = "your prediction";

    /// <summary>Where the mark lies in the axis' unit.</summary>
    internal double At => From + Times * Value;

    /// <summary>The same in other units: a page tells its prediction in the units that it shows.</summary>
    /// <param name="units">The units.</param>
    /// <param name="perAxis">What one unit of the axis is in its new one.</param>
    internal Prediction In(DisplayUnits units, double perAxis)
    {
        double per = Unit is null ? 1 : Quantity.From(1, Unit).As(units.UnitFor(Unit));
        return this with { From = From * perAxis, Times = Times * perAxis / per, Value = Value * per, Unit = Unit is null ? null : units.UnitFor(Unit) };
    }
}
