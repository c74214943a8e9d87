using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>What lessons ask of a circuit again and again, each in one call.</summary>
public static class LessonCircuits
{
    /// <summary>The usual use of flap: a first step downwind, a second on base, full flap on final.</summary>
    /// <param name="aeroplane">The aeroplane; where it has fewer steps, the last one stands for those that it lacks.</param>
    /// <returns>The configurations downwind, on base and on final.</returns>
    public static Configuration[] FlapInSteps(this Aeroplane aeroplane)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        IReadOnlyList<Configuration> settings = aeroplane.AtEachFlapSetting();
        Configuration Step(int step) => settings[Math.Min(step, settings.Count - 1)];
        return [Step(1), Step(2), settings[^1]];
    }

    /// <summary>
    /// The engine speed abeam, to ten revolutions, with which the turn to base begins when the touchdown point lies 45° behind the wing,
    /// in a calm.
    /// </summary>
    /// <param name="runway">The runway.</param>
    /// <param name="legs">The aeroplane downwind, on base and on final.</param>
    /// <param name="air">The air.</param>
    /// <returns>The engine speed.</returns>
    public static RotationalSpeed EngineSpeedAbeam(this Runway runway, IReadOnlyList<Configuration> legs, Air air)
    {
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(legs);
        return Enumerable.Range(110, 110).Select(tens => RotationalSpeed.FromRevolutionsPerMinute(10 * tens))
            .Select(turns => (Turns: turns, Flown: Circuit.Backwards(Plan(runway, legs, air, turns))))
            .Where(tried => tried.Flown.Happened)
            .MinBy(tried => Math.Abs(tried.Flown.Value.AngleBehindWing.Degrees - 45)).Turns;
    }

    /// <summary>The circuit to the right in a calm, with one engine speed from abeam to final.</summary>
    /// <param name="runway">The runway.</param>
    /// <param name="legs">The aeroplane downwind, on base and on final.</param>
    /// <param name="air">The air.</param>
    /// <param name="abeam">The engine speed.</param>
    /// <returns>The circuit.</returns>
    public static Circuit CircuitInACalm(this Runway runway, IReadOnlyList<Configuration> legs, Air air, RotationalSpeed abeam)
    {
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(legs);
        return Circuit.Backwards(Plan(runway, legs, air, abeam)).Value;
    }

    /// <summary>The same circuit in a calm with another engine speed from abeam to final.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="abeam">The engine speed.</param>
    /// <returns>The circuit.</returns>
    public static Circuit AtEngineSpeed(this Circuit circuit, RotationalSpeed abeam)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        return circuit.Plan.Runway.CircuitInACalm(
            [circuit.Downwind.Configuration, circuit.Base.Configuration, circuit.Final.Configuration], circuit.Downwind.Airspeed.Air, abeam);
    }

    /// <summary>The room that a turn to final needs from the centreline in a calm, at 1.4 times the stall: its radius.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="air">The air.</param>
    /// <param name="bank">The bank in degrees.</param>
    /// <returns>The radius V²/(g tan φ).</returns>
    public static Length RoomInACalm(this Configuration configuration, Air air, double bank)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return Turn.Radius(configuration.ReferenceSpeed(air, 1.4), Angle.FromDegrees(bank)).ToUnit(UnitsNet.Units.LengthUnit.Foot);
    }

    /// <summary>The engine speed on a leg; that of the closed throttle where the leg asks for less.</summary>
    /// <param name="leg">The leg.</param>
    /// <returns>The engine speed.</returns>
    public static RotationalSpeed EngineSpeed(this CircuitLeg leg)
    {
        ArgumentNullException.ThrowIfNull(leg);
        return leg.Configuration.EngineSpeed(leg.Airspeed, -leg.PathAngle);
    }

    /// <summary>The room that the turn to final needs from the centreline, where it begins as planned.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <returns>The distance from the centreline.</returns>
    public static Length RoomForTheTurn(this Circuit circuit)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        return circuit.TurnToFinal.Begin.Y.ToUnit(UnitsNet.Units.LengthUnit.Foot);
    }

    /// <summary>A circuit flown with the turn to final begun some seconds after another circuit's place.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="usual">The circuit whose place for the turn is meant.</param>
    /// <param name="seconds">The seconds after that place.</param>
    /// <returns>What is flown.</returns>
    public static FlownCircuit TurnedAfter(this Circuit circuit, Circuit usual, double seconds)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        Duration way = (circuit.RoomForTheTurn() - usual.RoomForTheTurn()) / circuit.Base.GroundSpeed!.Value;
        return circuit.Forwards(new PilotTiming(finalTurn: Duration.FromSeconds(seconds) + way)).Value;
    }

    /// <summary>The same circuit with another bank in the turn to final.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="bank">The bank in degrees.</param>
    /// <returns>The circuit.</returns>
    public static Circuit Banked(this Circuit circuit, double bank)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        CircuitLegs legs = circuit.Plan.Legs;
        TurnLeg turn = legs.TurnToFinal;
        var banked = new TurnLeg(turn.Configuration, turn.Airspeed, turn.Descent, Angle.FromDegrees(bank));
        return Circuit.Backwards(circuit.Plan.With(
            bankLimit: Angle.FromDegrees(80), legs: new(legs.Downwind, legs.TurnToBase, legs.Base, banked, legs.Final))).Value;
    }

    /// <summary>How long after another circuit's place the turn to final may begin, and still make the centreline with a bank.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="usual">The circuit whose place for the turn is meant.</param>
    /// <param name="bank">The bank in degrees.</param>
    /// <returns>The time.</returns>
    public static Duration UntilBank(this Circuit circuit, Circuit usual, double bank)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        return (usual.RoomForTheTurn() - circuit.Banked(bank).RoomForTheTurn()) / circuit.Base.GroundSpeed!.Value;
    }

    private static CircuitPlan Plan(Runway runway, IReadOnlyList<Configuration> legs, Air air, RotationalSpeed abeam) =>
        DemoCircuits.PlanFor(legs[0], legs[1], legs[2], air, abeam).With(runway, new Wind(Angle.Zero, Speed.Zero), CircuitHand.Right);
}
