namespace FlapAero.Equations;

/// <summary>
/// Stages 1 and 3: the height is a known function of time, and only the airspeed moves. The lift that this takes is W cos γ + m ḧ in any
/// wind: the wind changes along the ground, and the balance across it does not see that.
/// </summary>
internal struct ConditionsPathStage(ConditionsForces forces, double start, double startHeight, double sink, double timeConstant, double holdOff)
    : IStage<ScalarLane, PathMotion<ScalarLane>>
{
    private readonly double _squareLift = 1 / (forces.Area * forces.TouchdownLift);
    private AtNodes<(double Time, double Share, double GroundSpeed)> _nodes;

    public static bool HasEnd => true;

    // Without a time constant the sink rate is held, and only the time ends the stage.
    private readonly bool Rounds => double.IsFinite(timeConstant);

    public readonly double Sink(double time) => Rounds ? sink * Math.Exp((start - time) / timeConstant) : sink;

    public readonly double Height(double time) => Rounds ? Sink(time) * timeConstant + holdOff : startHeight - sink * (time - start);

    /// <summary>L/m.</summary>
    public readonly double Lift(double time, double speed)
    {
        double sine = Sink(time) / speed;
        return StandardConstants.Gravity * Math.Sqrt(Math.Max(0, 1 - sine * sine)) + Sink(time) / timeConstant;
    }

    public readonly double LiftCoefficient(double time, double speed) => Lift(time, speed) / (forces.Area * speed * speed);

    public void Prepare(int node, ScalarLane time, in Thrust<ScalarLane> thrust) =>
        (_nodes[node].Time, _nodes[node].Share) = (time.Value, thrust.At(time).Value);

    public PathMotion<ScalarLane> Rates(int node, in PathMotion<ScalarLane> motion)
    {
        ref (double Time, double Share, double GroundSpeed) at = ref _nodes[node];
        double speed = motion.Speed.Value, down = Sink(at.Time), height = Height(at.Time);
        double cosine = Math.Sqrt(Math.Max(0, 1 - down / speed * (down / speed)));
        at.GroundSpeed = speed * cosine - forces.Wind.At(forces.Wing(height), at.Time);
        double drag = forces.Drag(speed, LiftCoefficient(at.Time, speed), height);
        return new(
            forces.Thrust(at.Share, speed) - drag + StandardConstants.Gravity * down / speed
            + forces.WindRate(height, -down, at.Time) * cosine);
    }

    public readonly ScalarLane GroundSpeed(int node) => _nodes[node].GroundSpeed;

    /// <summary>C_L − f C_Lmax, scaled to a square of speed.</summary>
    public readonly ScalarLane End(int node, in PathMotion<ScalarLane> motion)
    {
        double speed = motion.Speed.Value;
        return Rounds ? Lift(_nodes[node].Time, speed) * _squareLift - speed * speed : -1;
    }

    public readonly ScalarLane EndRate(
        int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates)
    {
        if (!Rounds)
            return 0;
        double speed = motion.Speed.Value, down = Sink(_nodes[node].Time), sine = down / speed;
        double cosine = Math.Sqrt(Math.Max(double.Epsilon, 1 - sine * sine));
        double flattening = sine * sine / cosine * (1 / timeConstant + rates.Speed.Value / speed);
        double lift = StandardConstants.Gravity * flattening - down / (timeConstant * timeConstant);
        return lift * _squareLift - 2 * speed * rates.Speed.Value;
    }

    // Past this the airspeed has collapsed, or nothing is known of the idling engine.
    public readonly ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) =>
        ScalarLane.Less(Sink(_nodes[node].Time), motion.Speed) & ScalarLane.Less(motion.Speed, forces.Fastest);

    public readonly ScalarLane EndSize(in PathMotion<ScalarLane> motion) => motion.Speed * motion.Speed;

    public readonly ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) =>
        Math.Abs(error.Speed.Value) / motion.Speed.Value;
}
