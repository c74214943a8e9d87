namespace FlapAero.Charts;

public sealed partial class Figure
{
    /// <summary>
    /// Gives the figure one value that the reader moves. The figure so far is what stands still; the function adds to it
    /// what a value changes, and says the finding at that value. It is called once for each value, so a page or a notebook needs
    /// nothing but what is computed here; the axes hold the figures of all values.
    /// </summary>
    /// <param name="control">What moves: a name, a symbol and a unit.</param>
    /// <param name="values">Its values in its unit, rising, 2 to <see cref="MovingFigure.MostValues"/> of them; 10 to 25 are usual.</param>
    /// <param name="start">The value, one of them, that the figure starts with and that is drawn on paper.</param>
    /// <param name="at">From the figure so far and a value to the figure at that value; the same lines, in the same order, for each.</param>
    /// <returns>The figure that moves.</returns>
    /// <exception cref="RefusedInputException">
    /// Too few or too many values, values that do not rise, a start that is none of them; at some value a refused figure, no
    /// finding, other lines or another caption; or a figure that is the same at every value. The message says at which value.
    /// </exception>
    /// <example>
    /// <code>
    /// new Figure("Stall speed and weight", Axis.Of("angle of bank", "φ", "°"), Axis.Of("stall speed", "V_S", "kt CAS"))
    ///     .Caption("Stall speed against angle of bank.")
    ///     .Moving(Axis.Of("weight", "W", "% of maximum"), Samples.Between(70, 100, 2), start: 100, (figure, share) => figure
    ///         .Line("stall speed", Samples.Between(0, 60, 1), bank => 55 * Math.Sqrt(share / 100 / Math.Cos(bank * Math.PI / 180)))
    ///         .Finding($"With wings level the stall speed is {55 * Math.Sqrt(share / 100):0.0} kt."))
    /// </code>
    /// </example>
    public MovingFigure Moving(Axis control, IEnumerable<double> values, double start, Func<Figure, double, Figure> at)
    {
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(at);
        var moving = new MovingControl(Title, control, [.. values], start);
        return new MovingFigure(moving, moving.Frames(this, at));
    }

    /// <summary>The same figure with axes that reach as far as these values.</summary>
    internal Figure Reaching(Extent extent) => With(
        x: X.Including(extent.LowX).Including(extent.HighX), y: Y.Including(extent.LowY).Including(extent.HighY));
}
