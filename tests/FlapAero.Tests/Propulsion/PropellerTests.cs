using UnitsNet;

namespace FlapAero.Tests.Propulsion;

public sealed class PropellerTests
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Aeroplane Trainer = DemoAeroplanes.TrainerH4;
    private static readonly Propeller Propeller = Trainer.Propeller;

    private static Airspeed At(double knots) => Airspeed.FromTrue(Speed.FromKnots(knots), SeaLevel);

    private static RotationalSpeed Rpm(double value) => RotationalSpeed.FromRevolutionsPerMinute(value);

    [Fact]
    public void Running_OneState_IsTheHandWorkedOne()
    {
        // J = 38.6/(20 x 1.93) = 1; C_T = -0.0165, C_P = 0.0005: T = -0.0165 x 1.225 x 400 x 13.875, P = 0.0005 x 1.225 x
        // 8000 x 26.778.
        PropellerState state = Propeller.Running(Airspeed.FromTrue(Speed.FromMetersPerSecond(38.6), SeaLevel), Rpm(1200));
        Assert.Equal(1, state.AdvanceRatio, 1e-12);
        Assert.Equal(-112.2, state.Thrust.Newtons, 0.05);
        Assert.Equal(131.2, (double)state.Power.Watts, 0.05);
        Assert.Equal(131.2 / (2 * Math.PI * 20), state.Torque.NewtonMeters, 1e-3);
        Assert.Null(state.Efficiency);
    }

    [Fact]
    public void Running_PullingState_HasTheEfficiencyOfItsPowers()
    {
        Airspeed airspeed = At(100);
        PropellerState state = Propeller.Running(airspeed, Rpm(2400));
        Assert.Equal(state.Thrust.Newtons * airspeed.True.MetersPerSecond / (double)state.Power.Watts, state.Efficiency!.Value, 1e-12);
        Assert.InRange(state.Efficiency.Value, 0.6, 0.85);
    }

    [Fact]
    public void AtRest_FullSpeed_IsTheFirstRow()
    {
        PropellerState state = Propeller.AtRest(SeaLevel, Rpm(2400));
        Assert.Equal(0.104 * 1.225 * 1600 * Math.Pow(1.93, 4), state.Thrust.Newtons, 0.1);
        Assert.Equal(0, state.Efficiency!.Value);
    }

    [Fact]
    public void EngineSpeedFor_MoreThanThereIs_HasNoAnswer() => Assert.Null(Propeller.EngineSpeedFor(At(70), Force.FromNewtons(6000)));

    [Fact]
    public void EngineSpeedFor_MoreBrakingThanTheTableHas_HasNoAnswer() => Assert.Null(Propeller.EngineSpeedFor(At(70), Force.FromNewtons(-2000)));

    [Fact]
    public void EngineSpeedFor_BrakingThatTwoSpeedsGive_IsTheHigher()
    {
        // Beyond its worst the propeller brakes less and less as it slows down: the table's C_T/J² turns.
        Propeller flat = new(
            Length.FromMeters(2),
            new PropellerTable([(0, 0.1, 0.05), (0.5, 0.06, 0.04), (0.9, -0.01, 0.005), (1, -0.05, -0.01), (1.2, -0.051, -0.02), (2, -0.052, -0.03)]),
            Rpm(2700));
        Force braking = flat.Running(At(70), Rpm(700)).Thrust;
        RotationalSpeed found = flat.EngineSpeedFor(At(70), braking)!.Value;
        Assert.True(found > Rpm(800));
        Assert.Equal(braking.Newtons, flat.Running(At(70), found).Thrust.Newtons, 1e-6);
    }

    [Fact]
    public void Idling_AtRest_PullsAndInFlightBrakes()
    {
        PropellerState rest = Propeller.IdlingAtRest(SeaLevel, Trainer.Engine)!;
        PropellerState approach = Propeller.Idling(At(65), Trainer.Engine)!;
        Assert.InRange(rest.EngineSpeed.RevolutionsPerMinute, 550, 700);
        Assert.InRange(rest.Thrust.Newtons, 100, 300);
        Assert.InRange(approach.EngineSpeed.RevolutionsPerMinute, 900, 1150);
        Assert.InRange(approach.Thrust.Newtons, -250, -80);
    }

    [Fact]
    public void Idling_AlmostAtRest_IsTheStateAtRest() => Assert.Equal(
        Propeller.IdlingAtRest(SeaLevel, Trainer.Engine)!.Thrust.Newtons,
        Propeller.Idling(At(0.1), Trainer.Engine)!.Thrust.Newtons,
        0.5);

    [Fact]
    public void Idling_BeyondTheTable_HasNoAnswer() =>
        Assert.Null(Propeller.Idling(At(150), new ClosedThrottleEngine(Torque.FromNewtonMeters(2000), Rpm(300))));

    [Fact]
    public void TorqueAt_FreeSpeed_IsZero() => Assert.Equal(0, Trainer.Engine.TorqueAt(Rpm(880)).NewtonMeters, 1e-9);

    public static TheoryData<string, Action, string> Refusals => new()
    {
        { "beyond", () => Propeller.Running(At(100), Rpm(600)), "advance ratio: 2.6" },
        { "too fast", () => Propeller.Running(At(100), Rpm(2701)), "engine speed: 2701" },
        { "standing", () => Propeller.AtRest(SeaLevel, Rpm(0)), "engine speed: 0" },
        { "few", () => _ = new PropellerTable([(0, 0.1, 0.1), (1, -0.1, -0.1)]), "at least five" },
        { "no start", () => Table((0.1, 0.1, 0.1)), "starts at 0" },
        { "ends early", () => Table((0, 0.1, 0.1), lastPower: 0.01), "power coefficient is positive at rest" },
        { "ends early", () => Table((0, 0.1, 0.1), lastThrust: 0.01), "thrust coefficient is positive at rest" },
        { "brakes at rest", () => Table((0, -0.1, 0.1)), "thrust coefficient" },
        { "no coefficient", () => Table((0, double.NaN, 0.1)), "thrust coefficient: NaN" },
        { "thrust", () => Propeller.EngineSpeedFor(At(70), Force.FromKilonewtons(2000)), "thrust: 2000" },
        { "torque", () => _ = new ClosedThrottleEngine(Torque.Zero, Rpm(800)), "torque at standstill: 0" },
    };

    [Theory, MemberData(nameof(Refusals))]
    public void Refusal_SaysWhat(string what, Action act, string words)
    {
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(act);
        Assert.True(refusal.Message.Contains(words, StringComparison.Ordinal), $"{what}: {refusal.Message}");
    }

    private static PropellerTable Table((double, double, double) first, double lastThrust = -0.1, double lastPower = -0.1) =>
        new([first, (0.2, 0.09, 0.09), (0.4, 0.07, 0.07), (0.8, 0.02, 0.03), (1.2, lastThrust, lastPower)]);
}
