using CsCheck;
using FlapAero.Equations;

namespace FlapAero.Tests;

public sealed class IntegratorTests
{
    [Fact]
    public void Step_HalvedAgain_IsOfOrderEight()
    {
        // V̇ = −V cos t: V = exp(−sin t).
        double[] errors = [.. new[] { 4, 8, 16 }.Select(steps => Math.Abs(March(steps) - Math.Exp(-Math.Sin(3))))];
        for (int i = 1; i < errors.Length; i++)
            Assert.InRange(Math.Log2(errors[i - 1] / errors[i]), 7.3, 10);
    }

    [Fact]
    public void Roll_ConstantThrust_AgreesWithTheClosedForm() =>
        Gen.Select(Gen.Double[-0.004, 0.004], Gen.Double[0.5, 4], Gen.Double[15, 40], Gen.Double[0.05, 0.95]).Sample((squared, constant, from, share) =>
        {
            double to = share * from;
            if (constant + squared * from * from < 0.2 || Math.Abs(squared) < 1e-9)
                return;
            (double time, double distance) = Midpoint(constant, squared, from, to);
            Assert.Equal(time, new RollLaw(constant, 0, squared).Time(from, to), 1e-5 * time);
            Assert.Equal(distance, new RollLaw(constant, 0, squared).Distance(from, to), 1e-5 * distance);
            double printed = Math.Log((constant + squared * from * from) / (constant + squared * to * to)) / (2 * squared);
            Assert.Equal(printed, new RollLaw(constant, 0, squared).Distance(from, to), 1e-9 * distance + 1e-13 / Math.Abs(squared));
        });

    [Fact]
    public void Roll_NoDragAndNoLift_IsConstantDeceleration()
    {
        Assert.Equal((900.0 - 100) / 4, new RollLaw(2, 0, 0).Distance(30, 10));
        Assert.Equal(10, new RollLaw(2, 0, 0).Time(30, 10));
        Assert.Equal(new RollLaw(2, 0, 0).Distance(30, 10), new RollLaw(2, 0, 1e-14).Distance(30, 10), 1e-9);
    }

    [Fact]
    public void LevelDeceleration_NoGroundEffect_IsTheClosedForm()
    {
        // A span this long leaves the wing out of ground effect only if it is high: so the wing is.
        LandingInput input = UsualLanding.Setup.Checked() with { WingHeight = 1e5, Headwind = 0, IdleThrust = 0 };
        double half = 0.5 * input.Density * input.WingArea;
        double a = half * input.ZeroLiftDrag;
        double weight = input.Mass * StandardConstants.Gravity;
        double b = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea) * weight * weight / half;
        double from = 31, to = 23;
        double expected = input.Mass / (4 * a) * Math.Log((a * Math.Pow(from, 4) + b) / (a * Math.Pow(to, 4) + b));

        // The hold-off with next to no sink is level flight.
        AirForces<ScalarLane> air = new(a / input.Mass, b / input.Mass / StandardConstants.Gravity / StandardConstants.Gravity, 1e5, 2 / input.Span, default, default);
        PathStage<ScalarLane> stage = new(air, 0, 1e-12, 0.4, to * to / StandardConstants.Gravity, 2);
        StageState<ScalarLane, PathMotion<ScalarLane>> state = new() { Motion = new(from), Open = ScalarLane.True };
        StageIntegrator.Fly(ref stage, new Timetable<ScalarLane>(0, 0, default), 100, 1, 0.05, 1e-11, ref state);
        Assert.Equal(to, state.Motion.Speed.Value, 1e-8);
        Assert.Equal(expected, state.Distance.Value, 1e-6);
    }

    [Fact]
    public void GroundEffect_InLanes_IsTheScalarLaw() =>
        Gen.Select(Gen.Double[0.01, 30], Gen.Double[5, 20]).Sample((height, span) =>
        {
            double expected = DragLaws.GroundEffect(height, span);
            Assert.Equal(expected, LaneLaws.GroundEffect<ScalarLane>(2 * height / span).Value, 1e-14);
            Assert.Equal(expected, LaneLaws.GroundEffect<Lanes4>(2 * height / span)[3], 1e-14);
        });

    [Fact]
    public void Drag_InLanes_IsTheScalarLaw() =>
        LandingGenerators.Any.Sample(input =>
        {
            double half = 0.5 * input.Density * input.WingArea, v = input.ThresholdSpeed, lift = 0.9 * StandardConstants.Gravity;
            double induced = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea);
            double coefficient = lift * input.Mass / (half * v * v);
            double expected = half * v * v * DragLaws.Coefficient(input.ZeroLiftDrag, induced, coefficient, 0.8) / input.Mass;
            AirForces<ScalarLane> air = new(half * input.ZeroLiftDrag / input.Mass, induced * input.Mass / half, 0, 0, default, default);
            Assert.Equal(expected, air.Drag(0.8, v * v, lift / v).Value, 1e-12);
        });

    [Fact]
    public void ArcSine_InLanes_IsTheLibrarys() =>
        Gen.Double[-0.8, 0.8].Sample(sine => Assert.Equal(Math.Asin(sine), LaneLaws.ArcSine<ScalarLane>(sine).Value, 1e-12));

    private static double March(int steps)
    {
        CosineStage stage = new();
        PathMotion<ScalarLane> motion = new(1);
        double step = 3.0 / steps;
        for (int i = 0; i < steps; i++)
        {
            stage.Prepare([.. Dop853.Places.ToArray().Select(place => new ScalarLane(i * step + place * step))], default);
            motion = Dop853.Step<ScalarLane, PathMotion<ScalarLane>, CosineStage>(
                ref stage, step, motion, stage.Rates(0, motion), out _, out _, out _);
        }

        return motion.Speed.Value;
    }

    private static (double Time, double Distance) Midpoint(double constant, double squared, double from, double to)
    {
        const int steps = 2000;
        double time = 0, distance = 0, width = (from - to) / steps;
        for (int i = 0; i < steps; i++)
        {
            double v = to + (i + 0.5) * width;
            time += width / (constant + squared * v * v);
            distance += v * width / (constant + squared * v * v);
        }

        return (time, distance);
    }

    private struct CosineStage : IStage<ScalarLane, PathMotion<ScalarLane>>
    {
        private AtNodes<double> _cosine;

        public void Prepare(ReadOnlySpan<ScalarLane> times, in Segment<ScalarLane> segment)
        {
            for (int i = 0; i < times.Length; i++)
                _cosine[i] = Math.Cos(times[i].Value);
        }

        public PathMotion<ScalarLane> Rates(int node, PathMotion<ScalarLane> motion) => new(-_cosine[node] * motion.Speed.Value);

        public readonly ScalarLane GroundSpeed(int node) => 0;

        public readonly ScalarLane End(int node, in PathMotion<ScalarLane> motion) => -1;

        public readonly ScalarLane EndRate(int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates) => 0;

        public readonly ScalarLane EndSize(in PathMotion<ScalarLane> motion) => 1;

        public readonly ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) => ScalarLane.True;

        public readonly ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) => Math.Abs(error.Speed.Value);
    }
}
