namespace FlapAero.Equations;

/// <summary>
/// A moment of a landing, SI; <see cref="Sink"/> positive down, <see cref="Headwind"/> w and <see cref="WindRate"/> ẇ as the wing meets them.
/// </summary>
internal readonly record struct TrajectoryState(
    LandingStage Stage, double Time, double Distance, double Height, double Speed, double Sink, double Lift, double Thrust,
    double Drag, double Headwind, double WindRate);
