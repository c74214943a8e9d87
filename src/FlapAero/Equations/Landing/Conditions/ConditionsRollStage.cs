namespace FlapAero.Equations;

/// <summary>
/// Stages 5 and 6 in a changing wind. What moves is the speed over the ground: u̇ = (T − D)/m − g sin ε − μ F_N/m, and the airspeed is u + w.
/// </summary>
/// <param name="forces">What acts.</param>
/// <param name="lift">C_L of the attitude on the wheels.</param>
/// <param name="friction">μ.</param>
/// <param name="slope">tan ε.</param>
/// <param name="endAirspeed">Airspeed that ends the stage; none where it ends with the stop.</param>
internal struct ConditionsRollStage(ConditionsForces forces, double lift, double friction, double slope, double? endAirspeed)
    : IStage<ScalarLane, PathMotion<ScalarLane>>
{
    private readonly double _wing = forces.Wing(0);
    private readonly double _onto = StandardConstants.Gravity / Math.Sqrt(1 + slope * slope);
    private AtNodes<(double Time, double Share, double GroundSpeed)> _nodes;

    public static bool HasEnd => true;

    public readonly double Airspeed(double time, double groundSpeed) => groundSpeed + forces.Wind.At(_wing, time);

    public void Prepare(int node, ScalarLane time, in Thrust<ScalarLane> thrust) =>
        (_nodes[node].Time, _nodes[node].Share) = (time.Value, thrust.At(time).Value);

    public PathMotion<ScalarLane> Rates(int node, in PathMotion<ScalarLane> motion)
    {
        ref (double Time, double Share, double GroundSpeed) at = ref _nodes[node];
        at.GroundSpeed = motion.Speed.Value;
        double airspeed = Airspeed(at.Time, at.GroundSpeed);
        double load = Math.Max(0, _onto - forces.Area * airspeed * airspeed * lift);
        return new(forces.Thrust(at.Share, airspeed) - forces.Drag(airspeed, lift, 0) - slope * _onto - friction * load);
    }

    public readonly ScalarLane GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly ScalarLane End(int node, in PathMotion<ScalarLane> motion) =>
        endAirspeed is { } speed ? speed - Airspeed(_nodes[node].Time, motion.Speed.Value) : -motion.Speed.Value;

    public readonly ScalarLane EndRate(int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates) =>
        -rates.Speed.Value - (endAirspeed is null ? 0 : forces.Wind.TimeRate(_nodes[node].Time));

    // With the nose still up the aeroplane must roll on; where the stop is the end a trial step looks past it.
    public readonly ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) =>
        (endAirspeed is null ? ScalarLane.True : ScalarLane.Less(0, motion.Speed))
        & ScalarLane.Less(Airspeed(_nodes[node].Time, motion.Speed.Value), forces.Fastest);

    public readonly ScalarLane EndSize(in PathMotion<ScalarLane> motion) => 1 + Math.Abs(motion.Speed.Value);

    public readonly ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) =>
        Math.Abs(error.Speed.Value) / (1 + Math.Abs(motion.Speed.Value));
}
