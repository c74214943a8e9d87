using UnitsNet;

namespace FlapAero;

/// <summary>One flight to be briefed for a landing without flaps. Immutable.</summary>
public sealed class BriefingRequest
{
    /// <summary>A flight.</summary>
    /// <param name="aeroplane">The aeroplane; it has flaps.</param>
    /// <param name="mass">Its mass at the landing, within the aeroplane's limits.</param>
    /// <param name="runway">The runway, with its direction and its landing distance available.</param>
    /// <param name="air">The air over the runway.</param>
    /// <param name="wind">The wind.</param>
    /// <param name="circuitHeight">Circuit height above the runway, 150 m to 3 000 m; 1 000 ft where none is given.</param>
    /// <param name="spacing">Downwind from the runway's centreline, 50 m to 20 km; 0.9 nmi where none is given.</param>
    /// <param name="hand">To which side the circuit turns.</param>
    /// <param name="margin">The margin; the rules' where none is given.</param>
    /// <param name="crosswindLimit">The instructor's own limit, 1 kt to 60 kt; the lower of it and the aeroplane's counts.</param>
    /// <param name="thresholdHeight">Wheels over the threshold, 5 m to 60 m; the rules' where none is given.</param>
    /// <param name="lowestThresholdHeight">
    /// How low the school lets a student aim, 5 m to 60 m; 30 ft where none is given, never above the other height.
    /// </param>
    /// <param name="rules">The school's rules; the aeroplane's where none are given.</param>
    /// <exception cref="RefusedInputException">
    /// An aeroplane without flaps; a value outside its range, the mass outside the aeroplane's; a circuit below the rules' least.
    /// </exception>
    public BriefingRequest(
        Aeroplane aeroplane, Mass mass, Runway runway, Air air, BriefingWind wind, Length? circuitHeight = null,
        Length? spacing = null, CircuitHand hand = CircuitHand.Left, LandingMargin? margin = null, Speed? crosswindLimit = null,
        Length? thresholdHeight = null, Length? lowestThresholdHeight = null, BriefingRules? rules = null)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(wind);
        if (aeroplane.FlapSettings.Count < 2)
            throw Require.RefusedWhole(
                nameof(aeroplane), $"{aeroplane.Name} has one flap setting: it is never flown with flaps, and a landing without them is its usual one.");
        if (!Enum.IsDefined(hand))
            throw Require.Refused(nameof(hand), "hand", hand.ToString(), "left or right", "A circuit turns to one side.");
        Aeroplane = aeroplane;
        Mass = Require.Between(
            mass, aeroplane.MinimumMass, aeroplane.MaximumMass, "mass", $"{aeroplane.Name} is flown between them.");
        // A runway without them is refused here, and not first where they are used.
        (Runway, _, _) = (runway, runway.Direction, runway.LengthAvailable);
        Air = air;
        Wind = wind;
        Rules = rules ?? aeroplane.Rules;
        Length height = circuitHeight ?? Length.FromFeet(1000);
        CircuitHeight = Require.Between(
            height, Length.FromMeters(150), Length.FromMeters(3000), "circuit height",
            "Lower leaves no room above the height to be established by.", nameof(circuitHeight));
        if (Rules.LeastCircuitHeight is { } least && height < least)
            throw Require.Refused(
                nameof(circuitHeight), "circuit height", height, $"{Require.Text(least, height)} or more", "The school flies no lower circuit.");
        Length away = spacing ?? BriefingTechnique.Spacing;
        Spacing = Require.Between(
            away, Length.FromMeters(50), Length.FromKilometers(20), "spacing",
            "Nearer there is no circuit; further the runway is out of sight.", nameof(spacing));
        Hand = hand;
        Margin = margin ?? Rules.Margin;
        CrosswindLimit = crosswindLimit is { } limit ? Require.CrosswindLimit(limit, nameof(crosswindLimit)) : null;
        ThresholdHeight = FinalPath.Over(thresholdHeight ?? Rules.ThresholdHeight, argument: nameof(thresholdHeight));
        Length lowest = FinalPath.Over(
            lowestThresholdHeight ?? Length.FromFeet(30), "lowest height over the threshold", nameof(lowestThresholdHeight));
        LowestThresholdHeight = lowest < ThresholdHeight ? lowest : ThresholdHeight;
    }

    /// <summary>The same flight with another mass, wind or runway.</summary>
    internal BriefingRequest With(Mass? mass = null, BriefingWind? wind = null, Runway? runway = null) => new(
        Aeroplane, mass ?? Mass, runway ?? Runway, Air, wind ?? Wind, CircuitHeight, Spacing, Hand, Margin, CrosswindLimit,
        ThresholdHeight, LowestThresholdHeight, Rules);

    /// <summary>The aeroplane.</summary>
    public Aeroplane Aeroplane { get; }

    /// <summary>Its mass at the landing.</summary>
    public Mass Mass { get; }

    /// <summary>The runway.</summary>
    public Runway Runway { get; }

    /// <summary>The air over it.</summary>
    public Air Air { get; }

    /// <summary>The wind.</summary>
    public BriefingWind Wind { get; }

    /// <summary>Circuit height above the runway.</summary>
    public Length CircuitHeight { get; }

    /// <summary>Downwind from the centreline.</summary>
    public Length Spacing { get; }

    /// <summary>To which side the circuit turns.</summary>
    public CircuitHand Hand { get; }

    /// <summary>The margin on the landing distance.</summary>
    public LandingMargin Margin { get; }

    /// <summary>Wheels over the threshold, where the float does not ask for less.</summary>
    public Length ThresholdHeight { get; }

    /// <summary>How low over the threshold the school lets a student aim.</summary>
    public Length LowestThresholdHeight { get; }

    /// <summary>The rules by which it is briefed.</summary>
    public BriefingRules Rules { get; }

    /// <summary>The instructor's own limit for the crosswind, if there is one.</summary>
    public Speed? CrosswindLimit { get; }
}
