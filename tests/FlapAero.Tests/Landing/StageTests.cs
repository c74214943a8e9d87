using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Each stage's law, end and measure of error against the textbook's, at moments that nothing makes special.</summary>
public sealed class StageTests
{
    private const double Speed = 27.3;
    private const double Time = 3.7;

    private static readonly LandingInput Input = UsualLanding.Setup.Input() with { Headwind = 3.1, RunwaySlope = 0.02 };
    private static readonly Textbook Book = new(Input);
    private static readonly ApproachPath<ScalarLane> Path = new(LandingInput.Rows([Input]));
    private static readonly double Sink = WindLaws.SinkOnPath(Input.ThresholdSpeed, Input.PathAngleDegrees * Math.PI / 180, Input.Headwind);

    // 0.4 + 0.05 (t − 1) m/s².
    private static readonly Thrust<ScalarLane> Pull = new(0.4, 0.05, 1, double.PositiveInfinity);

    [Fact]
    public void Approach_AtAMoment_ObeysTheTextbook()
    {
        ApproachStage<ScalarLane> stage = Path.Approach;
        stage.Prepare(3, Time, Pull);
        double height = Input.ThresholdHeight - Sink * Time;
        Assert.Equal(height, stage.Height(Time).Value, 1e-12);
        double expected = Book.Acceleration(Speed, height + Input.WingHeight, Input.Mass * (0.4 + 0.05 * (Time - 1)), Sink, Book.Lift(Speed, Sink));
        Assert.Equal(expected, stage.Rates(3, new(Speed)).Speed.Value, 1e-12);
        Assert.Equal(Math.Sqrt(Speed * Speed - Sink * Sink) - 3.1, stage.GroundSpeed(3).Value, 1e-12);
        Assert.False(ApproachStage<ScalarLane>.HasEnd);
        Assert.True(stage.End(3, new(Speed)).Value < 0);
        Assert.Equal(0, stage.EndRate(3, new(Speed), new(1)).Value);
        AssertOnPath(stage, 3);
    }

    [Fact]
    public void HoldOff_AtAMoment_ObeysTheTextbook()
    {
        HoldOffStage<ScalarLane> stage = Path.HoldOff;
        double start = (Input.ThresholdHeight - Input.HoldOffHeight - Sink * Input.FlareTimeConstant) / Sink, time = start + 1.3;
        stage.Prepare(4, time, Pull);
        // h − h_h and the sink both die away over τ.
        double sink = Sink * Math.Exp(-1.3 / Input.FlareTimeConstant), height = Input.HoldOffHeight + sink * Input.FlareTimeConstant;
        Assert.Equal(sink, stage.Sink(time).Value, 1e-12);
        Assert.Equal(height, stage.Height(sink).Value, 1e-12);
        double lift = Book.Lift(Speed, sink, sink / Input.FlareTimeConstant);
        double expected = Book.Acceleration(Speed, height + Input.WingHeight, Input.Mass * (0.4 + 0.05 * (time - 1)), sink, lift);
        Assert.Equal(expected, stage.Rates(4, new(Speed)).Speed.Value, 1e-12);
        Assert.Equal(Math.Sqrt(Speed * Speed - sink * sink) - 3.1, stage.GroundSpeed(4).Value, 1e-12);
        Assert.True(HoldOffStage<ScalarLane>.HasEnd);
        AssertOnPath(stage, 4);
        double share = lift / Book.Dynamic(Speed) / (Input.TouchdownLiftFraction * Input.MaximumLift);
        Assert.Equal((share - 1) * Speed * Speed, stage.End(4, new(Speed)).Value, 1e-9);
    }

    [Fact]
    public void HoldOff_EndRate_IsHowFastTheEndGrows()
    {
        HoldOffStage<ScalarLane> stage = Path.HoldOff;
        double time = Path.FlareStart.Value + 0.2;
        const double later = 1e-5;
        stage.Prepare(0, time, Pull);
        PathMotion<ScalarLane> rates = stage.Rates(0, new(8));
        stage.Prepare(1, time - later, Pull);
        stage.Prepare(2, time + later, Pull);
        // Slow, so that the part of the angle counts.
        double before = stage.End(1, new(8 - later * rates.Speed.Value)).Value, after = stage.End(2, new(8 + later * rates.Speed.Value)).Value;
        Assert.Equal((after - before) / (2 * later), stage.EndRate(0, new(8), rates).Value, 1e-5);
    }

    // A trial step may ask for a sink rate above the airspeed: the law goes on with a vertical dive.
    [Fact]
    public void HoldOff_SinkAboveTheAirspeed_StaysANumber()
    {
        HoldOffStage<ScalarLane> stage = Path.HoldOff;
        stage.Prepare(0, Path.FlareStart, Pull);
        double slow = 0.5 * Sink;
        Assert.Equal(-3.1, (stage.Rates(0, new(slow)).Speed.Value, stage.GroundSpeed(0).Value).Item2, 1e-9);
        Assert.True(double.IsFinite(stage.Rates(0, new(slow)).Speed.Value));
        Assert.True(double.IsFinite(stage.End(0, new(slow)).Value));
        Assert.True(double.IsFinite(stage.EndRate(0, new(slow), new(-1)).Value));
    }

    [Fact]
    public void Settling_AtAMoment_ObeysTheTextbook()
    {
        const double angle = -0.04, height = 0.7, thrust = 0.4 + 0.05 * (Time - 1);
        SettlingStage<ScalarLane> stage = Path.Settling;
        stage.Prepare(2, Time, Pull);
        FreeMotion<ScalarLane> rates = stage.Rates(2, new(Speed, angle, height));
        double lift = Book.Dynamic(Speed) * Input.TouchdownLiftFraction * Input.MaximumLift;
        double expected = Book.Acceleration(Speed, height + Input.WingHeight, Input.Mass * thrust, -Speed * Math.Sin(angle), lift);
        Assert.Equal(expected, rates.Speed.Value, 1e-12);
        Assert.Equal((lift - Book.Weight * Math.Cos(angle)) / (Input.Mass * Speed), rates.Angle.Value, 1e-12);
        Assert.Equal(Speed * Math.Sin(angle), rates.Height.Value, 1e-12);
        Assert.Equal(Speed * Math.Cos(angle) - 3.1, stage.GroundSpeed(2).Value, 1e-12);
        Assert.True(SettlingStage<ScalarLane>.HasEnd);
        Assert.Equal(-height, stage.End(2, new(Speed, angle, height)).Value);
        Assert.Equal(-rates.Height.Value, stage.EndRate(2, new(Speed, angle, height), rates).Value);
        Assert.True(ScalarLane.Any(stage.Sound(2, new(0.1, angle, height))));
        Assert.False(ScalarLane.Any(stage.Sound(2, new(0, angle, height))) || ScalarLane.Any(stage.Sound(2, new(-1, angle, height))));
    }

    // Speed as a share of itself, angle of the approach's, height of the hold-off height: the largest counts.
    [Theory]
    [InlineData(-2.73, 0.0, 0.0, 0.1)]
    [InlineData(1e-9, -0.2, 0.0, 0.2)]
    [InlineData(1e-9, 0.3, 0.01, 0.3)]
    [InlineData(1e-9, 1e-9, -0.6, 0.6)]
    public void Settling_Share_IsTheLargestOfThree(double speed, double ofTheAngle, double ofTheHeight, double expected)
    {
        double angle = ofTheAngle * Sink / Input.ThresholdSpeed, height = ofTheHeight * Input.HoldOffHeight;
        Assert.Equal(expected, Path.Settling.Share(new(speed, angle, height), new(Speed, 0, 0)).Value, 1e-12);
    }

    // Below the ground the wing stays a tenth of its height on the wheels above it.
    [Theory]
    [InlineData(-1.7, 0.3), InlineData(-1.8, 0.2), InlineData(-1.9, 0.2), InlineData(-5.0, 0.2)]
    public void Settling_TrialStepUnderTheGround_HasTheWingNearlyDown(double height, double wing)
    {
        SettlingStage<ScalarLane> stage = Path.Settling;
        stage.Prepare(0, 1, Pull);
        double lift = Book.Dynamic(Speed) * Input.TouchdownLiftFraction * Input.MaximumLift;
        Assert.Equal(
            Book.Acceleration(Speed, wing, 0.4 * Input.Mass, 0, lift), stage.Rates(0, new(Speed, 0, height)).Speed.Value, 1e-12);
    }

    [Theory]
    [InlineData(24.0, 0.5), InlineData(24.0, 2.4), InlineData(3.0, -0.3), InlineData(-2.0, 0.5), InlineData(0.0, 0.5)]
    public void Roll_AtAMoment_ObeysTheTextbook(double speed, double lift)
    {
        RollStage stage = GroundRoll.Stage(Input, lift, 0.2, 11);
        stage.Prepare(5, Time, Pull);
        double thrust = Input.Mass * (0.4 + 0.05 * (Time - 1));
        double expected = Book.OnWheels(speed, thrust, lift, 0.2);
        Assert.Equal(expected, stage.Rates(5, new(speed)).Speed.Value, 1e-12);
        Assert.Equal(speed - 3.1, stage.GroundSpeed(5).Value);
        Assert.Equal(11 - speed, stage.End(5, new(speed)).Value);
        Assert.Equal(2.5, stage.EndRate(5, new(speed), new(-2.5)).Value);
        Assert.True(RollStage.HasEnd && ScalarLane.Any(stage.Sound(5, new(speed))));
        Assert.Equal(0.3 / (1 + Math.Abs(speed)), stage.Share(new(-0.3), new(speed)).Value, 1e-15);
    }

    [Fact]
    public void Roll_LiftOffSpeed_IsWhereTheWingCarriesAllOfTheWeight()
    {
        double speed = GroundRoll.Stage(Input, 1.2, 0.2, 0).LiftOffSpeed;
        Assert.Equal(Book.Weight * Math.Cos(Math.Atan(0.02)), Book.Dynamic(speed) * 1.2, 1e-8);
        Assert.Equal(double.PositiveInfinity, GroundRoll.Stage(Input, 0, 0.2, 0).LiftOffSpeed);
        Assert.Equal(double.PositiveInfinity, GroundRoll.Stage(Input, -0.4, 0.2, 0).LiftOffSpeed);
    }

    // What stages 1 and 3 share: the airspeed must make the sink rate, and an error counts as a share of it.
    private static void AssertOnPath<TStage>(TStage stage, int node)
        where TStage : struct, IStage<ScalarLane, PathMotion<ScalarLane>>
    {
        Assert.Equal(0.1, stage.Share(new(-2.73), new(Speed)).Value, 1e-12);
        Assert.True(ScalarLane.Any(stage.Sound(node, new(Sink + 0.01))));
        Assert.False(ScalarLane.Any(stage.Sound(node, new(0.3))));
    }
}
