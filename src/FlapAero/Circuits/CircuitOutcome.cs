using System.Diagnostics.CodeAnalysis;

namespace FlapAero;

/// <summary>A circuit, or the reason why there is none. Immutable.</summary>
public sealed class CircuitOutcome
{
    internal CircuitOutcome(Circuit? circuit, CircuitRefusal? refusal)
    {
        Circuit = circuit;
        Refusal = refusal;
    }

    /// <summary>The circuit, if there is one.</summary>
    public Circuit? Circuit { get; }

    /// <summary>Why not, if there is none.</summary>
    public CircuitRefusal? Refusal { get; }

    /// <summary>Whether there is a circuit.</summary>
    [MemberNotNullWhen(true, nameof(Circuit))]
    [MemberNotNullWhen(false, nameof(Refusal))]
    public bool IsFlyable => Circuit is not null;

    /// <summary>The circuit, for those who expect one.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message is the refusal's.</exception>
    public Circuit Solved => Circuit ?? throw new InvalidOperationException(Refusal!.Message);
}

/// <summary>A circuit flown forwards, or the reason why it cannot be. Immutable.</summary>
public sealed class FlownCircuitOutcome
{
    internal FlownCircuitOutcome(FlownCircuit? circuit, CircuitRefusal? refusal)
    {
        Circuit = circuit;
        Refusal = refusal;
    }

    /// <summary>The circuit, if it can be flown.</summary>
    public FlownCircuit? Circuit { get; }

    /// <summary>Why not, if it cannot.</summary>
    public CircuitRefusal? Refusal { get; }

    /// <summary>Whether it can be flown.</summary>
    [MemberNotNullWhen(true, nameof(Circuit))]
    [MemberNotNullWhen(false, nameof(Refusal))]
    public bool IsFlyable => Circuit is not null;

    /// <summary>The circuit, for those who expect one.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message is the refusal's.</exception>
    public FlownCircuit Flown => Circuit ?? throw new InvalidOperationException(Refusal!.Message);
}
