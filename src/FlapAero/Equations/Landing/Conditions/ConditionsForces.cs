namespace FlapAero.Equations;

/// <summary>What acts on an aeroplane that lands in given conditions, per mass; one landing, SI.</summary>
internal sealed class ConditionsForces
{
    private readonly LandingInput _input;
    private readonly double _induced;
    private readonly Func<double, double>? _idle;

    public ConditionsForces(in LandingInput input, WindField wind, Func<double, double>? idleThrust, double fastest)
    {
        _input = input;
        Wind = wind;
        Fastest = fastest;
        _idle = idleThrust;
        _induced = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea);
        Area = 0.5 * input.Density * input.WingArea / input.Mass;
        TouchdownLift = input.TouchdownLiftFraction * input.MaximumLift;
    }

    public WindField Wind { get; }

    /// <summary>The highest airspeed that T_i(V) is known for.</summary>
    public double Fastest { get; }

    /// <summary>½ρS/m.</summary>
    public double Area { get; }

    /// <summary>f C_Lmax.</summary>
    public double TouchdownLift { get; }

    /// <summary>T_a/m, set once it is known.</summary>
    public double ApproachThrust { get; set; }

    /// <summary>T_i(V)/m.</summary>
    public double Idle(double airspeed) => (_idle is null ? _input.IdleThrust : _idle(airspeed)) / _input.Mass;

    /// <summary>T/m, a share of the way from the approach's to idle.</summary>
    public double Thrust(double share, double airspeed) => (1 - share) * ApproachThrust + share * Idle(airspeed);

    /// <summary>Height of the wing. A trial step may dip under the ground, as in <see cref="AirConstants{T}.InducedNearGround"/>.</summary>
    public double Wing(double wheelHeight) => Math.Max(wheelHeight + _input.WingHeight, 0.1 * _input.WingHeight);

    /// <summary>D/m.</summary>
    public double Drag(double airspeed, double liftCoefficient, double wheelHeight)
    {
        double near = DragLaws.GroundEffect(Wing(wheelHeight), _input.Span);
        return Area * airspeed * Math.Abs(airspeed) * DragLaws.Coefficient(_input.ZeroLiftDrag, _induced, liftCoefficient, near);
    }

    /// <summary>ẇ = (dw/dh) ḣ + ∂w/∂t as the wing meets it.</summary>
    public double WindRate(double wheelHeight, double climb, double time) =>
        Wind.Shear(Wing(wheelHeight)) * climb + Wind.TimeRate(time);
}
