using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>All numbers of a manual that the model has a law for.</summary>
internal sealed class ManualNumbers(ManualContent manual, IReadOnlyList<PrintedCalibration> calibrations)
{
    private const Parts AllOfLanding = Parts.Lift | Parts.Drag | Parts.FlapDrag | Parts.Propeller | Parts.ClosedThrottle | Parts.Attitude
        | Parts.RoundOut | Parts.ApproachSpeed;

    private const double MetresInAFoot = 0.3048;

    public IReadOnlyList<ManualNumber> All() =>
    [
        .. manual.Stalls.Select(Stall), .. manual.Glides.SelectMany(Glide), .. manual.LevelFlights.Select(Level),
        .. manual.Climbs.Select(Climb), .. manual.Landings.SelectMany(Landing), .. manual.Approaches.Select(Approach), .. FlapsUp(),
    ];

    private ManualNumber Stall(PrintedStall row)
    {
        (Speed calibrated, double error) = calibrations[row.Flaps].Of(row.Speed, Air.StandardSeaLevel);
        string bank = row.Bank is { } b ? $", bank {b.Written}" : "";
        return new(
            $"stall, flaps {Name(row.Flaps)}{At(row.Mass)}{bank}", row.Speed.Written, row.Speed.At.Line, "KCAS", calibrated.Knots, Step(row.Speed, error), error,
            NumberKind.Stall, Parts.Lift, row.Flaps, IsFitted: true, (trial, _) => trial.StallSpeed(row));
    }

    private IEnumerable<ManualNumber> Glide(PrintedGlide row)
    {
        Parts parts = Parts.Drag | (row.Flaps > 0 ? Parts.FlapDrag : 0) | (row.Propeller switch
        {
            GlidePropeller.Idling => Parts.Propeller | Parts.ClosedThrottle,
            GlidePropeller.Stopped => Parts.StoppedPropeller,
            _ => 0,
        }) | (row.IsBest ? Parts.Lift : 0);
        string how = row.Propeller == GlidePropeller.None ? "no propeller" : $"propeller {row.Propeller.ToString().ToLowerInvariant()}";
        string what = $"flaps {Name(row.Flaps)}{At(row.Mass)}, {how}";
        (Speed Calibrated, double Error)? speed = row.Speed is { } printed ? calibrations[row.Flaps].Of(printed, Air.StandardSeaLevel) : null;
        if (row.IsBest && speed is { } best)
            yield return new(
                $"best glide speed, {what}", row.Speed!.Written, row.Speed.At.Line, "KCAS", best.Calibrated.Knots, Step(row.Speed, best.Error), best.Error,
                NumberKind.GlideSpeed, parts, row.Flaps, IsFitted: true, (trial, _) => trial.BestGlide(row).Knots);
        if (row.Ratio is not { } ratio) yield break;
        double step = Math.Min(ratio.Step(), 1), error = step / Math.Sqrt(12);
        yield return row.IsBest
            ? new(
                $"best glide ratio, {what}", ratio.Written, ratio.At.Line, "", ratio.Value, step, error, NumberKind.GlideRatio, parts, row.Flaps,
                IsFitted: true, (trial, _) => trial.BestGlide(row).Ratio)
            : new(
                $"glide ratio at {row.Speed!.Written}, {what}", ratio.Written, ratio.At.Line, "", ratio.Value, step, error, NumberKind.GlideRatio, parts,
                row.Flaps, IsFitted: true, (trial, shift) => trial.GlideRatio(row, speed!.Value.Calibrated + Speed.FromKnots(shift * speed.Value.Error)));
    }

    private ManualNumber Level(PrintedLevelFlight row)
    {
        (Speed calibrated, double error) = calibrations[0].Of(row.Speed, row.Day.Air);
        return new(
            $"engine speed in level flight at {row.Speed.Written}{On(row.Day)}{At(row.Mass)}", row.EngineSpeed.Written, row.EngineSpeed.At.Line, "rpm",
            row.EngineSpeed.Value.RevolutionsPerMinute, StepRpm(row.EngineSpeed), StepRpm(row.EngineSpeed) / Math.Sqrt(12), NumberKind.Level,
            Parts.Drag | Parts.Propeller, 0, IsFitted: true,
            (trial, shift) => trial.LevelEngineSpeed(row, calibrated + Speed.FromKnots(shift * error)));
    }

    private ManualNumber Climb(PrintedClimb row)
    {
        (Speed calibrated, double error) = calibrations[row.Flaps].Of(row.Speed, row.Day.Air);
        double scale = row.Rate.Value.FeetPerMinute / row.Rate.Number;
        return new(
            $"climb, flaps {Name(row.Flaps)} at {row.Speed.Written}{On(row.Day)}{At(row.Mass)}", row.Rate.Written, row.Rate.At.Line, "ft/min",
            row.Rate.Value.FeetPerMinute, row.Rate.Step() * scale, row.Rate.Error() * scale, NumberKind.Climb,
            Parts.Drag | Parts.Propeller | Parts.FullThrottle | (row.Flaps > 0 ? Parts.FlapDrag : 0), row.Flaps, IsFitted: true,
            (trial, shift) => trial.ClimbRate(row, calibrated + Speed.FromKnots(shift * error)));
    }

    private IEnumerable<ManualNumber> Landing(PrintedLanding row)
    {
        string what = $"flaps {Name(row.Flaps)}{On(row.Day)}{At(row.Mass)}"
            + (row.Headwind is { } wind ? $", headwind {wind.Written}" : "") + $", {row.Surface.Name}";
        if (row.GroundRoll is { } roll)
            yield return Distance(
                $"ground roll, {what}", roll, NumberKind.GroundRoll, row.Flaps,
                trial => trial.Land(row) is { } landing ? landing.StopDistance - landing.TouchdownDistance : double.NaN);
        if (row.FromFiftyFeet is { } total)
            yield return Distance(
                $"landing from 50 ft, {what}", total, NumberKind.FromFiftyFeet, row.Flaps, trial => trial.Land(row)?.StopDistance ?? double.NaN);
    }

    private static ManualNumber Distance(string what, Printed<Length> printed, NumberKind kind, int flaps, Func<Trial, double> metres)
    {
        bool isFeet = printed.Unit is "ft" or "in";
        double unit = isFeet ? MetresInAFoot : 1;
        double scale = printed.Value.Meters / unit / printed.Number;
        return new(
            what, printed.Written, printed.At.Line, isFeet ? "ft" : "m", printed.Value.Meters / unit, printed.Step() * scale, printed.Error() * scale, kind,
            AllOfLanding, flaps, IsFitted: true, (trial, _) => metres(trial) / unit);
    }

    private ManualNumber Approach(PrintedApproach row)
    {
        (Speed calibrated, double error) = calibrations[row.Flaps].Of(row.Speed, Air.StandardSeaLevel);
        return new(
            $"approach speed, flaps {Name(row.Flaps)}{At(row.Mass)}, beside 1.3 V_S", row.Speed.Written, row.Speed.At.Line, "KCAS", calibrated.Knots,
            Step(row.Speed, error), error, NumberKind.Approach, Parts.Lift, row.Flaps, IsFitted: false,
            (trial, _) => 1.3 * trial.Configure(row.Flaps, row.Mass).StallSpeed(Air.StandardSeaLevel).Calibrated.Knots);
    }

    private IEnumerable<ManualNumber> FlapsUp()
    {
        if (manual.FlapsUp?.DistanceFactor is not { } factor || manual.Settings.Count < 2) yield break;
        int full = manual.Settings.Count - 1;
        // A rule of the manual with a margin of its own: it says nothing that could be fitted.
        yield return new(
            "landing from 50 ft, flaps up against full", factor.Written, factor.At.Line, "times", factor.Value, Math.Min(factor.Step(), 0.1), 0.05,
            NumberKind.FlapsUp, AllOfLanding, full, IsFitted: false, (trial, _) => trial.FromFiftyFeet(0) / trial.FromFiftyFeet(full));
    }

    private string Name(int flaps) => manual.Settings[flaps].Name;

    private static string At(Printed<Mass>? mass) => mass is null ? "" : $", {mass.Written}";

    private static string On(PrintedDay day) =>
        (day.PressureAltitude is { } altitude ? $", {altitude.Written}" : "") + (day.Temperature is { } outside ? $", {outside.Written}" : "");

    /// <summary>The step of an airspeed in calibrated knots, the calibration table's own rounding with it.</summary>
    private static double Step(Printed<PrintedAirspeed> printed, double error) => Math.Max(printed.StepKnots(), error * Math.Sqrt(12));

    private static double StepRpm(Printed<RotationalSpeed> printed) => printed.Step() * printed.Value.RevolutionsPerMinute / printed.Number;
}
