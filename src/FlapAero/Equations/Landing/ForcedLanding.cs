namespace FlapAero.Equations;

/// <summary>
/// The pilot who puts the wheels on while the wing still flies: stage 3 ends at a smaller share of C_Lmax, and there the aeroplane is on
/// its wheels. There is no settling; the height that is left there is given up without time or distance.
/// </summary>
internal static class ForcedLanding
{
    public static LandingOutcome Solve(
        in LandingInput input, double forcedLiftFraction, double tolerance = LandingSolver.DefaultTolerance,
        LandingVoice? voice = null)
    {
        LandingInput forced = input with { TouchdownLiftFraction = forcedLiftFraction };
        LandingOutcome outcome = LandingSolver.Solve(forced, tolerance, voice);
        if (double.IsNaN(outcome.HoldOffEndSpeed))
            return outcome;
        ApproachPath<ScalarLane> path = new(LandingInput.Rows(new ReadOnlySpan<LandingInput>(in forced)));
        double speed = outcome.HoldOffEndSpeed;
        double sink = path.HoldOff.Sink(outcome.HoldOffEndTime).Value;
        outcome.Refuse(LandingRefusal.None, 0, 0);
        outcome.TouchdownDistance = outcome.HoldOffEndDistance;
        outcome.TouchdownTime = outcome.HoldOffEndTime;
        outcome.TouchdownSpeed = speed;
        outcome.TouchdownSink = sink;
        GroundRoll.Run(forced, Math.Sqrt(speed * speed - sink * sink), path.PowerOf(0), tolerance, ref outcome);
        LandingCheck.Computed(forced, outcome, voice: voice);
        return outcome;
    }
}
