using CsCheck;
using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Landings of light aeroplanes, flaps up and down, drawn over the ranges of the reference cases, with an idle thrust
/// that falls with airspeed and no gust; corners are other tests'.</summary>
internal static class LandingGenerators
{
    private static readonly double[] Low =
        [650, 11, 8.5, 0.6, 0.024, 0.65, 1.4, 0.95, -3, 15.24, 26, 2.5, 1.5, 0.2, 0.75, 0.1, 0, -105, 0.75, 0.5, 0.2, 0.02, 0.15, -0.019, 0, 0, 5, -6, -0.2, 0];

    private static readonly double[] High =
        [1250, 18, 13.2, 2.3, 0.1, 0.85, 2.3, 1.245, 9, 15.24, 50, 5.5, 3, 0.78, 0.95, 24, 12, 143, 1.95, 0.8, 0.6, 0.06, 0.45, 0.019, 0, 0, 5, 0, 0, 0];

    public static Gen<LandingInput> Any { get; } = Gen.Double.Unit.Array[LandingInput.Count].Select(
        shares => LandingInput.FromRow([.. shares.Select((share, i) => Low[i] + (High[i] - Low[i]) * share)]));

    /// <summary>The landing at shares of each input's range.</summary>
    public static LandingInput Between(Func<double> share) =>
        LandingInput.FromRow([.. Low.Zip(High, (low, high) => low + (high - low) * share())]);

    /// <summary>Those that come to a stop.</summary>
    public static Gen<LandingInput> Landed { get; } = Any.Where(input => LandingSolver.Solve(input).Refusal == LandingRefusal.None);
}
