using UnitsNet;

namespace FlapAero;

/// <summary>Why a circuit cannot be flown.</summary>
public enum CircuitRefusalReason
{
    /// <summary>The two turns together are wider than the spacing.</summary>
    NoRoomForTwoTurns,

    /// <summary>A leg calls for less thrust than idle or more than full.</summary>
    ThrustOutsideIdleToFull,

    /// <summary>The turn to final ends below the height to be established by.</summary>
    EstablishedTooLow,

    /// <summary>The wind across a leg is as fast as the aeroplane, or the leg makes less than 1 m/s against the wind.</summary>
    NoCrabHoldsTheTrack,

    /// <summary>A turn is planned steeper than the limit.</summary>
    BankLimitExceeded,

    /// <summary>A leg calls for more lift than the wing has.</summary>
    Stalled,

    /// <summary>The legs after downwind lose more than the circuit height.</summary>
    CircuitHeightTooLow,

    /// <summary>The thrust stated for a leg makes it climb, or hardly descend where it has to.</summary>
    LegDoesNotDescend,

    /// <summary>No steady path within 30° of level has the thrust or the descent stated.</summary>
    NoSteadyPath,

    /// <summary>The crab angles before and after a turn leave no turn to this side.</summary>
    NoTurnToMake,

    /// <summary>With the nose into the wind the touchdown point never comes to lie where the base turn is to begin.</summary>
    NeverThatFarBehindTheWing,

    /// <summary>Flown forwards, the aeroplane reaches the ground before it rolls out.</summary>
    ReachesTheGround,

    /// <summary>Flown forwards, the turn to final ends past the threshold.</summary>
    RollsOutPastTheThreshold,
}

/// <summary>One value that shows why. Immutable.</summary>
public sealed class CircuitRefusalValue
{
    internal CircuitRefusalValue(string name, IQuantity value)
    {
        Name = name;
        Value = value;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>The value.</summary>
    public IQuantity Value { get; }

    /// <summary>Name and value.</summary>
    public override string ToString() => $"{Name} {Require.Text(Value)}";
}

/// <summary>A circuit that cannot be flown: the reason, and the values that show it. Immutable.</summary>
public sealed class CircuitRefusal
{
    internal CircuitRefusal(CircuitRefusalReason reason, string? leg, string why, params CircuitRefusalValue[] values)
    {
        Reason = reason;
        Leg = leg;
        Values = values;
        string shown = string.Join(", ", values.Select(value => value.ToString()));
        Message = $"{(leg is null ? "" : leg + ": ")}{why} ({shown}). {Advice(reason)}";
    }

    /// <summary>The reason.</summary>
    public CircuitRefusalReason Reason { get; }

    /// <summary>The reason as tables name it, <c>no-room-for-two-turns</c>.</summary>
    public string Code => string.Concat(Reason.ToString().Select(
        (letter, at) => char.IsUpper(letter) ? (at == 0 ? "" : "-") + char.ToLowerInvariant(letter) : letter.ToString()));

    /// <summary>The leg that it is about, where it is about one.</summary>
    public string? Leg { get; }

    /// <summary>The values that show it.</summary>
    public IReadOnlyList<CircuitRefusalValue> Values { get; }

    /// <summary>Leg, reason and values in a sentence, and what to do in another.</summary>
    public string Message { get; }

    /// <summary>The message.</summary>
    public override string ToString() => Message;

    /// <summary>The outcome that it stands for.</summary>
    internal Outcome<T, CircuitRefusal> Outcome<T>()
        where T : class => new(this, Message);

    private static string Advice(CircuitRefusalReason reason) => reason switch
    {
        CircuitRefusalReason.NoRoomForTwoTurns => "Fly downwind further out, or bank more.",
        CircuitRefusalReason.ThrustOutsideIdleToFull => "Take another path, speed or flap setting on this leg.",
        CircuitRefusalReason.EstablishedTooLow => "Turn base further out, or reduce power later.",
        CircuitRefusalReason.NoCrabHoldsTheTrack => "Fly faster, or in less wind.",
        CircuitRefusalReason.BankLimitExceeded => "Bank less, or set a higher limit.",
        CircuitRefusalReason.Stalled => "Fly faster, or bank less.",
        CircuitRefusalReason.CircuitHeightTooLow => "Fly a higher circuit, or lose less height in the turns and on base.",
        CircuitRefusalReason.LegDoesNotDescend => "Set less thrust, or a greater rate of descent, on this leg.",
        CircuitRefusalReason.NoSteadyPath => "Set a thrust or a descent that is nearer to level flight.",
        CircuitRefusalReason.NoTurnToMake => "Fly faster, or in less wind.",
        CircuitRefusalReason.NeverThatFarBehindTheWing => "Begin the base turn at a smaller angle behind the wing.",
        CircuitRefusalReason.ReachesTheGround => "Turn earlier, or reduce power later.",
        _ => "Begin the base turn later.",
    };
}
