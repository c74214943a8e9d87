using FlapAero.AeroplaneFiles;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>What a manual's landings must be.</summary>
internal static class ManualLandingRules
{
    // Firm braking on dry asphalt holds 0.4 of the weight in textbooks, with the wing's lift still taking some of it; the air adds to it.
    private const double MostBraking = 0.5;

    // Steeper than any light aeroplane comes down over the threshold.
    private const double SteepestDegrees = 14;
    private const double FiftyFeet = 15.24;

    public static void Check(ManualContent manual, Calibrated calibrated, FaultList faults)
    {
        foreach (PrintedLanding row in manual.Landings)
        {
            if (!ManualFlightRules.HasAir(row.Day, faults)) continue;
            if (row.GroundRoll is { } roll) CheckRoll(row, roll, calibrated, faults);
            if (row.FromFiftyFeet is { } total) CheckTotal(row, total, faults);
        }
    }

    private static void CheckRoll(PrintedLanding row, Printed<Length> roll, Calibrated calibrated, FaultList faults)
    {
        if (calibrated.Stall(row.Flaps, row.Mass) is not { } stall) return;
        double slowest = Airspeed.FromCalibrated(Speed.FromKnots(stall), row.Day.Air).SiTrue - (row.Headwind?.Value.MetersPerSecond ?? 0);
        double shortest = Math.Max(0, slowest) * Math.Max(0, slowest) / (2 * MostBraking * StandardConstants.Gravity);
        if (roll.Value.Meters >= shortest) return;
        string guess = roll.Unit == "ft" && roll.Number >= shortest ? ManualRules.Text($"; did you mean {roll.Number} m?")
            : row.FromFiftyFeet is { } total && total.Value.Meters < 0.9 * 3.28 * shortest ? "; is the unit right?" : "; is a digit missing?";
        ManualRules.Fault(
            roll, ManualRules.Text($"is shorter than any braking could make it: {shortest / 0.3048:0} ft ({shortest:0} m) from the stalling speed, {stall:0} kt calibrated"),
            ManualRules.Text($"v²/(2 g {MostBraking}), more than firm braking and the air have held on a dry runway") + guess, faults);
    }

    private static void CheckTotal(PrintedLanding row, Printed<Length> total, FaultList faults)
    {
        if (row.GroundRoll is not { } roll) return;
        double air = total.Value.Meters - roll.Value.Meters;
        double shortest = FiftyFeet / Math.Tan(SteepestDegrees * Math.PI / 180);
        if (air >= shortest) return;
        string guess = air < 0 ? "; are the two exchanged?" : "; is the unit of both the same?";
        ManualRules.Fault(
            total, ManualRules.Text($"leaves {air / 0.3048:0} ft for the way from 50 ft to the ground, with a ground roll of {roll.Written}"),
            ManualRules.Text($"a path of {SteepestDegrees}° takes {shortest / 0.3048:0} ft") + guess, faults);
    }
}
