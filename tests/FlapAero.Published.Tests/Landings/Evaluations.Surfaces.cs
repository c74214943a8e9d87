using UnitsNet;

namespace FlapAero.Published.Tests;

/// <summary>What the rules make of a landing distance, and what a briefing takes of them.</summary>
internal static partial class Evaluations
{
    private static Dictionary<string, Evaluation> SurfaceRules() => new()
    {
        ["T11-001"] = Of(() => RunwaySurface.FirmGrass.Rule!.Factor),
        ["T11-002"] = Of(() => RunwaySurface.WetPaved.Rule!.Factor),
        ["T11-003"] = Of(() => RunwaySurface.WetGrass.Rule!.Factor),
        ["T11-004"] = Of(() => LandingMargin.SeventyPercent.Factor),
        ["T11-006"] = Of(() => 10 * LandingMargin.PlannedHeadwind(Speed.FromKnots(10)).Knots),
        ["T11-007"] = Of(() => 100 * (1 / Math.Sqrt(LandingPilot.Usual.TouchdownLiftFraction) - 1)),
    };
}
