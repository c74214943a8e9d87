using FlapAero.Equations;

namespace FlapAero;

/// <summary>What became of a landing in conditions: a result, or the reason why it cannot happen. Immutable.</summary>
public sealed class LandingInConditionsReport
{
    private readonly LandingOutcome _outcome;
    private readonly LandingVoice _voice;

    internal LandingInConditionsReport(in LandingOutcome outcome, IReadOnlyList<ConditionsState> states, LandingVoice voice)
    {
        (_outcome, _voice) = (outcome, voice);
        if (Refusal == LandingRefusal.None)
            Result = new LandingInConditionsResult(outcome, states);
    }

    /// <summary>Why the landing cannot happen; <see cref="LandingRefusal.None"/> where it does.</summary>
    public LandingRefusal Refusal => _outcome.Refusal;

    /// <summary>The reason in a sentence with the values that show it, in the setup's units; empty where the landing happens.</summary>
    public string Explanation => RefusalText.Explain(_outcome, _voice);

    /// <summary>The landing; nothing where it cannot happen.</summary>
    public LandingInConditionsResult? Result { get; }
}
