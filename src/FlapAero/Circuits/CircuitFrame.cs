using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// The frame that circuits are solved in: right-hand, threshold at the origin, landing along x. A left-hand circuit is the
/// mirror image in the mirrored wind; this is the only place that knows.
/// </summary>
internal sealed class CircuitFrame
{
    private readonly double _side;
    private readonly double _runway;

    public CircuitFrame(CircuitPlan plan)
    {
        _side = plan.Hand == CircuitHand.Right ? 1 : -1;
        _runway = plan.Runway.Direction.Radians;
        double from = (plan.Wind.From - plan.Runway.Direction).Radians;
        double speed = plan.Wind.Speed.MetersPerSecond;
        WindX = -speed * Math.Cos(from);
        WindY = -speed * Math.Sin(from) * _side;
    }

    /// <summary>Where the wind blows to, along the landing.</summary>
    public double WindX { get; }

    /// <summary>Where the wind blows to, towards the circuit's side.</summary>
    public double WindY { get; }

    public CircuitPoint Point(FlightState state, string leg) => new(
        Length.FromMeters(state.X), Length.FromMeters(0 + state.Y * _side),
        Length.FromMeters(state.Height).ToUnit(LengthUnit.Foot), Duration.FromSeconds(state.Time), Heading(state.Heading), leg);

    /// <summary>An angle that is positive to the right here, as it looks outside.</summary>
    public Angle ToTheRight(double radians) => Angle.FromRadians(radians * _side).ToUnit(AngleUnit.Degree);

    private Angle Heading(double heading)
    {
        double degrees = Angle.FromRadians(_runway + _side * heading).Degrees % 360;
        return Angle.FromDegrees(degrees < 0 ? degrees + 360 : degrees);
    }
}
