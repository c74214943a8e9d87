using CsCheck;
using FlapAero.Tests.Properties;
using FlapAero.Tests.Wings;
using UnitsNet;

namespace FlapAero.Tests.Propulsion;

public sealed class PropellerProperties
{
    private const int Many = 2000;
    private static readonly Aeroplane Trainer = DemoAeroplanes.TrainerH4;

    /// <summary>Propellers of any pitch, diameter and load in the shape of the demo's, and the air.</summary>
    private static readonly Gen<(Propeller Propeller, ClosedThrottleEngine Engine, Air Air)> Any = Gen.Select(
        Gen.Double[0.5, 1.3], Gen.Double[0.5, 1.5], Gen.Double[1.4, 2.2], Gen.Double[40, 200], Gen.Double[700, 1100], Generators.Airs,
        (pitch, load, diameter, torque, free, air) => (
            new Propeller(
                Length.FromMeters(diameter),
                new PropellerTable(Trainer.Propeller.Table.Rows.Select(
                    row => (row.AdvanceRatio * pitch, row.ThrustCoefficient * load, row.PowerCoefficient * load))),
                RotationalSpeed.FromRevolutionsPerMinute(2700)),
            new ClosedThrottleEngine(Torque.FromNewtonMeters(torque), RotationalSpeed.FromRevolutionsPerMinute(free)),
            air));

    private static readonly Gen<(Propeller Propeller, ClosedThrottleEngine Engine, Airspeed Airspeed, RotationalSpeed Speed)> Running =
        Gen.Select(Any, Gen.Double[5, 60], Gen.Double[0.001, 1], (any, speed, share) =>
        {
            // From the speed at which the propeller brakes hardest but once, well inside the table, to the engine's highest.
            double slowest = speed / (any.Propeller.Table.LargestAdvanceRatio * 0.9 * any.Propeller.Diameter.Meters) * 60;
            double fastest = any.Propeller.MaximumSpeed.RevolutionsPerMinute;
            return (any.Propeller, any.Engine, Airspeed.FromTrue(Speed.FromMetersPerSecond(speed), any.Air),
                RotationalSpeed.FromRevolutionsPerMinute(Math.Min(slowest + share * Math.Max(0, fastest - slowest), fastest)));
        }).Where(state => state.Item3.True.MetersPerSecond
            < state.Item1.Table.LargestAdvanceRatio * 0.9 * state.Item1.Diameter.Meters * state.Item4.RevolutionsPerSecond * 1.0001);

    [Fact]
    public void EngineSpeedFor_ThrustOfAnEngineSpeed_GivesThatThrustAndIsNoSlower() =>
        Running.Sample(
            state =>
            {
                Force thrust = state.Propeller.Running(state.Airspeed, state.Speed).Thrust;
                RotationalSpeed found = Assert.NotNull(state.Propeller.EngineSpeedFor(state.Airspeed, thrust));
                Assert.True(found.RevolutionsPerMinute >= state.Speed.RevolutionsPerMinute * (1 - 1e-9));
                double scale = state.Propeller.AtRest(state.Airspeed.Air, state.Speed).Thrust.Newtons;
                Assert.Equal(0, (state.Propeller.Running(state.Airspeed, found).Thrust - thrust).Newtons / scale, 1e-9);
                // Where the propeller pulls there is only one.
                if (thrust.Newtons > 0) Close.To(state.Speed.RevolutionsPerMinute, found.RevolutionsPerMinute, 1e-8);
            },
            iter: Many);

    [Fact]
    public void Running_Faster_PullsMoreWherePulling() =>
        Running.Sample(
            state =>
            {
                double slower = state.Propeller.Running(state.Airspeed, state.Speed).Thrust.Newtons;
                double faster = Math.Min(state.Speed.RevolutionsPerMinute * 1.01, state.Propeller.MaximumSpeed.RevolutionsPerMinute);
                if (slower > 0)
                    Assert.True(state.Propeller.Running(state.Airspeed, RotationalSpeed.FromRevolutionsPerMinute(faster)).Thrust.Newtons >= slower);
            },
            iter: Many);

    [Fact]
    public void Running_Windmilling_GivesLessThanItTakesFromTheAir() =>
        Running.Sample(
            state =>
            {
                PropellerState running = state.Propeller.Running(state.Airspeed, state.Speed);
                if (running.Power.Watts < 0)
                    Assert.True(-(double)running.Power.Watts < -running.Thrust.Newtons * state.Airspeed.True.MetersPerSecond);
            },
            iter: Many);

    [Fact]
    public void Idling_WhereThereIsAnAnswer_BalancesTheTorques() =>
        Running.Sample(
            state =>
            {
                if (state.Propeller.Idling(state.Airspeed, state.Engine) is not { } idle) return;
                double engine = state.Engine.TorqueAt(idle.EngineSpeed).NewtonMeters;
                Assert.Equal(engine, idle.Torque.NewtonMeters, 1e-6);
            },
            iter: Many);

    [Fact]
    public void Idling_FasterFlight_TurnsFasterAndPullsLess() =>
        Gen.Select(Any, Gen.Double[3, 40], Gen.Double[1.02, 1.3]).Sample(
            (any, speed, more) =>
            {
                PropellerState? Idle(double metersPerSecond) =>
                    any.Propeller.Idling(Airspeed.FromTrue(Speed.FromMetersPerSecond(metersPerSecond), any.Air), any.Engine);
                if (Idle(speed) is not { } slow || Idle(speed * more) is not { } fast) return;
                Assert.True(fast.EngineSpeed > slow.EngineSpeed);
                Assert.True(fast.Thrust < slow.Thrust);
            },
            iter: Many);

    [Fact]
    public void Table_BetweenRows_StaysBetweenThem() =>
        Gen.Select(Any, Gen.Int[0, 13], Gen.Double[0, 1]).Sample(
            (any, row, share) =>
            {
                PropellerTable table = any.Propeller.Table;
                var (low, high) = (table.Rows[row], table.Rows[row + 1]);
                double ratio = low.AdvanceRatio + share * (high.AdvanceRatio - low.AdvanceRatio);
                Assert.InRange(table.ThrustCoefficient(ratio), high.ThrustCoefficient - 1e-12, low.ThrustCoefficient + 1e-12);
                Assert.InRange(table.PowerCoefficient(ratio), high.PowerCoefficient - 1e-12, low.PowerCoefficient + 1e-12);
            },
            iter: Many);

    [Fact]
    public void Propeller_AnyNumbers_AnswersFinitelyOrRefuses()
    {
        const int Samples = 10000;
        int answered = FiniteOrRefused.Sample(
            Numbers.Any.Array[6], Samples,
            x =>
            {
                double Scaled(int i, double low, double high) => x[i] is >= 0 and <= 1 ? low + x[i] * (high - low) : x[i];
                PropellerTable table = new(Trainer.Propeller.Table.Rows.Select(
                    row => (row.AdvanceRatio * Scaled(0, 0.5, 2), row.ThrustCoefficient, row.PowerCoefficient)));
                Propeller propeller = new(Length.FromMeters(Scaled(1, 1, 3)), table, RotationalSpeed.FromRevolutionsPerMinute(2700));
                Airspeed airspeed = Airspeed.FromTrue(Speed.FromKnots(Scaled(2, 1, 120)), Air.StandardSeaLevel);
                ClosedThrottleEngine engine = new(
                    Torque.FromNewtonMeters(Scaled(3, 10, 500)), RotationalSpeed.FromRevolutionsPerMinute(Scaled(4, 500, 1200)));
                PropellerState? idle = propeller.Idling(airspeed, engine);
                PropellerState running = propeller.Running(airspeed, RotationalSpeed.FromRevolutionsPerMinute(Scaled(5, 600, 2700)));
                return
                [
                    idle?.Thrust.Newtons ?? 0, idle?.EngineSpeed.RevolutionsPerMinute ?? 0,
                    running.Thrust.Newtons, (double)running.Power.Watts, running.Efficiency ?? 0,
                    propeller.EngineSpeedFor(airspeed, Force.FromNewtons(x[5] * 1000))?.RevolutionsPerMinute ?? 0,
                ];
            });
        Assert.True(answered > Samples / 10, $"Only {answered} of {Samples} were answered.");
    }
}
