using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>One leg of a circuit as it is flown, and its line in the ledger. Immutable.</summary>
public sealed class CircuitLeg
{
    // A chord of a 5° arc leaves the arc by a thousandth of the radius.
    private const double PlottedStep = Math.PI / 36;

    private readonly CircuitFrame _frame;
    private readonly LegFlight _flight;
    private readonly FlightState _begin;
    private readonly double _time;

    internal CircuitLeg(CircuitFrame frame, LegFlight flight, string name, FlightState begin, double time, LegFlight? before)
    {
        _frame = frame;
        _flight = flight;
        _begin = begin with { Heading = flight.Heading };
        _time = time;
        Name = name;
        HeightWorthOfSlowing = Length.FromMeters(before is null
            ? 0
            : (before.Speed * before.Speed - flight.Speed * flight.Speed) / (2 * StandardConstants.Gravity)).ToUnit(LengthUnit.Foot);
        Begin = frame.Point(_begin, name);
        End = frame.Point(SiEnd, name);
        Distance = Length.FromMeters(flight.Distance(_begin.Heading, time));
    }

    /// <summary>The leg, by one of <see cref="LegName"/>.</summary>
    public string Name { get; }

    /// <summary>Aeroplane, flap and mass.</summary>
    public Configuration Configuration => _flight.Configuration;

    /// <summary>Its airspeed.</summary>
    public Airspeed Airspeed => _flight.Airspeed;

    /// <summary>Where it begins.</summary>
    public CircuitPoint Begin { get; }

    /// <summary>Where it ends.</summary>
    public CircuitPoint End { get; }

    /// <summary>How long it takes.</summary>
    public Duration Time => Duration.FromSeconds(_time);

    /// <summary>Height that it loses.</summary>
    public Length HeightLost => Length.FromMeters(_flight.Sink * _time).ToUnit(LengthUnit.Foot);

    /// <summary>Way over the ground.</summary>
    public Length Distance { get; }

    /// <summary>Thrust along the path.</summary>
    public Force Thrust => Force.FromNewtons(_flight.Thrust);

    /// <summary>Thrust power T V.</summary>
    public Power ThrustPower => Power.FromWatts(_flight.Thrust * _flight.Speed);

    /// <summary>Flight-path angle γ through the air, positive up.</summary>
    public Angle PathAngle => Angle.FromRadians(_flight.PathAngle).ToUnit(AngleUnit.Degree);

    /// <summary>Rate of descent, positive down.</summary>
    public Speed SinkRate => Speed.FromMetersPerSecond(_flight.Sink).ToUnit(SpeedUnit.FootPerMinute);

    /// <summary>Whether it is a turn.</summary>
    public bool IsTurn => _flight.Turns;

    /// <summary>Angle of bank φ towards the circuit's hand; none on a straight leg.</summary>
    public Angle Bank => Angle.FromRadians(_flight.Bank).ToUnit(AngleUnit.Degree);

    /// <summary>Load factor n = cos γ/cos φ.</summary>
    public double LoadFactor => StallLaws.LoadFactor(_flight.Bank, _flight.PathAngle);

    /// <summary>V/V_S(n) − 1: the margin over the stall at this leg's load factor.</summary>
    public double StallMargin => Configuration.StallMargin(Airspeed, LoadFactor);

    /// <summary>Radius of a turn through the air.</summary>
    public Length? TurnRadius => IsTurn ? Length.FromMeters(_flight.Radius) : null;

    /// <summary>Speed over the ground on a straight leg.</summary>
    public Speed? GroundSpeed => IsTurn ? null : Speed.FromMetersPerSecond(_flight.GroundSpeed).ToUnit(SpeedUnit.Knot);

    /// <summary>Crab β on a straight leg: the nose to the right of the track where it is positive.</summary>
    public Angle? Crab => IsTurn ? null : _frame.ToTheRight(_flight.Crab);

    /// <summary>
    /// (V₁² − V₂²)/2g: what slowing down from the leg before is worth in height. The model changes speed at once and does
    /// not book it; in flight it shows as less power, or as height that is not lost, in the seconds of the change.
    /// </summary>
    public Length HeightWorthOfSlowing { get; }

    internal FlightState SiBegin => _begin;

    internal FlightState SiEnd => _flight.After(_begin, _time);

    internal LegFlight Flight => _flight;

    /// <summary>The points that draw this leg: both ends of a straight one, an arc every 5° or less.</summary>
    internal IEnumerable<CircuitPoint> Plotted
    {
        get
        {
            int steps = IsTurn ? Math.Max(1, (int)Math.Ceiling(_flight.Rate * _time / PlottedStep)) : 1;
            return Enumerable.Range(0, steps + 1)
                .Select(step => step == 0 ? Begin : step == steps ? End : At(_time * step / steps));
        }
    }

    /// <summary>Where the aeroplane is, a time after the leg began.</summary>
    /// <remarks>
    /// Formula: x₀ + R(sin ψ − sin ψ₀) + w_x t and the like in a turn, straight lines else; h₀ − s t.
    /// Range: from 0 to <see cref="Time"/>. Source: [phak].
    /// </remarks>
    /// <param name="sinceBegin">Time since the leg began.</param>
    /// <returns>The point.</returns>
    /// <exception cref="RefusedInputException">Before or after the leg.</exception>
    /// <example><code>Circuit.Backwards(DemoCircuits.FlapsUp).Value.TurnToBase.Point(Duration.Zero).Height.Feet // 699</code></example>
    public CircuitPoint Point(Duration sinceBegin)
    {
        Require.Between(sinceBegin, Duration.Zero, Time, "time since the leg began", "Another leg is flown before and after it.");
        return At(sinceBegin.Seconds);
    }

    /// <summary>Name, height and time.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"{Name}: {Begin.Height.Feet:0} ft to {End.Height.Feet:0} ft in {_time:0} s");

    private CircuitPoint At(double time) => _frame.Point(_flight.After(_begin, time), Name);
}
