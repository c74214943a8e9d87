using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Every refusal says its reason, its two values and what they are.</summary>
public sealed class RefusalTextTests
{
    [Theory]
    [InlineData(LandingRefusal.RoundOutAboveThresholdHeight, "round-out-above-threshold-height: at this sink rate and time constant the round-out begins at a wheel height of 12.346 m, and the threshold is crossed at 7.5 m.")]
    [InlineData(LandingRefusal.PathSteeperThanIdleGlide, "path-steeper-than-idle-glide: holding the path takes a thrust of 12.346 N, and the idling engine gives 7.5 N: the aeroplane would not stay on the path but speed up.")]
    [InlineData(LandingRefusal.LiftLimitBeforeRoundOut, "lift-limit-before-round-out: rounding out takes a lift coefficient of 12.346 at its first moment, and the touchdown's is 7.5: too slow to round out.")]
    [InlineData(LandingRefusal.NeverSlowsToTouchdown, "never-slows-to-touchdown: after 120 s of floating the airspeed is 12.346 m/s; the touchdown lift needs it near 7.5 m/s. The thrust carries the aeroplane on.")]
    [InlineData(LandingRefusal.NeverSettles, "never-settles: 60 s after the hold-off the wheels are still 12.346 m above the runway.")]
    [InlineData(LandingRefusal.StopsBeforeNoseLowers, "stops-before-nose-lowers: the nose would come down at an airspeed of 12.346 m/s, and at 7.5 m/s the aeroplane already stands on the ground.")]
    [InlineData(LandingRefusal.DoesNotSlowOnTheRoll, "does-not-slow-on-the-roll: with the nose held off no deceleration is left, or 300 s pass: the airspeed is 12.346 m/s, and the nose comes down at 7.5 m/s.")]
    [InlineData(LandingRefusal.DoesNotStop, "does-not-stop: under braking no deceleration is left, or 300 s pass: the airspeed is 12.346 m/s, and the aeroplane stands at 7.5 m/s.")]
    public void Explain_EachReason_GivesBothValues(LandingRefusal refusal, string expected) =>
        Assert.Equal(expected, RefusalText.Explain(Of(refusal, 12.345678)));

    // An airspeed that has collapsed has no lift coefficient to show.
    [Theory]
    [InlineData(0.0), InlineData(-2.0), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void Explain_SpeedThatCollapsed_DoesNotShowALiftCoefficient(double shown) => Assert.Equal(
        "lift-limit-before-round-out: the airspeed collapses on the approach, far past the touchdown lift coefficient of 7.5.",
        RefusalText.Explain(Of(LandingRefusal.LiftLimitBeforeRoundOut, shown)));

    [Theory]
    [InlineData(double.PositiveInfinity, "more than 1e+300 m,"), InlineData(double.NegativeInfinity, "less than -1e+300 m,")]
    [InlineData(double.NaN, "no number at all m,")]
    public void Explain_ValueBeyondNumbers_IsSaidInWords(double shown, string words)
    {
        string explanation = RefusalText.Explain(Of(LandingRefusal.RoundOutAboveThresholdHeight, shown));
        Assert.Contains(words, explanation, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", explanation, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_LandingThatHappened_SaysNothing() => Assert.Equal("", RefusalText.Explain(Of(LandingRefusal.None, 1)));

    private static LandingOutcome Of(LandingRefusal refusal, double shown)
    {
        LandingOutcome outcome = LandingOutcome.Unreached;
        outcome.Refuse(refusal, shown, 7.5);
        return outcome;
    }
}
