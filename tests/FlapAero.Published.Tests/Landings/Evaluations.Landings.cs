using FlapAero.Equations;
using FlapAero.Published.Tests.Landings;
using UnitsNet;

namespace FlapAero.Published.Tests;

internal static partial class Evaluations
{
    // Gravity of the two textbooks of flight; watts in a horsepower; sea level in slugs per cubic foot.
    private const double FeetGravity = 32.2, MetreGravity = 9.8, Horsepower = 745.7, SeaLevelSlugs = 0.002377, SeaLevel = 1.225;

    private static readonly double UsualPath = Angle.FromDegrees(3).Radians;

    /// <summary>Rules on the demo aeroplane's whole landing with full flaps.</summary>
    private static Dictionary<string, Evaluation> WholeLandings() => new()
    {
        ["T03-002"] = Of(() => RuleLandings.H4Full.Headwind.Roll, () => 100 * (0.9 * 0.9 - 1)),
        ["T03-003"] = Of(() => RuleLandings.H4Full.Tailwind.Roll, () => 100 * (1.1 * 1.1 - 1)),
        ["T03-004"] = Of(
            () => [100 * (StallSpeedOfWeight(1.10) / StallSpeedOfWeight(1) - 1), RuleLandings.H4Full.TenPercentHeavier.Total]),
        ["T03-005"] = Of(() => RuleLandings.H4Full.HigherBy(Length.FromFeet(1000)).Total),
        ["T03-016"] = Of(CanonicalMultiple),
        ["T03-020"] = Of(() => WayPerHeightAtLiftToDrag(10)),
        ["T07-008"] = Of(CanonicalMultiple),
        ["T07-009"] = Of(() => LandingPilot.Usual.ThresholdHeight.Feet),
    };

    private static Dictionary<string, Evaluation> TextbookLandings() => new()
    {
        ["T08-017"] = Of(
            () => ClimbPower() / PublishedRows.Input("T08-003") - LeastSink(),
            () => WorkedFormulas.RateOfClimb(
                ClimbPower() / PublishedRows.Input("T08-003"), SeaLevel,
                PublishedRows.Input("T08-003") / PublishedRows.Input("T08-002"), TextbookPolar())),
        ["T08-020"] = Of(() => [TouchdownOfTheJet(), RollOfTheJet(), Length.FromMeters(RollOfTheJet()).Feet]),
        ["T08-023"] = Of(() => StallLaws.Speed(76.84, 1, SeaLevelSlugs, 1, 2.39)),
        ["T08-024"] = Of(() => [1.23 * PublishedRows.Input("T08-023"), 1.15 * PublishedRows.Input("T08-023")]),
        ["T08-025"] = Of(() => WorkedFormulas.FlareRadius(PublishedRows.Get("T08-024").Numbers[0].Value, FeetGravity)),
        ["T08-026"] = Of(() => WorkedFormulas.FlareHeight(PublishedRows.Input("T08-025"), UsualPath)),
        ["T08-027"] = Of(() => WorkedFormulas.ApproachDistance(LandingPilot.Usual.ThresholdHeight.Feet, PublishedRows.Input("T08-026"), UsualPath)),
        ["T08-028"] = Of(() => WorkedFormulas.FlareDistance(PublishedRows.Input("T08-025"), UsualPath)),
    };

    private static Dictionary<string, string> LandingContext() => new()
    {
        ["T03-001"] = "A least value: HandbookRuleTests compares whole landings with it.",
        ["T03-007"] = "A range: HandbookRuleTests finds what drag is worth above it and below.",
        ["T03-011"] = "A take-off: not in the model.",
        ["T03-012"] = "A largest value: HandbookRuleTests compares whole landings with it.",
        ["T03-013"] = "A second copy of T03-012.",
        ["T03-017"] = "A technique for another approach: the multiple is the user's to give.",
        ["T03-018"] = "A tolerance of pilots: LandingPracticeTests says what it costs.",
        ["T03-019"] = "A tolerance of pilots: LandingPracticeTests says how many knots it is worth.",
        ["T03-021"] = "A ratio of an aeroplane that is not named.",
        ["T03-022"] = "Tyres on water: not in the model. WorkedLandingTests holds the rule to its own formula.",
        ["T07-001"] = "A largest friction: FrictionTests keeps the demo's braking below it.",
        ["T07-002"] = "A range: FrictionTests holds the demo's values to it.",
        ["T07-003"] = "Ice: FrictionTests holds the demo's dry runway to it.",
        ["T07-004"] = "An input of the source's: FrictionTests holds the demo's rolling to it.",
        ["T07-005"] = "An input of the source's: FrictionTests holds the demo's braking to it.",
        ["T07-006"] = "An input of the source's: FrictionTests holds the demo's braking to it.",
        ["T07-010"] = "A limit in two units: FrictionTests converts them.",
        ["T07-011"] = "The screen height of T07-009 in two units: FrictionTests converts them.",
        ["T07-012"] = "A demonstration in flight: LandingPracticeTests flies it.",
        ["T08-019"] = "Inputs of T08-020.",
        ["T08-021"] = "Inputs of T08-022.",
        ["T08-022"] = "A take-off: not in the model. WorkedLandingTests evaluates its formula.",
        ["T08-029"] = "A range of pilots' habits: WorkedLandingTests compares the demo's time.",
        ["T08-030"] = "Input of T08-025; WorkedLandingTests compares the demo's round-out.",
        ["T08-037"] = "The size of a sample, not a result.",
        ["T08-038"] = "A finding in words: LandingPracticeTests holds whole landings to it.",
        ["T10-001"] = "Electric loads without a number: not in the flight model.",
        ["T10-003"] = "Electric loads of rotorcraft: not in the flight model.",
    };

    private static double CanonicalMultiple()
    {
        RuleLandings full = RuleLandings.H4Full;
        return full.Canonical.Input.ThresholdSpeed / full.Configuration.StallSpeed(Air.StandardSeaLevel).True.MetersPerSecond;
    }

    /// <summary>Way over height lost in a glide whose polar and lift coefficient have this ratio of lift to drag.</summary>
    private static double WayPerHeightAtLiftToDrag(double ratio)
    {
        const double ZeroLiftDrag = 0.04, PressureForce = 16000;
        // Best glide: C_L = 2 C_D0 L/D, K = C_D0/C_L².
        double lift = 2 * ZeroLiftDrag * ratio;
        double weight = PressureForce * lift * Math.Sqrt(1 + 1 / (ratio * ratio));
        double sine = GlideLaws.SinPathAngle(PressureForce, 1, ZeroLiftDrag, ZeroLiftDrag / (lift * lift), weight, 0);
        return Math.Sqrt(1 - sine * sine) / -sine;
    }

    private static double ClimbPower() => PublishedRows.Input("T08-007") * PublishedRows.Input("T08-006") * Horsepower;

    /// <summary>V D/W at the least power of level flight.</summary>
    private static double LeastSink()
    {
        DragPolar polar = TextbookPolar();
        double lift = DragLaws.MinimumPowerLift(polar.ZeroLiftDragCoefficient, polar.InducedFactor);
        double speed = StallLaws.Speed(PublishedRows.Input("T08-003"), 1, SeaLevel, PublishedRows.Input("T08-002"), lift);
        return speed * polar.DragCoefficient(lift) / lift;
    }

    private static double TouchdownOfTheJet() =>
        1.3 * StallLaws.Speed(BusinessJet.Weight, 1, SeaLevel, BusinessJet.Area, BusinessJet.MaximumLift);

    private static double RollOfTheJet()
    {
        double drag = AirspeedLaws.DynamicPressure(SeaLevel, 0.7 * TouchdownOfTheJet()) * BusinessJet.Area * BusinessJet.ZeroLiftDrag;
        return WorkedFormulas.GroundRoll(TouchdownOfTheJet(), BusinessJet.Weight, drag, BusinessJet.BrakingFriction, MetreGravity);
    }
}
