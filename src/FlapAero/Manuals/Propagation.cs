using FlapAero.Equations.Fitting;
using MathNet.Numerics.LinearAlgebra;

namespace FlapAero.Manuals;

/// <summary>What follows from a fit, with its standard error and what determined it.</summary>
internal sealed class Propagation
{
    private const double SlopeStep = 0.02;
    private const double Counts = 0.15;

    private readonly FitResult _fit;
    private readonly NumberKind[] _kinds;
    private readonly Trial _at;
    private readonly (Trial? Trial, double Step)[] _beside;

    public Propagation(ManualProblem problem, FitResult fit, NumberKind[] kinds)
    {
        (_fit, _kinds) = (fit, kinds);
        _at = problem.TrialAt(fit.Unknowns)!;
        _beside = new (Trial?, double)[fit.Unknowns.Length];
        for (int i = 0; i < _beside.Length; i++)
        {
            double step = fit.Unknowns[i] + SlopeStep <= problem.Highest[i] ? SlopeStep : -SlopeStep;
            double[] moved = [.. fit.Unknowns];
            moved[i] += step;
            _beside[i] = (problem.TrialAt(moved), step);
        }
    }

    /// <summary>Value, standard error, the share of the typical spread that is left, and the kinds of numbers that determined it.</summary>
    public (double Value, double Error, double Left, string From) Of(Derived derived)
    {
        double value = Try(derived, _at);
        double[] slopes = [.. _beside.Select(beside => (Try(derived, beside.Trial) - value) / beside.Step)];
        if (!double.IsFinite(value) || slopes.Any(slope => !double.IsFinite(slope))) return (value, double.NaN, 1, "");
        double typical = Math.Sqrt(slopes.Sum(slope => slope * slope));
        double error = _fit.Propagated(slopes);
        return (value, error, typical > 0 ? error / typical : 1, From(slopes));
    }

    private static double Try(Derived derived, Trial? trial)
    {
        try
        {
            return trial is null ? double.NaN : derived.Of(trial);
        }
        catch (RefusedInputException)
        {
            return double.NaN;
        }
    }

    /// <summary>The kinds whose errors make up most of the value's own: Σ (s C Jᵀ)² over a kind, of s C s.</summary>
    private string From(double[] slopes)
    {
        Vector<double> gains = _fit.Slopes * (_fit.Covariance * Vector<double>.Build.Dense(slopes));
        double all = Math.Max(gains * gains, 1e-300);
        string[] words =
        [
            .. _kinds.Select((kind, i) => (Kind: kind, Index: i)).GroupBy(pair => pair.Kind)
                .Select(group => (Kind: group.Key, Count: group.Count(pair => gains[pair.Index] != 0), Share: group.Sum(pair => gains[pair.Index] * gains[pair.Index]) / all))
                .Where(group => group.Share > Counts).OrderByDescending(group => group.Share).Select(group => Words(group.Kind, group.Count)),
        ];
        return string.Join(" and ", words);
    }

    private static string Words(NumberKind kind, int count)
    {
        string name = kind switch
        {
            NumberKind.Stall => "stalling speed",
            NumberKind.GlideSpeed => "best glide speed",
            NumberKind.GlideRatio => "glide ratio",
            NumberKind.Level => "engine speed in level flight",
            NumberKind.Climb => "rate of climb",
            NumberKind.GroundRoll => "ground roll",
            _ => "landing from 50 ft",
        };
        return count == 1 ? $"the {name}" : FormattableString.Invariant($"{count} {Plural(name)}");
    }

    private static string Plural(string name) => name switch
    {
        "rate of climb" => "rates of climb",
        "engine speed in level flight" => "engine speeds in level flight",
        "landing from 50 ft" => "landings from 50 ft",
        _ => name + "s",
    };
}
