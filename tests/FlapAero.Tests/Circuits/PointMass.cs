namespace FlapAero.Tests.Circuits;

/// <summary>
/// A point mass by small steps, from forces alone: nothing of the library's turn or track laws is used. γ and V are free to
/// change, so that a wrong thrust, load factor or path shows.
/// </summary>
internal sealed class PointMass
{
    private const double Gravity = 9.80665;

    private readonly double _mass;
    private readonly double _density;
    private readonly double _area;
    private readonly DragPolar _polar;
    private readonly double _thrust;
    private readonly double _bank;
    private readonly double _liftCoefficient;
    private readonly double _windX;
    private readonly double _windY;

    private PointMass(CircuitPlan plan, Configuration configuration, Air air, double thrust, double bank, double liftCoefficient)
    {
        _mass = configuration.Mass.Kilograms;
        _density = air.Density.KilogramsPerCubicMeter;
        _area = configuration.Aeroplane.Wing.Area.SquareMeters;
        _polar = configuration.Flaps.Drag;
        _thrust = thrust;
        _bank = bank;
        _liftCoefficient = liftCoefficient;
        double to = plan.Wind.From.Radians + Math.PI - plan.Runway.Direction.Radians;
        _windX = plan.Wind.Speed.MetersPerSecond * Math.Cos(to);
        _windY = plan.Wind.Speed.MetersPerSecond * Math.Sin(to);
    }

    /// <summary>V, γ, ψ (from the runway's direction), x, y, h, distance, ∫(T − D)V dt at the end of a leg.</summary>
    public static double[] Fly(CircuitPlan plan, CircuitLeg leg)
    {
        double side = plan.Hand == CircuitHand.Right ? 1 : -1;
        double speed = leg.Airspeed.True.MetersPerSecond;
        double pressure = leg.Airspeed.DynamicPressure.Pascals;
        PointMass mass = new(
            plan, leg.Configuration, leg.Airspeed.Air, leg.Thrust.Newtons, side * leg.Bank.Radians,
            leg.LoadFactor * leg.Configuration.Weight.Newtons / (pressure * leg.Configuration.Aeroplane.Wing.Area.SquareMeters));
        double[] state =
        [
            speed, leg.PathAngle.Radians, (leg.Begin.Heading - plan.Runway.Direction).Radians,
            leg.Begin.X.Meters, leg.Begin.Y.Meters, leg.Begin.Height.Meters, 0, 0,
        ];
        return mass.March(state, leg.Time.Seconds);
    }

    /// <summary>Where a turn of another bank ends, in calm or wind; x, y as above.</summary>
    public static double[] Turn(CircuitPlan plan, CircuitLeg turn, double bank, double path, double thrust, double time)
    {
        double pressure = turn.Airspeed.DynamicPressure.Pascals;
        double load = Math.Cos(path) / Math.Cos(bank);
        PointMass mass = new(
            plan, turn.Configuration, turn.Airspeed.Air, thrust, plan.Hand == CircuitHand.Right ? bank : -bank,
            load * turn.Configuration.Weight.Newtons / (pressure * turn.Configuration.Aeroplane.Wing.Area.SquareMeters));
        double[] state =
        [
            turn.Airspeed.True.MetersPerSecond, path, (turn.Begin.Heading - plan.Runway.Direction).Radians,
            turn.Begin.X.Meters, turn.Begin.Y.Meters, turn.Begin.Height.Meters, 0, 0,
        ];
        return mass.March(state, time);
    }

    private double[] March(double[] state, double time)
    {
        int steps = Math.Max(1, (int)Math.Ceiling(time / 0.05));
        double step = time / steps;
        for (int at = 0; at < steps; at++)
        {
            double[] first = Rates(state), second = Rates(Moved(state, first, step / 2));
            double[] third = Rates(Moved(state, second, step / 2)), fourth = Rates(Moved(state, third, step));
            for (int item = 0; item < state.Length; item++)
                state[item] += step / 6 * (first[item] + 2 * second[item] + 2 * third[item] + fourth[item]);
        }

        return state;
    }

    private double[] Rates(double[] state)
    {
        double speed = state[0], path = state[1], heading = state[2];
        double pressureForce = 0.5 * _density * speed * speed * _area;
        double lift = pressureForce * _liftCoefficient, drag = pressureForce * _polar.DragCoefficient(_liftCoefficient);
        double x = speed * Math.Cos(path) * Math.Cos(heading) + _windX;
        double y = speed * Math.Cos(path) * Math.Sin(heading) + _windY;
        return
        [
            (_thrust - drag) / _mass - Gravity * Math.Sin(path),
            (lift * Math.Cos(_bank) - _mass * Gravity * Math.Cos(path)) / (_mass * speed),
            lift * Math.Sin(_bank) / (_mass * speed * Math.Cos(path)),
            x, y, speed * Math.Sin(path), Math.Sqrt(x * x + y * y), (_thrust - drag) * speed,
        ];
    }

    private static double[] Moved(double[] state, double[] rates, double step) =>
        [.. state.Zip(rates, (value, rate) => value + rate * step)];
}
