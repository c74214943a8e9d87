using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// A circuit solved backwards from the aiming point: where to reduce power, where to turn, and what each leg takes.
/// Immutable. See <see cref="CircuitPlan"/> for what is assumed. A training aid: the approved manual, the local rules and
/// a qualified instructor decide.
/// </summary>
public sealed class Circuit
{
    private readonly double _touchdown;

    internal Circuit(CircuitPlan plan, CircuitFrame frame, CircuitFlights flights, IReadOnlyList<double> times)
    {
        Plan = plan;
        Frame = frame;
        Flights = flights;
        SiTimes = times;
        _touchdown = plan.TouchdownPoint.Meters;
        (LegFlight Flight, string Name)[] order = CircuitOrder.Of(flights);

        // Backwards: each leg's begin from its end, the last leg's end being the aiming point.
        var begins = new FlightState[order.Length];
        FlightState end = new(plan.AimingPoint.Meters, 0, 0, times.Sum(), flights.Final.Heading);
        for (int leg = order.Length - 1; leg >= 0; leg--)
        {
            if (!order[leg].Flight.Turns) end = end with { Heading = order[leg].Flight.Heading };
            end = begins[leg] = order[leg].Flight.After(end, -times[leg]);
        }

        Legs = [.. order.Select((leg, at) =>
            new CircuitLeg(frame, leg.Flight, leg.Name, begins[at], times[at], at == 0 ? null : order[at - 1].Flight))];
        Ledger = new(Legs);
        Track = [.. Legs.SelectMany(leg => leg.Plotted)];
    }

    /// <summary>What was asked for.</summary>
    public CircuitPlan Plan { get; }

    /// <summary>
    /// Seven legs in the order of flight, from abeam the touchdown point or, if that comes first, from where power is
    /// reduced. Some may take no time.
    /// </summary>
    public IReadOnlyList<CircuitLeg> Legs { get; }

    /// <summary>Height, time and distance of each leg, and their sums.</summary>
    public CircuitLedger Ledger { get; }

    /// <summary>Points for a drawing to scale: both ends of straight legs, arcs every 5° or less.</summary>
    public IReadOnlyList<CircuitPoint> Track { get; }

    /// <summary>Downwind from where power is reduced.</summary>
    public CircuitLeg Downwind => Legs[1];

    /// <summary>The turn to base.</summary>
    public CircuitLeg TurnToBase => Legs[2];

    /// <summary>Base.</summary>
    public CircuitLeg Base => Legs[3];

    /// <summary>The turn to final.</summary>
    public CircuitLeg TurnToFinal => Legs[4];

    /// <summary>Final, to the threshold.</summary>
    public CircuitLeg Final => Legs[5];

    /// <summary>How far past abeam the touchdown point power is reduced; negative before abeam.</summary>
    public Length PowerReducedPastAbeam => Length.FromMeters(_touchdown - Downwind.SiBegin.X);

    /// <summary>How far past abeam the touchdown point the base turn begins.</summary>
    public Length BaseTurnPastAbeam => Length.FromMeters(_touchdown - TurnToBase.SiBegin.X);

    /// <summary>How far behind the wing the touchdown point lies when the base turn begins: 45° in common practice.</summary>
    public Angle AngleBehindWing => Angle.FromRadians(TrackLaws.AngleBehindWing(
        Plan.Spacing.Meters, _touchdown - TurnToBase.SiBegin.X, Flights.Downwind.Crab)).ToUnit(AngleUnit.Degree);

    /// <summary>From the end of the turn to final to the threshold.</summary>
    public Length LengthOfFinal => Length.FromMeters(-Final.SiBegin.X);

    /// <summary>Height at the end of the turn to final.</summary>
    public Length HeightRollingOut => Final.Begin.Height;

    /// <summary>From the first point to the threshold.</summary>
    public Duration TimeToThreshold => Final.End.Time;

    internal CircuitFrame Frame { get; }

    internal CircuitFlights Flights { get; }

    internal IReadOnlyList<double> SiTimes { get; }

    /// <summary>Solves a circuit backwards from its aiming point.</summary>
    /// <remarks>
    /// Formula: straight legs hold their track by sin β = w_c/(V cos γ); turns have R = V² cos γ/(g tan φ),
    /// ψ̇ = g tan φ/V, n = cos γ/cos φ, and drift; heights h_t + L tan γ_p and back, L from the plan's fix. Range: the plan's;
    /// the refusals are outcomes. Source: [phak] for the turns, [anderson-itf] for the descents, [common-practice] for the shape.
    /// </remarks>
    /// <param name="plan">What is asked for.</param>
    /// <returns>The circuit, or the reason why there is none.</returns>
    /// <exception cref="ArgumentNullException">No plan.</exception>
    /// <example><code>Circuit.Backwards(DemoCircuits.FlapsUp).Value.HeightRollingOut.Feet // 334</code></example>
    public static Outcome<Circuit, CircuitRefusal> Backwards(CircuitPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return CircuitSolver.Solve(plan);
    }

    /// <summary>Flies this circuit forwards with a pilot who is early or late.</summary>
    /// <remarks>
    /// Formula: the same legs at the same speeds, thrusts and banks, begun at other times. Range: ten minutes either way,
    /// but each leg begins after the one before. Source: [phak] for the turns; the pilot is this model's own.
    /// </remarks>
    /// <param name="timing">How early or late.</param>
    /// <returns>The circuit as flown, or the reason why it cannot be.</returns>
    /// <exception cref="RefusedInputException">
    /// So early that a leg would begin before the one before it; power apart from the base turn, where downwind is level.
    /// </exception>
    /// <example><code>Circuit.Backwards(DemoCircuits.FlapsUp).Value.Forwards(new PilotTiming(baseTurn: Duration.FromSeconds(5))).Value.ExtraFinal.Meters // 218</code></example>
    public Outcome<FlownCircuit, CircuitRefusal> Forwards(PilotTiming timing)
    {
        ArgumentNullException.ThrowIfNull(timing);
        return ForwardFlight.Fly(this, timing);
    }
}

/// <summary>The legs' flights and names, in the order of flight.</summary>
internal static class CircuitOrder
{
    public static (LegFlight Flight, string Name)[] Of(CircuitFlights flights) =>
    [
        (flights.Level, LegName.DownwindLevel),
        (flights.Downwind, LegName.Downwind),
        (flights.TurnToBase, LegName.TurnToBase),
        (flights.Base, LegName.Base),
        (flights.TurnToFinal, LegName.TurnToFinal),
        (flights.Final, LegName.Final),
        (flights.Final, LegName.PastThreshold),
    ];
}
