using FlapAero.Equations;

namespace FlapAero;

/// <summary>What became of a landing: a result, or the reason why it cannot happen. Immutable.</summary>
public sealed class LandingReport
{
    private readonly FlownLanding _flown;

    internal LandingReport(FlownLanding flown)
    {
        _flown = flown;
        if (Refusal == LandingRefusal.None)
            Result = new LandingResult(flown);
    }

    /// <summary>Why the landing cannot happen; <see cref="LandingRefusal.None"/> where it does.</summary>
    public LandingRefusal Refusal => _flown.Outcome.Refusal;

    /// <summary>The reason in a sentence with the values that show it, in the setup's units; empty where the landing happens.</summary>
    public string Explanation => RefusalText.Explain(_flown.Outcome, _flown.Voice);

    /// <summary>The landing; nothing where it cannot happen.</summary>
    public LandingResult? Result { get; }
}
