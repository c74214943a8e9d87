using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests;

internal static partial class Evaluations
{
    // The standard gravity of the fluid-mechanics textbook's example.
    private const double TextbookGravity = 9.81;

    private static Dictionary<string, Evaluation> Stalls() => new()
    {
        ["T02-001"] = Of(() => 50 * StallRatio(4)),
        ["T02-002"] = Of(() => 50 * StallRatio(9)),
        ["T02-004"] = Of(() => StallLaws.LoadFactor(StallLaws.StallingBank(102, 60)!.Value, 0)),
        ["T02-005"] = Of(() => LevelTurn(0)),
        ["T02-006"] = Of(() => LevelTurn(10)),
        ["T02-007"] = Of(() => LevelTurn(30)),
        ["T02-008"] = Of(() => LevelTurn(45)),
        ["T02-009"] = Of(() => LevelTurn(60)),
        ["T02-010"] = Of(() => LevelTurn(70)),
        ["T02-011"] = Of(() => LevelTurn(80)),
        ["T02-012"] = Of(() => LevelTurn(85)),
        ["T02-013"] = Of(() => StallRatio(LevelTurn(30))),
        ["T02-014"] = Of(() => StallRatio(LevelTurn(45))),
        ["T02-015"] = Of(() => StallRatio(LevelTurn(60))),
        ["T02-016"] = Of(() => 100 * (StallSpeedOfWeight(1.21) / StallSpeedOfWeight(1) - 1)),
        ["T02-017"] = Of(() => 100 * (StallSpeedOfWeight(1.10) / StallSpeedOfWeight(1) - 1)),
        ["T02-019"] = Of(() => 1.2 * StallLaws.Speed(70000 * TextbookGravity, 1, 1.2, 150, 1.52)),
        ["T02-020"] = Of(() => 1.2 * StallLaws.Speed(70000 * TextbookGravity, 1, 1.2, 150, 3.48)),
        ["T02-023"] = Of(() => Speed.FromMetersPerSecond(StallLaws.Speed(11600, 1, 1.2, 15, 1.18)).KilometersPerHour),
        ["T03-014"] = Of(() => 70 + Gust.Additive(Speed.FromKnots(15)).Knots),
        ["T03-015"] = Of(() => Gust.Additive(Speed.FromKnots(10)).Knots / 10),
    };

    private static Dictionary<string, Evaluation> GroundEffects() => new()
    {
        ["T04-001"] = Of(() => Reduction(1)),
        ["T04-002"] = Of(() => Reduction(0.25)),
        ["T04-003"] = Of(() => Reduction(0.1)),
        ["T04-005"] = Of(
            () => [Reduction(0.10), Reduction(0.25), Reduction(0.50)],
            () => [BiplaneReduction(0.10), BiplaneReduction(0.25), BiplaneReduction(0.50)]),
        ["T04-017"] = Of(
            () => GroundEffect.InducedDragFactor(Length.FromMeters(1.83), Length.FromMeters(16.25)),
            () => HorseshoeFactor(1.83 / 16.25)),
        ["T04-018"] = Of(
            () => [Reduction(0.10), Reduction(0.25), Reduction(1)],
            () => [HorseshoeReduction(0.10), HorseshoeReduction(0.25), HorseshoeReduction(1)]),
    };

    private static Dictionary<string, Evaluation> Textbook() => new()
    {
        ["T08-008"] = Of(() => [TextbookPolar().InducedFactor, TextbookPolar().AspectRatio]),
        ["T08-009"] = Of(() => TextbookPolar().MaximumLiftToDrag),
        ["T08-010"] = Of(() => TextbookPolar().MaximumLiftToDrag),
        ["T08-011"] = Of(MaximumEndurance),
        ["T08-012"] = Of(() => Angle.FromRadians(Math.Atan(1 / TextbookPolar().MaximumLiftToDrag)).Degrees),
        ["T08-013"] = Of(
            () => 3048 * TextbookPolar().MaximumLiftToDrag,
            () => 3048 * PublishedRows.Input("T08-010")),
        ["T08-014"] = Of(() => DragLaws.BestGlideLift(TextbookPolar().ZeroLiftDragCoefficient, TextbookPolar().InducedFactor)),
    };

    private static double LevelTurn(double degrees) => LoadFactor.InTurn(Angle.FromDegrees(degrees));

    private static double StallRatio(double loadFactor) =>
        StallLaws.Speed(10000, loadFactor, 1.225, 16, 1.5) / StallLaws.Speed(10000, 1, 1.225, 16, 1.5);

    private static double StallSpeedOfWeight(double share) => StallLaws.Speed(10000 * share, 1, 1.225, 16, 1.5);

    private static IEnumerable<(double Library, double Formula)> StallRatios() =>
        new[] { 0.25, 1, 1.5, 2, 3.8, 6 }.Select(loadFactor => (StallRatio(loadFactor), Math.Sqrt(loadFactor)));

    /// <summary>Per cent of the induced drag that the model's ground effect takes off.</summary>
    private static double Reduction(double heightOverSpan) =>
        100 * (1 - GroundEffect.InducedDragFactor(Length.FromMeters(heightOverSpan * 10), Length.FromMeters(10)));

    /// <summary>The formula of T04-004, in per cent, with g = 2h.</summary>
    private static double BiplaneReduction(double heightOverSpan) =>
        100 * (1 - 0.66 * 2 * heightOverSpan) / (1.05 + 3.7 * 2 * heightOverSpan);

    /// <summary>The formula of T04-016.</summary>
    private static double HorseshoeFactor(double heightOverSpan)
    {
        double square = Math.Pow(16 * heightOverSpan, 2);
        return square / (1 + square);
    }

    private static double HorseshoeReduction(double heightOverSpan) => 100 * (1 - HorseshoeFactor(heightOverSpan));

    private static DragPolar TextbookPolar()
    {
        double span = PublishedRows.Input("T08-001");
        return new DragPolar(
            PublishedRows.Input("T08-004"), PublishedRows.Input("T08-005"), span * span / PublishedRows.Input("T08-002"));
    }

    private static double MaximumEndurance()
    {
        DragPolar polar = TextbookPolar();
        double lift = DragLaws.MinimumPowerLift(polar.ZeroLiftDragCoefficient, polar.InducedFactor);
        return Math.Pow(lift, 1.5) / polar.DragCoefficient(lift);
    }
}
