using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// Stages 5 and 6: a roll with one lift coefficient and one friction coefficient, per mass. What moves is the speed over the ground u,
/// u̇ = (T − D)/m − g sin ε − μ F_N/m, and the airspeed is u + w.
/// </summary>
internal struct RollStage : IStage<ScalarLane, PathMotion<ScalarLane>>
{
    private readonly double _area;
    private readonly double _lift;
    private readonly double _drag;
    private readonly double _friction;
    private readonly ThrustLaw<ScalarLane> _thrust;
    private readonly WindField<ScalarLane> _wind;
    private readonly double _wing;

    // g sin ε and g cos ε from tan ε.
    private readonly double _down;
    private readonly double _onto;

    /// <summary>Whether the law is that above <see cref="LiftOffSpeed"/> at any speed, so that a step sees no kink.</summary>
    private bool _carried;

    private AtNodes<(double Time, double Closed, double Headwind, double GroundSpeed)> _nodes;

    /// <param name="input">The landing.</param>
    /// <param name="lift">C_L of the attitude on the wheels.</param>
    /// <param name="friction">μ.</param>
    /// <param name="thrust">Thrust per mass.</param>
    /// <param name="wind">The wind.</param>
    /// <param name="endSpeed">The airspeed that ends the stage; none where it ends with the stop.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public RollStage(
        in LandingInput input, double lift, double friction, ThrustLaw<ScalarLane> thrust, WindField<ScalarLane> wind, double? endSpeed)
    {
        double induced = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea);
        _drag = DragLaws.Coefficient(input.ZeroLiftDrag, induced, lift, DragLaws.GroundEffect(input.WingHeight, input.Span));
        _area = 0.5 * input.Density * input.WingArea / input.Mass;
        (_lift, _friction, _thrust, _wind, _wing, EndSpeed) = (lift, friction, thrust, wind, input.WingHeight, endSpeed);
        double secant = Math.Sqrt(1 + input.RunwaySlope * input.RunwaySlope);
        (_down, _onto) = (StandardConstants.Gravity * input.RunwaySlope / secant, StandardConstants.Gravity / secant);
    }

    /// <summary>The airspeed that ends the stage; none where it ends with the stop.</summary>
    public double? EndSpeed { get; private set; }

    /// <summary>The airspeed at which the wing carries all of the weight; none where it never does.</summary>
    public readonly double LiftOffSpeed => _lift > 0 ? Math.Sqrt(_onto / (_area * _lift)) : double.PositiveInfinity;

    /// <summary>The part of the stage in which the wing carries all of the weight, down to an airspeed.</summary>
    public readonly RollStage CarriedTo(double speed)
    {
        RollStage carried = this;
        (carried._carried, carried.EndSpeed) = (true, speed);
        return carried;
    }

    /// <summary>w at the wing on its wheels.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly double Headwind(double time) => _wind.At(_wing, time).Value;

    /// <summary>
    /// Deceleration = constant + linear · V + squared · V² with the throttle as far closed as it stays, on the side of the lift-off speed and
    /// of V = 0 where <paramref name="speed"/> is.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public readonly RollLaw Deceleration(double speed, double closed)
    {
        double drag = Math.CopySign(_drag, speed);
        (double constant, double squared) = _carried || speed > LiftOffSpeed
            ? (_down, _area * drag)
            : (_friction * _onto + _down, _area * (drag - _friction * _lift));
        double thrust = (1 - closed) * _thrust.Approach.Value + closed * _thrust.AtRest.Value;
        return new(constant - thrust, -closed * _thrust.Slope.Value, squared - closed * _thrust.Curvature.Value);
    }

    /// <summary>What slows it, per mass: drag, friction, the weight's part down the slope; less the thrust they are the deceleration.</summary>
    public readonly (double Drag, double Friction, double Grade) Slowing(double airspeed)
    {
        double square = airspeed * airspeed;
        double friction = _carried || airspeed > LiftOffSpeed ? 0 : _friction * (_onto - _area * _lift * square);
        return (_area * Math.CopySign(_drag, airspeed) * square, friction, _down);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Prepare(ReadOnlySpan<ScalarLane> times, in Segment<ScalarLane> segment)
    {
        for (int i = 0; i < times.Length; i++)
            (_nodes[i].Time, _nodes[i].Closed, _nodes[i].Headwind) =
                (times[i].Value, segment.Closed(times[i]).Value, Headwind(times[i].Value));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public PathMotion<ScalarLane> Rates(int node, PathMotion<ScalarLane> motion)
    {
        ref (double Time, double Closed, double Headwind, double GroundSpeed) at = ref _nodes[node];
        at.GroundSpeed = motion.Speed.Value;
        double airspeed = motion.Speed.Value + at.Headwind;
        (double drag, double friction, double grade) = Slowing(airspeed);
        return new(_thrust.At(at.Closed, airspeed).Value - drag - friction - grade);
    }

    public readonly ScalarLane GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly ScalarLane End(int node, in PathMotion<ScalarLane> motion) =>
        EndSpeed is { } end ? end - (motion.Speed.Value + _nodes[node].Headwind) : -motion.Speed.Value;

    public readonly ScalarLane EndRate(int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates) =>
        -rates.Speed.Value - (EndSpeed is null || _wind.IsSteady ? 0 : _wind.At(_wing, 0, _nodes[node].Time).Rate.Value);

    public readonly ScalarLane EndSize(in PathMotion<ScalarLane> motion) => 1 + Math.Abs(motion.Speed.Value);

    // With the nose still up the aeroplane must roll on; where the stop is the end, a trial step looks past it.
    public readonly ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) =>
        EndSpeed is null || _wind.IsSteady ? ScalarLane.True : ScalarLane.Less(0, motion.Speed);

    // Of a size of at least 1 m/s: the speed itself may pass through zero.
    public readonly ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) =>
        Math.Abs(error.Speed.Value) / (1 + Math.Abs(motion.Speed.Value));
}
