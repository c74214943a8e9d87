using System.Globalization;
using FlapAero.Equations.Fitting;
using FlapAero.Manuals;

namespace FlapAero;

/// <summary>
/// The aeroplane that goes with a manual's numbers: each value with its standard error, each number of the manual beside the
/// aeroplane's, and what it is good for. A training aid: the approved manual, local rules and a qualified instructor decide. Immutable.
/// </summary>
public sealed class ManualFit
{
    // The share of the typical spread that is left: below, the manual's numbers determine a value; above, they say nothing of it.
    private const double Determined = 0.4;
    private const double Undetermined = 0.85;

    private readonly Trial _trial;
    private readonly Dictionary<string, FittedValue> _byName;

    private ManualFit(Manual manual, Trial trial, FittedValue[] values, ManualResidual[] numbers, ManualUse[] uses)
    {
        (Manual, _trial, Values, Numbers, Uses) = (manual, trial, values, numbers, uses);
        _byName = values.ToDictionary(value => value.Name, StringComparer.Ordinal);
        Json = AeroplaneWriter.Write(this);
    }

    /// <summary>The manual.</summary>
    public Manual Manual { get; }

    /// <summary>The aeroplane.</summary>
    public Aeroplane Aeroplane => _trial.Aeroplane;

    /// <summary>The values of the aeroplane's file that are not the manual's own, then those of the manual's pilot.</summary>
    public IReadOnlyList<FittedValue> Values { get; }

    /// <summary>Every number of the manual beside the aeroplane's.</summary>
    public IReadOnlyList<ManualResidual> Numbers { get; }

    /// <summary>What the aeroplane is good for.</summary>
    public IReadOnlyList<ManualUse> Uses { get; }

    /// <summary>The aeroplane's file, each value with where it comes from.</summary>
    public string Json { get; }

    internal FittedValue Value(string name) => _byName[name];

    /// <summary>The aeroplane that goes with a manual.</summary>
    /// <remarks>
    /// Formula: the least Σ((y − f)/σ)² + Σz², y the manual's numbers, σ the error of their rounding, f this library's own laws, z the
    /// unknowns in typical spreads from their typical values. Standard errors from (JᵀJ + 1)⁻¹. Range: any manual that can be read.
    /// Source: [anderson-itf], [canonical-landing] for the laws; the typical values are this project's own.
    /// </remarks>
    /// <param name="manual">The manual.</param>
    /// <returns>The fit, or why the numbers make no aeroplane.</returns>
    /// <exception cref="ArgumentNullException">No manual.</exception>
    /// <example><code>ManualFit.Of(DemoManuals.TrainerH4).Value.Aeroplane.FlapsUp.Lift.MaximumLiftCoefficient // 1.39</code></example>
    public static Outcome<ManualFit> Of(Manual manual)
    {
        ArgumentNullException.ThrowIfNull(manual);
        ManualContent content = manual.Content;
        PrintedCalibration[] calibrations = [.. content.Settings.Select(setting => new PrintedCalibration(setting))];
        var unknowns = new Unknowns(content, calibrations);
        IReadOnlyList<ManualNumber> numbers = new ManualNumbers(content, calibrations).All();
        var problem = new ManualProblem(unknowns, numbers);
        double[] start = new double[unknowns.All.Count];
        if (problem.TrialAt(start) is null) return new("Masses, wing and flap settings make no light aeroplane even with typical values.");
        double[] own = problem.Errors(start);
        (FitResult fit, double[] used) = GradedFit.Solve(
            problem, unknowns.Starts(), own, [.. numbers.Select(number => (int)number.Kind)], Loose);
        Trial found = problem.TrialAt(fit.Unknowns)!;
        var propagation = new Propagation(problem, fit, [.. numbers.Select(number => number.Kind)]);
        FittedValue[] values = [.. Derived.Values(content).Select(derived => Fitted(propagation, derived))];
        ManualResidual[] residuals = [.. numbers.Select((number, i) => new ManualResidual(number, fit.Predicted[i], own[i], used[i]))];
        var made = new ManualFit(manual, found, values, residuals, [.. Derived.Uses(content).Select(use => Use(propagation, use)), Attitude]);
        try
        {
            AeroplaneFile.Parse(made.Json, "the fitted aeroplane");
        }
        catch (AeroplaneFileException refused)
        {
            return new($"The manual's numbers together make an aeroplane that is none: {refused.Message.ReplaceLineEndings(" ")}");
        }

        return new(made);
    }

    /// <summary>The pilot who lands as the manual's tables do.</summary>
    /// <param name="flaps">One of the aeroplane's settings.</param>
    /// <returns>The pilot.</returns>
    /// <exception cref="RefusedInputException">A setting of another aeroplane.</exception>
    /// <remarks>Formula: <see cref="LandingPilot.Usual"/> with the fitted round-out, touchdown and braking. Range: any setting. Source: [canonical-landing].</remarks>
    /// <example><code>ManualFit.Of(DemoManuals.TrainerH4) is { Value: var fit } ? fit.PilotWith(fit.Aeroplane.FullFlaps).SpeedMultiple : 0 // 1.3</code></example>
    public LandingPilot PilotWith(FlapSetting flaps)
    {
        ArgumentNullException.ThrowIfNull(flaps);
        int index = Aeroplane.FlapSettings.ToList().IndexOf(flaps);
        return index >= 0 ? _trial.Pilot(index)
            : throw Require.RefusedWhole(nameof(flaps), $"{Aeroplane.Name} has no flap setting '{flaps}' of its own.");
    }

    // Landing tables first loosely: they hang on everything, and a model that cannot follow them must not bend the rest.
    private static readonly Dictionary<int, double> Loose = new()
    {
        [(int)NumberKind.GroundRoll] = 60,
        [(int)NumberKind.FromFiftyFeet] = 60,
    };

    private static ManualUse Attitude { get; } =
        new("attitude", UseVerdict.No, "a manual gives no angle of attack: measure pitch attitudes in level flight at two speeds");

    private static FittedValue Fitted(Propagation propagation, Derived derived)
    {
        (double value, double error, double left, string from) = propagation.Of(derived);
        FitStanding standing = left < Determined ? FitStanding.Fitted : left < Undetermined ? FitStanding.WeaklyFitted : FitStanding.Assumed;
        return new(derived.Name, derived.Unit, value, error, standing, standing == FitStanding.Assumed ? derived.Why : from);
    }

    private static ManualUse Use(Propagation propagation, (string Use, Derived Number, double Good, double Weak, bool IsShare) use)
    {
        (double value, double error, double left, _) = propagation.Of(use.Number);
        if (!double.IsFinite(value) || !double.IsFinite(error)) return new(use.Use, UseVerdict.No, $"{use.Number.Name}: the fitted aeroplane cannot do it");
        double measure = use.IsShare ? error / Math.Abs(value) : error;
        UseVerdict verdict = left >= Undetermined || measure >= use.Weak ? UseVerdict.No : measure >= use.Good ? UseVerdict.Weakly : UseVerdict.Yes;
        string typical = left >= Undetermined ? "; this is what is typical, no number of the manual determines it" : "";
        string form = error < 0.1 ? "0.##" : "0.#";
        string known = $"{value.ToString(form, CultureInfo.InvariantCulture)} ± {error.ToString(form, CultureInfo.InvariantCulture)}";
        return new(use.Use, verdict, $"{use.Number.Name} {known} {use.Number.Unit}{typical}");
    }

    /// <summary>The aeroplane and how well it is known.</summary>
    public override string ToString() => $"{Aeroplane.Name}: {string.Join(", ", Uses)}";
}
