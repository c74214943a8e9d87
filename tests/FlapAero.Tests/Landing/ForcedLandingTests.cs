using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Wheels put on while the wing still flies.</summary>
public sealed class ForcedLandingTests
{
    private static readonly LandingInput Input = UsualLanding.Setup.Checked() with { Headwind = 3.1 };

    [Fact]
    public void Solve_AtAShareOfTheLift_TouchesDownWhereTheHoldOffReachesIt()
    {
        LandingOutcome forced = Forced(Input, 0.6, 1e-10);
        Textbook book = new(Input);
        double above = forced.HoldOffEndHeight - Input.HoldOffHeight, tau = Input.FlareTimeConstant;
        Assert.Equal(LandingRefusal.None, forced.Refusal);
        Assert.Equal(above / tau, forced.TouchdownSink, 1e-9);
        Assert.Equal(
            0.6 * 2, book.Lift(forced.TouchdownSpeed, forced.TouchdownSink, above / (tau * tau)) / book.Dynamic(forced.TouchdownSpeed), 1e-7);
        Assert.Equal(
            (forced.HoldOffEndDistance, forced.HoldOffEndTime, forced.HoldOffEndSpeed),
            (forced.TouchdownDistance, forced.TouchdownTime, forced.TouchdownSpeed));
    }

    // The power is idle by then: x = (m/2E) ln[(C + E V₁²)/(C + E V₂²)] from V cos γ.
    [Fact]
    public void Solve_InStillAir_RollsByTheClosedForm()
    {
        LandingInput still = Input with { Headwind = 0, PowerCutTime = 0, NoseHighLift = 0.3 };
        LandingOutcome forced = Forced(still, 0.7);
        Assert.Equal(LandingRefusal.None, forced.Refusal);
        Textbook book = new(still);
        double mu = still.RollingFriction, c = mu * book.Weight - still.IdleThrust, e = (book.Drag(1, 0.3, still.WingHeight) - mu * book.Dynamic(1) * 0.3);
        double from = forced.TouchdownSpeed * forced.TouchdownSpeed - forced.TouchdownSink * forced.TouchdownSink;
        double to = Math.Pow(0.7 * forced.TouchdownSpeed, 2);
        Assert.Equal(
            still.Mass / (2 * e) * Math.Log((c + e * from) / (c + e * to)), forced.NoseLowerDistance - forced.TouchdownDistance, 1e-6);
    }

    [Fact]
    public void Solve_RefusedBeforeTheHoldOffEnds_StaysRefused() => Assert.Equal(
        LandingRefusal.RoundOutAboveThresholdHeight, Forced(Input with { ThresholdHeight = 2 }, 0.6).Refusal);

    // From a hold-off 900 m up the settling would take minutes; forced on there is none.
    [Fact]
    public void Solve_LandingThatWouldNeverSettle_IsNotRefusedForIt()
    {
        LandingInput high = Input with { ThresholdHeight = 1000, HoldOffHeight = 900, PowerCutHeight = 905 };
        LandingOutcome usual = LandingSolver.Solve(high with { TouchdownLiftFraction = 0.6 });
        Assert.Equal(LandingRefusal.NeverSettles, usual.Refusal);
        Assert.InRange(usual.Shown, 1, 899);
        Assert.Equal(0, usual.Limit);
        LandingOutcome forced = Forced(high, 0.6);
        Assert.Equal((LandingRefusal.None, 0.0, 0.0), (forced.Refusal, forced.Shown, forced.Limit));
        Assert.True(double.IsFinite(forced.StopDistance));
    }

    private static LandingOutcome Forced(LandingInput input, double share, double tolerance = LandingSolver.DefaultTolerance) =>
        LandingSolver.Solve(input with { TouchdownLiftFraction = share }, tolerance, manner: new(PutsWheelsOn: true));
}
