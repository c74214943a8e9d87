using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>A landing in a power law of wind, and in a gust, with its moments where it landed.</summary>
internal sealed record WindyLanding(LandingInput Input, LandingOutcome Outcome, IReadOnlyList<TrajectoryState> States)
{
    /// <summary>The wind's mean at 10 m grows with a power of the height.</summary>
    public static WindyLanding Fly(
        LandingInput input, double atTenMetres, double exponent, double gust, double start, double length, bool brakes = false,
        double interval = 1e9, double tolerance = 1e-9)
    {
        double Law(double height) => WindLaws.PowerLaw(atTenMetres, 10, exponent, height);
        LandingInput met = input with
        {
            Headwind = Law(Math.Min(input.ThresholdHeight + input.WingHeight, WindField<ScalarLane>.Ceiling)),
            GustChange = gust,
            GustStart = start,
            GustLength = length > 0 ? length : LandingInput.CalmGustLength,
        };
        return Fly(met, new(Law, brakes), interval, tolerance);
    }

    public static WindyLanding Fly(LandingInput input, LandingManner manner, double interval = 1e9, double tolerance = 1e-9)
    {
        LandingOutcome outcome = LandingSolver.Solve(input, tolerance, manner: manner);
        return new(
            input, outcome,
            outcome.Refusal == LandingRefusal.None ? TrajectorySampler.Sample(input, outcome, interval, tolerance, manner) : []);
    }
}
