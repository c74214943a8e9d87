namespace FlapAero.Equations;

/// <summary>A moment of a landing, SI; <see cref="Sink"/> positive down.</summary>
internal readonly record struct TrajectoryState(
    LandingStage Stage, double Time, double Distance, double Height, double Speed, double Sink, double Lift, double Thrust);
