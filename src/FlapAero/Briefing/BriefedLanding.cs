using UnitsNet;

namespace FlapAero;

/// <summary>How a landing stands to its runway, judged in tens of metres: distances rounded up, the runway down, as a sheet prints them.</summary>
public enum RunwayFit
{
    /// <summary>The distance with its margin fits, and the wheels touch within the first third.</summary>
    Fits,

    /// <summary>The distance with its margin fits, but the wheels touch past the first third: the gate there says go around.</summary>
    TouchesPastFirstThird,

    /// <summary>The distance fits, its margin does not.</summary>
    NotWithMargin,

    /// <summary>The aeroplane does not stop on the runway.</summary>
    DoesNotStop,
}

/// <summary>A landing from the height over the threshold to the stop, held against the runway. Immutable.</summary>
public sealed class BriefedLanding
{
    internal BriefedLanding(
        LandingSetup setup, LandingResult result, PlannedDistance planned, BriefingRequest request)
    {
        Setup = setup;
        Result = result;
        Planned = planned;
        WithMargin = planned.Length * request.Margin.Factor;
        Length available = RoundedDown(request.Runway.LengthAvailable), third = RoundedDown(request.Runway.EndOfFirstThird);
        Fit = RoundedUp(planned.Length) > available ? RunwayFit.DoesNotStop
            : RoundedUp(WithMargin) > available ? RunwayFit.NotWithMargin
            : RoundedUp(result.TouchdownDistance) > third ? RunwayFit.TouchesPastFirstThird
            : RunwayFit.Fits;
        RunwayNeeded = Length.FromMeters(Math.Max(WithMargin.Meters, result.TouchdownDistance.Meters * 3));
    }

    /// <summary>The landing as flown: the gust additive carried over the threshold, the wind as planned with.</summary>
    public LandingSetup Setup { get; }

    /// <summary>h_t, wheels over the threshold: how a pilot answers the float. The lower, the nearer the wheels touch.</summary>
    public Length ThresholdHeight => Setup.Technique.ThresholdHeight;

    /// <summary>Where that path meets the runway, past the threshold: the point to aim at.</summary>
    public Length AimingPoint => FinalPath.AimingPoint(ThresholdHeight, Setup.Technique.PathAngle);

    /// <summary>What the model makes of it on the runway's surface.</summary>
    public LandingResult Result { get; }

    /// <summary>From the threshold to where the round-out begins.</summary>
    public Length ToRoundOut => Result.Stage(LandingStage.Approach).Length;

    /// <summary>From the beginning of the round-out to the touchdown.</summary>
    public Length Float => Result.TouchdownDistance - ToRoundOut;

    /// <summary>The whole distance that is planned with: the model's, or the rule's where that is longer.</summary>
    public PlannedDistance Planned { get; }

    /// <summary>The planned distance times the margin.</summary>
    public Length WithMargin { get; }

    /// <summary>How it stands to the runway.</summary>
    public RunwayFit Fit { get; }

    /// <summary>The shortest runway on which the margin is kept and the wheels touch within the first third.</summary>
    public Length RunwayNeeded { get; }

    /// <summary>A distance that is used up, to the next step of <see cref="BriefingTechnique.DistanceStep"/>.</summary>
    /// <remarks>Formula: up; a value that is a step but for its last bits is that step. Range: any. Source: [common-practice].</remarks>
    /// <param name="distance">The distance.</param>
    /// <returns>The rounded distance.</returns>
    /// <exception cref="RefusedInputException">A distance that is not finite.</exception>
    /// <example><code>BriefedLanding.RoundedUp(Length.FromMeters(461)).Meters // 470.0</code></example>
    public static Length RoundedUp(Length distance) => Rounded(distance, step => Math.Ceiling(step - 1e-6));

    /// <summary>A distance that is there, to the step before.</summary>
    /// <remarks>Formula: down, as <see cref="RoundedUp"/>. Range: any. Source: [common-practice].</remarks>
    /// <param name="distance">The distance.</param>
    /// <returns>The rounded distance.</returns>
    /// <exception cref="RefusedInputException">A distance that is not finite.</exception>
    /// <example><code>BriefedLanding.RoundedDown(Length.FromMeters(469)).Meters // 460.0</code></example>
    public static Length RoundedDown(Length distance) => Rounded(distance, step => Math.Floor(step + 1e-6));

    private static Length Rounded(Length distance, Func<double, double> round)
    {
        double step = BriefingTechnique.DistanceStep.Meters;
        return Length.FromMeters(step * round(Require.In(distance, UnitsNet.Units.LengthUnit.Meter, "distance") / step));
    }
}
