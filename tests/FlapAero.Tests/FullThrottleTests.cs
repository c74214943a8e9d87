using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests;

/// <summary>Full throttle, what it climbs, and what a go-around costs.</summary>
public sealed class FullThrottleTests
{
    private static readonly Aeroplane H4 = DemoAeroplanes.TrainerH4;
    private static readonly Air SeaLevel = Air.StandardSeaLevel;

    public static TheoryData<string> Names => [.. DemoAeroplanes.All.Select(aeroplane => aeroplane.Name)];

    // 450 N·m at 2 700 rpm are 127 kW; at 8 000 ft σ = 0.7860, and (0.7860 − 0.12)/0.88 = 0.7568 is left.
    [Fact]
    public void TorqueIn_ThinnerAir_FallsAsTheFormulaSays()
    {
        FullThrottleEngine engine = new(Torque.FromNewtonMeters(450));
        Assert.Equal(450, engine.TorqueIn(SeaLevel).NewtonMeters, 1e-9);
        Assert.Equal(450 * 0.7568, engine.TorqueIn(Air.Standard(Length.FromFeet(8000))).NewtonMeters, 0.1);
        Assert.Throws<RefusedInputException>(() => new FullThrottleEngine(Torque.FromNewtonMeters(19)));
    }

    // What the propeller takes is what the engine gives, unless it may not turn faster.
    [Theory, MemberData(nameof(Names))]
    public void AtFullThrottle_DemoAeroplanes_BalanceTheirTorque(string name)
    {
        Aeroplane aeroplane = DemoAeroplanes.All.Single(a => a.Name == name);
        PropellerState rest = aeroplane.Propeller.FullThrottleAtRest(SeaLevel, aeroplane.FullThrottle!);
        Assert.Equal(aeroplane.FullThrottle!.TorqueAtSeaLevel.NewtonMeters, rest.Torque.NewtonMeters, 1e-6);
        Assert.InRange(rest.EngineSpeed.RevolutionsPerMinute, 2100, 2500);
        // A trainer of 110 to 180 hp gives most of that at rest, and not more than it has.
        Assert.InRange(rest.Power.MechanicalHorsepower, name == "Trainer H4" ? 130 : 85, name == "Trainer H4" ? 170 : 115);
        PropellerState fast = aeroplane.Propeller.AtFullThrottle(Airspeed.FromTrue(Speed.FromKnots(140), SeaLevel), aeroplane.FullThrottle!);
        Assert.Equal(aeroplane.Propeller.MaximumSpeed.RevolutionsPerMinute, fast.EngineSpeed.RevolutionsPerMinute, 1e-6);
        Assert.True(fast.Torque < aeroplane.FullThrottle!.TorqueAtSeaLevel);
    }

    // sin γ = (T − D)/W by hand, and a climb that an instructor of such a trainer recognises.
    [Theory, MemberData(nameof(Names))]
    public void ClimbAtFullThrottle_DemoAeroplanes_IsATrainersClimb(string name)
    {
        Aeroplane aeroplane = DemoAeroplanes.All.Single(a => a.Name == name);
        Configuration up = aeroplane.Configure(aeroplane.FlapsUp), full = aeroplane.Configure(aeroplane.FullFlaps);
        Airspeed airspeed = up.ReferenceSpeed(SeaLevel, 1.4);
        SteadyFlight climb = up.ClimbAtFullThrottle(airspeed)!;
        double drag = climb.DragCoefficient * AirspeedLaws.DynamicPressure(1.225, airspeed.True.MetersPerSecond) * aeroplane.Wing.Area.SquareMeters;
        Assert.Equal(
            (aeroplane.Propeller.AtFullThrottle(airspeed, aeroplane.FullThrottle!).Thrust.Newtons - drag) / (up.Mass.Kilograms * StandardConstants.Gravity),
            Math.Sin(climb.PathAngle.Radians), 1e-7);
        Assert.InRange(-climb.SinkRate.FeetPerMinute, 550, 900);
        Speed flapped = -full.ClimbAtFullThrottle(full.ReferenceSpeed(SeaLevel))!.SinkRate;
        Assert.InRange(flapped.FeetPerMinute, 0, 0.6 * -climb.SinkRate.FeetPerMinute);
        // From full to up each step climbs better.
        IReadOnlyList<SteadyFlight> steps = GoAround.Steps(aeroplane, aeroplane.MaximumMass, SeaLevel);
        Assert.Equal(aeroplane.FlapSettings.Count, steps.Count);
        Assert.All(steps.Zip(steps.Skip(1)), pair => Assert.True(pair.Second.SinkRate < pair.First.SinkRate));
    }

    [Fact]
    public void Ceiling_FlapsUpAndFull_IsWhereTheClimbEnds()
    {
        foreach (FlapSetting setting in H4.FlapSettings)
        {
            Configuration configuration = H4.Configure(setting);
            double feet = GoAround.Ceiling(configuration)!.Value.Feet;
            double Climb(double at) => -configuration.ClimbAtFullThrottle(configuration.ReferenceSpeed(Air.Standard(Length.FromFeet(at))))!.SinkRate.FeetPerMinute;
            Assert.InRange(feet, 1000, 17_000);
            Assert.InRange(Climb(feet), 0, 0.2);
            Assert.True(Climb(feet + 50) < 0);
        }

        Assert.True(GoAround.Ceiling(H4.Configure(H4.FlapsUp)) > GoAround.Ceiling(H4.Configure(H4.FullFlaps)));
    }

    // s t for 2 s, then s²/2(n − 1)g until level, then up.
    [Fact]
    public void GoAround_FromFinal_LosesAndGainsByHand()
    {
        Configuration up = H4.Configure(H4.FlapsUp);
        SteadyFlight final = up.OnPath(up.ReferenceSpeed(SeaLevel), Angle.FromDegrees(-3.5));
        GoAround goAround = GoAround.From(final).Value;
        double sink = final.SinkRate.MetersPerSecond, pull = 0.1 * StandardConstants.Gravity, climb = goAround.RateOfClimb.MetersPerSecond;
        Assert.Equal(2 * sink + sink * sink / (2 * pull), goAround.HeightLost!.Value.Meters, 1e-9);
        Assert.Equal(-2 * sink, goAround.HeightAfter(Duration.FromSeconds(2)).Meters, 1e-9);
        double pulling = (sink + climb) / pull, level = -2 * sink - sink * pulling + 0.5 * pull * pulling * pulling;
        Assert.Equal(level + 10 * climb, goAround.HeightAfter(Duration.FromSeconds(12 + pulling)).Meters, 1e-9);
        Assert.Equal(0, goAround.HeightAfter(Duration.Zero).Meters);
    }

    // Where full throttle only slows the descent there is no lowest point, and no go-around.
    [Fact]
    public void GoAround_AboveItsCeiling_HasNoLowestPoint()
    {
        Configuration full = H4.Configure(H4.FullFlaps);
        Air high = Air.Standard(GoAround.Ceiling(full)!.Value + Length.FromFeet(3000));
        GoAround goAround = GoAround.From(full.OnPath(full.ReferenceSpeed(high), Angle.FromDegrees(-3.5))).Value;
        Assert.Null(goAround.HeightLost);
        Assert.True(goAround.RateOfClimb < Speed.Zero);
        Assert.True(goAround.HeightAfter(Duration.FromSeconds(60)) < goAround.HeightAfter(Duration.FromSeconds(30)));
    }

    [Fact]
    public void GoAround_FileWithoutFullThrottle_HasNoAnswer()
    {
        Aeroplane without = new(
            "Silent", "says nothing", H4.Wing, H4.MinimumMass, H4.MaximumMass, H4.Propeller, H4.Engine, H4.FlapSettings);
        Configuration up = without.Configure(without.FlapsUp);
        Assert.Null(up.ClimbAtFullThrottle(up.ReferenceSpeed(SeaLevel)));
        Assert.Contains("full throttle", GoAround.From(up.OnPath(up.ReferenceSpeed(SeaLevel), Angle.FromDegrees(-3.5))).Explanation, StringComparison.Ordinal);
        Assert.Null(GoAround.Ceiling(up));
        Assert.Empty(GoAround.Steps(without, without.MaximumMass, SeaLevel));
    }
}
