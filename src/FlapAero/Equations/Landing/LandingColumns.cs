namespace FlapAero.Equations;

/// <summary>Names of the columns in a table of landings, in the order of <see cref="LandingInput"/> and <see cref="LandingOutcome"/>.</summary>
internal static class LandingColumns
{
    public const int InputCount = 24;
    public const int ResultCount = 13;

    public static IReadOnlyList<string> Inputs { get; } =
    [
        "mass", "wing_area", "span", "wing_height", "cd0", "oswald", "cl_max", "density", "headwind", "threshold_height",
        "threshold_speed", "path_angle_deg", "flare_time_constant", "hold_off_height", "touchdown_lift_fraction",
        "power_cut_height", "power_cut_time", "idle_thrust", "nose_high_lift_coefficient", "nose_lower_speed_fraction",
        "level_lift_coefficient", "rolling_friction", "braking_friction", "runway_slope",
    ];

    public static IReadOnlyList<string> Results { get; } =
    [
        "approach_thrust", "flare_height", "flare_start_x", "flare_start_v", "hold_off_end_x", "hold_off_end_v",
        "touchdown_x", "touchdown_v", "touchdown_sink", "touchdown_time", "nose_lower_x", "stop_x", "stop_time",
    ];

    /// <summary>The results in words.</summary>
    public static IReadOnlyList<string> ResultWords { get; } =
    [
        "approach thrust", "flare height", "distance of the round-out", "airspeed of the round-out", "end of the hold-off",
        "airspeed at the end of the hold-off", "touchdown distance", "touchdown airspeed", "touchdown sink", "touchdown time",
        "distance of the lowered nose", "stop distance", "stop time",
    ];
}
