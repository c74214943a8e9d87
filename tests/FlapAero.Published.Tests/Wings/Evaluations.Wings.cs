using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests;

internal static partial class Evaluations
{
    private const double ThinSlope = 2 * Math.PI;

    // Gas constant of the source that works in slugs and feet, ft·lbf/(slug·°R), in SI.
    private const double SlugGasConstant = 1716 * 0.3048 * 0.3048 * 1.8;

    private static Dictionary<string, Evaluation> FiniteWings() => new()
    {
        ["T05-001"] = Of(() => SecondWing()),
        ["T05-002"] = Of(() => LiftAndDrag(FiniteWingLaws.Slope(ThinSlope, 8, 0.055) * Radians(5), 8, 0.055)),
        ["T05-003"] = Of(() => Tapered(8, 0.8).InducedDrag.PlanformFactor),
        ["T05-007"] = Of(() => MeasuredSection()),
        ["T05-009"] = Of(() => InducedDragOf(3337.5, 48.3 / 3.6, 2 * 23.69, 1.225, 12.29 * 12.29 / 23.69, 0.93).Drag),
        ["T05-011"] = Of(() => LeastInducedDrag()),
        ["T05-020"] = Of(() => FlapLaws.ThinAerofoilLift(Radians(5), 0.25, 0)),
    };

    private static Dictionary<string, Evaluation> Flaps() => new()
    {
        ["T05-014"] = Of(() => Effectiveness(0.15)),
        ["T05-015"] = Of(() => Effectiveness(0.20)),
        ["T05-016"] = Of(() => Effectiveness(0.25)),
        ["T05-017"] = Of(() => Effectiveness(0.30)),
        ["T05-018"] = Of(() => Effectiveness(0.40)),
        ["T06-022"] = Of(() =>
        [
            MaximumLift(PublishedRows.Get("T06-003").Numbers[1].Value) / MaximumLift(PublishedRows.Get("T06-003").Numbers[0].Value),
            PublishedRows.Input("T06-002") / PublishedRows.Input("T06-001"),
        ]),
    };

    // The textbook's equation 4.52, at angles, deflections and flap chords of our choice.
    private static IEnumerable<(double Library, double Formula)> ThinAerofoilFlaps() =>
        from angle in new[] { -0.1, 0, 0.2 }
        from share in new[] { 0.05, 0.25, 0.6 }
        from deflection in new[] { 0, 0.3 }
        let hinge = Math.Acos(2 * share - 1)
        select (
            FlapLaws.ThinAerofoilLift(angle, share, deflection),
            2 * Math.PI * angle + 2 * (Math.PI - hinge + Math.Sin(hinge)) * deflection);

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static double[] Effectiveness(double share) => [FlapLaws.Effectiveness(share), 2 * Math.PI * FlapLaws.Effectiveness(share)];

    private static double[] LiftAndDrag(double lift, double aspectRatio, double factor) =>
        [lift, FiniteWingLaws.InducedDrag(lift, aspectRatio, factor)];

    // Speed goes with 1/√C_Lmax: that of one and the same aeroplane, whatever its weight and area.
    private static double MaximumLift(double milesPerHour) => Math.Pow(StallLaws.Speed(10000, 1, 1.225, 16, 1) / milesPerHour, 2);

    private static double SecondWing()
    {
        const double Factor = 0.055;
        double angle = Radians(3.4 + 2);
        double firstLift = Math.Sqrt(0.01 / FiniteWingLaws.InducedDrag(1, 6, Factor));
        double section = FiniteWingLaws.SectionSlope(firstLift / angle, 6, Factor);
        return FiniteWingLaws.InducedDrag(FiniteWingLaws.Slope(section, 10, Factor) * angle, 10, Factor);
    }

    private static double[] MeasuredSection()
    {
        const double Oswald = 0.95;
        double slope = FiniteWingLaws.Slope((1.2 - 0.14) / Radians(10), 10, 1 / Oswald - 1);
        double lift = slope * Radians(4 + 1.5);
        return [Radians(slope), lift, DragLaws.Coefficient(0.006, DragLaws.InducedFactor(Oswald, 10), lift)];
    }

    private static (double Lift, double Drag) InducedDragOf(
        double weight, double speed, double area, double density, double aspectRatio, double oswald)
    {
        double pressure = AirspeedLaws.DynamicPressure(density, speed) * area;
        double lift = weight / pressure;
        return (lift, pressure * DragLaws.Coefficient(0, DragLaws.InducedFactor(oswald, aspectRatio), lift));
    }

    private static double[] LeastInducedDrag()
    {
        // The source's own absolute zero, -460 °F.
        double temperature = (460 - 67) / 1.8;
        double density = Pressure.FromPoundsForcePerSquareInch(3.3).Pascals / (SlugGasConstant * temperature);
        double weight = Force.FromPoundsForce(10000).Newtons;
        double speed = Speed.FromFeetPerSecond(600).MetersPerSecond;
        double span = Length.FromFeet(54).Meters;
        double area = weight / (0.2 * AirspeedLaws.DynamicPressure(density, speed));
        (double _, double drag) = InducedDragOf(weight, speed, area, density, span * span / area, 1);
        return [Area.FromSquareMeters(area).SquareFeet, Force.FromNewtons(drag).PoundsForce];
    }

    private static LiftingLine Tapered(double aspectRatio, double taper) => new(
        WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(20 / (aspectRatio * (1 + taper))), taper),
        new WingSection(ThinSlope, Angle.Zero, 1.5));
}
