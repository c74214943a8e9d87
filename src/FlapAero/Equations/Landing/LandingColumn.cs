namespace FlapAero.Equations;

/// <summary>
/// An input of a landing as a table of plain numbers has it: its column's name and unit, from where to where it makes sense, and why.
/// A column that may be left out has the value it then takes.
/// </summary>
internal sealed record LandingColumn(LandingVariable Variable, string Name, string Unit, LandingBounds Bounds, double? LeftOut = null)
{
    private const string NoSuchBody = "No aeroplane and no air have it otherwise.";
    private const string NoPush = "Friction does not push.";

    /// <summary>Every input, in the order of <see cref="LandingVariable"/> and of <see cref="LandingInput"/>.</summary>
    public static IReadOnlyList<LandingColumn> All { get; } = InOrder(
        new(LandingVariable.Mass, "mass", "kg", LandingBounds.Above(NoSuchBody)),
        new(LandingVariable.WingArea, "wing_area", "m²", LandingBounds.Above(NoSuchBody)),
        new(LandingVariable.Span, "span", "m", LandingBounds.Above(NoSuchBody)),
        new(LandingVariable.WingHeight, "wing_height", "m", LandingBounds.Above("The ground effect needs the wing above its wheels.")),
        new(LandingVariable.ZeroLiftDragCoefficient, "cd0", "", LandingBounds.From(NoSuchBody)),
        new(LandingVariable.SlipDragCoefficient, "slip_drag", "", LandingBounds.Within(0, 0.2, "More no rudder of a light aeroplane gives."), LeftOut: 0),
        new(LandingVariable.OswaldFactor, "oswald", "", LandingBounds.Above(NoSuchBody)),
        new(LandingVariable.MaximumLiftCoefficient, "cl_max", "", LandingBounds.Above(NoSuchBody)),
        new(LandingVariable.Density, "density", "kg/m³", LandingBounds.Above(NoSuchBody)),
        new(LandingVariable.Headwind, "headwind", "m/s", LandingBounds.Any),
        new(LandingVariable.ThresholdHeight, "threshold_height", "m", LandingBounds.Above("The landing begins above the runway.")),
        new(LandingVariable.ThresholdSpeed, "threshold_speed", "m/s", LandingBounds.Above("The landing begins in flight.")),
        new(LandingVariable.PathAngle, "path_angle_deg", "°", LandingBounds.Inside(90, "The path goes down, and not straight down.")),
        new(LandingVariable.FlareTimeConstant, "flare_time_constant", "s", LandingBounds.Above("The sink dies away over it.")),
        new(LandingVariable.HoldOffHeight, "hold_off_height", "m", LandingBounds.Above("The hold-off is flown above the runway.")),
        new(LandingVariable.TouchdownLiftFraction, "touchdown_lift_fraction", "",
            LandingBounds.Inside(1, "A share of the lift before the stall: none is no flight, all of it is the stall.")),
        new(LandingVariable.PowerCutHeight, "power_cut_height", "m", LandingBounds.Any),
        new(LandingVariable.PowerCutTime, "power_cut_time", "s", LandingBounds.From("The throttle takes a while to close, or none.")),
        new(LandingVariable.IdleThrust, "idle_thrust", "N", LandingBounds.Any),
        new(LandingVariable.IdleThrustSlope, "idle_thrust_slope", "N s/m", LandingBounds.Any, LeftOut: 0),
        new(LandingVariable.IdleThrustCurvature, "idle_thrust_curvature", "N s²/m²", LandingBounds.Any, LeftOut: 0),
        new(LandingVariable.NoseHighLiftCoefficient, "nose_high_lift_coefficient", "", LandingBounds.Any),
        new(LandingVariable.NoseLowerSpeedFraction, "nose_lower_speed_fraction", "",
            LandingBounds.Inside(1, "A share of the touchdown speed: the nose comes down after the touchdown and before the stop.")),
        new(LandingVariable.LevelLiftCoefficient, "level_lift_coefficient", "", LandingBounds.Any),
        new(LandingVariable.RollingFriction, "rolling_friction", "", LandingBounds.From(NoPush)),
        new(LandingVariable.BrakingFriction, "braking_friction", "", LandingBounds.From(NoPush)),
        new(LandingVariable.RunwaySlope, "runway_slope", "", LandingBounds.Any),
        new(LandingVariable.GustChange, "gust_change", "m/s", LandingBounds.Within(-StrongestGust, StrongestGust, "Nobody trains in more."), LeftOut: 0),
        new(LandingVariable.GustStart, "gust_start", "s", LandingBounds.Within(-FarthestGust, FarthestGust, "A landing is over in minutes."), LeftOut: 0),
        new(LandingVariable.GustLength, "gust_length", "s",
            LandingBounds.Within(ShortestGust, FarthestGust, "A shorter one is smaller than the wing."), LeftOut: LandingInput.CalmGustLength));

    /// <summary>60 kt in m/s.</summary>
    public const double StrongestGust = 60 * 1852.0 / 3600;

    /// <summary>How far from the threshold a gust may begin, and how long it may last, s.</summary>
    public const double FarthestGust = 3600;
    public const double ShortestGust = 0.2;

    public static LandingColumn Of(LandingVariable variable) => All[(int)variable];

    private static LandingColumn[] InOrder(params LandingColumn[] columns)
    {
        var all = new LandingColumn[LandingInput.Count];
        foreach (LandingColumn column in columns)
            all[(int)column.Variable] = column;
        return all;
    }
}
