using UnitsNet;
using static FlapAero.Notebooks.BriefingNumbers;

namespace FlapAero.Notebooks;

/// <summary>
/// The steps from the checks to the checks, in the order of flight. What is done and what goes wrong is common practice without a source; the
/// numbers are the briefing's.
/// </summary>
internal static class ExerciseSteps
{
    public static StepsPart Of(Briefing briefing) => new("steps", "From the checks to the checks",
    [
        .. ToTheRunway(briefing),
        .. briefing.Fits ? OnTheRunway(briefing) : GoingAround(briefing),
    ]);

    private static IEnumerable<Step> ToTheRunway(Briefing briefing)
    {
        BriefedCase up = briefing.Flapless;
        BriefedCircuit legs = up.Circuit;
        Circuit circuit = legs.Circuit;
        Length elevation = briefing.Request.Runway.Elevation;
        string Above(Length height) => $"{Height(height)} above the runway, {Height(height + elevation)} on QNH";
        string Flown(BriefedLeg leg) => $"{Knots(leg.Indicated)}, {Engine(leg.EngineSpeed)}";

        yield return new("Checks", "Do the descent checks and the checks before landing. Say which item cannot be done: the flaps.",
            "", "The checks are left for downwind, and the circuit is flown late.", 10);
        yield return new("Windsock", "Look at it on the way in, and again on final.",
            $"{BriefingFacts.Along(briefing.Headwind)}, {BriefingFacts.Across(briefing)}", "The reported wind is believed, and the windsock shows another.", 9);
        yield return new("Call on downwind", "Say “landing without flaps”: others will see a longer final.",
            $"{Flown(legs.Level)}; {Above(legs.Level.Begin)}", "The call is forgotten, and the next aeroplane turns in front.", 9);
        yield return new("Power back", $"Reduce power {PastAbeam(circuit.PowerReducedPastAbeam)}, more than with flaps, and trim.",
            $"{Flown(legs.Downwind)}{LessThanWithFlaps(briefing)}", "The usual setting is kept, and the path is too flat from here on.", 5);
        yield return new("Over the shoulder", "Turn base when the touchdown point lies behind the wing as far as briefed, if traffic and control allow.",
            $"{QuantityText.Of(circuit.AngleBehindWing, "0")} behind the wing; 45° is the trade's; {Height(circuit.TurnToBase.Begin.Height)} above the runway",
            "The turn begins at the usual place, and final is too short.", 9);
        yield return new("Base", "Set attitude and power together, and look at the runway: high or low?",
            Flown(legs.Base), "The nose is raised to stretch the path, and the speed sinks.", 5);
        yield return new("Clear final, and call", "Look along final on both sides before turning; then call.",
            "", "The eyes stay on the runway.", 9);
        yield return new("Turn to final", "Hold the bank and the speed, and roll out on the centreline.",
            $"bank {QuantityText.Of(briefing.Request.Rules.Bank, "0")}; begun at {Height(circuit.TurnToFinal.Begin.Height)}, ended at {Height(legs.Final.Begin)}",
            "An overshoot is mended by more bank, and the stall comes nearer.", 1);
        yield return new("Final", $"Fly the speed with the attitude and the path with power. {BriefingWords.GustRule(briefing, capital: true)} is in the speed: {QuantityText.Of(briefing.GustAdditive, "kt 0.#")}.",
            $"{Knots(up.Speeds.ApproachIndicated)}, {Engine(legs.Final.EngineSpeed)}; path {QuantityText.Of(LandingPilot.Usual.PathAngle)}",
            "Too fast, the nose is pushed down at the runway. Raise it a little, and take power off to go on down.", 4);
        yield return new("Stable, or go around", "Decide aloud: centreline, path, speed, power.",
            $"{Above(briefing.Request.Rules.StabilisedBy)}; {Knots(Whole(up.Speeds.ApproachIndicated) - briefing.Request.Rules.SlowBy)} to {Knots(Whole(up.Speeds.ApproachIndicated) + briefing.Request.Rules.FastBy)}",
            "“It will come right.” It takes the runway's length to do so.", 6);
    }

    private static IEnumerable<Step> OnTheRunway(Briefing briefing)
    {
        BriefedLanding landing = briefing.Flapless.Landing;
        LandingResult result = landing.Result;
        yield return new("Aiming point", "Keep it still in the windscreen until the round-out. It is chosen so that the float ends within the first third.",
            $"{Metres(landing.AimingPoint)} past the threshold, {Over(briefing)} over it", "The eyes go to the numbers or to the far end.", 7);
        yield return new("Round-out", "Bring the nose to the level attitude and close the throttle smoothly while you do.",
            $"begins {Metres(landing.ToRoundOut)} past the threshold", "The throttle is closed before, and the aeroplane sinks onto the runway.", 7);
        yield return new("Let it sink", "Wait while it floats, hold it off, and flare as with flaps: main wheels first, the tail clear.",
            $"float {Metres(landing.Float)}; wheels down at {Metres(result.TouchdownDistance)}, first third ends at {MetresAvailable(briefing.Request.Runway.EndOfFirstThird)}",
            "It is forced on, and it bounces. After a bounce or a balloon: go around.", 7);
        yield return new("Roll", "Keep the back pressure until the nosewheel comes down by itself; then brake straight.",
            $"roll {Metres(result.GroundRoll)}; stop at {Metres(result.StopDistance)}, runway {MetresAvailable(briefing.Request.Runway.LengthAvailable)}",
            "The nose is dropped and the brakes are pressed while the wing still carries.", 8);
        yield return new("Leave the runway", "Slow to a taxi speed before you leave the centreline. Clear of the runway, stop.",
            "", "The turn-off is taken too fast.", 8);
        yield return new("Checks", "Do the checks after landing. Report the flaps, and write them into the aeroplane's papers.",
            "", "The flap lever is moved on the ground, and the flaps come down on someone.", 10);
    }

    private static IEnumerable<Step> GoingAround(Briefing briefing)
    {
        yield return new("Go around", "Full power, attitude for the climb, call. There are no flaps to raise. This runway is not the one to land on.",
            briefing.GoAround.Happened ? BriefingWords.Climb(briefing) : "", "The landing is tried because the approach was good.", 6);
    }

    private static string LessThanWithFlaps(Briefing briefing)
    {
        if (briefing.FullFlaps.Circuit is not { } flapped) return "";
        double less = Tens(flapped.Final.EngineSpeed).RevolutionsPerMinute - Tens(briefing.Flapless.Circuit.Final.EngineSpeed).RevolutionsPerMinute;
        return less > 0 ? $"; on final {QuantityText.Of(RotationalSpeed.FromRevolutionsPerMinute(less), "rpm 0")} less than with flaps" : "";
    }
}
