using FlapAero.Equations;

namespace FlapAero;

/// <summary>What became of a landing: a result, or the reason why it cannot happen. Immutable.</summary>
public sealed class LandingReport
{
    private readonly LandingOutcome _outcome;
    private readonly LandingVoice _voice;

    internal LandingReport(in LandingInput input, in LandingOutcome outcome, double interval, LandingVoice voice)
    {
        (_outcome, _voice) = (outcome, voice);
        if (Refusal == LandingRefusal.None)
            Result = new LandingResult(input, outcome, interval);
    }

    /// <summary>Why the landing cannot happen; <see cref="LandingRefusal.None"/> where it does.</summary>
    public LandingRefusal Refusal => _outcome.Refusal;

    /// <summary>The reason in a sentence with the values that show it, in the setup's units; empty where the landing happens.</summary>
    public string Explanation => RefusalText.Explain(_outcome, _voice);

    /// <summary>The landing; nothing where it cannot happen.</summary>
    public LandingResult? Result { get; }
}
