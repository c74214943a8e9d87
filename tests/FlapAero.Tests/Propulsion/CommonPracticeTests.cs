using UnitsNet;

namespace FlapAero.Tests.Propulsion;

/// <summary>
/// Common practice, no source: the engine speeds that a trainer's instructors name. From abeam the touchdown point a
/// thousand feet of height are flown off over some 1.9 nautical miles of downwind, base and final: a path of about 5°.
/// </summary>
public sealed class CommonPracticeTests
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Aeroplane Trainer = DemoAeroplanes.TrainerH4;
    private static readonly Angle FromAbeam = Angle.FromDegrees(-5);

    private static double Rpm(Aeroplane aeroplane, int setting, double knots, Angle path) => aeroplane
        .Configure(aeroplane.FlapSettings[setting])
        .EngineSpeedOnPath(Airspeed.FromCalibrated(Speed.FromKnots(knots), SeaLevel), path)!.Value.RevolutionsPerMinute;

    [Fact]
    public void PowerFromAbeam_FirstStagesOfFlap_IsNearFifteenHundred()
    {
        Assert.InRange(Rpm(Trainer, 1, 80, FromAbeam), 1450, 1550);
        Assert.InRange(Rpm(Trainer, 2, 70, FromAbeam), 1450, 1550);
    }

    [Fact]
    public void PowerFromAbeam_WithoutFlaps_IsNearThirteenHundred() =>
        Assert.InRange(Rpm(Trainer, 0, 75, FromAbeam), 1250, 1350);

    [Fact]
    public void PowerFromAbeam_WithoutFlaps_IsAboutTwoHundredLower() =>
        Assert.InRange(Rpm(Trainer, 1, 80, FromAbeam) - Rpm(Trainer, 0, 75, FromAbeam), 150, 250);

    [Theory, InlineData(-3), InlineData(-4)]
    public void PowerOnFinal_WithoutFlaps_IsLower(double degrees)
    {
        Angle path = Angle.FromDegrees(degrees);
        Assert.True(Rpm(Trainer, 0, 70, path) < Rpm(Trainer, 3, 65, path));
        Assert.True(
            Rpm(DemoAeroplanes.TrainerL2, 0, 65, path) < Rpm(DemoAeroplanes.TrainerL2, 2, 60, path));
    }

    [Fact]
    public void Idling_OnTheApproach_SteepensTheGlide()
    {
        Configuration flapsUp = Trainer.Configure(Trainer.FlapsUp);
        Airspeed speed = Airspeed.FromCalibrated(Speed.FromKnots(70), SeaLevel);
        double steeper = (flapsUp.GlideIdling(speed)!.GlideAngle - flapsUp.Glide(speed).GlideAngle).Degrees;
        Assert.InRange(steeper, 0.3, 1.5);
    }

    [Fact]
    public void Idling_BothAeroplanes_PullsAtRestAndBrakesOnTheApproach()
    {
        foreach (Aeroplane aeroplane in DemoAeroplanes.All)
        {
            Airspeed approach = Airspeed.FromCalibrated(Speed.FromKnots(65), SeaLevel);
            Assert.True(aeroplane.Propeller.IdlingAtRest(SeaLevel, aeroplane.Engine)!.Thrust.Newtons > 50);
            Assert.True(aeroplane.Configure(aeroplane.FlapsUp).IdleThrust(approach)!.Value.Newtons < -50);
        }
    }
}
