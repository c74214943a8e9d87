using UnitsNet;

namespace FlapAero.AeroplaneFiles;

/// <summary>The propeller, its table and its engine with the throttle closed, value by value.</summary>
internal static class PropellerReader
{
    public static PropellerValues? Read(ObjectPart part, FaultList faults)
    {
        Given<Length>? diameter = part.Quantity("diameter", UnitSets.Lengths, value => StandIn.Propeller(diameter: value));
        Given<RotationalSpeed>? fastest = part.Quantity(
            "maximumSpeed", UnitSets.RotationalSpeeds, value => StandIn.Propeller(maximumSpeed: value));
        ClosedThrottleEngine? engine = part.Object("closedThrottle", FileKeys.ClosedThrottle) is { } closed
            ? ReadEngine(closed, fastest, faults)
            : null;
        Given<Torque>? wideOpen = part.Quantity(
            "fullThrottleTorque", UnitSets.Torques, value => StandIn.FullThrottle(value), "torqueAtSeaLevel");
        PropellerTable? table = part.Object("table", FileKeys.PropellerTable) is { } rows ? PropellerTableReader.Read(rows, faults) : null;
        return diameter is null || fastest is null || engine is null || table is null
            ? null
            : new PropellerValues(new Propeller(diameter.Value, table, fastest.Value), engine, wideOpen is null ? null : new FullThrottleEngine(wideOpen.Value));
    }

    private static ClosedThrottleEngine? ReadEngine(ObjectPart part, Given<RotationalSpeed>? fastest, FaultList faults)
    {
        Given<Torque>? torque = part.Quantity(
            "torqueAtStandstill", UnitSets.Torques, value => StandIn.Engine(torqueAtStandstill: value));
        Given<RotationalSpeed>? free = part.Quantity(
            "freeSpeed", UnitSets.RotationalSpeeds, value => StandIn.Engine(freeSpeed: value));
        if (free is not null && fastest is not null && free.Value >= fastest.Value)
        {
            faults.Add(
                free.Line, free.Place, $"{free.Written} is not less than the highest speed, {fastest.Written}",
                "with the throttle closed an engine turns slower than it may");
            return null;
        }

        return torque is null || free is null ? null : new ClosedThrottleEngine(torque.Value, free.Value);
    }
}

/// <summary>What the file says of the propeller and its engine. Immutable.</summary>
internal sealed record PropellerValues(Propeller Propeller, ClosedThrottleEngine Engine, FullThrottleEngine? FullThrottle);
