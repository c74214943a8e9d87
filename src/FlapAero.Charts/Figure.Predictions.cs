using System.Runtime.CompilerServices;
using UnitsNet;

namespace FlapAero.Charts;

/// <content>The reader's own mark: what was predicted, on the figure that answers it.</content>
public sealed partial class Figure
{
    internal IReadOnlyList<Prediction> Predictions { get; private init; } = [];

    /// <summary>
    /// Marks what the reader predicted on the horizontal axis: in a notebook from the prediction's value, in a page from what is typed there.
    /// Nothing is drawn where nothing was predicted.
    /// </summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="guess">The prediction, in the axis' unit; zero where none was written.</param>
    /// <param name="from">Where a prediction of zero would lie, in the axis' unit.</param>
    /// <param name="times">How far along the axis one unit of the prediction goes; −1 for "lower by".</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>A new figure with the mark.</returns>
    /// <exception cref="RefusedInputException">A value is not finite.</exception>
    /// <example><code>figure.PredictedAcross(bankGuess)</code></example>
    public Figure PredictedAcross<T>(T guess, double from = 0, double times = 1, [CallerArgumentExpression(nameof(guess))] string prediction = "")
        where T : IQuantity => Predicted(true, guess.As(guess.Unit), guess.Unit, from, times, prediction);

    /// <summary>The same for a plain number.</summary>
    /// <param name="guess">The prediction; zero where none was written.</param>
    /// <param name="from">Where a prediction of zero would lie, in the axis' unit.</param>
    /// <param name="times">How far along the axis one unit of the prediction goes.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>A new figure with the mark.</returns>
    /// <exception cref="RefusedInputException">A value is not finite.</exception>
    public Figure PredictedAcross(double guess, double from = 0, double times = 1, [CallerArgumentExpression(nameof(guess))] string prediction = "") =>
        Predicted(true, guess, null, from, times, prediction);

    /// <summary>Marks what the reader predicted on the vertical axis; see <see cref="PredictedAcross{T}(T, double, double, string)"/>.</summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="guess">The prediction, in the axis' unit; zero where none was written.</param>
    /// <param name="from">Where a prediction of zero would lie, in the axis' unit.</param>
    /// <param name="times">How far up the axis one unit of the prediction goes.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>A new figure with the mark.</returns>
    /// <exception cref="RefusedInputException">A value is not finite.</exception>
    public Figure PredictedUp<T>(T guess, double from = 0, double times = 1, [CallerArgumentExpression(nameof(guess))] string prediction = "")
        where T : IQuantity => Predicted(false, guess.As(guess.Unit), guess.Unit, from, times, prediction);

    /// <summary>The same for a plain number.</summary>
    /// <param name="guess">The prediction; zero where none was written.</param>
    /// <param name="from">Where a prediction of zero would lie, in the axis' unit.</param>
    /// <param name="times">How far up the axis one unit of the prediction goes.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>A new figure with the mark.</returns>
    /// <exception cref="RefusedInputException">A value is not finite.</exception>
    public Figure PredictedUp(double guess, double from = 0, double times = 1, [CallerArgumentExpression(nameof(guess))] string prediction = "") =>
        Predicted(false, guess, null, from, times, prediction);

    private Figure Predicted(bool isAcross, double guess, Enum? unit, double from, double times, string name)
    {
        Require.Words(name, "name of the prediction");
        if (!double.IsFinite(guess) || !double.IsFinite(from) || !double.IsFinite(times))
            throw Refusal($"the mark of the prediction {name} is at {Raw(from)} + {Raw(times)} × {Raw(guess)}; it needs finite values");
        return With(predictions: [.. Predictions, new Prediction(name, isAcross, from, times, guess, unit)]);
    }

    /// <summary>The predictions that were written and lie inside the axes.</summary>
    internal IEnumerable<Prediction> PredictionsWithin(FigureLayout layout) => Predictions.Where(p => p.Value != 0 && (p.IsAcross
        ? layout.ToX(p.At) >= layout.Plot.Left && layout.ToX(p.At) <= layout.Plot.Right
        : layout.ToY(p.At) >= layout.Plot.Top && layout.ToY(p.At) <= layout.Plot.Bottom));
}
