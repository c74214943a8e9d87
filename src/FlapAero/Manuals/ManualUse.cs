namespace FlapAero;

/// <summary>Whether a fitted aeroplane is good enough for a use.</summary>
public enum UseVerdict
{
    /// <summary>Yes.</summary>
    Yes,

    /// <summary>The order of things is right; the numbers are not to be trusted.</summary>
    Weakly,

    /// <summary>No: the numbers are what is typical, not this aeroplane's.</summary>
    No,
}

/// <summary>What a fitted aeroplane is good for. Immutable.</summary>
public sealed class ManualUse
{
    internal ManualUse(string name, UseVerdict verdict, string why) => (Name, Verdict, Why) = (name, verdict, why);

    /// <summary>The use: "speeds", "landing roll".</summary>
    public string Name { get; }

    /// <summary>Whether.</summary>
    public UseVerdict Verdict { get; }

    /// <summary>The number that decides, with its standard error.</summary>
    public string Why { get; }

    /// <summary>Use and verdict: "landing roll: weakly".</summary>
    public override string ToString() => $"{Name}: {Verdict.ToString().ToLowerInvariant()}";
}
