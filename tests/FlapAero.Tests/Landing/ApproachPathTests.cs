using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>What is known before the first step, worked out by the formulas that the model states.</summary>
public sealed class ApproachPathTests
{
    private static readonly LandingInput Input = UsualLanding.Setup.Checked() with { Headwind = 3.1 };
    private static readonly Textbook Book = new(Input);
    private static readonly ApproachPath<ScalarLane> Path = Of(Input);
    private static readonly double Sink = WindLaws.SinkOnPath(Input.ThresholdSpeed, Input.PathAngleDegrees * Math.PI / 180, Input.Headwind);
    private static readonly double FlareHeight = Input.HoldOffHeight + Sink * Input.FlareTimeConstant;

    [Theory]
    [InlineData(3.1), InlineData(0.0), InlineData(-6.0)]
    public void SinkRate_InAnyWind_IsThatOfThePathOverTheGround(double headwind)
    {
        LandingInput input = Input with { Headwind = headwind, PathAngleDegrees = 9 };
        double sink = Of(input).Sink.Value;
        // s/(√(V² − s²) − w) = tan γ_p.
        Assert.Equal(Math.Tan(Math.PI / 20), sink / (Math.Sqrt(input.ThresholdSpeed * input.ThresholdSpeed - sink * sink) - headwind), 1e-12);
        Assert.Equal(sink, Of(input).HoldOff.Sink(Of(input).FlareStart).Value, 1e-12);
    }

    [Fact]
    public void Path_Usual_BeginsItsRoundOutWhereTheSinkWouldNotJump()
    {
        Assert.Equal(FlareHeight, Path.FlareHeight.Value, 1e-12);
        Assert.Equal((Input.ThresholdHeight - FlareHeight) / Sink, Path.FlareStart.Value, 1e-12);
        Assert.Equal(0.85 * 2, Path.TouchdownLift.Value, 1e-12);
        Assert.Equal(FlareHeight, Path.Approach.Height(Path.FlareStart, Path.Sink).Value, 1e-12);
    }

    [Fact]
    public void Thrust_BeforeTheCut_BalancesThePathAtTheThreshold()
    {
        double speed = Input.ThresholdSpeed, lift = Book.Lift(speed, Sink);
        double expected = Book.Drag(speed, lift / Book.Dynamic(speed), Input.ThresholdHeight + Input.WingHeight) - Book.Weight * Sink / speed;
        Assert.Equal(expected / Input.Mass, Path.Thrust.At(0, speed).Value, 1e-12);
        Assert.Equal(Input.IdleThrust / Input.Mass, Path.Thrust.At(1, speed).Value, 1e-12);
        Assert.Equal(Input.PowerCutTime, Path.Timetable.Settled.Value - CutTime(Input.PowerCutHeight), 1e-12);
        LandingOutcome[] outcomes = [LandingOutcome.Unreached];
        Assert.True(ScalarLane.Any(Path.Begin(outcomes)));
        Assert.Equal((expected, FlareHeight), (Math.Round(outcomes[0].ApproachThrust - expected, 9) + expected, outcomes[0].FlareHeight));
    }

    // T_i(V) = T_0 + T_1 V + T_2 V², and a path that is refused where it takes less at the threshold's speed.
    [Fact]
    public void Thrust_IdleByAirspeed_IsTheQuadratic()
    {
        LandingInput input = Input with { IdleThrust = 200, IdleThrustSlope = -3, IdleThrustCurvature = -0.2 };
        Assert.Equal((200 - 3 * 20 - 0.2 * 400) / Input.Mass, Of(input).Thrust.Idle(20).Value, 1e-14);
        Assert.Equal(0.75 * Of(input).Thrust.Approach.Value + 0.25 * Of(input).Thrust.Idle(20).Value, Of(input).Thrust.At(0.25, 20).Value, 1e-14);
        double needed = Of(input).Thrust.Approach.Value * Input.Mass, speed = Input.ThresholdSpeed;
        LandingOutcome[] outcomes = [LandingOutcome.Unreached];
        Assert.True(ScalarLane.Any(Of(input with { IdleThrust = needed + speed * (3 + 0.2 * speed) - 1e-6 }).Begin(outcomes)));
        Assert.False(ScalarLane.Any(Of(input with { IdleThrust = needed + speed * (3 + 0.2 * speed) + 1e-6 }).Begin(outcomes)));
        Assert.Equal(LandingRefusal.PathSteeperThanIdleGlide, outcomes[0].Refusal);
        Assert.Equal(needed + 1e-6, outcomes[0].Limit, 1e-8);
    }

    // The pilot has trimmed for the shear on the path and not for the gust.
    [Fact]
    public void Thrust_InShearAndGust_BalancesTheShearAlone()
    {
        static double Law(double height) => 6 * Math.Pow(height / 10, 0.25);
        double wing = Input.ThresholdHeight + Input.WingHeight, wind = Law(wing);
        LandingInput input = Input with { Headwind = wind, GustChange = 5, GustStart = -1, GustLength = 4 };
        ApproachPath<ScalarLane> still = Of(Input with { Headwind = wind }), windy = new([input], Law);
        double sink = windy.Sink.Value, cosine = Math.Sqrt(1 - Math.Pow(sink / Input.ThresholdSpeed, 2));
        Assert.Equal(still.Thrust.Approach.Value + 0.25 * wind / wing * sink * cosine, windy.Thrust.Approach.Value, 1e-7);
    }

    // Above the threshold at once; on the path h = h_t − s t; in the round-out h − h_h = s τ exp(−(t − t_f)/τ); below h_h never.
    [Fact]
    public void Power_CutAtAHeight_ComesWhenTheWheelsPassIt()
    {
        Assert.Equal(0, CutTime(Input.ThresholdHeight + 5));
        Assert.Equal(0, CutTime(Input.ThresholdHeight));
        Assert.Equal((Input.ThresholdHeight - 10) / Sink, CutTime(10), 1e-12);
        Assert.Equal(Path.FlareStart.Value, CutTime(FlareHeight), 1e-12);
        double inRoundOut = Path.FlareStart.Value + Input.FlareTimeConstant * Math.Log((FlareHeight - Input.HoldOffHeight) / 0.5);
        Assert.Equal(inRoundOut, CutTime(Input.HoldOffHeight + 0.5), 1e-12);
        Assert.Equal(double.PositiveInfinity, CutTime(Input.HoldOffHeight));
        Assert.Equal(double.PositiveInfinity, CutTime(-3));
    }

    [Fact]
    public void LiftAtFlare_AtASpeed_HasTheRoundOutsOwnLift()
    {
        const double speed = 24;
        double lift = Book.Lift(speed, Sink, Sink / Input.FlareTimeConstant) / Book.Dynamic(speed);
        Assert.Equal(lift, Path.LiftAtFlare(speed).Value, 1e-12);
        Assert.Equal((lift / 1.7 - 1) * speed * speed, Path.LiftLeftAtFlare(new(speed)).Value, 1e-9);
        Assert.Equal(1.7, Book.Weight / Book.Dynamic(Path.LiftSpeed.Value), 1e-12);
        // A speed that has collapsed below the sink rate has no angle any more, and is no error.
        Assert.Equal(
            Input.Mass * Sink / Input.FlareTimeConstant / Book.Dynamic(0.5 * Sink), Path.LiftAtFlare(0.5 * Sink).Value, 1e-9);
    }

    [Fact]
    public void Begin_FourLandings_RefusesEachForItsOwnReason()
    {
        LandingInput high = Input with { ThresholdHeight = FlareHeight }, steep = Input with { PathAngleDegrees = 9, IdleThrust = 40 };
        LandingInput both = steep with { ThresholdHeight = 1 };
        ApproachPath<Lanes4> path = new([Input, high, steep, both]);
        LandingOutcome[] outcomes = [.. Enumerable.Repeat(LandingOutcome.Unreached, 4)];
        Lanes4 fly = path.Begin(outcomes);
        Assert.Equal([true, false, false, false], [.. Enumerable.Range(0, 4).Select(i => double.IsNaN(fly[i]))]);
        Assert.Equal(
            [LandingRefusal.None, LandingRefusal.RoundOutAboveThresholdHeight, LandingRefusal.PathSteeperThanIdleGlide, LandingRefusal.RoundOutAboveThresholdHeight],
            outcomes.Select(o => o.Refusal));
        Assert.Equal(FlareHeight, outcomes[1].Shown, 1e-12);
        Assert.Equal(FlareHeight, outcomes[1].Limit, 1e-12);
        Assert.Equal(outcomes[2].ApproachThrust, outcomes[2].Shown);
        Assert.Equal(40, outcomes[2].Limit, 1e-9);
        Assert.True(outcomes[2].Shown < 40);
        Assert.Equal(path.Thrust.Approach[2] * Input.Mass, outcomes[2].ApproachThrust, 1e-9);
        Assert.Equal(path.Thrust.AtRest[3], path.Thrust.Lane(3).AtRest.Value);
    }

    [Fact]
    public void Begin_IdleThrustOfThePath_IsNotRefused()
    {
        LandingOutcome[] outcomes = [LandingOutcome.Unreached];
        Path.Begin(outcomes);
        LandingInput exactly = Input with { IdleThrust = outcomes[0].ApproachThrust - 1e-9 };
        Assert.True(ScalarLane.Any(Of(exactly).Begin(outcomes)));
    }

    // Only a first step, but so near that one step is mostly enough.
    [Fact]
    public void SettlingGuess_ReferenceCases_IsNearTheSettling()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            LandingOutcome outcome = LandingSolver.Solve(landing.Input);
            double settles = outcome.TouchdownTime - outcome.HoldOffEndTime;
            // On purpose a little short; from above twice the wing's height 0.6 of it: two steps.
            double share = outcome.HoldOffEndHeight > 2 * landing.Input.WingHeight ? 0.6 : 0.95;
            Assert.InRange(Guess(landing.Input, outcome) / settles, 0.93 * share, 1.07 * share);
        }
    }

    [Fact]
    public void SettlingGuess_FromVeryLowOrHigh_KeepsToItsLimits()
    {
        ScalarLane low = Path.SettlingGuess(20, new(26, -0.04, 1e-3));
        Assert.Equal(0.95 * 0.2, low.Value, 1e-15);
        LandingInput high = Input with { ThresholdHeight = 300, HoldOffHeight = 200 };
        Assert.Equal(0.6 * 6, Guess(high, LandingSolver.Solve(high)), 1e-12);
    }

    private static double Guess(LandingInput input, LandingOutcome outcome)
    {
        ApproachPath<ScalarLane> path = Of(input);
        double sink = path.HoldOff.Sink(outcome.HoldOffEndTime).Value, speed = outcome.HoldOffEndSpeed;
        return path.SettlingGuess(outcome.HoldOffEndTime, new(speed, -Math.Asin(sink / speed), outcome.HoldOffEndHeight)).Value;
    }

    private static double CutTime(double height) =>
        Of(Input with { PowerCutHeight = height }).Timetable.Cut.Value;

    private static ApproachPath<ScalarLane> Of(LandingInput input) => new([input]);
}
