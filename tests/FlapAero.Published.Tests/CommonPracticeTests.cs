using UnitsNet;

namespace FlapAero.Published.Tests;

/// <summary>
/// Common practice, no source: what the trade takes as usual for a four-seat trainer with a fixed-pitch propeller, in
/// sign and in size, on the invented trainer at its maximum mass, at standard sea level and in still air.
/// </summary>
public sealed class CommonPracticeTests
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Angle UsualPath = Angle.FromDegrees(-3);
    private static readonly Configuration FlapsUp = DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp);
    private static readonly Configuration FullFlaps = DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FullFlaps);

    private static Airspeed Reference(Configuration configuration) => configuration.ReferenceSpeed(SeaLevel);

    [Fact]
    public void ReferenceSpeed_WithoutFlaps_IsALittleHigher()
    {
        double more = Reference(FlapsUp).Calibrated.Knots - Reference(FullFlaps).Calibrated.Knots;
        Assert.InRange(more, 5, 15);
    }

    [Fact]
    public void ReferenceSpeed_WithoutFlaps_IsAboutSeventyKnots() =>
        Assert.InRange(Reference(FlapsUp).Calibrated.Knots, 67, 73);

    [Fact]
    public void Additive_GustyDay_IsHalfTheGustFactor() =>
        Assert.Equal(5, Gust.Additive(Speed.FromKnots(10)).Knots, 1e-12);

    [Fact]
    public void GlideAtReferenceSpeed_WithoutFlaps_IsShallower()
    {
        double without = FlapsUp.Glide(Reference(FlapsUp)).GlideAngle.Degrees;
        double with = FullFlaps.Glide(Reference(FullFlaps)).GlideAngle.Degrees;
        Assert.InRange(with - without, 2, 5);
        Assert.InRange(without, 4, 6);
    }

    [Fact]
    public void GlideAtEqualSpeed_WithoutFlaps_IsShallower()
    {
        Airspeed speed = Airspeed.FromCalibrated(Speed.FromKnots(70), SeaLevel);
        Assert.True(FlapsUp.Glide(speed).GlideAngle < FullFlaps.Glide(speed).GlideAngle);
    }

    [Fact]
    public void AttitudeOnFinal_WithoutFlaps_IsNoseHigher()
    {
        double without = FlapsUp.OnPath(Reference(FlapsUp), UsualPath).PitchAttitude.Degrees;
        double with = FullFlaps.OnPath(Reference(FullFlaps), UsualPath).PitchAttitude.Degrees;
        Assert.InRange(without - with, 2, 6);
        Assert.True(without > 0 && with < 0, "Nose above the level line without flaps, below it with them.");
    }

    // With power to idle, and at one speed for both flap settings, the flapless attitude is nearer to level. Each at its
    // own reference speed on a 3° path it is not: the slower full-flap approach carries its nose less than a degree down.
    [Fact]
    public void AttitudeInTheGlide_WithoutFlaps_IsCloserToLevel()
    {
        double without = FlapsUp.Glide(Reference(FlapsUp)).PitchAttitude.Degrees;
        double with = FullFlaps.Glide(Reference(FullFlaps)).PitchAttitude.Degrees;
        Assert.InRange(Math.Abs(without), 0, 2);
        Assert.InRange(with, -8, -4);
    }

    [Fact]
    public void AttitudeOnFinalAtEqualSpeed_WithoutFlaps_IsCloserToLevel()
    {
        Airspeed speed = Airspeed.FromCalibrated(Speed.FromKnots(70), SeaLevel);
        double without = FlapsUp.OnPath(speed, UsualPath).PitchAttitude.Degrees;
        double with = FullFlaps.OnPath(speed, UsualPath).PitchAttitude.Degrees;
        Assert.True(Math.Abs(without) < Math.Abs(with));
    }

    [Fact]
    public void AttitudeOnFinalAtOwnReferenceSpeed_WithoutFlaps_IsFurtherFromLevel()
    {
        double without = FlapsUp.OnPath(Reference(FlapsUp), UsualPath).PitchAttitude.Degrees;
        double with = FullFlaps.OnPath(Reference(FullFlaps), UsualPath).PitchAttitude.Degrees;
        Assert.InRange(without, 2, 4);
        Assert.InRange(with, -2, 0);
    }

    [Fact]
    public void ThrustOnFinal_WithoutFlaps_IsLess()
    {
        double without = FlapsUp.OnPath(Reference(FlapsUp), UsualPath).Thrust.Newtons;
        double with = FullFlaps.OnPath(Reference(FullFlaps), UsualPath).Thrust.Newtons;
        Assert.InRange(without / with, 0.2, 0.8);
    }
}
