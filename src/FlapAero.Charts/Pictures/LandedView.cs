using UnitsNet;

namespace FlapAero.Charts;

/// <summary>A landing to be drawn, with the configuration that it was computed for. Immutable.</summary>
public sealed record LandedView
{
    private LandedView(string name, Configuration configuration, LandingResult result) =>
        (Name, Configuration, Result) = (name, configuration, result);

    /// <summary>The name of the landing.</summary>
    public string Name { get; }

    /// <summary>What landed.</summary>
    public Configuration Configuration { get; }

    /// <summary>How it went.</summary>
    public LandingResult Result { get; }

    /// <summary>A landing to be drawn.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="configuration">What landed.</param>
    /// <param name="result">How it went.</param>
    /// <returns>The view.</returns>
    public static LandedView Of(string name, Configuration configuration, LandingResult result)
    {
        Require.Words(name, "name of the landing");
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(result);
        return new LandedView(name.Trim(), configuration, result);
    }

    /// <summary>Three moments: the round-out begins, half of its time is over, the wheels touch.</summary>
    internal IReadOnlyList<LandingPoint> RoundOut
    {
        get
        {
            LandingPoint[] air =
                [.. Result.Trajectory.Where(point => point.Stage is LandingStage.HoldOff or LandingStage.Settling)];
            double half = (air[0].Time.Seconds + air[^1].Time.Seconds) / 2;
            return [air[0], air.MinBy(point => Math.Abs(point.Time.Seconds - half))!, air[^1]];
        }
    }

    internal Angle AttitudeAt(LandingPoint moment) => ForcesAtAMoment.AttitudeAt(Configuration, moment).Attitude;
}
