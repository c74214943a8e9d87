namespace FlapAero.Equations;

/// <summary>Stage 4 in a changing wind: V̇ = (T − D)/m − g sin γ + ẇ cos γ, V γ̇ = (L − W cos γ)/m − ẇ sin γ.</summary>
internal struct ConditionsSettlingStage(ConditionsForces forces, double angleSize, double heightSize)
    : IStage<ScalarLane, FreeMotion<ScalarLane>>
{
    private AtNodes<(double Time, double Share, double GroundSpeed)> _nodes;

    public static bool HasEnd => true;

    public void Prepare(int node, ScalarLane time, in Thrust<ScalarLane> thrust) =>
        (_nodes[node].Time, _nodes[node].Share) = (time.Value, thrust.At(time).Value);

    public FreeMotion<ScalarLane> Rates(int node, in FreeMotion<ScalarLane> motion)
    {
        ref (double Time, double Share, double GroundSpeed) at = ref _nodes[node];
        (double speed, double height) = (motion.Speed.Value, motion.Height.Value);
        (double sine, double cosine) = Math.SinCos(motion.Angle.Value);
        double wind = forces.WindRate(height, speed * sine, at.Time);
        double lift = forces.Area * forces.TouchdownLift * speed * speed;
        at.GroundSpeed = speed * cosine - forces.Wind.At(forces.Wing(height), at.Time);
        return new(
            forces.Thrust(at.Share, speed) - forces.Drag(speed, forces.TouchdownLift, height) - StandardConstants.Gravity * sine + wind * cosine,
            (lift - StandardConstants.Gravity * cosine - wind * sine) / speed,
            speed * sine);
    }

    public readonly ScalarLane GroundSpeed(int node) => _nodes[node].GroundSpeed;

    public readonly ScalarLane End(int node, in FreeMotion<ScalarLane> motion) => -motion.Height.Value;

    public readonly ScalarLane EndRate(
        int node, in FreeMotion<ScalarLane> motion, in FreeMotion<ScalarLane> rates) => -rates.Height.Value;

    public readonly ScalarLane Sound(int node, in FreeMotion<ScalarLane> motion) =>
        ScalarLane.Less(0, motion.Speed) & ScalarLane.Less(motion.Speed, forces.Fastest)
        & ScalarLane.Less(motion.Height, forces.Wind.HasProfile ? WindField.Ceiling : double.PositiveInfinity);

    public readonly ScalarLane EndSize(in FreeMotion<ScalarLane> motion) => heightSize + motion.Speed.Value * angleSize;

    public readonly ScalarLane Share(in FreeMotion<ScalarLane> error, in FreeMotion<ScalarLane> motion) => Math.Max(
        Math.Abs(error.Speed.Value) / motion.Speed.Value,
        Math.Max(Math.Abs(error.Angle.Value) / angleSize, Math.Abs(error.Height.Value) / heightSize));
}
