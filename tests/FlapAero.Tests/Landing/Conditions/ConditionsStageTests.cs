using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The stages in a wind that changes with height and time, against the textbook with its inertial terms.</summary>
public sealed class ConditionsStageTests
{
    private const double Speed = 27.3;
    private const double Sink = 2.2;
    private const double Share = 0.3;

    private static readonly LandingInput Input = UsualLanding.Setup.Input() with { RunwaySlope = 0.02 };
    private static readonly Textbook Book = new(Input);
    private static readonly WindField Wind = new(z => 6 * Math.Pow(z / 10, 0.25), 0, 4, 3, 5);

    // T_i = 100 − 8 V, known up to 60 m/s; T_a = 900 N.
    private static readonly ConditionsForces Forces = new(Input, Wind, v => 100 - 8 * v, 60) { ApproachThrust = 900 / Input.Mass };
    private static readonly Thrust<ScalarLane> Power = new(Share, 0, 0, double.PositiveInfinity);

    [Fact]
    public void Forces_PerMass_AreTheTextbooks()
    {
        Assert.Equal(Book.Dynamic(1) / Input.Mass, Forces.Area, 1e-15);
        Assert.Equal(1.7, Forces.TouchdownLift, 1e-12);
        Assert.Equal((100 - 8 * 20) / Input.Mass, Forces.Idle(20), 1e-15);
        Assert.Equal(Input.IdleThrust / Input.Mass, new ConditionsForces(Input, Wind, null, 60).Idle(20), 1e-15);
        Assert.Equal((0.7 * 900 + 0.3 * (100 - 8 * 20)) / Input.Mass, Forces.Thrust(Share, 20), 1e-14);
        Assert.Equal(Book.Drag(Speed, 0.9, 5 + Input.WingHeight) / Input.Mass, Forces.Drag(Speed, 0.9, 5), 1e-12);
        Assert.Equal(-Forces.Drag(Speed, 0.9, 5), Forces.Drag(-Speed, 0.9, 5), 1e-12);
        Assert.Equal(60, Forces.Fastest);
    }

    [Theory]
    [InlineData(4.0, 6.0), InlineData(-1.7, 0.3), InlineData(-1.9, 0.2), InlineData(-9.0, 0.2)]
    public void Wing_AboveAndUnderTheGround_StaysATenthOfItsHeightUp(double wheels, double wing) =>
        Assert.Equal(wing, Forces.Wing(wheels), 1e-12);

    // ẇ = (dw/dh) ḣ + ∂w/∂t.
    [Fact]
    public void WindRate_SinkingInAGust_HasBothParts() =>
        Assert.Equal(0.25 * Wind.Mean(7) / 7 * -Sink + Wind.TimeRate(4), Forces.WindRate(5, -Sink, 4), 1e-7);

    [Fact]
    public void Approach_InChangingWind_ObeysTheTextbook()
    {
        ConditionsPathStage stage = new(Forces, 1, 12, Sink, double.PositiveInfinity, 0);
        stage.Prepare(2, 4, Power);
        const double height = 12 - Sink * 3;
        Assert.Equal(Sink, stage.Sink(4));
        Assert.Equal(height, stage.Height(4), 1e-12);
        Assert.Equal(Accelerates(Speed, height, Sink, Book.Lift(Speed, Sink), 4), stage.Rates(2, new(Speed)).Speed.Value, 1e-7);
        Assert.Equal(Math.Sqrt(Speed * Speed - Sink * Sink) - Wind.At(height + 2, 4), stage.GroundSpeed(2).Value, 1e-12);
        Assert.True(stage.End(2, new(Speed)).Value < 0);
        Assert.Equal(0, stage.EndRate(2, new(Speed), new(1)).Value);
        Assert.Equal(Book.Lift(Speed, Sink) / Book.Dynamic(Speed), stage.LiftCoefficient(4, Speed), 1e-12);
    }

    [Fact]
    public void HoldOff_InChangingWind_ObeysTheTextbook()
    {
        ConditionsPathStage stage = new(Forces, 1, 0, Sink, 2.5, 0.4);
        stage.Prepare(2, 4, Power);
        double sink = Sink * Math.Exp(-3 / 2.5), height = 0.4 + sink * 2.5, lift = Book.Lift(Speed, sink, sink / 2.5);
        Assert.Equal(sink, stage.Sink(4), 1e-12);
        Assert.Equal(height, stage.Height(4), 1e-12);
        Assert.Equal(Accelerates(Speed, height, sink, lift, 4), stage.Rates(2, new(Speed)).Speed.Value, 1e-7);
        Assert.Equal((lift / Book.Dynamic(Speed) / 1.7 - 1) * Speed * Speed, stage.End(2, new(Speed)).Value, 1e-9);
        Assert.Equal(0.1, stage.Share(new(-2.73), new(Speed)).Value, 1e-12);
        Assert.True(ScalarLane.Any(stage.Sound(2, new(sink + 0.01))) && ScalarLane.Any(stage.Sound(2, new(59.9))));
        Assert.False(ScalarLane.Any(stage.Sound(2, new(0.9 * sink))) || ScalarLane.Any(stage.Sound(2, new(60))));
    }

    [Fact]
    public void HoldOff_EndRate_IsHowFastTheEndGrows()
    {
        ConditionsPathStage stage = new(Forces, 1, 0, Sink, 2.5, 0.4);
        const double later = 1e-5, slow = 8;
        stage.Prepare(0, 1.2, Power);
        PathMotion<ScalarLane> rates = stage.Rates(0, new(slow));
        stage.Prepare(1, 1.2 - later, Power);
        stage.Prepare(2, 1.2 + later, Power);
        double before = stage.End(1, new(slow - later * rates.Speed.Value)).Value, after = stage.End(2, new(slow + later * rates.Speed.Value)).Value;
        Assert.Equal((after - before) / (2 * later), stage.EndRate(0, new(slow), rates).Value, 1e-4);
    }

    // A trial step may ask for a sink rate above the airspeed.
    [Fact]
    public void HoldOff_SinkAboveTheAirspeed_StaysANumber()
    {
        ConditionsPathStage stage = new(Forces, 1, 0, Sink, 2.5, 0.4);
        stage.Prepare(0, 1, Power);
        Assert.True(double.IsFinite(stage.Rates(0, new(1)).Speed.Value));
        Assert.Equal(-Wind.At(0.4 + Sink * 2.5 + 2, 1), stage.GroundSpeed(0).Value, 1e-12);
        Assert.Equal(Sink / 2.5, stage.Lift(1, 1), 1e-12);
        Assert.True(double.IsFinite(stage.EndRate(0, new(1), new(-1)).Value));
    }

    // V̇ = (T − D)/m − g sin γ + ẇ cos γ, V γ̇ = (L − W cos γ)/m − ẇ sin γ.
    [Fact]
    public void Settling_InChangingWind_ObeysTheTextbook()
    {
        const double angle = -0.05, height = 0.6;
        ConditionsSettlingStage stage = new(Forces, 0.08, 0.4);
        stage.Prepare(1, 4, Power);
        FreeMotion<ScalarLane> rates = stage.Rates(1, new(Speed, angle, height));
        double lift = Book.Dynamic(Speed) * 1.7, sink = -Speed * Math.Sin(angle);
        double wind = -0.25 * Wind.Mean(height + 2) / (height + 2) * sink + Wind.TimeRate(4);
        Assert.Equal(Accelerates(Speed, height, sink, lift, 4), rates.Speed.Value, 1e-7);
        Assert.Equal(((lift - Book.Weight * Math.Cos(angle)) / Input.Mass - wind * Math.Sin(angle)) / Speed, rates.Angle.Value, 1e-9);
        Assert.Equal(-sink, rates.Height.Value, 1e-12);
        Assert.Equal(Speed * Math.Cos(angle) - Wind.At(height + 2, 4), stage.GroundSpeed(1).Value, 1e-12);
        Assert.Equal((-height, sink), (stage.End(1, new(Speed, angle, height)).Value, stage.EndRate(1, default, rates).Value));
    }

    [Theory]
    [InlineData(0.01, 1.0, true), InlineData(59.9, 1.0, true), InlineData(0.0, 1.0, false), InlineData(60.0, 1.0, false)]
    [InlineData(27.0, 589.0, true), InlineData(27.0, 590.0, false)]
    public void Settling_Sound_KnowsWhereNothingIsKnown(double speed, double height, bool expected)
    {
        ConditionsSettlingStage stage = new(Forces, 0.08, 0.4);
        Assert.Equal(expected, ScalarLane.Any(stage.Sound(1, new(speed, 0, height))));
        // Without a profile there is no height beyond which the wind is not known.
        ConditionsSettlingStage still = new(new(Input, new(null, 2, 0, 0, 1), null, 60), 0.08, 0.4);
        Assert.Equal(expected || height >= 590, ScalarLane.Any(still.Sound(1, new(speed, 0, height))));
    }

    [Theory]
    [InlineData(-2.73, 0.0, 0.0, 0.1), InlineData(0.0, -0.016, 0.0, 0.2), InlineData(0.0, 0.016, -0.12, 0.3)]
    public void Settling_ShareOfAnError_IsTheLargestOfThree(double speed, double angle, double height, double expected) =>
        Assert.Equal(
            expected, new ConditionsSettlingStage(Forces, 0.08, 0.4).Share(new(speed, angle, height), new(Speed, 0, 0)).Value, 1e-12);

    [Theory]
    [InlineData(20.0, 0.5), InlineData(20.0, 3.0), InlineData(-9.0, 0.5)]
    public void Roll_InChangingWind_ObeysTheTextbook(double ground, double lift)
    {
        ConditionsRollStage stage = new(Forces, lift, 0.2, 0.02, 14);
        stage.Prepare(4, 4, Power);
        double airspeed = ground + Wind.At(2, 4);
        double thrust = 0.7 * 900 + 0.3 * (100 - 8 * airspeed);
        Assert.Equal(airspeed, stage.Airspeed(4, ground), 1e-12);
        Assert.Equal(Book.OnWheels(airspeed, thrust, lift, 0.2), stage.Rates(4, new(ground)).Speed.Value, 1e-12);
        Assert.Equal(ground, stage.GroundSpeed(4).Value);
        Assert.Equal(0.3 / (1 + Math.Abs(ground)), stage.Share(new(-0.3), new(ground)).Value, 1e-15);
        // It ends at an airspeed, towards which the wind moves it too.
        Assert.Equal(14 - airspeed, stage.End(4, new(ground)).Value, 1e-12);
        Assert.Equal(2.5 - Wind.TimeRate(4), stage.EndRate(4, new(ground), new(-2.5)).Value, 1e-12);
        Assert.Equal(ground > 0, ScalarLane.Any(stage.Sound(4, new(ground))));
    }

    [Fact]
    public void Roll_ToTheStop_EndsWithTheGroundSpeed()
    {
        ConditionsRollStage stage = new(Forces, 0.5, 0.2, 0.02, null);
        stage.Prepare(4, 4, Power);
        Assert.Equal(-7, stage.End(4, new(7)).Value);
        Assert.Equal(2.5, stage.EndRate(4, new(7), new(-2.5)).Value);
        Assert.True(ScalarLane.Any(stage.Sound(4, new(-1))));
        Assert.False(ScalarLane.Any(stage.Sound(4, new(60))));
    }

    [Fact]
    public void HasEnd_EveryStage_MayEndBeforeItsTime() =>
        Assert.True(ConditionsPathStage.HasEnd && ConditionsSettlingStage.HasEnd && ConditionsRollStage.HasEnd);

    private static double Accelerates(double speed, double height, double sink, double lift, double time)
    {
        double wing = height + Input.WingHeight, thrust = (1 - Share) * 900 + Share * (100 - 8 * speed);
        double wind = -0.25 * Wind.Mean(wing) / wing * sink + Wind.TimeRate(time);
        return Book.Acceleration(speed, wing, thrust, sink, lift) + wind * Math.Sqrt(1 - sink / speed * (sink / speed));
    }
}
