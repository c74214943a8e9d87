using System.Globalization;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>
/// What became of a manual's numbers, for the instructor: what the aeroplane is good for, each fitted value with its standard error, and
/// each number of the manual beside the model's. Immutable.
/// </summary>
/// <example><code>ManualSheet.Of(ManualFit.Of(DemoManuals.TrainerH4).Value)</code></example>
public sealed class ManualSheet : LessonResult
{
    private readonly IReadOnlyList<SheetPart> _parts;

    private ManualSheet(ManualFit fit)
    {
        Fit = fit;
        _parts = [Verdict(), Uses(), NotReached(), Values(), Numbers(), Meaning()];
    }

    /// <summary>The fit.</summary>
    public ManualFit Fit { get; }

    /// <summary>The heading.</summary>
    public string Title => $"{Fit.Aeroplane.Name}: what the numbers determine";

    /// <summary>How far the model is from each number of the manual, in steps of its rounding; a number that it cannot have at all is left out.</summary>
    public Figure Differences
    {
        get
        {
            (double At, double Steps)[] bars = [.. Fit.Numbers.Select((number, at) => (at + 1.0, (number.Model - number.Given) / number.Rounding))
                .Where(bar => bar.Item2 is { } steps && double.IsFinite(steps)).Select(bar => (bar.Item1, bar.Item2!.Value))];
            int beyond = bars.Count(bar => Math.Abs(bar.Steps) > 1);
            return new Figure("The model against the manual", Axis.Of("row of the table"), Axis.Of("model less manual, in steps of the rounding"))
                .Bars("difference", bars.Select(bar => bar.At), bars.Select(bar => bar.Steps))
                .Level("one step more", 1.0)
                .Level("one step less", -1)
                .Caption("Each bar is one number of the manual, in the order of the table; between the two levels the model has it within a step.")
                .Finding($"Of {bars.Length} numbers {bars.Length - beyond} are within one step of the manual's rounding, {beyond} are further away.");
        }
    }

    /// <summary>A fit as a sheet.</summary>
    /// <param name="fit">The fit.</param>
    /// <returns>The sheet.</returns>
    public static ManualSheet Of(ManualFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return new(fit);
    }

    /// <inheritdoc/>
    public override string ToHtml() => ToHtmlFragment(headingLevel: 3);

    /// <summary>The sheet as one HTML element.</summary>
    /// <param name="headingLevel">The level of its title, 1 to 5; the parts' headings are one below.</param>
    /// <returns>HTML with semantic classes only.</returns>
    public string ToHtmlFragment(int headingLevel)
    {
        Require.Between(headingLevel, 1, 5, "level of the heading", "A page has six, and the parts' are one below.");
        return SheetHtml.Of(Title, Caution.OfABriefing, _parts, headingLevel);
    }

    /// <inheritdoc/>
    public override string ToString() => SheetText.Of(Title, Caution.OfABriefing, _parts);

    private StatementPart Verdict()
    {
        string Named(UseVerdict verdict) => string.Join(", ", Fit.Uses.Where(use => use.Verdict == verdict).Select(use => use.Name));
        string[] words =
        [
            .. new (string Says, string Uses)[]
            {
                ("yes for", Named(UseVerdict.Yes)), ("weakly for", Named(UseVerdict.Weakly)), ("no for", Named(UseVerdict.No)),
            }.Where(says => says.Uses.Length > 0).Select(says => $"{says.Says} {says.Uses}"),
        ];
        return new("verdict", "What this aeroplane is good for:", string.Join("; ", words) + ".");
    }

    private TablePart Uses() => new(
        "uses", "Verdict for each use", ["Use", "Verdict", "Because"],
        [.. Fit.Uses.Select(use => (IReadOnlyList<string>)[use.Name, use.Verdict.ToString().ToLowerInvariant(), use.Why])]);

    private SheetPart NotReached()
    {
        ManualResidual[] far = [.. Fit.Numbers.Where(number => !number.IsReached && !number.IsCompared)];
        if (far.Length == 0)
            return new NotePart("reached", "What the model cannot reach", "The model has every fitted number of the manual within a step of its rounding.");
        return new ListPart(
            "reached", "What the model cannot reach",
            [.. far.Select(number => number.Model is { } model
                ? Text($"{number.What}: the manual has {number.Written}, the model {Amount(model, number)}{Treated(number)}.")
                : $"{number.What}: the manual has {number.Written}; the model's aeroplane cannot do it, and nothing was bent for it.")]);
    }

    private static string Treated(ManualResidual number) => number.IsTakenOut
        ? "; it lies far outside the others of its kind and was taken out: look at it again"
        : number.Enlarged > 1.5
            ? Text($"; its kind counts with {number.Enlarged:0.#} times the rounding's error, so that it bends no other")
            : "";

    private TablePart Values() => new(
        "values", "Values: fitted, weakly fitted, assumed", ["Value", "Is", "Standard error", "How", "From"],
        [.. Fit.Values.Select(value => (IReadOnlyList<string>)
        [
            value.Unit.Length == 0 ? value.Name : $"{value.Name}, {value.Unit}", Digits(value.Value, value.StandardError), value.StandardError.ToString("g2", CultureInfo.InvariantCulture),
            value.Standing switch { FitStanding.Fitted => "fitted", FitStanding.WeaklyFitted => "weakly", _ => "assumed" }, value.From,
        ])]);

    private TablePart Numbers() => new(
        "numbers-of-the-manual", "The manual's numbers beside the model's", ["Number", "Row", "Manual", "Compared", "Model", "Within a step"],
        [.. Fit.Numbers.Select((number, at) => (IReadOnlyList<string>)
        [
            number.What, (at + 1).ToString(CultureInfo.InvariantCulture), number.Written, Amount(number.Given, number), number.Model is { } model ? Amount(model, number) : "none",
            (number.IsReached ? "yes" : "no") + (number.IsCompared ? ", compared only" : ""),
        ])]);

    private static NotePart Meaning() => new(
        "meaning", "How to read this",
        "Each number of the manual counts by its own rounding; within a step says whether the model is no further from it than the last digit's "
        + "step. A value that the numbers do not determine is what is typical of light trainers, "
        + "with the spread of the kind as its standard error. The values of the pilot are how the manual's test pilot lands; the aeroplane's "
        + "file does not hold them. An approach speed is compared with 1.3 times the stall, and a factor for flaps up with the model's own: "
        + "both are rules with a margin and are not fitted.");

    private static string Amount(double value, ManualResidual number) =>
        $"{Digits(value, number.Rounding / 5)} {number.Unit}".TrimEnd();

    /// <summary>As many decimals as the error leaves sense in.</summary>
    private static string Digits(double value, double error)
    {
        if (!(error > 0)) return value.ToString("0.###", CultureInfo.InvariantCulture);
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(error)), 0, 5);
        return value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
