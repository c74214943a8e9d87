using FlapAero.Equations;

namespace FlapAero;

/// <summary>What became of a landing in conditions: a result, or the reason why it cannot happen. Immutable.</summary>
public sealed class LandingInConditionsReport
{
    internal LandingInConditionsReport(in LandingOutcome outcome, IReadOnlyList<ConditionsState> states)
    {
        Refusal = outcome.Refusal;
        Explanation = RefusalText.Explain(outcome);
        if (Refusal == LandingRefusal.None)
            Result = new LandingInConditionsResult(outcome, states);
    }

    /// <summary>Why the landing cannot happen; <see cref="LandingRefusal.None"/> where it does.</summary>
    public LandingRefusal Refusal { get; }

    /// <summary>The reason in a sentence with the values that show it; empty where the landing happens.</summary>
    public string Explanation { get; }

    /// <summary>The landing; nothing where it cannot happen.</summary>
    public LandingInConditionsResult? Result { get; }
}
