using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Held to an integration by somebody else, at a tenth of the tolerance that is asked for.</summary>
public sealed class ReferenceLandingTests
{
    private const double Allowed = 2e-5;

    [Fact]
    public void Solve_ReferenceCases_AgreeInAllThirteenColumns()
    {
        Assert.NotEmpty(ReferenceLandings.IdleCases);
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases.Concat(ReferenceLandings.IdleCases))
            AssertAgrees(landing, LandingSolver.Solve(landing.Input));
    }

    [Fact]
    public void Solve_ManyReferenceCases_AgreeInAllThirteenColumns()
    {
        ReferenceLandings.Case[] cases = [.. ReferenceLandings.Cases, .. ReferenceLandings.IdleCases];
        LandingInput[] inputs = [.. cases.Select(c => c.Input)];
        var outcomes = new LandingOutcome[inputs.Length];
        LandingSolver.Solve(inputs, outcomes);
        Assert.NotEmpty(inputs);
        for (int i = 0; i < inputs.Length; i++)
            AssertAgrees(cases[i], outcomes[i]);
    }

    [Fact]
    public void Solve_ReferenceRefusals_GiveTheReason()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Refusals)
            Assert.Equal(landing.Reason, LandingSolver.Solve(landing.Input).Refusal.Reason());
    }

    private static void AssertAgrees(ReferenceLandings.Case landing, LandingOutcome outcome)
    {
        Assert.Equal(LandingRefusal.None, outcome.Refusal);
        ReadOnlySpan<double> results = LandingOutcome.Results(outcome);
        for (int i = 0; i < results.Length; i++)
        {
            double error = Math.Abs(results[i] / landing.Results[i] - 1);
            Assert.True(error < Allowed, $"case {landing.Name}, {ResultColumns.Names[i]}: off by {error:e1}");
        }
    }
}
