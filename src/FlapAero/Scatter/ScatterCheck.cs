using System.Collections.ObjectModel;
using FlapAero.Equations;

namespace FlapAero;

/// <summary>Which scatters make sense: every value that may be drawn must be one that a landing takes.</summary>
internal static class ScatterCheck
{
    public static ReadOnlyDictionary<LandingVariable, Distribution> Inputs(IReadOnlyDictionary<LandingVariable, Distribution> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        foreach (LandingVariable variable in inputs.Keys.Except(LandingVariables.All))
            throw NoSuchInput(variable);
        // What a landing without a gust needs not say.
        Dictionary<LandingVariable, Distribution> all = new(inputs);
        foreach ((LandingVariable variable, Distribution calm) in LandingVariables.Calm)
            all.TryAdd(variable, calm);
        foreach (LandingVariable variable in LandingVariables.All)
        {
            if (!all.TryGetValue(variable, out Distribution? distribution) || distribution is null)
                throw Refused(variable, "no distribution is given, which is refused; allowed is any, fixed too. The landing needs all of its inputs.");
            Kind(variable, distribution);
            Edge(variable, distribution, Finite(distribution.Law.Minimum));
            Edge(variable, distribution, Finite(distribution.Law.Maximum));
        }

        Together(all);
        return all.AsReadOnly();
    }

    public static ArgumentOutOfRangeException NoSuchInput(LandingVariable variable) =>
        new(nameof(variable), $"input: {(int)variable} is refused; allowed is 0 to {LandingVariables.All.Count - 1}. A landing has no others.");

    private static void Kind(LandingVariable variable, Distribution distribution)
    {
        string? wanted = LandingVariables.Kind(variable)?.Name;
        string? given = distribution.Kind?.Name;
        if (wanted != given)
            throw Refused(
                variable, $"a distribution of {Name(given)} is refused; allowed is one of {Name(wanted)}. That is what the input is.");

        static string Name(string? kind) => kind is null ? "plain numbers" : $"the quantity {kind}";
    }

    private static void Edge(LandingVariable variable, Distribution distribution, double edge)
    {
        if (LandingVariables.Fault(variable, edge) is not { } fault)
            return;
        string reach = distribution.Law.IsFixed ? "" : Math.Abs(edge) == double.MaxValue
            ? $" A {distribution.Family} without edges reaches every number: truncate it."
            : $" The distribution reaches it: {distribution}.";
        throw Refused(variable, $"{fault}{reach}");
    }

    /// <summary>What no input forbids alone: the slowest approach must be faster than the wind, and make the steepest path in it.</summary>
    private static void Together(IReadOnlyDictionary<LandingVariable, Distribution> inputs)
    {
        DistributionLaw wind = inputs[LandingVariable.Headwind].Law;
        foreach (double headwind in (double[])[wind.Minimum, wind.Maximum])
        {
            if (!double.IsFinite(headwind))
                throw Refused(LandingVariable.Headwind, "a Normal without edges is refused; allowed is a distribution with edges: truncate it. It reaches winds faster than the approach.");
            var corner = new LandingInput
            {
                Headwind = headwind,
                ThresholdSpeed = inputs[LandingVariable.ThresholdSpeed].Law.Minimum,
                PathAngleDegrees = inputs[LandingVariable.PathAngle].Law.Maximum,
            };
            if (LandingCheck.FaultOfWhole(corner) is { } fault)
                throw Refused(LandingVariable.ThresholdSpeed, $"with the headwind: {fault} The distributions reach it together.");
        }
    }

    private static double Finite(double edge) => Math.Clamp(edge, -double.MaxValue, double.MaxValue);

    private static ArgumentException Refused(LandingVariable variable, string fault) =>
        new($"{LandingVariables.Words(variable)}: {fault}", variable.ToString());
}
