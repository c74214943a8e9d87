using UnitsNet;
using UnitsNet.Units;
using static FlapAero.CircuitRefusalReason;

namespace FlapAero;

/// <summary>The circuit forwards, from its first point, with the pilot's own times.</summary>
internal static class ForwardFlight
{
    // A leg whose end is its begin may miss it by rounding.
    private const double Slack = 1e-9;

    public static Outcome<FlownCircuit, CircuitRefusal> Fly(Circuit circuit, PilotTiming timing)
    {
        CircuitFlights flights = circuit.Flights;
        double power = timing.Power.Seconds, baseTurn = timing.BaseTurn.Seconds, finalTurn = timing.FinalTurn.Seconds;
        double level = circuit.SiTimes[0] + power;
        double descending = circuit.SiTimes[1] + baseTurn - power;
        if (circuit.Plan.Legs.Downwind.Descent.IsLevel)
        {
            if (power != 0)
                throw Require.RefusedWhole(
                    nameof(timing), "Downwind is level here and power is reduced in the base turn: only the base turn can be early or late.");
            level = circuit.SiTimes[0] + baseTurn;
            descending = 0;
        }

        double baseTime = circuit.SiTimes[3] + finalTurn;
        InOrder(descending, "base turn", timing.BaseTurn, "Power is reduced on downwind, before the base turn.");
        InOrder(baseTime, "turn to final", timing.FinalTurn, "Base has to be reached before it is left.");

        // So early that the circuit's first point has not been passed: the flight begins that much further back.
        double back = Math.Min(level, 0);
        FlightState start = flights.Level.After(circuit.Legs[0].SiBegin, back);
        double[] times = [level - back, descending, circuit.SiTimes[2], baseTime, circuit.SiTimes[4]];
        return Fly(circuit, timing, start, times);
    }

    private static Outcome<FlownCircuit, CircuitRefusal> Fly(Circuit circuit, PilotTiming timing, FlightState state, double[] times)
    {
        (LegFlight Flight, string Name)[] order = CircuitOrder.Of(circuit.Flights);
        List<CircuitLeg> legs = [];
        for (int leg = 0; leg < times.Length; leg++)
        {
            state = Add(circuit, legs, order[leg], state, times[leg]);
            if (state.Height < -Slack) return Refuse(circuit.Plan.Height.Unit, ReachesTheGround, order[leg].Name, "the aeroplane meets the ground in this leg", state);
        }

        if (state.X > Slack) return Refuse(circuit.Plan.Height.Unit, RollsOutPastTheThreshold, LegName.Final, "the turn to final ends past the threshold", state);

        // Final as planned, as far as the threshold, then on to the runway; where it is too low, the ground comes first.
        LegFlight final = circuit.Flights.Final;
        double toThreshold = Math.Max(-state.X, 0) / final.GroundSpeed, toGround = Math.Max(state.Height, 0) / final.Sink;
        double over = Math.Min(toThreshold, toGround);
        state = Add(circuit, legs, order[5], state, over);
        Add(circuit, legs, order[6], state, Math.Max(toGround - over, 0));
        return new(new FlownCircuit(circuit, timing, legs));
    }

    private static FlightState Add(
        Circuit circuit, List<CircuitLeg> legs, (LegFlight Flight, string Name) leg, FlightState state, double time)
    {
        LegFlight? before = legs.Count == 0 ? null : legs[^1].Flight;
        legs.Add(new CircuitLeg(circuit.Frame, leg.Flight, leg.Name, state, time, before));
        return legs[^1].SiEnd;
    }

    private static void InOrder(double time, string what, Duration late, string why)
    {
        if (time < -Slack)
            throw Require.Refused(
                "timing", $"lateness of the {what}", late,
                $"{Require.Text(Duration.FromSeconds(late.Seconds - time), late)} and later", why);
    }

    private static Outcome<FlownCircuit, CircuitRefusal> Refuse(
        LengthUnit unit, CircuitRefusalReason reason, string leg, string why, FlightState state) => new CircuitRefusal(
            reason, leg, why,
            new CircuitRefusalValue("height", Length.FromMeters(state.Height).ToUnit(unit)),
            new CircuitRefusalValue("from the threshold", Length.FromMeters(state.X).ToUnit(unit))).Outcome<FlownCircuit>();
}
