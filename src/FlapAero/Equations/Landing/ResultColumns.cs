namespace FlapAero.Equations;

/// <summary>The results of a landing in the order of <see cref="LandingOutcome"/>: as columns of a table, and in words.</summary>
internal static class ResultColumns
{
    public const int Count = 13;

    public static IReadOnlyList<string> Names { get; } =
    [
        "approach_thrust", "flare_height", "flare_start_x", "flare_start_v", "hold_off_end_x", "hold_off_end_v",
        "touchdown_x", "touchdown_v", "touchdown_sink", "touchdown_time", "nose_lower_x", "stop_x", "stop_time",
    ];

    public static IReadOnlyList<string> Words { get; } =
    [
        "approach thrust", "flare height", "distance of the round-out", "airspeed of the round-out", "end of the hold-off",
        "airspeed at the end of the hold-off", "touchdown distance", "touchdown airspeed", "touchdown sink", "touchdown time",
        "distance of the lowered nose", "stop distance", "stop time",
    ];
}
