using System.Collections.ObjectModel;
using System.Globalization;
using FlapAero.Equations;

namespace FlapAero;

/// <summary>Which scatters make sense: every value that may be drawn must be one that a landing takes.</summary>
internal static class ScatterCheck
{
    /// <summary>Speaks of drawn landings in the units of their distributions.</summary>
    public static LandingVoice Voice(IReadOnlyDictionary<LandingVariable, Distribution> inputs) =>
        new QuantityVoice(variable => inputs[variable].SpokenUnit);

    public static ReadOnlyDictionary<LandingVariable, Distribution> Inputs(IReadOnlyDictionary<LandingVariable, Distribution> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        foreach (LandingVariable variable in inputs.Keys.Except(LandingVariables.All))
            throw NoSuchInput(variable);
        Dictionary<LandingVariable, Distribution> all = new(inputs);
        foreach ((LandingVariable variable, Distribution usual) in LandingVariables.LeftOut)
            all.TryAdd(variable, usual);
        foreach (LandingVariable variable in LandingVariables.All)
        {
            if (!all.TryGetValue(variable, out Distribution? distribution) || distribution is null)
                throw Refused(variable, "no distribution", "any, fixed too", "The landing needs all of its inputs.");
            Kind(variable, distribution);
        }

        LandingVoice voice = Voice(all);
        foreach ((LandingVariable variable, Distribution distribution) in all.OrderBy(input => input.Key))
        {
            Edge(variable, distribution, distribution.Law.Minimum, voice);
            Edge(variable, distribution, distribution.Law.Maximum, voice);
        }

        Together(all, voice);
        return all.AsReadOnly();
    }

    public static RefusedInputException NoSuchInput(LandingVariable variable) => RefusedInputException.Of(
        nameof(variable), "input", ((int)variable).ToString(CultureInfo.InvariantCulture),
        string.Create(CultureInfo.InvariantCulture, $"0 to {LandingVariables.All.Count - 1}"), "A landing has no others.", variable);

    private static void Kind(LandingVariable variable, Distribution distribution)
    {
        string? wanted = LandingVariables.Kind(variable)?.Name;
        string? given = distribution.Kind?.Name;
        if (wanted != given)
            throw Refused(variable, $"a distribution of {Name(given)}", $"one of {Name(wanted)}", "That is what the input is.");

        static string Name(string? kind) => kind is null ? "plain numbers" : $"the quantity {kind}";
    }

    private static void Edge(LandingVariable variable, Distribution distribution, double edge, LandingVoice voice)
    {
        // Where there is no edge, any number may be drawn, the largest one too.
        if (LandingCheck.Fault(Math.Clamp(edge, -double.MaxValue, double.MaxValue), variable, voice) is not { } fault)
            return;
        throw double.IsInfinity(edge)
            ? Refused(variable, WithoutEdges(distribution), fault.Allowed, $"{fault.Why} It reaches every number: truncate it.")
            : distribution.Law.IsFixed ? fault : fault.Because($"The distribution reaches it: {distribution}.");
    }

    /// <summary>What no input forbids alone: the slowest approach must be faster than the wind, and make the steepest path in it.</summary>
    private static void Together(IReadOnlyDictionary<LandingVariable, Distribution> inputs, LandingVoice voice)
    {
        DistributionLaw wind = inputs[LandingVariable.Headwind].Law;
        foreach (double headwind in (double[])[wind.Minimum, wind.Maximum])
        {
            if (!double.IsFinite(headwind))
                throw Refused(
                    LandingVariable.Headwind, WithoutEdges(inputs[LandingVariable.Headwind]), "a distribution with edges: truncate it",
                    "It reaches winds faster than the approach.");
            var corner = new LandingInput
            {
                Headwind = headwind,
                ThresholdSpeed = inputs[LandingVariable.ThresholdSpeed].Law.Minimum,
                PathAngleDegrees = inputs[LandingVariable.PathAngle].Law.Maximum,
            };
            if (LandingCheck.FaultOfWhole(corner, voice) is { } fault)
                throw fault.Because("The distributions reach it together.");
        }
    }

    private static string WithoutEdges(Distribution distribution) => $"a {distribution.Family} without edges";

    private static RefusedInputException Refused(LandingVariable variable, string given, string allowed, string why) =>
        Require.Refused(variable.ToString(), LandingVariables.Words(variable), given, allowed, why);
}
