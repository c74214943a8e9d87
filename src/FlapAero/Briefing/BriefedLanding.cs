using UnitsNet;

namespace FlapAero;

/// <summary>How a landing stands to its runway, judged in whole metres: distances rounded up, the runway down, as a sheet prints them.</summary>
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
        double available = Math.Floor(request.Runway.LengthAvailable.Meters), third = Math.Floor(request.Runway.EndOfFirstThird.Meters);
        Fit = Math.Ceiling(planned.Length.Meters) > available ? RunwayFit.DoesNotStop
            : Math.Ceiling(WithMargin.Meters) > available ? RunwayFit.NotWithMargin
            : Math.Ceiling(result.TouchdownDistance.Meters) > third ? RunwayFit.TouchesPastFirstThird
            : RunwayFit.Fits;
        RunwayNeeded = Length.FromMeters(Math.Max(WithMargin.Meters, result.TouchdownDistance.Meters * 3));
    }

    /// <summary>The landing as flown: the gust additive carried over the threshold, the wind as planned with.</summary>
    public LandingSetup Setup { get; }

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
}
