namespace FlapAero.Equations;

/// <summary>A refusal in a sentence, with the values that show it as whoever asked would say them.</summary>
internal static class RefusalText
{
    public static string Explain(in LandingOutcome outcome, LandingVoice? voice = null)
    {
        voice ??= LandingVoice.OfTables;
        LandingVariable variable = Column(outcome.Refusal);
        string shown = voice.Shown(variable, outcome.Shown), limit = voice.Shown(variable, outcome.Limit);
        string words = outcome.Refusal switch
        {
            LandingRefusal.RoundOutAboveThresholdHeight =>
                $"at this sink rate and time constant the round-out begins at a wheel height of {shown}, and the threshold is crossed at {limit}.",
            LandingRefusal.PathSteeperThanIdleGlide =>
                $"holding the path takes a thrust of {shown}, and the idling engine gives {limit}: the aeroplane would not stay on the path but speed up.",
            LandingRefusal.LiftLimitBeforeRoundOut => double.IsFinite(outcome.Shown) && outcome.Shown > 0
                ? $"rounding out takes a lift coefficient of {shown} at its first moment, and the touchdown's is {limit}: too slow to round out."
                : $"the airspeed collapses on the approach, far past the touchdown lift coefficient of {limit}.",
            LandingRefusal.NeverSlowsToTouchdown =>
                $"after 120 s of floating the airspeed is {shown}; the touchdown lift needs it near {limit}. The thrust carries the aeroplane on.",
            LandingRefusal.NeverSettles =>
                $"60 s after the hold-off the wheels are still {shown} above the runway.",
            LandingRefusal.StopsBeforeNoseLowers =>
                $"the nose would come down at an airspeed of {shown}, and at {limit} the aeroplane already stands on the ground.",
            LandingRefusal.DoesNotSlowOnTheRoll =>
                $"with the nose held off no deceleration is left, or 300 s pass: the airspeed is {shown}, and the nose comes down at {limit}.",
            LandingRefusal.DoesNotStop =>
                $"under braking no deceleration is left, or 300 s pass: the airspeed is {shown}, and the aeroplane stands at {limit}.",
            _ => "",
        };
        return words.Length == 0 ? "" : $"{outcome.Refusal.Reason()}: {words}";
    }

    /// <summary>The input whose unit the two values of a reason have.</summary>
    private static LandingVariable Column(LandingRefusal refusal) => refusal switch
    {
        LandingRefusal.RoundOutAboveThresholdHeight or LandingRefusal.NeverSettles => LandingVariable.ThresholdHeight,
        LandingRefusal.PathSteeperThanIdleGlide => LandingVariable.IdleThrust,
        LandingRefusal.LiftLimitBeforeRoundOut => LandingVariable.MaximumLiftCoefficient,
        _ => LandingVariable.ThresholdSpeed,
    };
}
