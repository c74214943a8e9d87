using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests;

/// <summary>The thrust of an idling engine by airspeed.</summary>
public sealed class IdleThrustTests
{
    public static TheoryData<string> Settings => new(DemoAeroplanes.All.SelectMany(a => a.FlapSettings.Select(f => $"{a.Name}, {f.Name}")));

    // A fixed-pitch propeller's: 2 % of the weight at rest, brakes at approach speed, and the quadratic is off by little.
    [Theory, MemberData(nameof(Settings))]
    public void FromConfiguration_DemoAeroplanes_IsNearTheirPropellers(string setting)
    {
        string[] names = setting.Split(", ");
        Aeroplane aeroplane = DemoAeroplanes.All.Single(a => a.Name == names[0]);
        Configuration configuration = aeroplane.Configure(aeroplane.FlapSettings.Single(f => f.Name == names[1]));
        IdleThrust idle = IdleThrust.FromConfiguration(configuration, Air.StandardSeaLevel);
        double weight = configuration.Mass.Kilograms * StandardConstants.Gravity;
        Speed stall = configuration.StallSpeed(Air.StandardSeaLevel).True;
        Assert.InRange(idle.AtRest.Newtons / weight, 0.015, 0.022);
        Assert.InRange(idle.At(1.3 * stall).Newtons / weight, -0.02, -0.005);
        for (double share = 0.1; share < 1.45; share += 0.1)
        {
            double expected = configuration.IdleThrust(Airspeed.FromTrue(share * stall, Air.StandardSeaLevel))!.Value.Newtons;
            Assert.Equal(expected, idle.At(share * stall).Newtons, 1e-3 * weight);
        }
    }

    // Through 300, 100 and −100 N at 0, 20 and 40 m/s goes a straight line.
    [Fact]
    public void Near_ThreeRows_GoesThroughThem()
    {
        IdleThrust line = IdleThrust.Near([Row(0, 300), Row(20, 100), Row(40, -100)]);
        Assert.Equal((300, -10, 0), (Math.Round(line.AtRest.Newtons, 9), Math.Round(line.Slope, 9), Math.Round(line.Curvature, 9)));
        Assert.Equal(0, line.At(Speed.FromMetersPerSecond(30)).Newtons, 1e-9);
    }

    [Fact]
    public void Near_RowsWithoutSense_AreRefused()
    {
        Assert.Throws<RefusedInputException>(() => IdleThrust.Near([Row(0, 1), Row(10, 0), Row(10, 3)]));
        Assert.Throws<RefusedInputException>(() => IdleThrust.Near([Row(0, 1), Row(-10, 0), Row(10, 3)]));
        Assert.Throws<RefusedInputException>(() => IdleThrust.Near([Row(0, 1), Row(5, 2e6), Row(10, 3)]));
    }

    [Fact]
    public void Constant_AnyAirspeed_IsTheSameForce()
    {
        IdleThrust constant = Force.FromNewtons(-50);
        Assert.Equal(-50, constant.At(Speed.FromKnots(80)).Newtons);
        Assert.Equal(0, IdleThrust.None.At(Speed.FromKnots(80)).Newtons);
    }

    private static (Speed, Force) Row(double airspeed, double thrust) => (Speed.FromMetersPerSecond(airspeed), Force.FromNewtons(thrust));
}
