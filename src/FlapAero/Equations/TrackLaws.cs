namespace FlapAero.Equations;

/// <summary>
/// Straight tracks over the ground in a steady wind that blows along them (w, positive from ahead) and across (w_c, positive
/// from the right). SI doubles, radians. Source: [phak] for the triangle of speeds.
/// </summary>
internal static class TrackLaws
{
    /// <summary>sin β = w_c/(V cos γ), positive with the nose to the right. No answer where the wind across is the faster.</summary>
    public static double? Crab(double crosswind, double horizontalSpeed) =>
        Math.Abs(crosswind) < horizontalSpeed ? Math.Asin(crosswind / horizontalSpeed) : null;

    /// <summary>√(V² cos² γ − w_c²) − w.</summary>
    public static double GroundSpeed(double horizontalSpeed, double headwind, double crosswind) =>
        Math.Sqrt(horizontalSpeed * horizontalSpeed - crosswind * crosswind) - headwind;

    /// <summary>
    /// The sink that holds a path down over the ground: s = k [√(V² − s² − w_c²) − w], which is the law without wind across
    /// for a speed of √(V² − w_c²).
    /// </summary>
    public static double SinkOnPath(double trueAirspeed, double descentAngle, double headwind, double crosswind) =>
        WindLaws.SinkOnPath(Math.Sqrt(trueAirspeed * trueAirspeed - crosswind * crosswind), descentAngle, headwind);

    /// <summary>How far past abeam a point is that lies this angle behind the wing: d = s tan(ξ + κ), κ the crab towards the tail.</summary>
    public static double PastAbeam(double spacing, double angleBehindWing, double crab) =>
        spacing * Math.Tan(angleBehindWing + crab);

    /// <summary>ξ = arctan(d/s) − κ, the inverse of <see cref="PastAbeam"/>.</summary>
    public static double AngleBehindWing(double spacing, double pastAbeam, double crab) =>
        Math.Atan2(pastAbeam, spacing) - crab;
}
