using UnitsNet;

namespace FlapAero;

/// <summary>How late a pilot is; early where negative. Immutable.</summary>
public sealed class PilotTiming
{
    private static readonly Duration Most = Duration.FromMinutes(10);

    /// <summary>A pilot's timing; what is not given is on time.</summary>
    /// <param name="power">Power is reduced this much later than planned.</param>
    /// <param name="baseTurn">The base turn begins this much later than planned.</param>
    /// <param name="finalTurn">
    /// The turn to final begins this much later than at the planned distance from the centreline: a late base turn alone
    /// moves the whole base leg out, and does not count here.
    /// </param>
    /// <exception cref="RefusedInputException">More than ten minutes either way.</exception>
    public PilotTiming(Duration? power = null, Duration? baseTurn = null, Duration? finalTurn = null)
    {
        Power = InRange(power, nameof(power));
        BaseTurn = InRange(baseTurn, nameof(baseTurn));
        FinalTurn = InRange(finalTurn, nameof(finalTurn));
    }

    /// <summary>On time everywhere.</summary>
    public static PilotTiming OnTime { get; } = new();

    /// <summary>How late power is reduced.</summary>
    public Duration Power { get; }

    /// <summary>How late the base turn begins.</summary>
    public Duration BaseTurn { get; }

    /// <summary>How late the turn to final begins.</summary>
    public Duration FinalTurn { get; }

    private static Duration InRange(Duration? late, string argument) => Require.Between(
        late ?? Duration.Zero, -Most, Most, "lateness", "A circuit lasts a few minutes.", argument);
}
