using UnitsNet;
using static FlapAero.Notebooks.BriefingNumbers;

namespace FlapAero.Notebooks;

/// <summary>The drills in words. Cue, action, limit and go-around are common practice without a source; the numbers are the model's.</summary>
internal static class DrillWords
{
    private const string Origin =
        "Cue, action, limit and go around are common practice without a source, but for +10/−5 kt [faa-other]. Every number is this model's: on final "
        + "the mean wind, on the runway the wind as planned with, across it the gusts. The balloon, the slip and the hot day are invented. "
        + "Pilot and engine answer faster than real ones.";

    public static DrillsPart Of(CorrectionDrills drills) => new("drills", "Flaps up, from the gate to the wheels",
    [
        TooFast(drills), TooSlow(drills), TooHigh(drills), TooLow(drills), Balloon(drills), Bounce(drills), Drift(drills),
    ]);

    public static TablePart GoArounds(CorrectionDrills drills) => new("go-arounds",
        "Go around from the closed throttle: full power, level, then climb; at this flap setting and speed",
        ["day and flaps", "height lost", "rate of climb", "gradient", "climbs up to, density altitude"],
        [.. drills.GoArounds.Select((flown, i) => Row(flown, today: i < drills.GoArounds.Count / 2))]);

    public static NotePart Note(CorrectionDrills drills)
    {
        GoAround[] flown = [.. drills.GoArounds.Where(f => f.GoAround.Happened).Select(f => f.GoAround.Value)];
        string low = flown.Length > 0 && flown[0].HeightLost is { } lost
            ? $"Flaps up today, decided below {Feet(lost)} with the throttle closed, the wheels may touch before it climbs. That is no reason not to go. "
            : "";
        string never = flown.Any(f => f.HeightLost is null) ? "Where full throttle does not climb, only less flap does, if any: decide before final. " : "";
        return new("origin", "About the go-around, and where all this is from", $"{low}{never}{Origin}");
    }

    private static Drill TooFast(CorrectionDrills drills)
    {
        Speed meant = Whole(drills.Briefing.Flapless.Speeds.ApproachIndicated);
        string by = QuantityText.Of(drills.Briefing.Request.Rules.FastBy, "kt 0");
        return new("Too fast",
            $"The needle stands above {QuantityText.Of(meant, "kt 0")}; the nose is low, and the air is loud.",
            "A little back pressure until the speed is back, then power off to go on down. Never dive, never force it on.",
            Said(drills.TooFast, fast => $"{by} too fast are worth about {Height(fast.WorthInHeight)} of height. Throttle closed on the path, they take {Metres(fast.FinalNeeded)} of final, {Seconds(fast.TimeNeeded)}. Over the threshold they move the touchdown {Metres(fast.TouchdownFurther)} further, to {Metres(fast.TouchdownDistance)}."),
            drills.TooFast is { Happened: true, Value.MostOverThreshold: { } most }
                ? most >= drills.Briefing.Request.Rules.FastBy ? $"Over the threshold at most {by} too fast."
                    : most < Speed.FromKnots(1) ? "Over the threshold not a knot too fast: more misses the first third."
                    : $"Over the threshold at most {QuantityText.Of(most, "kt 0")} too fast: more misses the first third."
                : "Over the threshold no knot too fast: the first third is missed as it is.",
            $"More than {by} too fast below {Height(drills.Briefing.Request.Rules.StabilisedBy)}; or wheels not down by {MetresAvailable(drills.Briefing.Request.Runway.EndOfFirstThird)}, the first third.");
    }

    private static Drill TooSlow(CorrectionDrills drills)
    {
        Speed least = Whole(drills.Briefing.Flapless.Speeds.ApproachIndicated) - drills.Briefing.Request.Rules.SlowBy;
        string by = QuantityText.Of(drills.Briefing.Request.Rules.SlowBy, "kt 0");
        bool gusts = drills.Briefing.Request.Wind.GustFactor > Speed.Zero;
        return new("Too slow",
            "The needle sinks; the nose is high, the controls are soft.",
            "Power first, then the nose, to the attitude of final. Take the power back when the speed is there.",
            Said(drills.TooSlow, slow => $"{by} too slow leave {Share(slow.Margin)} over the stall{(gusts ? $", {Share(slow.MarginInLull)} in a lull as deep as the gusts" : "")}. The path takes {Engine(slow.EngineSpeed)} there: only more brings the speed back{(slow.TimeAtFullThrottle is { } time ? $", full throttle in {Seconds(time)}" : ", and not even full throttle does")}. The nose alone would pay about {Height(slow.HeightForTheNose)} of height."),
            $"Never below {QuantityText.Of(least, "kt 0")} on the needle before the round-out.",
            $"Below {QuantityText.Of(least, "kt 0")} under {Height(drills.Briefing.Request.Rules.StabilisedBy)}; or the stall warning sounds before the round-out.");
    }

    private static Drill TooHigh(CorrectionDrills drills)
    {
        string by = Height(CorrectionDrills.HeightError);
        return new("Too high",
            "The aiming point moves down under the nose; the runway looks long.",
            "Close the throttle, and hold the speed with the nose. On the path, set the power of final. A slip only where the manual allows it and you were taught it.",
            Said(drills.TooHigh, high => $"{by} too high take {Metres(high.FinalNeeded)} of final with the throttle closed, {Seconds(high.TimeNeeded)}. From {Height(drills.Briefing.Request.Rules.StabilisedBy)} to the threshold it takes off {FeetAvailable(high.MostFromGate)} at the most. Over the threshold {by} move the touchdown {Metres(high.TouchdownFurther)} further. A slip of {QuantityText.Of(CorrectionDrills.Sideslip, "0")} adds {QuantityText.Of(high.SlipLeast, "0.0")} to {QuantityText.Of(high.SlipMost, "0.0")}."),
            drills.TooHigh.Happened ? $"Nearer than {Metres(drills.TooHigh.Value.FinalNeeded)} to the threshold, {by} can no longer be lost." : "No height that the path does not lose by itself.",
            $"Not back on the path by {Height(drills.Briefing.Request.Rules.StabilisedBy)}; or later, too high for what is left of final.");
    }

    private static Drill TooLow(CorrectionDrills drills)
    {
        string by = Height(CorrectionDrills.HeightError);
        return new("Too low",
            "The aiming point moves up; the runway looks short and flat.",
            "Power, and the nose to level. Hold height at the briefed speed until the aiming point is back; then path and power of final.",
            Said(drills.TooLow, low => $"{by} too low: fly level for {Metres(low.LevelFor)}, {Seconds(low.TimeLevel)}, with {Engine(low.EngineSpeed)} in place of {Engine(drills.Briefing.Flapless.Circuit.Final.EngineSpeed)}. The nose alone would pay {QuantityText.Of(Whole(low.PaidByTheNose), "kt 0")} for {by} and leave {Share(low.MarginLeft)} over the stall."),
            "Never raise the nose without power.",
            $"Not back on the path by {Height(drills.Briefing.Request.Rules.StabilisedBy)}; or anything stands between you and the runway.");
    }

    private static Drill Balloon(CorrectionDrills drills)
    {
        string by = Height(CorrectionDrills.BalloonHeight);
        return new("Balloon",
            "The runway sinks away: you pulled too much, or too fast.",
            "Stop pulling. Full power, level attitude, and go around. A foot or two is no balloon: hold the nose where it is, and let it sink.",
            Said(drills.Balloon, up => $"{by} up have cost {QuantityText.Of(Whole(up.SpeedLost), "kt 0")}: {Share(up.Margin)} are left over the stall, gone in {SecondsAvailable(up.TimeToStall)} with the throttle closed. From there, a tenth of the lift missing, it meets the runway at {Sink(up.SinkAtTheGround)}; the briefed touchdown has {Sink(up.UsualSink)}."),
            "No second flare from higher than that.",
            "After every balloon; in doubt whether it is one.");
    }

    private static Drill Bounce(CorrectionDrills drills)
    {
        string by = QuantityText.Of(drills.Briefing.Request.Rules.FastBy, "kt 0");
        return new("Bounce",
            "The wheels touch hard or early; you are in the air again, nose high.",
            "Full power, level attitude, and go around. Do not push: the nosewheel would touch first.",
            Said(drills.Bounce, on => $"Forced on {by} early: nose down, the wing still carries {Share(on.CarriedNoseDown)} of the weight. At the touchdown's attitude it lifts {Share(on.LiftAvailable)}{(on.LiftAvailable > 1 ? $", and rises {Feet(on.RiseInASecond)} in a second" : "")}. How high it bounces, the model cannot say."),
            "No second push: it makes the next bounce worse.",
            "After every bounce.");
    }

    private static Drill Drift(CorrectionDrills drills)
    {
        Outcome<DriftDrill> drift = drills.Drift;
        bool calm = drift is { Happened: true, Value: var day } && Math.Ceiling(day.Crosswind.Abs().Knots - 1e-6) == 0;
        string limit = drills.Briefing.CrosswindLimit is { } most ? KnotsAtMost(most) : "the manual's ____ kt";
        return new("Drift",
            "The centreline moves sideways, or the nose points beside it.",
            "On final, crab. In the float, wing down into the wind, and the nose along the runway by rudder; the upwind wheel touches first.",
            calm ? "No wind across is reported. Look at the windsock."
                : Said(drift, across => $"{Knots(across.Crosswind.Abs())} across: {QuantityText.Of(across.Crab.Abs(), "0")} of crab to the {(across.Crosswind > Speed.Zero ? "right" : "left")} on final. Wings level, the crab taken out, it drifts {UpMetres(across.Drift)} at the most in the float's {Seconds(across.FloatLasts)}: slowly first, then faster."),
            $"No more wind across than {limit}, and the wheels on the centreline.",
            "The drift does not stop; or one side of the runway comes near.");
    }

    private static IReadOnlyList<string> Row(GoAroundCase flown, bool today)
    {
        string flaps = $"flaps {flown.Configuration.Flaps.Name}, {QuantityText.Of(flown.Configuration.Mass, "kg 0")}";
        Air air = flown.Airspeed.Air;
        string name = today ? $"today, {flaps}"
            : $"{Height(air.PressureAltitude)} and {QuantityText.Of(air.Temperature)}, {flaps}";
        if (!flown.GoAround.Happened) return [name, flown.GoAround.Explanation, "–", "–", "–"];
        GoAround around = flown.GoAround.Value;
        string ceiling = GoAround.Ceiling(flown.Configuration) is { } highest ? Hundreds(highest) : "–";
        return around.HeightLost is { } lost
            ? [name, Feet(lost), QuantityText.Of(around.RateOfClimb, "ft/min 0"), Gradient(around), ceiling]
            : [name, "never climbs", $"sinks {Sink(-around.RateOfClimb)}", Gradient(around), ceiling];
    }

    private static string Said<T>(Outcome<T> drill, Func<T, string> words)
        where T : class => drill.Happened ? words(drill.Value) : $"No number for this day. {drill.Explanation}";

    private static string Seconds(Duration time) => QuantityText.Of(Duration.FromSeconds(Math.Ceiling(time.Seconds - 1e-6)), "s 0");

    private static string SecondsAvailable(Duration time) => QuantityText.Of(Duration.FromSeconds(Math.Floor(time.Seconds + 1e-6)), "s 0");

    private static string Share(double share) => QuantityText.Of(share, "% 0");

    private static string Sink(Speed sink) => QuantityText.Of(Speed.FromFeetPerMinute(10 * Math.Ceiling((sink.FeetPerMinute / 10) - 1e-6)), "ft/min 0");

    private static string Gradient(GoAround around) => QuantityText.Of(Math.Tan(around.Climb.PathAngle.Radians), "% 0.0");

    private static string Hundreds(Length height) => QuantityText.Of(Length.FromFeet(100 * Math.Floor((height.Feet / 100) + 1e-6)), "ft 0");

    private static string Feet(Length height) => QuantityText.Of(Length.FromFeet(Math.Ceiling(height.Feet - 1e-6)), "ft 0");

    private static string UpMetres(Length distance) => QuantityText.Of(Length.FromMeters(Math.Ceiling(distance.Meters - 1e-6)), "m 0");
}
