using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>
/// Each stage's law, end and measure of error against the textbook's with the wind's inertial terms, at moments that nothing makes special:
/// in a steady wind, and in one that grows with height while a gust blows.
/// </summary>
public sealed class StageTests
{
    private const double Speed = 27.3;
    private const double Time = 3.7;

    private static readonly LandingInput Still = UsualLanding.Setup.Checked() with
    {
        Headwind = 3.1,
        RunwaySlope = 0.02,
        IdleThrust = 200,
        IdleThrustSlope = -3,
        IdleThrustCurvature = -0.2,
    };

    private static readonly LandingInput Gusty = Still with
    {
        Headwind = Law(Still.ThresholdHeight + Still.WingHeight),
        GustChange = 4,
        GustStart = 2,
        GustLength = 9,
    };

    // How far the throttle is closed: 0.3 + 0.05 (t − 1).
    private static readonly Segment<ScalarLane> Closing = new(0.3, 0.05, 1, double.PositiveInfinity);

    // A moment at a node, and other moments at those before.
    private static ScalarLane[] UpTo(int node, ScalarLane time) =>
        [.. Enumerable.Range(1, node).Select(i => time + 0.3 * (ScalarLane)i), time];

    [Theory, InlineData(false), InlineData(true)]
    public void Approach_AtAMoment_ObeysTheTextbook(bool windy)
    {
        Flight at = new(windy);
        PathStage<ScalarLane> stage = at.Path.Approach;
        stage.Prepare(UpTo(3, Time), Closing);
        double height = at.Input.ThresholdHeight - at.Sink * Time;
        double lift = at.Book.Lift(Speed, at.Sink);
        Assert.Equal(at.Sink, stage.Sink(Time).Value, 1e-12);
        Assert.Equal(height, stage.Height(Time, at.Sink).Value, 1e-12);
        Assert.Equal(at.Accelerates(height, at.Sink, lift, Time), stage.Rates(3, new(Speed)).Speed.Value, at.Near);
        Assert.Equal(Math.Sqrt(Speed * Speed - at.Sink * at.Sink) - at.Wind(height, Time), stage.GroundSpeed(3).Value, 1e-12);
        AssertOnPath(at, stage, 3, lift);
    }

    [Theory, InlineData(false), InlineData(true)]
    public void HoldOff_AtAMoment_ObeysTheTextbook(bool windy)
    {
        Flight at = new(windy);
        LandingInput input = at.Input;
        PathStage<ScalarLane> stage = at.Path.HoldOff;
        double start = (input.ThresholdHeight - input.HoldOffHeight - at.Sink * input.FlareTimeConstant) / at.Sink, time = start + 1.3;
        stage.Prepare(UpTo(4, time), Closing);
        // h − h_h and the sink both die away over τ.
        double sink = at.Sink * Math.Exp(-1.3 / input.FlareTimeConstant), height = input.HoldOffHeight + sink * input.FlareTimeConstant;
        Assert.Equal(sink, stage.Sink(time).Value, 1e-12);
        Assert.Equal(height, stage.Height(time, sink).Value, 1e-12);
        double lift = at.Book.Lift(Speed, sink, sink / input.FlareTimeConstant);
        Assert.Equal(at.Accelerates(height, sink, lift, time), stage.Rates(4, new(Speed)).Speed.Value, at.Near);
        Assert.Equal(Math.Sqrt(Speed * Speed - sink * sink) - at.Wind(height, time), stage.GroundSpeed(4).Value, 1e-12);
        AssertOnPath(at, stage, 4, lift);
    }

    [Theory, InlineData(false), InlineData(true)]
    public void HoldOff_EndRate_IsHowFastTheEndGrows(bool windy)
    {
        Flight at = new(windy);
        PathStage<ScalarLane> stage = at.Path.HoldOff;
        double time = at.Path.FlareStart.Value + 0.2;
        const double later = 1e-5;
        stage.Prepare([time, time - later, time + later], Closing);
        PathMotion<ScalarLane> rates = stage.Rates(0, new(8));
        // Slow, so that the part of the angle counts.
        double before = stage.End(1, new(8 - later * rates.Speed.Value)).Value, after = stage.End(2, new(8 + later * rates.Speed.Value)).Value;
        Assert.Equal((after - before) / (2 * later), stage.EndRate(0, new(8), rates).Value, 1e-4);
    }

    // A trial step may ask for a sink rate above the airspeed: the law goes on with a vertical dive.
    [Fact]
    public void HoldOff_SinkAboveTheAirspeed_StaysANumber()
    {
        Flight at = new(false);
        PathStage<ScalarLane> stage = at.Path.HoldOff;
        stage.Prepare(UpTo(0, at.Path.FlareStart), Closing);
        double slow = 0.5 * at.Sink;
        Assert.Equal(-3.1, (stage.Rates(0, new(slow)).Speed.Value, stage.GroundSpeed(0).Value).Item2, 1e-9);
        Assert.True(double.IsFinite(stage.Rates(0, new(slow)).Speed.Value));
        Assert.True(double.IsFinite(stage.End(0, new(slow)).Value));
        Assert.True(double.IsFinite(stage.EndRate(0, new(slow), new(-1)).Value));
    }

    // V̇ = (T − D)/m − g sin γ + ẇ cos γ, V γ̇ = (L − W cos γ)/m − ẇ sin γ.
    [Theory, InlineData(false), InlineData(true)]
    public void Settling_AtAMoment_ObeysTheTextbook(bool windy)
    {
        const double angle = -0.04, height = 0.7;
        Flight at = new(windy);
        LandingInput input = at.Input;
        SettlingStage<ScalarLane> stage = at.Path.Settling;
        stage.Prepare(UpTo(2, Time), Closing);
        FreeMotion<ScalarLane> rates = stage.Rates(2, new(Speed, angle, height));
        double lift = at.Book.Dynamic(Speed) * input.TouchdownLiftFraction * input.MaximumLift, sink = -Speed * Math.Sin(angle);
        double wind = at.WindRate(height, sink, Time);
        Assert.Equal(at.Accelerates(height, sink, lift, Time), rates.Speed.Value, at.Near);
        Assert.Equal(((lift - at.Book.Weight * Math.Cos(angle)) / input.Mass - wind * Math.Sin(angle)) / Speed, rates.Angle.Value, at.Near);
        Assert.Equal(-sink, rates.Height.Value, 1e-12);
        Assert.Equal(Speed * Math.Cos(angle) - at.Wind(height, Time), stage.GroundSpeed(2).Value, 1e-12);
        Assert.Equal(-height, stage.End(2, new(Speed, angle, height)).Value);
        Assert.Equal(-rates.Height.Value, stage.EndRate(2, new(Speed, angle, height), rates).Value);
        Assert.True(ScalarLane.Any(stage.Sound(2, new(0.1, angle, height))));
        Assert.False(ScalarLane.Any(stage.Sound(2, new(0, angle, height))) || ScalarLane.Any(stage.Sound(2, new(-1, angle, height))));
        // Without a profile there is no height beyond which the wind is not known.
        Assert.Equal(!windy, ScalarLane.Any(stage.Sound(2, new(Speed, angle, 590))));
        Assert.True(ScalarLane.Any(stage.Sound(2, new(Speed, angle, 589))));
    }

    // Speed as a share of itself, angle of the approach's, height of the hold-off height: the largest counts.
    [Theory]
    [InlineData(-2.73, 0.0, 0.0, 0.1)]
    [InlineData(1e-9, -0.2, 0.0, 0.2)]
    [InlineData(1e-9, 0.3, 0.01, 0.3)]
    [InlineData(1e-9, 1e-9, -0.6, 0.6)]
    public void Settling_Share_IsTheLargestOfThree(double speed, double ofTheAngle, double ofTheHeight, double expected)
    {
        Flight at = new(false);
        double angle = ofTheAngle * at.Sink / at.Input.ThresholdSpeed, height = ofTheHeight * at.Input.HoldOffHeight;
        Assert.Equal(expected, at.Path.Settling.Share(new(speed, angle, height), new(Speed, 0, 0)).Value, 1e-12);
    }

    // Below the ground the wing stays a tenth of its height on the wheels above it.
    [Theory]
    [InlineData(-1.7, 0.3), InlineData(-1.8, 0.2), InlineData(-1.9, 0.2), InlineData(-5.0, 0.2)]
    public void Settling_TrialStepUnderTheGround_HasTheWingNearlyDown(double height, double wing)
    {
        Flight at = new(false);
        SettlingStage<ScalarLane> stage = at.Path.Settling;
        stage.Prepare(UpTo(0, 1), Closing);
        double lift = at.Book.Dynamic(Speed) * at.Input.TouchdownLiftFraction * at.Input.MaximumLift;
        Assert.Equal(at.Book.Acceleration(Speed, wing, at.Thrust(Speed, 1), 0, lift), stage.Rates(0, new(Speed, 0, height)).Speed.Value, 1e-12);
    }

    // What moves is the speed over the ground; the end is an airspeed, towards which the wind moves it too.
    [Theory]
    [InlineData(24.0, 0.5, false), InlineData(24.0, 2.4, false), InlineData(3.0, -0.3, false), InlineData(-7.0, 0.5, false), InlineData(-3.1, 0.5, false)]
    [InlineData(20.0, 0.5, true), InlineData(20.0, 3.0, true), InlineData(-9.0, 0.5, true)]
    public void Roll_AtAMoment_ObeysTheTextbook(double ground, double lift, bool windy)
    {
        Flight at = new(windy);
        RollStage stage = at.Roll(lift, 11);
        stage.Prepare(UpTo(5, Time), Closing);
        double airspeed = ground + at.Wind(0, Time);
        Assert.Equal(at.Book.OnWheels(airspeed, at.Thrust(airspeed, Time), lift, 0.2), stage.Rates(5, new(ground)).Speed.Value, 1e-12);
        Assert.Equal(ground, stage.GroundSpeed(5).Value);
        Assert.Equal(11 - airspeed, stage.End(5, new(ground)).Value, 1e-12);
        Assert.Equal(2.5 - at.WindRate(0, 0, Time), stage.EndRate(5, new(ground), new(-2.5)).Value, 1e-12);
        // With the nose still up the aeroplane must roll on while a gust blows.
        Assert.Equal(!windy || ground > 0, ScalarLane.Any(stage.Sound(5, new(ground))));
        Assert.Equal(0.3 / (1 + Math.Abs(ground)), stage.Share(new(-0.3), new(ground)).Value, 1e-15);
    }

    [Fact]
    public void Roll_ToTheStop_EndsWithTheGroundSpeed()
    {
        RollStage stage = new Flight(true).Roll(0.5, null);
        stage.Prepare(UpTo(4, Time), Closing);
        Assert.Equal((-7, 2.5), (stage.End(4, new(7)).Value, stage.EndRate(4, new(7), new(-2.5)).Value));
        Assert.True(ScalarLane.Any(stage.Sound(4, new(-1))));
    }

    [Fact]
    public void Roll_LiftOffSpeed_IsWhereTheWingCarriesAllOfTheWeight()
    {
        Flight at = new(false);
        double speed = at.Roll(1.2, null).LiftOffSpeed;
        Assert.Equal(at.Book.Weight * Math.Cos(Math.Atan(0.02)), at.Book.Dynamic(speed) * 1.2, 1e-8);
        Assert.Equal(double.PositiveInfinity, at.Roll(0, null).LiftOffSpeed);
        Assert.Equal(double.PositiveInfinity, at.Roll(-0.4, null).LiftOffSpeed);
    }

    // The law in powers of the airspeed, throttle open and closed, is the law of the moment.
    [Theory]
    [InlineData(20.0, 0.5, 1.0), InlineData(20.0, 0.5, 0.0), InlineData(30.0, 2.4, 1.0), InlineData(-4.0, 0.5, 1.0)]
    public void Roll_Deceleration_IsTheTextbooks(double airspeed, double lift, double closed)
    {
        Flight at = new(false);
        double thrust = (1 - closed) * at.Approach + closed * Flight.Idle(airspeed);
        Assert.Equal(-at.Book.OnWheels(airspeed, thrust, lift, 0.2), at.Roll(lift, null).Deceleration(airspeed, closed).At(airspeed), 1e-12);
    }

    private static double Law(double height) => 6 * Math.Pow(height / 10, 0.25);

    // The lift that is left to the touchdown's; the airspeed must make the sink rate, and an error counts as a share of it.
    private static void AssertOnPath(Flight at, PathStage<ScalarLane> stage, int node, double lift)
    {
        double share = lift / at.Book.Dynamic(Speed) / (at.Input.TouchdownLiftFraction * at.Input.MaximumLift);
        Assert.Equal((share - 1) * Speed * Speed, stage.End(node, new(Speed)).Value, 1e-9);
        Assert.Equal(0.1, stage.Share(new(-2.73), new(Speed)).Value, 1e-12);
        Assert.True(ScalarLane.Any(stage.Sound(node, new(at.Sink + 0.01))));
        Assert.False(ScalarLane.Any(stage.Sound(node, new(0.3))));
    }

    /// <summary>A landing in one of the two winds, with what the textbook makes of it. Heights are of the wheels.</summary>
    private sealed class Flight
    {
        private readonly bool _windy;

        public Flight(bool windy)
        {
            _windy = windy;
            Input = windy ? Gusty : Still;
            Path = new([Input], windy ? Law : null);
            Book = new(Input);
            Sink = WindLaws.SinkOnPath(Input.ThresholdSpeed, Input.PathAngleDegrees * Math.PI / 180, Input.Headwind);
        }

        public LandingInput Input { get; }

        public ApproachPath<ScalarLane> Path { get; }

        public Textbook Book { get; }

        public double Sink { get; }

        /// <summary>The shear is a difference of order 4.</summary>
        public double Near => _windy ? 1e-7 : 1e-12;

        public double Approach => Path.Thrust.Approach.Value * Input.Mass;

        public static double Idle(double speed) => 200 - 3 * speed - 0.2 * speed * speed;

        public double Thrust(double speed, double time) => Approach + (0.3 + 0.05 * (time - 1)) * (Idle(speed) - Approach);

        public double Wind(double height, double time) =>
            _windy ? Law(height + Input.WingHeight) + 2 * (1 - Math.Cos(2 * Math.PI * (time - 2) / 9)) : 3.1;

        public double WindRate(double height, double sink, double time)
        {
            double wing = height + Input.WingHeight;
            return _windy ? -0.25 * Law(wing) / wing * sink + 4 * Math.PI / 9 * Math.Sin(2 * Math.PI * (time - 2) / 9) : 0;
        }

        public double Accelerates(double height, double sink, double lift, double time) =>
            Book.Acceleration(Speed, height + Input.WingHeight, Thrust(Speed, time), sink, lift)
            + WindRate(height, sink, time) * Math.Sqrt(1 - sink / Speed * (sink / Speed));

        public RollStage Roll(double lift, double? end) => new(Input, lift, 0.2, Path.Thrust, Path.Forces.Wind, end);
    }
}
