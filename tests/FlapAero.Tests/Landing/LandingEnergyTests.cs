using CsCheck;
using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Trajectories: energy in the air, and that picture and table agree.</summary>
public sealed class LandingEnergyTests
{
    [Fact]
    public void Trajectory_InTheAir_KeepsItsEnergy()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            AssertEnergy(landing.Input);
            // Idle from the threshold on: nothing for the quadrature to stumble over, and 1e-8 of the energy is meant.
            LandingInput idle = landing.Input with { PowerCutHeight = 100, PowerCutTime = 0 };
            if (LandingSolver.Solve(idle).Refusal == LandingRefusal.None)
                AssertEnergy(idle);
        }
    }

    [Fact]
    public void Trajectory_StageByStage_IsContinuousAndEndsWhereTheTableSays()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            LandingOutcome outcome = LandingSolver.Solve(landing.Input, 1e-11);
            List<TrajectoryState> states = TrajectorySampler.Sample(landing.Input, outcome, 0.2, 1e-11);
            for (int i = 1; i < states.Count; i++)
            {
                TrajectoryState a = states[i - 1], b = states[i];
                Assert.InRange(b.Time - a.Time, 0, 0.2 + 1e-9);
                if (a.Stage == b.Stage)
                    continue;
                Assert.Equal(a.Time, b.Time, 1e-9);
                Assert.Equal(a.Distance, b.Distance, 1e-5);
                Assert.Equal(a.Height, b.Height, 1e-6);
                Assert.Equal(a.Thrust, b.Thrust, 1e-6);
                // The vertical part of the motion is gone with the touchdown.
                Assert.Equal(b.Stage == LandingStage.RollNoseHigh ? Math.Sqrt(a.Speed * a.Speed - a.Sink * a.Sink) : a.Speed, b.Speed, 1e-6);
            }

            TrajectoryState last = states[^1];
            Assert.Equal(outcome.StopDistance, last.Distance, 1e-4);
            Assert.Equal(landing.Input.Headwind, last.Speed, 1e-5);
            Assert.Equal(outcome.ApproachThrust, states[0].Thrust, 1e-9);
        }
    }

    // W Δh_e = ∫ (T − D) V dt over each smooth piece, by Simpson's rule, with the drag from the scalar laws.
    private static void AssertEnergy(LandingInput input)
    {
        LandingOutcome outcome = LandingSolver.Solve(input, 1e-12);
        List<TrajectoryState> states = TrajectorySampler.Sample(input, outcome, 0.02, 1e-12);
        double weight = input.Mass * StandardConstants.Gravity;
        foreach (LandingStage stage in new[] { LandingStage.Approach, LandingStage.HoldOff, LandingStage.Settling })
        {
            TrajectoryState[] own = [.. states.Where(s => s.Stage == stage)];
            double[] power = [.. own.Select(s => (s.Thrust - Drag(input, s)) * s.Speed)];
            int used = (own.Length - 1) / 2 * 2;
            if (used < 2)
                continue;
            double step = (own[^1].Time - own[0].Time) / (own.Length - 1);
            double work = power[0] + power[used];
            for (int i = 1; i < used; i++)
                work += (i % 2 == 1 ? 4 : 2) * power[i];
            work *= step / 3;
            double gain = weight * (EnergyLaws.Height(own[used].Height, own[used].Speed) - EnergyLaws.Height(own[0].Height, own[0].Speed));
            // Where the thrust has a kink the quadrature, not the flight, is off by at most the power's jump over a step.
            double jump = Enumerable.Range(1, used).Max(i => Math.Abs(power[i] - power[i - 1])) * step;
            double allowed = 1e-8 * weight * EnergyLaws.Height(own[0].Height, own[0].Speed);
            Assert.Equal(gain, work, HasKink(own) ? Math.Max(allowed, 2 * jump) : allowed);
        }
    }

    private static bool HasKink(TrajectoryState[] states)
    {
        double[] slopes = [.. states.Skip(1).Zip(states, (b, a) => (b.Thrust - a.Thrust) / (b.Time - a.Time))];
        return slopes.Max() - slopes.Min() > 1e-3;
    }

    private static double Drag(LandingInput input, TrajectoryState state)
    {
        double induced = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea);
        double near = DragLaws.GroundEffect(state.Height + input.WingHeight, input.Span);
        double coefficient = DragLaws.Coefficient(input.ZeroLiftDrag, induced, state.Lift, near);
        return 0.5 * input.Density * state.Speed * state.Speed * input.WingArea * coefficient;
    }
}
