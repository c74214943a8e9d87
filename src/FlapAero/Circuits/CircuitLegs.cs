namespace FlapAero;

/// <summary>The legs of a circuit as they are to be flown, one aeroplane at one mass. Immutable.</summary>
public sealed class CircuitLegs
{
    /// <summary>Five legs in the order of flight.</summary>
    /// <param name="downwind">Downwind from where power is reduced. Before that the same speed and flap are flown level.</param>
    /// <param name="turnToBase">The turn to base.</param>
    /// <param name="baseLeg">Base, at right angles to the runway over the ground.</param>
    /// <param name="turnToFinal">The turn to final.</param>
    /// <param name="final">Final, on the extended centreline.</param>
    /// <exception cref="RefusedInputException">Legs of different aeroplanes or masses.</exception>
    public CircuitLegs(StraightLeg downwind, TurnLeg turnToBase, StraightLeg baseLeg, TurnLeg turnToFinal, FinalLeg final)
    {
        ArgumentNullException.ThrowIfNull(downwind);
        ArgumentNullException.ThrowIfNull(turnToBase);
        ArgumentNullException.ThrowIfNull(baseLeg);
        ArgumentNullException.ThrowIfNull(turnToFinal);
        ArgumentNullException.ThrowIfNull(final);
        Downwind = downwind;
        TurnToBase = turnToBase;
        Base = baseLeg;
        TurnToFinal = turnToFinal;
        Final = final;
        Configuration[] flown =
            [downwind.Configuration, turnToBase.Configuration, baseLeg.Configuration, turnToFinal.Configuration, final.Configuration];
        foreach (Configuration other in flown)
            if (!ReferenceEquals(other.Aeroplane, downwind.Configuration.Aeroplane) || other.Mass.CompareTo(downwind.Configuration.Mass) != 0)
                throw Require.RefusedWhole(
                    null, $"A circuit is flown by one aeroplane at one mass: '{other}' is not '{downwind.Configuration}' with another flap.");
    }

    /// <summary>Downwind from where power is reduced.</summary>
    public StraightLeg Downwind { get; }

    /// <summary>The turn to base.</summary>
    public TurnLeg TurnToBase { get; }

    /// <summary>Base.</summary>
    public StraightLeg Base { get; }

    /// <summary>The turn to final.</summary>
    public TurnLeg TurnToFinal { get; }

    /// <summary>Final.</summary>
    public FinalLeg Final { get; }
}
