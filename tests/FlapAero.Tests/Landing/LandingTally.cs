using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>What any numbers may end in: a landing with finite results, a refusal with its reason, or an argument error; and how often.</summary>
internal sealed class LandingTally
{
    private int _landed;
    private int _refused;
    private int _argued;

    public int Landed => _landed;

    public int Refused => _refused;

    public int Argued => _argued;

    /// <summary>Flies and counts; false where a result, an explanation or a message is none.</summary>
    /// <param name="fly">Flies a landing, and says what else is true of one that came to its stop.</param>
    /// <param name="makesSense">Whether the input does: if so, only a result that cannot be computed is an argument error.</param>
    public bool Count(Func<(LandingOutcome Outcome, bool Right)> fly, Func<bool>? makesSense = null)
    {
        try
        {
            (LandingOutcome outcome, bool right) = fly();
            if (outcome.Refusal != LandingRefusal.None)
            {
                Interlocked.Increment(ref _refused);
                return RefusalText.Explain(outcome).Length > 20;
            }

            Interlocked.Increment(ref _landed);
            foreach (double result in LandingOutcome.Results(outcome))
            {
                if (!double.IsFinite(result))
                    return false;
            }

            return right && outcome.StopTime >= outcome.TouchdownTime && outcome.TouchdownTime >= outcome.FlareStartTime;
        }
        catch (RefusedInputException error)
        {
            Interlocked.Increment(ref _argued);
            return makesSense?.Invoke() == true ? error.Message.Contains("cannot be computed", StringComparison.Ordinal) : error.Message.Length > 20;
        }
    }

    public override string ToString() => $"{Landed} landed, {Refused} refused, {Argued} argued";
}
