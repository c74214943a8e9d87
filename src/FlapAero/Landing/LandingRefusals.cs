namespace FlapAero;

/// <summary>The reasons as tables have them.</summary>
public static class LandingRefusals
{
    /// <summary>The reason in the words of a table's <c>error</c> column.</summary>
    /// <remarks>Formula: none. Range: every reason; nothing for a landing that happened. Source: this library's tables of landings.</remarks>
    /// <param name="refusal">The reason.</param>
    /// <returns>Lower-case words joined by hyphens; empty for <see cref="LandingRefusal.None"/>.</returns>
    /// <exception cref="RefusedInputException">A value that is no reason.</exception>
    /// <example><code>LandingRefusal.NeverSettles.Reason() // never-settles</code></example>
    public static string Reason(this LandingRefusal refusal) => refusal switch
    {
        LandingRefusal.None => "",
        LandingRefusal.RoundOutAboveThresholdHeight => "round-out-above-threshold-height",
        LandingRefusal.PathSteeperThanIdleGlide => "path-steeper-than-idle-glide",
        LandingRefusal.LiftLimitBeforeRoundOut => "lift-limit-before-round-out",
        LandingRefusal.NeverSlowsToTouchdown => "never-slows-to-touchdown",
        LandingRefusal.NeverSettles => "never-settles",
        LandingRefusal.StopsBeforeNoseLowers => "stops-before-nose-lowers",
        LandingRefusal.DoesNotSlowOnTheRoll => "does-not-slow-on-the-roll",
        LandingRefusal.DoesNotStop => "does-not-stop",
        _ => throw Require.Refused(nameof(refusal), "reason to refuse a landing", (int)refusal, "0 to 8", "There are no other reasons."),
    };

    /// <summary>What to do about it, in a sentence.</summary>
    internal static string Advice(this LandingRefusal refusal) => refusal switch
    {
        LandingRefusal.RoundOutAboveThresholdHeight => "Cross the threshold higher, or round out later.",
        LandingRefusal.PathSteeperThanIdleGlide => "Fly a flatter path, or add drag with a forward slip.",
        LandingRefusal.LiftLimitBeforeRoundOut => "Fly faster, or keep the power longer.",
        LandingRefusal.NeverSlowsToTouchdown => "Close the throttle further: this idle thrust is too much.",
        LandingRefusal.NeverSettles => "Hold off nearer to the runway.",
        LandingRefusal.StopsBeforeNoseLowers => "Lower the nose earlier, at a greater share of the touchdown speed.",
        LandingRefusal.DoesNotSlowOnTheRoll => "Lower the nose and brake earlier, with less idle thrust or slope down.",
        _ => "Brake more, with less idle thrust or slope down.",
    };
}
