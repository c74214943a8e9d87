using UnitsNet;

namespace FlapAero;

/// <summary>A circuit to be solved: the runway, the wind, the shape, the legs and the limits. Immutable.</summary>
/// <remarks>
/// Assumed: a level aerodrome, a steady wind that is the same at every height, base at right angles to the runway over the
/// ground, no time to roll into or out of a bank, and speeds that change at once between legs. What slowing down is worth
/// in height stands beside each leg (<see cref="CircuitLeg.HeightWorthOfSlowing"/>) and is not in the ledger.
/// </remarks>
public sealed class CircuitPlan
{
    /// <summary>By when common practice wants to be on the extended centreline.</summary>
    private static readonly Length UsualEstablished = Length.FromFeet(300);

    private readonly Length? _touchdownPoint;

    /// <summary>A plan.</summary>
    /// <param name="runway">The runway.</param>
    /// <param name="wind">The wind, at all heights.</param>
    /// <param name="hand">To which side it turns.</param>
    /// <param name="height">Circuit height of the wheels above the runway, 30 m to 3 000 m.</param>
    /// <param name="spacing">Distance of the downwind track from the runway's centreline, 50 m to 20 km.</param>
    /// <param name="legs">How each leg is to be flown.</param>
    /// <param name="thrust">What the engine can give.</param>
    /// <param name="bankLimit">Steepest bank that the pilot will use, 1° to 80°.</param>
    /// <param name="fix">
    /// What pins it down; where none is given, the base turn with the touchdown point 45° behind the wing (common
    /// practice). With a level downwind leg power is reduced in the base turn and nothing is open: then none may be given.
    /// </param>
    /// <param name="establishedBy">Least height at the end of the turn to final; 300 ft (common practice) where none is given.</param>
    /// <param name="thresholdHeight">h_t, wheels over the threshold, 5 m to 60 m; 50 ft where none is given.</param>
    /// <param name="touchdownPoint">
    /// The point that "abeam" and "behind the wing" mean, past the threshold, 0 to 2 000 m; where none is given, the aiming point.
    /// </param>
    /// <exception cref="RefusedInputException">
    /// A value outside its range; a fix beside a level downwind leg.
    /// </exception>
    public CircuitPlan(
        Runway runway, Wind wind, CircuitHand hand, Length height, Length spacing, CircuitLegs legs,
        ThrustRange thrust, Angle bankLimit, CircuitFix? fix = null, Length? establishedBy = null, Length? thresholdHeight = null,
        Length? touchdownPoint = null)
    {
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(wind);
        ArgumentNullException.ThrowIfNull(legs);
        ArgumentNullException.ThrowIfNull(thrust);
        if (!Enum.IsDefined(hand))
            throw Require.Refused(nameof(hand), "hand", hand.ToString(), "left or right", "A circuit turns to one side.");
        if (fix is not null && legs.Downwind.Descent.IsLevel)
            throw Require.RefusedWhole(
                nameof(fix), "With a level downwind leg the height alone says where the base turn begins: a fix besides would ask for two circuits at once.");
        Runway = runway;
        Wind = wind;
        Hand = hand;
        Height = Require.Between(
            height, Length.FromMeters(30), Length.FromMeters(3000), "circuit height", "Circuits are flown between them.");
        Spacing = Require.Between(
            spacing, Length.FromMeters(50), Length.FromKilometers(20), "spacing", "Nearer there is no circuit; further the runway is out of sight.");
        Legs = legs;
        Thrust = thrust;
        BankLimit = Require.Between(
            bankLimit, Turn.LeastBank, Turn.SteepestBank, "bank limit", "Less is straight flight; more is no turn of a light aeroplane.");
        Fix = fix ?? (legs.Downwind.Descent.IsLevel ? null : CircuitFix.BaseTurnAt(Angle.FromDegrees(45)));
        ThresholdHeight = FinalPath.Over(thresholdHeight ?? LandingPilot.Usual.ThresholdHeight, argument: nameof(thresholdHeight));
        _touchdownPoint = touchdownPoint is { } point
            ? Require.Between(
                point, Length.Zero, Length.FromMeters(2000), "touchdown point", "It lies on the runway.", nameof(touchdownPoint))
            : null;
        Length established = establishedBy ?? UsualEstablished;
        EstablishedBy = Require.Between(
            established, ThresholdHeight, Length.FromMeters(3000), "height to be established by",
            "It lies above the threshold height.", nameof(establishedBy));
    }

    /// <summary>The runway.</summary>
    public Runway Runway { get; }

    /// <summary>The wind.</summary>
    public Wind Wind { get; }

    /// <summary>To which side it turns.</summary>
    public CircuitHand Hand { get; }

    /// <summary>Circuit height above the runway.</summary>
    public Length Height { get; }

    /// <summary>Distance of downwind from the centreline.</summary>
    public Length Spacing { get; }

    /// <summary>How each leg is to be flown.</summary>
    public CircuitLegs Legs { get; }

    /// <summary>What the engine can give.</summary>
    public ThrustRange Thrust { get; }

    /// <summary>Steepest bank that the pilot will use.</summary>
    public Angle BankLimit { get; }

    /// <summary>What pins it down; nothing does, and nothing need, where downwind is level.</summary>
    public CircuitFix? Fix { get; }

    /// <summary>Least height at the end of the turn to final.</summary>
    public Length EstablishedBy { get; }

    /// <summary>h_t, wheels over the threshold: the final path passes there.</summary>
    public Length ThresholdHeight { get; }

    /// <summary>Where the final path meets the runway, h_t/tan γ_p past the threshold.</summary>
    public Length AimingPoint => FinalPath.AimingPoint(ThresholdHeight, Legs.Final.PathAngle);

    /// <summary>The point that "abeam" means, past the threshold: the one that was given, else the aiming point.</summary>
    public Length TouchdownPoint => _touchdownPoint ?? AimingPoint;

    /// <summary>This plan with some things changed.</summary>
    /// <remarks>Formula: none, it is a copy. Range: as the constructor's. Source: [common-practice].</remarks>
    /// <param name="runway">Another runway.</param>
    /// <param name="wind">Another wind.</param>
    /// <param name="hand">The other hand.</param>
    /// <param name="height">Another circuit height.</param>
    /// <param name="spacing">Another spacing.</param>
    /// <param name="legs">Other legs.</param>
    /// <param name="thrust">Another engine.</param>
    /// <param name="bankLimit">Another limit.</param>
    /// <param name="fix">Another fix.</param>
    /// <param name="establishedBy">Another height to be established by.</param>
    /// <param name="thresholdHeight">Another height over the threshold.</param>
    /// <param name="touchdownPoint">Another point that "abeam" means.</param>
    /// <returns>The changed plan.</returns>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    /// <example><code>DemoCircuits.FlapsUp.With(spacing: Length.FromNauticalMiles(1)).Spacing.NauticalMiles // 1.0</code></example>
    public CircuitPlan With(
        Runway? runway = null, Wind? wind = null, CircuitHand? hand = null, Length? height = null, Length? spacing = null,
        CircuitLegs? legs = null, ThrustRange? thrust = null, Angle? bankLimit = null, CircuitFix? fix = null, Length? establishedBy = null,
        Length? thresholdHeight = null, Length? touchdownPoint = null)
    {
        bool level = (legs ?? Legs).Downwind.Descent.IsLevel;
        return new(
            runway ?? Runway, wind ?? Wind, hand ?? Hand, height ?? Height, spacing ?? Spacing, legs ?? Legs,
            thrust ?? Thrust, bankLimit ?? BankLimit, fix ?? (level ? null : Fix), establishedBy ?? EstablishedBy,
            thresholdHeight ?? ThresholdHeight, touchdownPoint ?? _touchdownPoint);
    }
}
