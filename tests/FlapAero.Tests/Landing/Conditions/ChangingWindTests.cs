using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Landings in winds that change: whatever the wind does, the energy adds up and Newton's law holds over the ground.</summary>
public sealed class ChangingWindTests
{
    // W Δh_e = ∫ (T − D) V dt + m ∫ V ẇ cos γ dt, by Simpson's rule over each stretch between two kinks.
    [Theory]
    [InlineData(0.0, 0.0, 0.0)]
    [InlineData(0.25, 0.0, 0.0)]
    [InlineData(0.25, -4.0, 3.0)]
    [InlineData(0.0, 5.0, 2.0)]
    public void Solve_AnyWind_KeepsItsEnergyInTheAir(double exponent, double gust, double length)
    {
        int checkedStretches = 0;
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            LandingInput idle = landing.Input with { PowerCutHeight = 100, PowerCutTime = 0 };
            WindyLanding flown = WindyLanding.Fly(idle, 6, exponent, gust, 4, length, interval: 0.01, tolerance: 1e-12);
            if (flown.Outcome.Refusal != LandingRefusal.None)
                continue;
            foreach (LandingStage stage in new[] { LandingStage.Approach, LandingStage.HoldOff, LandingStage.Settling })
                checkedStretches += AssertEnergy(flown.Input, [.. flown.States.Where(s => s.Stage == stage)]);
        }

        Assert.True(checkedStretches > ReferenceLandings.Cases.Count / 2, $"{checkedStretches} stretches");
    }

    // The rate that the forces use is the rate at which the wind at the wing really changes.
    [Fact]
    public void Solve_ShearAndGust_WindRateIsTheChangeOfTheWindAtTheWing()
    {
        WindyLanding flown = WindyLanding.Fly(UsualLanding.Setup.Checked(), 6, 0.25, -4, 3, 3, interval: 0.001);
        TrajectoryState[] states = [.. flown.States.Where(s => s.Stage <= LandingStage.Settling)];
        double largest = 0;
        for (int i = 1; i < states.Length; i++)
        {
            double time = states[i].Time - states[i - 1].Time;
            if (time < 1e-4 || Parted(flown.Input, states[i - 1].Time, states[i].Time))
                continue;
            double rate = (states[i].Headwind - states[i - 1].Headwind) / time;
            Assert.Equal(rate, 0.5 * (states[i].WindRate + states[i - 1].WindRate), 1e-3);
            largest = Math.Max(largest, Math.Abs(rate));
        }

        Assert.True(largest > 1, $"largest {largest}");
    }

    // Newton's law over the ground knows no wind but in the airspeed: m d(V cos γ − w)/dt = (T − D) cos γ − L sin γ along it, and
    // m ḧ = L cos γ + (T − D) sin γ − W across.
    [Fact]
    public void Solve_SettlingInAGust_ObeysNewtonsLawOverTheGround()
    {
        LandingInput usual = UsualLanding.Setup.Checked();
        double settles = WindyLanding.Fly(usual, 6, 0.25, 0, 0, 1).Outcome.HoldOffEndTime;
        WindyLanding flown = WindyLanding.Fly(usual, 6, 0.25, -4, settles - 0.3, 4, interval: 0.005, tolerance: 1e-12);
        LandingInput input = flown.Input;
        TrajectoryState[] states = [.. flown.States.Where(s => s.Stage == LandingStage.Settling)];
        int compared = 0;
        for (int i = 1; i + 1 < states.Length; i++)
        {
            (TrajectoryState before, TrajectoryState at, TrajectoryState after) = (states[i - 1], states[i], states[i + 1]);
            double time = after.Time - before.Time;
            if (Math.Abs(after.Time - 2 * at.Time + before.Time) > 1e-9 || time < 1e-3)
                continue;
            double sine = -at.Sink / at.Speed, cosine = Math.Sqrt(1 - sine * sine);
            double lift = 0.5 * input.Density * input.WingArea * at.Lift * at.Speed * at.Speed / input.Mass;
            double pull = (at.Thrust - at.Drag) / input.Mass;
            Assert.Equal(pull * cosine - lift * sine, (GroundSpeed(after) - GroundSpeed(before)) / time, 2e-3);
            Assert.Equal(
                lift * cosine + pull * sine - StandardConstants.Gravity, (before.Sink - after.Sink) / time, 2e-3);
            compared += Math.Abs(at.WindRate * sine) > 0.02 ? 1 : 0;
        }

        Assert.True(compared > 20, $"{compared} moments in which the wind's part shows");
    }

    private static int AssertEnergy(LandingInput input, TrajectoryState[] states)
    {
        double weight = input.Mass * StandardConstants.Gravity, allowed = 1e-7 * weight * Energy(states[0]);
        double worst = 0, work = 0;
        int pairs = 0;
        for (int i = 0; i + 2 < states.Length; i += 2)
        {
            double first = states[i + 1].Time - states[i].Time, second = states[i + 2].Time - states[i + 1].Time;
            // Two steps that an edge of the gust parts, or the end of the ramp, are no parabola.
            if (Parted(input, states[i].Time, states[i + 2].Time) || Math.Abs(first - second) > 1e-9)
                continue;

            work += first / 3 * (Power(input, states[i]) + 4 * Power(input, states[i + 1]) + Power(input, states[i + 2]));
            work -= weight * (Energy(states[i + 2]) - Energy(states[i]));
            worst = Math.Max(worst, Math.Abs(work));
            pairs++;
        }

        Assert.True(worst < allowed, $"off by {worst:e2} J of {allowed:e2}");
        return pairs > 5 ? 1 : 0;
    }

    private static bool Parted(LandingInput input, double from, double to) =>
        input.GustChange != 0 && new[] { input.GustStart, input.GustStart + input.GustLength }.Any(edge => from < edge && edge < to);

    private static double GroundSpeed(TrajectoryState at) =>
        Math.Sqrt(at.Speed * at.Speed - at.Sink * at.Sink) - at.Headwind;

    private static double Energy(TrajectoryState at) => EnergyLaws.Height(at.Height, at.Speed);

    private static double Power(LandingInput input, TrajectoryState at)
    {
        double sine = at.Sink / at.Speed;
        return (at.Thrust - at.Drag) * at.Speed + input.Mass * at.Speed * at.WindRate * Math.Sqrt(1 - sine * sine);
    }
}
