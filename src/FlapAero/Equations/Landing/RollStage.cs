namespace FlapAero.Equations;

/// <summary>Stages 5 and 6: a roll with one lift coefficient and one friction coefficient, per mass, down to an airspeed.</summary>
internal struct RollStage(
    double halfDensityAreaPerMass, double lift, double drag, double friction, double slope, double headwind, double endSpeed)
    : IStage<ScalarLane, PathMotion<ScalarLane>>
{
    private readonly double _area = halfDensityAreaPerMass;
    private readonly double _lift = lift;
    private readonly double _drag = drag;
    private readonly double _friction = friction;
    private readonly double _headwind = headwind;

    /// <summary>Whether the law is that above <see cref="LiftOffSpeed"/> at any speed, so that a step sees no kink.</summary>
    private bool _carried;

    // g sin ε and g cos ε from tan ε.
    private readonly double _down = StandardConstants.Gravity * slope / Math.Sqrt(1 + slope * slope);
    private readonly double _onto = StandardConstants.Gravity / Math.Sqrt(1 + slope * slope);

    private AtNodes<(double Thrust, double GroundSpeed)> _nodes;

    public static bool HasEnd => true;

    /// <summary>The airspeed that ends the stage.</summary>
    public double EndSpeed { get; private set; } = endSpeed;

    /// <summary>The airspeed at which the wing carries all of the weight; none where it never does.</summary>
    public readonly double LiftOffSpeed => _lift > 0 ? Math.Sqrt(_onto / (_area * _lift)) : double.PositiveInfinity;

    /// <summary>The part of the stage in which the wing carries all of the weight, down to an airspeed.</summary>
    public readonly RollStage CarriedTo(double speed)
    {
        RollStage carried = this;
        (carried._carried, carried.EndSpeed) = (true, speed);
        return carried;
    }

    /// <summary>Deceleration = constant + squared · V², on the side of the lift-off speed and of V = 0 where <paramref name="speed"/> is.</summary>
    public readonly (double Constant, double Squared) Deceleration(double speed, double thrust)
    {
        double drag = Math.CopySign(_drag, speed);
        return _carried || speed > LiftOffSpeed
            ? (_down - thrust, _area * drag)
            : (_friction * _onto + _down - thrust, _area * (drag - _friction * _lift));
    }

    /// <summary>What slows it, per mass: drag, friction, the weight's part down the slope; less the thrust they are the deceleration.</summary>
    public readonly (double Drag, double Friction, double Grade) Slowing(double speed)
    {
        double square = speed * speed;
        double friction = _carried || speed > LiftOffSpeed ? 0 : _friction * (_onto - _area * _lift * square);
        return (_area * Math.CopySign(_drag, speed) * square, friction, _down);
    }

    public void Prepare(int node, ScalarLane time, in Thrust<ScalarLane> thrust) => _nodes[node].Thrust = thrust.At(time).Value;

    public PathMotion<ScalarLane> Rates(int node, in PathMotion<ScalarLane> motion)
    {
        double speed = motion.Speed.Value;
        (double constant, double squared) = Deceleration(speed, _nodes[node].Thrust);
        _nodes[node].GroundSpeed = speed - _headwind;
        return new(-(constant + squared * speed * speed));
    }

    public readonly ScalarLane GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly ScalarLane End(int node, in PathMotion<ScalarLane> motion) => EndSpeed - motion.Speed.Value;

    public readonly ScalarLane EndRate(
        int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates) => -rates.Speed.Value;

    public readonly ScalarLane EndSize(in PathMotion<ScalarLane> motion) => 1 + Math.Abs(motion.Speed.Value);

    public readonly ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) => ScalarLane.True;

    // Of a size of at least 1 m/s: the airspeed itself may pass through zero.
    public readonly ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) =>
        Math.Abs(error.Speed.Value) / (1 + Math.Abs(motion.Speed.Value));
}
