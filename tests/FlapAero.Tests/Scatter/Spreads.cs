using FlapAero.Equations;

namespace FlapAero.Tests.Scatter;

/// <summary>Scatters round the reference landings, in plain numbers.</summary>
internal static class Spreads
{
    public static LandingInput Reference => ReferenceLandings.Cases[0].Input;

    public static double[] Row(LandingInput input) => LandingInput.Rows([input]).ToArray();

    /// <summary>Every input fixed at a landing's, but for those that are given.</summary>
    public static DistributionLaw[] Laws(LandingInput input, params (LandingVariable Variable, DistributionLaw Law)[] varied)
    {
        DistributionLaw[] laws = [.. Row(input).Select(DistributionLaw.Fixed)];
        foreach ((LandingVariable variable, DistributionLaw law) in varied)
            laws[(int)variable] = law;
        return laws;
    }

    /// <summary>The same at the public surface; of the gust and of the idle thrust by airspeed nothing is said.</summary>
    public static LandingSpread Inputs(LandingInput input) =>
        LandingSpread.Fixed(input).Only([.. LandingVariables.All.Where(variable => variable < LandingVariable.GustChange)]);

    public static LandingOutcome[] Fly(LandingSampler sampler, int count, ulong seed, int threads = 1) =>
        ScatterRun.Fly(sampler, count, seed, threads);
}
