using System.Globalization;
using FlapAero.Equations;

namespace FlapAero;

/// <summary>Which scatters make sense: every value that may be drawn must be one that a landing takes.</summary>
internal static class ScatterCheck
{
    /// <summary>Speaks of drawn landings in the units of their distributions.</summary>
    public static LandingVoice Voice(LandingSpread inputs) => new QuantityVoice(variable => inputs[variable]!.GivenUnit);

    public static LandingSpread Inputs(LandingSpread inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        LandingSpread all = inputs.Over(LandingVariables.LeftOut);
        foreach (LandingVariable variable in LandingVariables.All)
        {
            if (all[variable] is null)
                throw Refused(variable, "no distribution", "any, fixed too", "The landing needs all of its inputs.");
        }

        LandingVoice voice = Voice(all);
        foreach (LandingVariable variable in LandingVariables.All)
        {
            Edge(variable, all[variable]!, all[variable]!.Law.Minimum, voice);
            Edge(variable, all[variable]!, all[variable]!.Law.Maximum, voice);
        }

        Together(all, voice);
        return all;
    }

    public static RefusedInputException NoSuchInput(LandingVariable variable) => RefusedInputException.Of(
        nameof(variable), "input", ((int)variable).ToString(CultureInfo.InvariantCulture),
        string.Create(CultureInfo.InvariantCulture, $"0 to {LandingVariables.All.Count - 1}"), "A landing has no others.", variable);

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
    private static void Together(LandingSpread inputs, LandingVoice voice)
    {
        DistributionLaw wind = inputs.Headwind!.Law;
        foreach (double headwind in (double[])[wind.Minimum, wind.Maximum])
        {
            if (!double.IsFinite(headwind))
                throw Refused(
                    LandingVariable.Headwind, WithoutEdges(inputs.Headwind!), "a distribution with edges: truncate it",
                    "It reaches winds faster than the approach.");
            var corner = new LandingInput
            {
                Headwind = headwind,
                ThresholdSpeed = inputs.ThresholdSpeed!.Law.Minimum,
                PathAngleDegrees = inputs.PathAngle!.Law.Maximum,
            };
            if (LandingCheck.FaultOfWhole(corner, voice) is { } fault)
                throw fault.Because("The distributions reach it together.");
        }
    }

    private static string WithoutEdges(Distribution distribution) => $"a {distribution.Family} without edges";

    private static RefusedInputException Refused(LandingVariable variable, string given, string allowed, string why) =>
        Require.Refused(variable.ToString(), LandingVariables.Words(variable), given, allowed, why);
}
