using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>
/// What is typical of light trainers with a fixed gear and a fixed-pitch propeller, and how far the kind spreads: what stands where a
/// manual says nothing. All are this project's own estimates, about the invented demo aeroplanes' values.
/// </summary>
internal static class Typical
{
    public const string Why = "typical of light trainers";

    /// <summary>Of the clean wing, reference chord against the fuselage.</summary>
    public const double IncidenceDegrees = 1.5;

    /// <summary>
    /// The attitude at which the tail meets the runway: nine degrees, or more where the wing, flaps up, needs more for three quarters of its
    /// greatest lift. With less an aeroplane would have no room to round out.
    /// </summary>
    public static Angle TailLimit(LiftCurve up) => Angle.FromDegrees(
        Math.Max(9, up.AngleOfAttack(0.75 * up.MaximumLiftCoefficient).Degrees - IncidenceDegrees));

    public const double StallRoundingDegrees = 4;

    /// <summary>e falls by this share from flaps up to full.</summary>
    public const double OswaldLoss = 0.05;

    /// <summary>Blades as a share of the disc, across the stream as a plate: what a stopped propeller adds to the drag area.</summary>
    public const double StoppedDragOfDisc = 0.05;

    public static PropellerTable Propeller { get; } = DemoAeroplanes.TrainerH4.Propeller.Table;

    /// <summary>Share of full flaps' gain of lift at a share of their deflection.</summary>
    public static double LiftShare(double deflection) => Math.Pow(deflection, 0.75);

    /// <summary>Share of full flaps' drag at a share of their deflection.</summary>
    public static double DragShare(double deflection) => Math.Pow(deflection, 1.5);

    /// <summary>C_Lmax of full flaps over that of flaps up, less one.</summary>
    public static double LiftGain(Angle full) => 0.43 * Math.Pow(full.Degrees / 35, 0.75);

    public static double FlapDrag(Angle full) => 0.052 * Math.Pow(full.Degrees / 35, 1.5);

    public static Torque FullThrottle(Mass maximum) => Torque.FromNewtonMeters(0.415 * maximum.Kilograms);

    public static Length Diameter(Mass maximum) => Length.FromMeters(1.93 * Math.Pow(maximum.Kilograms / 1090, 0.25));

    public static RotationalSpeed HighestSpeed { get; } = RotationalSpeed.FromRevolutionsPerMinute(2700);

    public static double Slope(double aspectRatio) => LiftLaws.HelmboldSlope(2 * Math.PI, aspectRatio);

    /// <summary>The typical propeller with another pitch: its advance ratios and powers in proportion, its efficiencies the same.</summary>
    public static PropellerTable WithPitch(double pitch) => new(Propeller.Rows.Select(
        row => (row.AdvanceRatio * pitch, row.ThrustCoefficient, Math.Max(row.PowerCoefficient * pitch, row.AdvanceRatio * pitch * row.ThrustCoefficient))));
}
