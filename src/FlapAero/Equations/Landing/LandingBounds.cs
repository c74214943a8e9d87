namespace FlapAero.Equations;

/// <summary>From where to where an input of a landing makes sense, whether the edges do, and why; SI and degrees.</summary>
internal sealed record LandingBounds(double Low, bool IncludesLow, double High, bool IncludesHigh, string Why)
{
    private const string NoSuchBody = "No aeroplane and no air have it otherwise.";
    private const string AnyWhy = "Nothing can be computed from it.";

    private static readonly LandingBounds Any = new(double.NegativeInfinity, false, double.PositiveInfinity, false, AnyWhy);

    // By column, those of the gust after the landing's.
    private static readonly LandingBounds[] Columns =
    [
        Above(NoSuchBody),
        Above(NoSuchBody),
        Above(NoSuchBody),
        Above("The ground effect needs the wing above its wheels."),
        From(NoSuchBody),
        Above(NoSuchBody),
        Above(NoSuchBody),
        Above(NoSuchBody),
        Any,
        Above("The landing begins above the runway."),
        Above("The landing begins in flight."),
        Between(90, "The path goes down, and not straight down."),
        Above("The sink dies away over it."),
        Above("The hold-off is flown above the runway."),
        Between(1, "A share of the lift before the stall: none is no flight, all of it is the stall."),
        Any,
        From("The throttle takes a while to close, or none."),
        Any,
        Any,
        Between(1, "A share of the touchdown speed: the nose comes down after the touchdown and before the stop."),
        Any,
        From("Friction does not push."),
        From("Friction does not push."),
        Any,
        new(-GustInput.Strongest, true, GustInput.Strongest, true, "Nobody trains in more."),
        new(-GustInput.Farthest, true, GustInput.Farthest, true, "A landing is over in minutes."),
        new(GustInput.Shortest, true, GustInput.Longest, true, "A shorter one is smaller than the wing."),
    ];

    public static LandingBounds Of(int column) => Columns[column];

    public bool Allow(double value) =>
        double.IsFinite(value)
        && (value > Low || (IncludesLow && value == Low))
        && (value < High || (IncludesHigh && value == High));

    /// <summary>What is allowed, in the words of whoever asked.</summary>
    public string Words(int column, LandingVoice voice) => (double.IsFinite(Low), double.IsFinite(High)) switch
    {
        (false, _) => voice.Finite,
        (true, false) when IncludesLow => $"{voice.Finite}, {voice.Value(column, Low)} or more",
        (true, false) => $"{voice.Finite} above {voice.Value(column, Low)}",
        _ when IncludesLow => $"{voice.Value(column, Low)} to {voice.Value(column, High)}",
        _ => $"above {voice.Value(column, Low)} and below {voice.Value(column, High)}",
    };

    private static LandingBounds Above(string why) => new(0, false, double.PositiveInfinity, false, why);

    private static LandingBounds From(string why) => new(0, true, double.PositiveInfinity, false, why);

    private static LandingBounds Between(double high, string why) => new(0, false, high, false, why);
}
