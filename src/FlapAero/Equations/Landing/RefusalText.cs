using System.Globalization;

namespace FlapAero.Equations;

/// <summary>A refusal in a sentence, with the values that show it.</summary>
internal static class RefusalText
{
    public static string Explain(in LandingOutcome outcome)
    {
        string shown = Number(outcome.Shown), limit = Number(outcome.Limit);
        string words = outcome.Refusal switch
        {
            LandingRefusal.RoundOutAboveThresholdHeight =>
                $"at this sink rate and time constant the round-out begins at a wheel height of {shown} m, and the threshold is crossed at {limit} m.",
            LandingRefusal.PathSteeperThanIdleGlide =>
                $"holding the path takes a thrust of {shown} N, and the idling engine gives {limit} N: the aeroplane would not stay on the path but speed up.",
            LandingRefusal.LiftLimitBeforeRoundOut => double.IsFinite(outcome.Shown) && outcome.Shown > 0
                ? $"rounding out takes a lift coefficient of {shown} at its first moment, and the touchdown's is {limit}: too slow to round out."
                : $"the airspeed collapses on the approach, far past the touchdown lift coefficient of {limit}.",
            LandingRefusal.NeverSlowsToTouchdown =>
                $"after 120 s of floating the airspeed is {shown} m/s; the touchdown lift needs it near {limit} m/s. The thrust carries the aeroplane on.",
            LandingRefusal.NeverSettles =>
                $"60 s after the hold-off the wheels are still {shown} m above the runway.",
            LandingRefusal.StopsBeforeNoseLowers =>
                $"the nose would come down at an airspeed of {shown} m/s, and at {limit} m/s the aeroplane already stands on the ground.",
            LandingRefusal.DoesNotSlowOnTheRoll =>
                $"with the nose held off no deceleration is left, or 300 s pass: the airspeed is {shown} m/s, and the nose comes down at {limit} m/s.",
            LandingRefusal.DoesNotStop =>
                $"under braking no deceleration is left, or 300 s pass: the airspeed is {shown} m/s, and the aeroplane stands at {limit} m/s.",
            _ => "",
        };
        return words.Length == 0 ? "" : $"{outcome.Refusal.Reason()}: {words}";
    }

    /// <summary>Absurd input can lead beyond every number: that is said in words.</summary>
    private static string Number(double value) =>
        double.IsFinite(value) ? value.ToString("g5", CultureInfo.InvariantCulture)
        : double.IsNaN(value) ? "no number at all" : value > 0 ? "more than 1e+308" : "less than -1e+308";
}
