using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>A value that follows from the unknowns: what the aeroplane's file and the report show.</summary>
internal sealed record Derived(string Name, string Unit, Func<Trial, double> Of, string Why = Typical.Why)
{
    /// <summary>The values of the file, then those of the manual's pilot.</summary>
    public static IReadOnlyList<Derived> Values(ManualContent manual)
    {
        List<Derived> values = [];
        for (int i = 0; i < manual.Settings.Count; i++)
        {
            int flaps = i;
            values.Add(new(Lift(manual, flaps), "", trial => trial.Aeroplane.FlapSettings[flaps].Lift.MaximumLiftCoefficient));
        }

        values.Add(new(ZeroLiftDrag, "", trial => trial.Aeroplane.FlapsUp.Drag.ZeroLiftDragCoefficient));
        for (int i = 1; i < manual.Settings.Count; i++)
        {
            int flaps = i;
            values.Add(new(FlapDrag(manual, flaps), "", trial =>
                trial.Aeroplane.FlapSettings[flaps].Drag.ZeroLiftDragCoefficient - trial.Aeroplane.FlapsUp.Drag.ZeroLiftDragCoefficient));
        }

        for (int i = 0; i < manual.Settings.Count; i++)
        {
            int flaps = i;
            values.Add(new(Oswald(manual, flaps), "", trial => trial.Aeroplane.FlapSettings[flaps].Drag.OswaldFactor));
        }

        for (int i = 0; i < manual.Settings.Count; i++)
        {
            int flaps = i;
            values.Add(new(ZeroLiftAngle(manual, flaps), "deg", trial => trial.Aeroplane.FlapSettings[flaps].Lift.ZeroLiftAngle.Degrees));
        }

        values.Add(new(Pitch, "of the typical propeller's", trial => trial.Aeroplane.Propeller.Table.LargestAdvanceRatio / Typical.Propeller.LargestAdvanceRatio));
        values.Add(new(
            FullThrottle, "N.m", trial => trial.Aeroplane.FullThrottle!.TorqueAtSeaLevel.NewtonMeters,
            manual.Power is null ? Typical.Why : "the engine's rated power and speed"));
        values.Add(new(ClosedThrottle, "N.m", trial => trial.Aeroplane.Engine.TorqueAtStandstill.NewtonMeters));
        values.Add(new(FreeSpeed, "rpm", trial => trial.Aeroplane.Engine.FreeSpeed.RevolutionsPerMinute));
        values.Add(new("pilot: time constant of the round-out", "s", trial => trial.Technique.RoundOut));
        values.Add(new("pilot: touchdown share of C_Lmax", "", trial => trial.HeldOffTo(manual.Settings.Count - 1)));
        values.Add(new("pilot: share of the surface's braking", "", trial => trial.Technique.Braking));
        foreach (int flaps in manual.Landings.Select(row => row.Flaps).Distinct().Order())
            values.Add(new(
                $"pilot: approach over the stalling speed, flaps {manual.Settings[flaps].Name}", "", trial => trial.Pilot(flaps).SpeedMultiple,
                "the rule: 1.3 V_S"));
        return values;
    }

    public const string ZeroLiftDrag = "C_D0";
    public const string Pitch = "pitch of the propeller";
    public const string FullThrottle = "full-throttle torque";
    public const string ClosedThrottle = "closed-throttle torque at standstill";
    public const string FreeSpeed = "free speed, throttle closed";

    public static string Lift(ManualContent manual, int flaps) => $"C_Lmax, flaps {manual.Settings[flaps].Name}";

    public static string FlapDrag(ManualContent manual, int flaps) => $"drag increment, flaps {manual.Settings[flaps].Name}";

    public static string Oswald(ManualContent manual, int flaps) => $"Oswald factor, flaps {manual.Settings[flaps].Name}";

    public static string ZeroLiftAngle(ManualContent manual, int flaps) => $"zero-lift angle, flaps {manual.Settings[flaps].Name}";

    /// <summary>The uses: a number that decides, and within what standard error it is good, or still says something.</summary>
    public static IReadOnlyList<(string Use, Derived Number, double Good, double Weak, bool IsShare)> Uses(ManualContent manual)
    {
        int full = manual.Settings.Count - 1;
        var glide = new PrintedGlide(true, 0, GlidePropeller.Idling, null, null, null);
        return
        [
            ("speeds", new("stall, full flaps", "KCAS", trial => Stall(trial, full)), 0.02, 0.04, true),
            ("speeds without flaps", new("stall, flaps up", "KCAS", trial => Stall(trial, 0)), 0.02, 0.04, true),
            ("glide", new("best glide, propeller idling", "to 1", trial => trial.BestGlide(glide).Ratio), 0.04, 0.1, true),
            ("landing roll", new("ground roll, full flaps", "m", trial => Roll(trial, full)), 0.06, 0.15, true),
            ("landing from 50 ft", new("landing from 50 ft, full flaps", "m", trial => trial.FromFiftyFeet(full)), 0.06, 0.15, true),
            ("landing without flaps", new("landing from 50 ft, flaps up", "m", trial => trial.FromFiftyFeet(0)), 0.06, 0.15, true),
            ("engine speeds", new("engine speed on a 3.5° path, flaps up", "rpm", OnFinal), 60, 150, false),
            ("climb", new("climb at full throttle, 1.3 V_S, flaps up", "ft/min", Climb), 60, 150, false),
        ];
    }

    private static double Stall(Trial trial, int flaps) => trial.Configure(flaps, null).StallSpeed(Air.StandardSeaLevel).Calibrated.Knots;

    private static double Roll(Trial trial, int flaps) =>
        trial.Land(new(flaps, null, null, new(null, null), null, RunwaySurface.DryPaved, null, null, 0)) is { } landing
            ? landing.StopDistance - landing.TouchdownDistance : double.NaN;

    private static double OnFinal(Trial trial)
    {
        Configuration up = trial.Configure(0, null);
        SteadyFlight final = up.OnPath(up.ReferenceSpeed(Air.StandardSeaLevel), Angle.FromDegrees(-3.5));
        return trial.Aeroplane.Propeller.EngineSpeedFor(final.Airspeed, final.Thrust)?.RevolutionsPerMinute ?? double.NaN;
    }

    private static double Climb(Trial trial)
    {
        Configuration up = trial.Configure(0, null);
        return up.ClimbAtFullThrottle(up.ReferenceSpeed(Air.StandardSeaLevel)) is { } climb ? -climb.SinkRate.FeetPerMinute : double.NaN;
    }
}
