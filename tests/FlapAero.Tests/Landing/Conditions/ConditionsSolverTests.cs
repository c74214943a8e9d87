using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The general landing: with nothing changed it is the canonical one, and whatever the wind does, its energy adds up.</summary>
public sealed class ConditionsSolverTests
{
    private const double Allowed = 2e-5;

    [Fact]
    public void Solve_ReferenceCasesWithNothingChanged_AgreeInAllThirteenColumns()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            LandingOutcome outcome = ConditionsSolver.Solve(landing.Input, Steady(landing.Input)).Outcome;
            Assert.Equal(LandingRefusal.None, outcome.Refusal);
            ReadOnlySpan<double> results = LandingOutcome.Results(outcome);
            for (int i = 0; i < results.Length; i++)
            {
                double error = Math.Abs(results[i] / landing.Results[i] - 1);
                Assert.True(error < Allowed, $"case {landing.Name}, {LandingColumns.Results[i]}: off by {error:e1}");
            }
        }
    }

    [Fact]
    public void Solve_ReferenceRefusalsWithNothingChanged_GiveTheReason()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Refusals)
            Assert.Equal(landing.Reason, ConditionsSolver.Solve(landing.Input, Steady(landing.Input)).Outcome.Refusal.Reason());
    }

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
            (LandingInput input, WindField wind) = Windy(idle, 6, exponent, gust, 4, length);
            (LandingOutcome outcome, IReadOnlyList<ConditionsState> states) = ConditionsSolver.Solve(input, wind, interval: 0.01, tolerance: 1e-12);
            if (outcome.Refusal != LandingRefusal.None)
                continue;
            foreach (LandingStage stage in new[] { LandingStage.Approach, LandingStage.HoldOff, LandingStage.Settling })
                checkedStretches += AssertEnergy(input, [.. states.Where(s => s.State.Stage == stage)]);
        }

        Assert.True(checkedStretches > ReferenceLandings.Cases.Count / 2, $"{checkedStretches} stretches");
    }

    // The rate that the forces use is the rate at which the wind at the wing really changes.
    [Fact]
    public void Solve_ShearAndGust_WindRateIsTheChangeOfTheWindAtTheWing()
    {
        (LandingInput input, WindField wind) = Windy(UsualLanding.Setup.Input(), 6, 0.25, -4, 3, 3);
        ConditionsState[] states = [.. ConditionsSolver.Solve(input, wind, interval: 0.001).States.Where(s => s.State.Stage <= LandingStage.Settling)];
        double largest = 0;
        for (int i = 1; i < states.Length; i++)
        {
            double time = states[i].State.Time - states[i - 1].State.Time;
            if (time < 1e-4)
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
        LandingInput usual = UsualLanding.Setup.Input();
        (LandingInput still, WindField none) = Windy(usual, 6, 0.25, 0, 0, 1);
        double settles = ConditionsSolver.Solve(still, none).Outcome.HoldOffEndTime;
        (LandingInput input, WindField wind) = Windy(usual, 6, 0.25, -4, settles - 0.3, 4);
        ConditionsState[] states = [.. ConditionsSolver.Solve(input, wind, interval: 0.005, tolerance: 1e-12).States.Where(s => s.State.Stage == LandingStage.Settling)];
        int compared = 0;
        for (int i = 1; i + 1 < states.Length; i++)
        {
            (ConditionsState before, ConditionsState at, ConditionsState after) = (states[i - 1], states[i], states[i + 1]);
            double time = after.State.Time - before.State.Time;
            if (Math.Abs(after.State.Time - 2 * at.State.Time + before.State.Time) > 1e-9 || time < 1e-3)
                continue;
            double sine = -at.State.Sink / at.State.Speed, cosine = Math.Sqrt(1 - sine * sine);
            double lift = 0.5 * input.Density * input.WingArea * at.State.Lift * at.State.Speed * at.State.Speed / input.Mass;
            double pull = (at.State.Thrust - at.Drag) / input.Mass;
            Assert.Equal(pull * cosine - lift * sine, (GroundSpeed(after) - GroundSpeed(before)) / time, 2e-3);
            Assert.Equal(
                lift * cosine + pull * sine - StandardConstants.Gravity, (before.State.Sink - after.State.Sink) / time, 2e-3);
            compared += Math.Abs(at.WindRate * sine) > 0.02 ? 1 : 0;
        }

        Assert.True(compared > 20, $"{compared} moments in which the wind's part shows");
    }

    internal static WindField Steady(LandingInput input) => new(null, input.Headwind, 0, 0, 1);

    /// <summary>A wind of a mean at 10 m, with its mean at the wing over the threshold in the input.</summary>
    internal static (LandingInput Input, WindField Wind) Windy(
        LandingInput input, double atTenMetres, double exponent, double gust, double start, double length)
    {
        WindField wind = new(z => WindLaws.PowerLaw(atTenMetres, 10, exponent, z), 0, gust, start, length);
        return (input with { Headwind = wind.Mean(input.ThresholdHeight + input.WingHeight) }, wind);
    }

    private static int AssertEnergy(LandingInput input, ConditionsState[] states)
    {
        double weight = input.Mass * StandardConstants.Gravity, allowed = 1e-7 * weight * Energy(states[0]);
        double worst = 0, work = 0;
        int pairs = 0;
        for (int i = 0; i + 2 < states.Length; i += 2)
        {
            double first = states[i + 1].State.Time - states[i].State.Time, second = states[i + 2].State.Time - states[i + 1].State.Time;
            // A piece that an edge of the gust or the stage cut short is no pair of equal steps.
            if (Math.Abs(first - second) > 1e-9)
            {
                i--;
                continue;
            }

            work += first / 3 * (Power(input, states[i]) + 4 * Power(input, states[i + 1]) + Power(input, states[i + 2]));
            work -= weight * (Energy(states[i + 2]) - Energy(states[i]));
            worst = Math.Max(worst, Math.Abs(work));
            pairs++;
        }

        Assert.True(worst < allowed, $"off by {worst:e2} J of {allowed:e2}");
        return pairs > 5 ? 1 : 0;
    }

    private static double GroundSpeed(ConditionsState at) =>
        Math.Sqrt(at.State.Speed * at.State.Speed - at.State.Sink * at.State.Sink) - at.Headwind;

    private static double Energy(ConditionsState at) => EnergyLaws.Height(at.State.Height, at.State.Speed);

    private static double Power(LandingInput input, ConditionsState at)
    {
        double sine = at.State.Sink / at.State.Speed;
        return (at.State.Thrust - at.Drag) * at.State.Speed + input.Mass * at.State.Speed * at.WindRate * Math.Sqrt(1 - sine * sine);
    }
}
