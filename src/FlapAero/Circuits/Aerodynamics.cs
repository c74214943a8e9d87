using FlapAero.Equations;

namespace FlapAero;

/// <summary>A configuration at one speed, unwrapped into plain numbers.</summary>
internal sealed class Aerodynamics
{
    private readonly Configuration _configuration;
    private readonly Airspeed _airspeed;
    private readonly double _pressure;
    private readonly double _area;
    private readonly double _zeroLiftDrag;
    private readonly double _inducedFactor;

    public Aerodynamics(Configuration configuration, Airspeed airspeed)
    {
        _configuration = configuration;
        _airspeed = airspeed;
        _pressure = airspeed.SiDynamicPressure;
        _area = configuration.Aeroplane.Wing.Area.SquareMeters;
        _zeroLiftDrag = configuration.Flaps.Drag.ZeroLiftDragCoefficient;
        _inducedFactor = configuration.Flaps.Drag.InducedFactor;
        Weight = configuration.Weight.Newtons;
        Speed = airspeed.SiTrue;
        MaximumLift = configuration.Flaps.Lift.MaximumLiftCoefficient;
    }

    public double Weight { get; }

    public double Speed { get; }

    public double MaximumLift { get; }

    /// <summary>sin γ, positive up, of a leg flown this way; past ±1 there is none.</summary>
    public double SinPath(Descent descent, double bank)
    {
        if (descent.SinkRate is { } sink) return -sink.MetersPerSecond / Speed;
        if (descent.IsLevel) return 0;
        double thrust = descent.Thrust is { } stated ? stated.Newtons : (double)descent.ThrustPower!.Value.Watts / Speed;
        return TurnLaws.SinPathAngle(_pressure, _area, _zeroLiftDrag, _inducedFactor, Weight, thrust, bank);
    }

    public double Thrust(double path, double bank) =>
        TurnLaws.Thrust(_pressure, _area, _zeroLiftDrag, _inducedFactor, Weight, path, bank);

    public double LiftCoefficient(double path, double bank) => TurnLaws.LiftCoefficient(_pressure, _area, Weight, path, bank);

    public double StallSpeed(double path, double bank) => StallLaws.Speed(
        Weight, StallLaws.LoadFactor(bank, path), _airspeed.Air.SiDensity, _area, MaximumLift);

    public LegFlight Flight(CircuitFrame frame, double path, double thrust, double bank, double heading, double crab) => new()
    {
        Configuration = _configuration,
        Airspeed = _airspeed,
        PathAngle = path,
        Thrust = thrust,
        Bank = bank,
        WindX = frame.WindX,
        WindY = frame.WindY,
        Heading = heading,
        Crab = crab,
    };
}
