using FlapAero.AeroplaneFiles;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>What a manual's glides, level flights and climbs must be.</summary>
internal static class ManualFlightRules
{
    // The least that a light aeroplane with a fixed gear has had: a guess on the safe side.
    private const double LeastDrag = 0.012;
    private const double MostEfficiency = 0.88;

    public static void Check(ManualContent manual, Calibrated calibrated, FaultList faults)
    {
        foreach (PrintedGlide row in manual.Glides) CheckGlide(row, manual, calibrated, faults);
        foreach (PrintedLevelFlight row in manual.LevelFlights)
        {
            if (!HasAir(row.Day, faults)) continue;
            calibrated.AboveStall(row.Speed, 0, row.Mass, 1, "level flight is faster than the stall", faults, row.Day.Air);
            RotationalSpeed highest = manual.RatedSpeed?.Value ?? Typical.HighestSpeed;
            if (row.EngineSpeed.Value.RevolutionsPerMinute > highest.RevolutionsPerMinute + 1)
                ManualRules.Fault(
                    row.EngineSpeed, ManualRules.Text($"is more than the highest engine speed, {highest.RevolutionsPerMinute:0} rpm"),
                    "no level flight needs more; is engine.speed the propeller's?", faults);
        }

        foreach (PrintedClimb row in manual.Climbs)
        {
            if (!HasAir(row.Day, faults)) continue;
            calibrated.AboveStall(row.Speed, row.Flaps, row.Mass, 1, "a climb is faster than the stall", faults, row.Day.Air);
            if (manual.Power is not { } power) continue;
            double weight = (row.Mass?.Value ?? manual.MaximumMass.Value).Kilograms * StandardConstants.Gravity;
            double most = MostEfficiency * (double)power.Value.Watts / weight;
            if (row.Rate.Value.MetersPerSecond <= most) continue;
            ManualRules.Fault(
                row.Rate, ManualRules.Text($"is more than the whole power of {power.Written} lifts, {Speed.FromMetersPerSecond(most).FeetPerMinute:0} ft/min"),
                "a climb has what drag leaves of it; is the unit right?", faults);
        }
    }

    /// <summary>Whether altitude and temperature are of this atmosphere.</summary>
    public static bool HasAir(PrintedDay day, FaultList faults)
    {
        if (Refusal.Of(() => day.Air) is not { } refusal) return true;
        Given<double> at = (day.Temperature?.At ?? day.PressureAltitude?.At)!;
        faults.Add(at.Line, at.Place, $"{at.Written}: {refusal.Problem}", refusal.Expected);
        return false;
    }

    private static void CheckGlide(PrintedGlide row, ManualContent manual, Calibrated calibrated, FaultList faults)
    {
        string what = row.IsBest ? "the best glide is faster than the stall" : "a glide is faster than the stall";
        if (row.Speed is { } speed) calibrated.AboveStall(speed, row.Flaps, row.Mass, 1, what, faults);
        if (row.Ratio is not { } ratio) return;
        double span = manual.Span.Value.Meters, aspectRatio = span * span / manual.Area.Value.SquareMeters;
        double most = DragLaws.MaximumLiftToDrag(LeastDrag, DragLaws.InducedFactor(1, aspectRatio));
        string why = ManualRules.Text($"with the drag of the cleanest light aeroplane, C_D0 {LeastDrag}");
        if (row.Speed is { } known)
        {
            // An ideal wing of this span, and nothing else that drags: D = W²/(q π b²).
            double pressure = AirspeedLaws.DynamicPressure(
                StandardConstants.SeaLevelDensity, Speed.FromKnots(calibrated.Knots(known, row.Flaps)).MetersPerSecond);
            double weight = (row.Mass?.Value ?? manual.MaximumMass.Value).Kilograms * StandardConstants.Gravity;
            double alone = pressure * Math.PI * span * span / weight;
            if (alone < most) (most, why) = (alone, "even where nothing drags but the ideal wing");
        }

        if (ratio.Value <= most + ratio.Step()) return;
        ManualRules.Fault(
            ratio, ManualRules.Text($"is more than a span of {manual.Span.Written} allows, {most:0.0} {why}"),
            "a glide ratio is a distance over a height, both in one unit", faults);
    }
}
