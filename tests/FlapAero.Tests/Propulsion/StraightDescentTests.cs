using FlapAero.Tests.Properties;
using UnitsNet;

namespace FlapAero.Tests.Propulsion;

public sealed class StraightDescentTests
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Configuration FlapsUp = DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp);
    private static readonly Airspeed Reference = FlapsUp.ReferenceSpeed(SeaLevel);
    private static readonly Length Final = Length.FromFeet(1000), Threshold = Length.FromFeet(50);

    // The same forces stepped by 0.15 m in another language, the propeller's table read along straight lines: 77.16 kt from 69.25;
    // and down a 3.5° path from 10 kt too fast, 71.74 kt.
    [Fact]
    public void StraightDescent_SteeperThanTheGlide_EndsFasterAsInAnotherIntegration() =>
        Assert.Equal(77.16, Down(Reference, 211, Final)[^1].Airspeed.True.Knots, 0.1);

    [Fact]
    public void StraightDescent_TooFastOnThePath_SlowsAsInAnotherIntegration() =>
        Assert.Equal(71.74, Down(Faster(10), 50 + 1000 * Math.Tan(3.5 * Math.PI / 180), Final, Reference)[^1].Airspeed.True.Knots, 0.1);

    [Fact]
    public void StraightDescent_ThrottleClosed_LosesTheEnergyThatDragTakes()
    {
        IReadOnlyList<DescentPoint> points = Down(Reference, 211, Final);
        double along = Math.Sqrt(Math.Pow(Final.Meters, 2) + Math.Pow(Length.FromFeet(161).Meters, 2)) / (points.Count - 1);
        Angle path = Angle.FromRadians(-Math.Atan(161 / 1000.0));
        double[] taken = [.. points.Select(p =>
            (FlapsUp.OnPath(p.Airspeed, path).Thrust.Newtons - FlapsUp.Weight.Newtons * Math.Sin(path.Radians) - FlapsUp.IdleThrust(p.Airspeed)!.Value.Newtons) / FlapsUp.Weight.Newtons)];

        // Simpson's rule over (D − T)/W.
        double lost = taken.Select((value, i) => value * (i == 0 || i == taken.Length - 1 ? 1 : i % 2 == 1 ? 4 : 2)).Sum() * along / 3;

        Assert.Equal(lost, (points[0].EnergyHeight - points[^1].EnergyHeight).Meters, 1e-6);
    }

    [Fact]
    public void StraightDescent_AtTheClosedThrottlesGlide_KeepsItsSpeed()
    {
        double glide = FlapsUp.GlideIdling(Reference)!.GlideAngle.Radians;

        Assert.All(
            Down(Reference, 50 + 3000 * Math.Tan(glide), Final * 3),
            point => Assert.Equal(Reference.True.Knots, point.Airspeed.True.Knots, 1e-6));
    }

    [Fact]
    public void StraightDescent_ShallowerThanTheGlide_HoldsTheSpeedOnAStraightLine()
    {
        IReadOnlyList<DescentPoint> points = Down(Reference, 111, Final);

        Assert.All(points, point => Assert.Equal(Reference.True.Knots, point.Airspeed.True.Knots, 1e-9));
        Assert.All(points, point => Assert.Equal(111 - 61 * point.Distance.Feet / 1000, point.Height.Feet, 1e-9));
        Assert.Equal(1000, points[^1].Distance.Feet, 1e-9);
    }

    [Fact]
    public void StraightDescent_LongWayTooFast_SlowsToTheSpeedHeldAndNoFurther()
    {
        double[] knots = [.. Down(Faster(10), 50 + 4000 * Math.Tan(3.5 * Math.PI / 180), Final * 4, Reference).Select(p => p.Airspeed.True.Knots)];

        Assert.True(knots[5] < knots[0] - 1);
        Assert.Equal(Reference.True.Knots, knots[^1], 1e-9);
        Assert.Equal(Reference.True.Knots, knots.Min(), 1e-9);
    }

    [Fact]
    public void StraightDescent_NoIdlingBalance_HasNoAnswer()
    {
        ClosedThrottleEngine stiff = new(Torque.FromNewtonMeters(2000), RotationalSpeed.FromRevolutionsPerMinute(300));

        Outcome<IReadOnlyList<DescentPoint>> descent = Trainer.With(InventedPropeller.Propeller, stiff)
            .StraightDescent(Airspeed.FromTrue(Speed.FromKnots(100), SeaLevel), Length.FromFeet(211), Threshold, Final);
        Assert.False(descent.Happened);
        Assert.Contains("begin slower", descent.Explanation, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40, 211, 1000, "airspeed: 40 kt CAS is refused; allowed is from the stall")]
    [InlineData(69, 40, 1000, "height at the beginning: 40 ft is refused")]
    [InlineData(69, 1000, 1000, "height at the beginning: 1000 ft is refused")]
    [InlineData(69, 50, 0, "distance: 0 ft is refused")]
    [InlineData(69, 5000, 10000, "It is the highest speed")]
    public void StraightDescent_ThatCannotBeFlown_IsRefused(double knots, double height, double distance, string words)
    {
        var refusal = Assert.Throws<RefusedInputException>(
            () => Down(Airspeed.FromCalibrated(Speed.FromKnots(knots), SeaLevel), height, Length.FromFeet(distance)));

        Assert.Contains(words, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void StraightDescent_SlowerThanTheSpeedToBeHeld_IsRefused() => Assert.Contains(
        "speed to be held",
        Assert.Throws<RefusedInputException>(() => Down(Reference, 211, Final, Faster(1))).Message, StringComparison.Ordinal);

    private static Airspeed Faster(double knots) => Airspeed.FromTrue(Reference.True + Speed.FromKnots(knots), SeaLevel);

    private static IReadOnlyList<DescentPoint> Down(Airspeed from, double feet, Length distance, Airspeed? held = null) =>
        FlapsUp.StraightDescent(from, Length.FromFeet(feet), Threshold, distance, held).Value;
}
