namespace FlapAero.Equations;

/// <summary>From where to where an input of a landing makes sense, whether the edges do, and why; SI and degrees.</summary>
internal sealed record LandingBounds(double Low, bool IncludesLow, double High, bool IncludesHigh, string Why)
{
    public static LandingBounds Any { get; } =
        new(double.NegativeInfinity, false, double.PositiveInfinity, false, "Nothing can be computed from it.");

    public static LandingBounds Above(string why) => new(0, false, double.PositiveInfinity, false, why);

    public static LandingBounds From(string why) => new(0, true, double.PositiveInfinity, false, why);

    public static LandingBounds Inside(double high, string why) => new(0, false, high, false, why);

    public static LandingBounds Within(double low, double high, string why) => new(low, true, high, true, why);

    public bool Allow(double value) =>
        double.IsFinite(value)
        && (value > Low || (IncludesLow && value == Low))
        && (value < High || (IncludesHigh && value == High));

    /// <summary>What is allowed, in the words of whoever asked.</summary>
    public string Words(LandingVariable variable, LandingVoice voice) => (double.IsFinite(Low), double.IsFinite(High)) switch
    {
        (false, _) => voice.Finite,
        (true, false) when IncludesLow => $"{voice.Finite}, {voice.Value(variable, Low)} or more",
        (true, false) => $"{voice.Finite} above {voice.Value(variable, Low)}",
        _ when IncludesLow => $"{voice.Value(variable, Low)} to {voice.Value(variable, High)}",
        _ => $"above {voice.Value(variable, Low)} and below {voice.Value(variable, High)}",
    };
}
