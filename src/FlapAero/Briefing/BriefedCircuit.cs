using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>One straight leg as it is briefed: what to set and what to see. Immutable.</summary>
public sealed class BriefedLeg
{
    internal BriefedLeg(SteadyFlight flight, RotationalSpeed engineSpeed, Length begin, Length end)
    {
        Flight = flight;
        Indicated = flight.Configuration.Indicated(flight.Airspeed);
        EngineSpeed = engineSpeed;
        Begin = begin.ToUnit(LengthUnit.Foot);
        End = end.ToUnit(LengthUnit.Foot);
    }

    /// <summary>Configuration, airspeed, path and thrust.</summary>
    public SteadyFlight Flight { get; }

    /// <summary>Its speed on the needle.</summary>
    public Speed Indicated { get; }

    /// <summary>Engine speed that holds speed and path once both are steady: the one to start with.</summary>
    public RotationalSpeed EngineSpeed { get; }

    /// <summary>Height above the runway where it begins.</summary>
    public Length Begin { get; }

    /// <summary>Height above the runway where it ends.</summary>
    public Length End { get; }
}

/// <summary>A circuit as it is briefed. Immutable.</summary>
public sealed class BriefedCircuit
{
    internal BriefedCircuit(Circuit circuit, BriefedLeg level, BriefedLeg downwind, BriefedLeg baseLeg, BriefedLeg final) =>
        (Circuit, Level, Downwind, Base, Final) = (circuit, level, downwind, baseLeg, final);

    /// <summary>The circuit, solved backwards from the aiming point.</summary>
    public Circuit Circuit { get; }

    /// <summary>Downwind at circuit height, before power is reduced.</summary>
    public BriefedLeg Level { get; }

    /// <summary>Downwind from where power is reduced.</summary>
    public BriefedLeg Downwind { get; }

    /// <summary>Base.</summary>
    public BriefedLeg Base { get; }

    /// <summary>Final.</summary>
    public BriefedLeg Final { get; }
}
