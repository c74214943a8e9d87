using FlapAero.Equations;

namespace FlapAero;

/// <summary>What became of a landing: a result, or the reason why it cannot happen. Immutable.</summary>
public sealed class LandingReport
{
    internal LandingReport(in LandingInput input, in LandingOutcome outcome, double interval)
    {
        Refusal = outcome.Refusal;
        Explanation = RefusalText.Explain(outcome);
        if (Refusal == LandingRefusal.None)
            Result = new LandingResult(input, outcome, interval);
    }

    /// <summary>Why the landing cannot happen; <see cref="LandingRefusal.None"/> where it does.</summary>
    public LandingRefusal Refusal { get; }

    /// <summary>The reason in a sentence with the values that show it; empty where the landing happens.</summary>
    public string Explanation { get; }

    /// <summary>The landing; nothing where it cannot happen.</summary>
    public LandingResult? Result { get; }
}
