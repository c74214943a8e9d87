using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// A circuit flown forwards by a pilot who was early or late, with the planned speeds, thrusts and banks: where the
/// aeroplane comes out, and what it would take to put it right. Immutable.
/// </summary>
public sealed class FlownCircuit
{
    internal FlownCircuit(Circuit planned, PilotTiming timing, IReadOnlyList<CircuitLeg> legs)
    {
        Planned = planned;
        Timing = timing;
        Legs = legs;
        Ledger = new(legs);
        Track = [.. legs.SelectMany(leg => leg.Plotted)];
        BankForCentreline = CentrelineBank.Find(planned, legs[4]) is { } bank
            ? Angle.FromRadians(bank).ToUnit(AngleUnit.Degree)
            : null;
    }

    /// <summary>The circuit as planned.</summary>
    public Circuit Planned { get; }

    /// <summary>How early or late.</summary>
    public PilotTiming Timing { get; }

    /// <summary>
    /// Seven legs in the order of flight. The last two hold the planned descent along a line beside the centreline, until the
    /// runway or the ground before it: what happens if nobody puts it right.
    /// </summary>
    public IReadOnlyList<CircuitLeg> Legs { get; }

    /// <summary>Height, time and distance of each leg, and their sums.</summary>
    public CircuitLedger Ledger { get; }

    /// <summary>Points for a drawing to scale.</summary>
    public IReadOnlyList<CircuitPoint> Track { get; }

    /// <summary>Where the turn to final ends.</summary>
    public CircuitPoint RollingOut => Legs[5].Begin;

    /// <summary>How far past the extended centreline the turn ends; negative, short of it.</summary>
    public Length PastCentreline => Length.FromMeters(-RollOut.Y);

    /// <summary>Height at the end of the turn, less the planned height there.</summary>
    public Length HeightErrorRollingOut => Feet(RollOut.Height - Planned.Final.SiBegin.Height);

    /// <summary>Height at the end of the turn, less the path's at that place; negative, too low.</summary>
    public Length AbovePath => Feet(RollOut.Height - PathHeight(RollOut.X));

    /// <summary>How much longer final is than planned.</summary>
    public Length ExtraFinal => Length.FromMeters(Planned.Final.SiBegin.X - RollOut.X);

    /// <summary>Whether the turn ends at or above the height to be established by.</summary>
    public bool IsEstablishedInTime => RollOut.Height >= Planned.Plan.EstablishedBy.Meters - 1e-9;

    /// <summary>Angle over the ground from the end of the turn straight to the aiming point.</summary>
    public Angle PathAngleNeeded => Angle.FromRadians(StraightToTheAim).ToUnit(AngleUnit.Degree);

    /// <summary>The thrust that flies that angle at the final's speed; no answer where it is steeper than 30° through the air.</summary>
    public Force? ThrustNeeded
    {
        get
        {
            FinalLeg final = Planned.Plan.Legs.Final;
            Aerodynamics air = new(final.Configuration, final.Airspeed);
            double sink = TrackLaws.SinkOnPath(air.Speed, StraightToTheAim, -Planned.Frame.WindX, -Planned.Frame.WindY);
            return sink <= air.Speed * 0.5 ? Force.FromNewtons(air.Thrust(-Math.Asin(sink / air.Speed), bank: 0)) : null;
        }
    }

    /// <summary>Whether the engine has that thrust between idle and full: less than idle, and the aeroplane stays too high.</summary>
    public bool ThrustSuffices => ThrustNeeded is { } thrust
        && thrust.Newtons >= Planned.Plan.Thrust.Idle.Newtons && thrust.Newtons <= Planned.Plan.Thrust.Full.Newtons;

    /// <summary>Where the planned descent meets the ground if nothing is put right: past the threshold; negative, short of it.</summary>
    public Length MeetsGroundAt => Length.FromMeters(Legs[6].SiEnd.X);

    /// <summary>
    /// The bank, in a turn to final begun where this one was, that ends it on the centreline; no answer where the centreline
    /// lies behind, or where the wing stalls before the turn is tight enough.
    /// </summary>
    public Angle? BankForCentreline { get; }

    /// <summary>Whether that bank exists and keeps within the plan's limit.</summary>
    public bool CentrelineStillMade => BankForCentreline is { } bank && bank.Degrees <= Planned.Plan.BankLimit.Degrees + 1e-9;

    /// <summary>V/V_S(n) − 1 in a turn with that bank; no answer where there is no such bank.</summary>
    public double? StallMarginThere => BankForCentreline is { } bank
        ? Planned.TurnToFinal.Configuration.StallMargin(
            Planned.TurnToFinal.Airspeed, StallLaws.LoadFactor(bank.Radians, CentrelineBank.Path(Planned, bank.Radians)))
        : null;

    private FlightState RollOut => Legs[5].SiBegin;

    // Never level nor straight down: the turn ends before the threshold, and the aim lies past it.
    private double StraightToTheAim => Math.Atan2(RollOut.Height, Planned.Plan.AimingPoint.Meters - RollOut.X);

    private double PathHeight(double x) => Planned.Plan.ThresholdHeight.Meters
        - x * Math.Tan(Planned.Plan.Legs.Final.PathAngle.Radians);

    private static Length Feet(double si) => Length.FromMeters(si).ToUnit(LengthUnit.Foot);
}
