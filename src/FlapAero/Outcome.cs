namespace FlapAero;

/// <summary>
/// What became of something that may not happen: its value, or a sentence that says why there is none and what to do. Immutable.
/// </summary>
/// <typeparam name="T">What is there where it happened.</typeparam>
public class Outcome<T>
    where T : class
{
    private readonly T? _value;

    internal Outcome(T value) => (_value, Explanation) = (value, "");

    internal Outcome(string explanation) => Explanation = explanation;

    /// <summary>Whether it happened.</summary>
    public bool Happened => _value is not null;

    /// <summary>What is there where it happened.</summary>
    /// <exception cref="InvalidOperationException">It did not happen; the message is the <see cref="Explanation"/>.</exception>
    public T Value => _value ?? throw new InvalidOperationException(Explanation);

    /// <summary>Why it did not happen, with the values that show it, and what to do; empty where it happened.</summary>
    public string Explanation { get; }

    /// <summary>The value, or the explanation.</summary>
    public override string ToString() => _value?.ToString() ?? Explanation;
}

/// <summary>An outcome whose refusal a program can tell apart. Immutable.</summary>
/// <typeparam name="T">What is there where it happened.</typeparam>
/// <typeparam name="TRefusal">Why it did not.</typeparam>
public sealed class Outcome<T, TRefusal> : Outcome<T>
    where T : class
{
    internal Outcome(T value)
        : base(value)
    {
    }

    internal Outcome(TRefusal refusal, string explanation)
        : base(explanation) => Refusal = refusal;

    /// <summary>Why it did not happen; nothing, or the reason that says so, where it happened.</summary>
    public TRefusal? Refusal { get; }
}
