using UnitsNet;

namespace FlapAero;

/// <summary>A balloon out of the round-out, in numbers. Immutable.</summary>
public sealed class BalloonDrill
{
    internal BalloonDrill(Speed lost, double margin, Duration timeToStall, Speed sink, Speed usualSink) =>
        (SpeedLost, Margin, TimeToStall, SinkAtTheGround, UsualSink) = (lost, margin, timeToStall, sink, usualSink);

    /// <summary>What height and drag have taken at the top.</summary>
    public Speed SpeedLost { get; }

    /// <summary>What is left there over the stall, as a share of the stalling speed.</summary>
    public double Margin { get; }

    /// <summary>How long the closed throttle takes from there to the stall.</summary>
    public Duration TimeToStall { get; }

    /// <summary>Sink at the runway if a tenth of the lift is missing on the way down.</summary>
    public Speed SinkAtTheGround { get; }

    /// <summary>Sink of the briefed touchdown.</summary>
    public Speed UsualSink { get; }
}

/// <summary>A touchdown forced on too early, in numbers; how high it bounces the model cannot say. Immutable.</summary>
public sealed class BounceDrill
{
    internal BounceDrill(double carriedNoseDown, double liftAvailable, Length riseInASecond) =>
        (CarriedNoseDown, LiftAvailable, RiseInASecond) = (carriedNoseDown, liftAvailable, riseInASecond);

    /// <summary>Share of the weight that the wing still carries with the nose down.</summary>
    public double CarriedNoseDown { get; }

    /// <summary>Lift at the attitude of a normal touchdown, as a share of the weight.</summary>
    public double LiftAvailable { get; }

    /// <summary>What that lift raises the aeroplane by in its first second.</summary>
    public Length RiseInASecond { get; }
}

/// <summary>Drift in the day's wind across, in numbers: its gusts count. Immutable.</summary>
public sealed class DriftDrill
{
    internal DriftDrill(Speed crosswind, Angle crab, Duration floats, Length drift) =>
        (Crosswind, Crab, FloatLasts, Drift) = (crosswind, crab, floats, drift);

    /// <summary>The wind across in the gusts, positive from the right.</summary>
    public Speed Crosswind { get; }

    /// <summary>The crab on final, positive with the nose to the right.</summary>
    public Angle Crab { get; }

    /// <summary>How long round-out and float last.</summary>
    public Duration FloatLasts { get; }

    /// <summary>How far the wind carries it sideways in that time, wings level and crab taken out: at most.</summary>
    public Length Drift { get; }
}

/// <summary>A go-around from idle, in one configuration and one air. Immutable.</summary>
public sealed class GoAroundCase
{
    internal GoAroundCase(Configuration configuration, Airspeed airspeed, Outcome<GoAround> goAround) =>
        (Configuration, Airspeed, GoAround) = (configuration, airspeed, goAround);

    /// <summary>Aeroplane, flap and mass.</summary>
    public Configuration Configuration { get; }

    /// <summary>The airspeed that is held, in its air.</summary>
    public Airspeed Airspeed { get; }

    /// <summary>The go-around, or why there is no number for it.</summary>
    public Outcome<GoAround> GoAround { get; }
}
