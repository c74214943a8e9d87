using CsCheck;
using FlapAero.Tests.Properties;
using UnitsNet;

namespace FlapAero.Tests.Propulsion;

/// <summary>Engine speeds on a path, and the glide with the throttle closed.</summary>
public sealed class EngineSpeedTests
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Aeroplane H4 = DemoAeroplanes.TrainerH4;
    private static readonly Configuration FlapsUp = H4.Configure(H4.FlapsUp);
    private static readonly Angle Final = Angle.FromDegrees(-3);

    /// <summary>A demo aeroplane in any setting and mass, in low air, from its stall to its highest speed.</summary>
    private static readonly Gen<(Configuration Configuration, Airspeed Airspeed)> Flying =
        from aeroplane in Gen.Int[0, 1].Select(which => DemoAeroplanes.All[which])
        from setting in Gen.Int[0, aeroplane.FlapSettings.Count - 1]
        from load in Gen.Double[0, 1]
        from air in Gen.Double[0, 2000].Select(metres => Air.Standard(Length.FromMeters(metres)))
        from share in Gen.Double[0.001, 0.999]
        let configuration = aeroplane.Configure(
            aeroplane.FlapSettings[setting], aeroplane.MinimumMass + load * (aeroplane.MaximumMass - aeroplane.MinimumMass))
        let slowest = configuration.StallSpeed(air).True
        select (configuration, Airspeed.FromTrue(slowest + share * (configuration.MaximumSpeed(air).True - slowest), air));

    private static Airspeed At(double knots) => Airspeed.FromCalibrated(Speed.FromKnots(knots), SeaLevel);

    private static double? Rpm(Configuration configuration, Airspeed airspeed, Angle path) =>
        configuration.EngineSpeedOnPath(airspeed, path)?.RevolutionsPerMinute;

    [Fact]
    public void EngineSpeedOnPath_BackOfTheCurve_FallsThenRisesWithSpeed()
    {
        foreach (Aeroplane aeroplane in DemoAeroplanes.All)
        {
            Configuration flapsUp = aeroplane.Configure(aeroplane.FlapsUp);
            double stall = flapsUp.StallSpeed(SeaLevel).Calibrated.Knots;
            double minimumDrag = flapsUp.MinimumDragSpeed(SeaLevel)!.Calibrated.Knots;
            double[] knots = [.. Enumerable.Range(0, 250).Select(step => stall + 0.05 + step * 0.25)];
            double[] thrust = [.. knots.Select(speed => flapsUp.OnPath(At(speed), Final).Thrust.Newtons)];
            double[] rpm = [.. knots.Select(speed => Rpm(flapsUp, At(speed), Final)!.Value)];
            (int leastThrust, int lowest) = (Array.IndexOf(thrust, thrust.Min()), Array.IndexOf(rpm, rpm.Min()));

            Assert.InRange(knots[leastThrust], minimumDrag - 1, minimumDrag + 1);
            // At one engine speed a fixed pitch pulls harder the slower it flies, which steadies the speed: the engine turns
            // slowest well below the speed of least thrust, and there is little left of the back of the curve.
            Assert.InRange(knots[lowest], stall + 1, minimumDrag - 10);
            Assert.True(Turns(rpm[..(lowest + 1)], -1), "falls to its lowest");
            Assert.True(Turns(rpm[lowest..], 1), "rises from it");
            Assert.InRange(rpm.Min(), 1350, 1450);
            Assert.InRange(rpm[0] - rpm.Min(), 2, 50);
            Assert.InRange(rpm[leastThrust] - rpm.Min(), 100, 200);
        }
    }

    [Fact]
    public void EngineSpeedOnPath_WantedPath_IsFlownAtThatEngineSpeed() =>
        Gen.Select(Flying, Gen.Double[-8, 3]).Sample(
            (flying, degrees) =>
            {
                Angle path = Angle.FromDegrees(degrees);
                if (flying.Configuration.EngineSpeedOnPath(flying.Airspeed, path) is not { } speed) return;
                Force thrust = flying.Configuration.Aeroplane.Propeller.Running(flying.Airspeed, speed).Thrust;
                Assert.Equal(degrees, flying.Configuration.Glide(flying.Airspeed, thrust).PathAngle.Degrees, 1e-7);
            },
            iter: Generators.Many);

    [Fact]
    public void EngineSpeedOnPath_IdlingGlide_IsTheIdlingSpeedAndNothingSteeper() =>
        Flying.Sample(
            flying =>
            {
                Aeroplane aeroplane = flying.Configuration.Aeroplane;
                SteadyFlight glide = flying.Configuration.GlideIdling(flying.Airspeed)!;
                double idle = aeroplane.Propeller.Idling(flying.Airspeed, aeroplane.Engine)!.EngineSpeed.RevolutionsPerMinute;
                if (glide.GlideAngle.Degrees > 29) return;
                Close.To(idle, Rpm(flying.Configuration, flying.Airspeed, glide.PathAngle)!.Value, 1e-6);
                Assert.Null(Rpm(flying.Configuration, flying.Airspeed, glide.PathAngle - Angle.FromDegrees(0.1)));
                Assert.True(Rpm(flying.Configuration, flying.Airspeed, glide.PathAngle + Angle.FromDegrees(0.1)) > idle);
            },
            iter: Generators.Many);

    [Fact]
    public void EngineSpeedOnPath_Steeper_IsLower() =>
        Gen.Select(Flying, Gen.Double[-8, 3], Gen.Double[0.1, 5]).Sample(
            (flying, degrees, more) =>
            {
                double? flatter = Rpm(flying.Configuration, flying.Airspeed, Angle.FromDegrees(degrees));
                double? steeper = Rpm(flying.Configuration, flying.Airspeed, Angle.FromDegrees(degrees - more));
                if (flatter is not null && steeper is not null) Assert.True(steeper < flatter);
            },
            iter: Generators.Many);

    [Fact]
    public void EngineSpeedOnPath_SteeperClimbThanThePropellerPulls_HasNoAnswer() =>
        Assert.Null(FlapsUp.EngineSpeedOnPath(At(70), Angle.FromDegrees(25)));

    [Fact]
    public void EngineSpeedOnPathOverGround_NoWind_IsThatThroughTheAir() => Close.To(
        Rpm(FlapsUp, At(70), Final)!.Value,
        FlapsUp.EngineSpeedOnPathOverGround(At(70), -Final, Speed.Zero)!.Value.RevolutionsPerMinute, 1e-9);

    [Fact]
    public void EngineSpeedOnPathOverGround_Headwind_NeedsMore()
    {
        double OverGround(double headwind) =>
            FlapsUp.EngineSpeedOnPathOverGround(At(70), -Final, Speed.FromKnots(headwind))!.Value.RevolutionsPerMinute;
        Assert.True(OverGround(15) > OverGround(0));
        Assert.True(OverGround(0) > OverGround(-10));
    }

    [Fact]
    public void EngineSpeedOnPath_HigherAir_TurnsFasterAtTheSameCalibratedSpeed()
    {
        Airspeed high = Airspeed.FromCalibrated(Speed.FromKnots(70), Air.Standard(Length.FromFeet(5000)));
        Assert.True(Rpm(FlapsUp, high, Final) > Rpm(FlapsUp, At(70), Final));
    }

    [Fact]
    public void GlideIdling_OnTheApproach_IsSteeperThanWithoutThrust()
    {
        foreach (Aeroplane aeroplane in DemoAeroplanes.All)
            foreach (FlapSetting setting in aeroplane.FlapSettings)
            {
                Configuration configuration = aeroplane.Configure(setting);
                Airspeed approach = configuration.ReferenceSpeed(SeaLevel, 1.3);
                SteadyFlight idling = configuration.GlideIdling(approach)!;
                Assert.Equal(configuration.IdleThrust(approach)!.Value.Newtons, idling.Thrust.Newtons);
                Assert.InRange((idling.GlideAngle - configuration.Glide(approach).GlideAngle).Degrees, 0.1, 2);
            }
    }

    [Fact]
    public void IdleThrust_TooFastForTheFlaps_IsRefused() =>
        Assert.Throws<RefusedInputException>(() => H4.Configure(H4.FullFlaps).IdleThrust(At(90)));

    [Fact]
    public void GlideIdling_BalanceBeyondTheTable_HasNoAnswer()
    {
        ClosedThrottleEngine stiff = new(Torque.FromNewtonMeters(2000), RotationalSpeed.FromRevolutionsPerMinute(300));
        Configuration configuration = Trainer.With(InventedPropeller.Propeller, stiff);
        Assert.Null(configuration.IdleThrust(At(100)));
        Assert.Null(configuration.GlideIdling(At(100)));
        Assert.NotNull(configuration.EngineSpeedOnPath(At(100), Angle.Zero));
    }

    [Fact]
    public void Aeroplane_EngineThatIdlesFasterThanItMay_IsRefused()
    {
        ClosedThrottleEngine racing = new(Torque.FromNewtonMeters(100), RotationalSpeed.FromRevolutionsPerMinute(2700));
        RefusedInputException refusal =
            Assert.Throws<RefusedInputException>(() => Trainer.With(InventedPropeller.Propeller, racing));
        Assert.Contains(
            "idle speed without a propeller: 2700 rpm is refused; allowed is less than the highest engine speed, 2700 rpm.",
            refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Table_MoreThanItTakes_IsRefused() => Assert.Contains(
        "no propeller gives more power than it takes",
        Assert.Throws<RefusedInputException>(() => _ = new PropellerTable(
            InventedPropeller.Propeller.Table.Rows.Select(row => (row.AdvanceRatio, row.ThrustCoefficient * 2, row.PowerCoefficient)))).Message,
        StringComparison.Ordinal);

    private static bool Turns(double[] values, int sign) =>
        values.Zip(values.Skip(1)).All(pair => Math.Sign(pair.Second - pair.First) == sign);
}
