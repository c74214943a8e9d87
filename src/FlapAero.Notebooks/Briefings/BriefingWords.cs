using UnitsNet;
using static FlapAero.Notebooks.BriefingNumbers;

namespace FlapAero.Notebooks;

/// <summary>The words of a sheet: gates, calls, the failure, what is assumed, and the lines to sign on.</summary>
internal static class BriefingWords
{
    public static IEnumerable<SheetPart> Of(Briefing briefing, SheetMarks marks)
    {
        yield return Gates(briefing, marks);
        yield return Calls(briefing);
        yield return new NotePart("failure", "What has failed?",
            "Only the flaps: their motor or its circuit. Lamps, ammeter or radio with them: the electrical supply; then switch off what is "
            + "not needed, keep the battery for the radio and expect to lose it. Fuses and breakers only as the manual says.");
        yield return Assumptions(briefing);
        yield return new BlanksPart("signatures", ["Student", "Date", "Instructor", "Signature"]);
    }

    private static ListPart Gates(Briefing briefing, SheetMarks marks)
    {
        Runway runway = briefing.Request.Runway;
        Speed approach = Whole(briefing.Flapless.Speeds.ApproachIndicated);
        return new("gates", "Go around if",
        [
            $"at {Height(briefing.Request.Rules.StabilisedBy)} ({Height(briefing.Request.Rules.StabilisedBy + runway.Elevation)} on QNH) not on centreline, on path and steady at {Knots(approach)};",
            $"on final the needle leaves {Knots(approach - briefing.Request.Rules.SlowBy)} to {Knots(approach + briefing.Request.Rules.FastBy)} and does not come back;",
            Touchdown(briefing, marks),
            $"it bounces, it drifts, or anyone doubts. Full power; no flaps to raise. {Climb(briefing)}".TrimEnd(),
        ]);
    }

    /// <summary>Never a gate that the sheet's own numbers fail.</summary>
    private static string Touchdown(Briefing briefing, SheetMarks marks)
    {
        BriefedLanding landing = briefing.Flapless.Landing;
        return landing.Fit == RunwayFit.Fits
            ? $"the wheels are not down by {Available(briefing.Request.Runway.EndOfFirstThird)} (first third; expected at {Metres(landing.Result.TouchdownDistance)}); landmark: {Landmark(briefing, marks)}"
            : $"always, on this runway: by these numbers the wheels touch at {Metres(landing.Result.TouchdownDistance)} and the landing does not fit;";
    }

    private static string Landmark(Briefing briefing, SheetMarks marks) =>
        marks.Runway?.LastWithin(briefing.Request.Runway.EndOfFirstThird) is { } mark
        ? $"{mark.Name}, {MetresAvailable(mark.At)}" : "______";

    public static string Climb(Briefing briefing)
    {
        if (!briefing.GoAround.Happened) return "What it then climbs the manual says: ____ ft/min.";
        GoAround goAround = briefing.GoAround.Value;
        string altitude = Height(briefing.Request.Air.DensityAltitude);
        return goAround.HeightLost is { } lost
            ? $"By this model it loses about {QuantityText.Of(Tens(lost), "ft 0")}, then climbs about {QuantityText.Of(Speed.FromFeetPerMinute(10 * Math.Floor(goAround.RateOfClimb.FeetPerMinute / 10)), "ft/min 0")} here; the manual: ____."
            : $"By this model full power does not climb at a density altitude of {altitude}: decide early, or go elsewhere.";
    }

    private static ListPart Calls(Briefing briefing)
    {
        BriefedCircuit circuit = briefing.Flapless.Circuit;
        string Number(Speed speed) => QuantityText.Of(Whole(speed).Knots, "0");
        return new("calls", "Say aloud",
        [
            "On finding it: “No flaps. I fly the aeroplane first.”",
            "Radio, downwind: “downwind, landing without flaps”.",
            $"Power reduced: “{Engine(circuit.Downwind.EngineSpeed)}, speed {Number(circuit.Downwind.Indicated)}.”",
            $"Lined up: “Speed {Number(circuit.Final.Indicated)}, flat path, no diving for it.”",
            $"At {Height(briefing.Request.Rules.StabilisedBy)}: “stable” or “going around” (radio too).",
            "Round-out: “Power off smoothly. Hold it off, let it float.”",
            .. Drift(briefing),
        ]);
    }

    private static IEnumerable<string> Drift(Briefing briefing)
    {
        Speed across = briefing.Crosswind.Abs();
        LandingResult landing = briefing.Flapless.Landing.Result;
        if (across.Knots < 1) yield break;
        string flapped = briefing.FullFlaps.Landing is { } with ? $", with flaps {QuantityText.Of(with.Result.DriftInFloat(across), "m 0")}" : "";
        yield return $"Crosswind: “Wing down, then straight.” The crab is {QuantityText.Of(landing.CrabAtTouchdown(across), "0")}; taken off at the round-out, wings level, "
            + $"it drifts up to {QuantityText.Of(landing.DriftInFloat(across), "m 0")}{flapped}.";
    }

    private static NotePart Assumptions(Briefing briefing)
    {
        BriefingRequest flight = briefing.Request;
        RunwaySurface surface = flight.Runway.Surface;
        LandingPilot pilot = LandingPilot.Usual;
        string Plain(double value, string pattern) => QuantityText.Of(value, pattern);
        BriefingRules rules = flight.Rules;
        string wind = briefing.Headwind.Knots >= 0
            ? rules.HeadwindShare == LandingMargin.HeadwindShare ? "half the headwind" : $"{Plain(rules.HeadwindShare, "% 0")} of the headwind"
            : rules.TailwindShare == LandingMargin.TailwindShare ? "one and a half of the tailwind" : $"{Plain(rules.TailwindShare, "% 0")} of the tailwind";
        string counted = flight.Runway.Surface.Better is null ? "" : $" Counted {Counted(briefing)}.";
        string friction = $"rolling {Plain(surface.RollingFriction, "0.00")}, braking {Plain(surface.BrakingFriction * pilot.BrakingShare, "0.00")} "
            + $"(three quarters of the textbook's{(surface.FromMemory ? ", from memory" : "")})";
        return new("assumed", "Assumed",
            $"{Speeds(briefing)}, never slower than the next leg; "
            + $"{GustRule(briefing)} on final and over the threshold. Engine speeds are the steady ones. Downwind {QuantityText.Of(flight.Spacing, "nmi 0.0#")} out, {(flight.Hand == CircuitHand.Left ? "left" : "right")}-hand; "
            + $"{QuantityText.Of(BriefingTechnique.Descent, "ft/min 0")} to final, steeper where slower; bank {QuantityText.Of(rules.Bank, "0")}, final at {QuantityText.Of(pilot.PathAngle)} over the ground. "
            + $"Landing: {wind} ({QuantityText.Of(briefing.PlannedHeadwind.Abs(), "kt 0.0")}); power kept to the round-out, then closed over {QuantityText.Of(pilot.PowerCutTime, "0")}; "
            + $"round-out τ {QuantityText.Of(pilot.FlareTimeConstant)} to {QuantityText.Of(pilot.HoldOffHeight, "m 0.0")}; touchdown at {Plain(pilot.TouchdownLiftFraction, "% 0")} of the greatest lift{TailLimit(briefing)}; "
            + $"nose up to {Plain(pilot.NoseLowerSpeedFraction, "% 0")} of the touchdown speed, then brakes; {friction}.{counted} Margin: {flight.Margin.Origin}. "
            + $"Speeds and distances are rounded up, runways down. Crosswind, bounce and brake fade are not in the model.{NotCompared(briefing.FullFlaps)}");
    }

    /// <summary>What gusts add, in words.</summary>
    public static string GustRule(Briefing briefing, bool capital = false)
    {
        BriefingRules rules = briefing.Request.Rules;
        string most = rules.MostForGusts is { } limit ? $", at most {QuantityText.Of(limit, "kt 0")}," : "";
        return rules.GustShare == BriefingTechnique.GustShare
            ? $"{(capital ? "Half" : "half")} the gust factor{most}"
            : $"{QuantityText.Of(rules.GustShare, "% 0")} of the gust factor{most}";
    }

    private static string Speeds(Briefing briefing)
    {
        BriefingRules rules = briefing.Request.Rules;
        string up = Multiple(rules.FlapsUpMultiple), part = Multiple(rules.PartFlapsMultiple), full = Multiple(rules.FullFlapsMultiple);
        string final = up == part && part == full
            ? $"{up} on final × that of the leg's flaps" : $"on final × its own {up} with flaps up, {part} with some and {full} with all of them";
        if ((rules.Downwind.Multiple, rules.Descending.Multiple) is ({ } level, { } descending))
        {
            return $"Speeds {Multiple(level)} and then {Multiple(descending)} × the stall of flaps up on downwind, {Multiple(descending)} on base and {final}";
        }

        return $"Speeds: downwind {rules.Downwind}, then {rules.Descending} to the end of base, and {final}";
    }

    private static string Multiple(double value) => QuantityText.Of(value, "0.0#");

    /// <summary>Which of rule, model and better surface is the longest.</summary>
    private static string Counted(Briefing briefing)
    {
        string Of(PlannedDistance planned) => planned.Basis switch
        {
            DistanceBasis.Rule when briefing.Request.Rules.RuleFor(planned.Longest) is { } rule =>
                $"by the rule, {QuantityText.Of(rule.Factor, "0.00")} × the model on dry asphalt ({rule.Origin})",
            DistanceBasis.BetterSurface => $"as on {planned.Longest.Name}",
            _ => "by the model",
        };
        string up = Of(briefing.Flapless.Landing.Planned);
        return briefing.FullFlaps.Landing is not { } flapped || Of(flapped.Planned) == up
            ? up : $"{up}; with flaps {Of(flapped.Planned)}";
    }

    private static string NotCompared(BriefedComparison comparison) =>
        comparison.Circuit is null || comparison.Missing.Count == 0 ? "" : " With flaps: " + string.Join(' ', comparison.Missing);

    private static string TailLimit(Briefing briefing) =>
        briefing.Flapless.Landing.Result.HoldOffEnd == HoldOffEnd.Tail ? " or, without flaps, at the attitude that keeps the tail clear" : "";
}
