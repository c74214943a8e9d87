namespace FlapAero.Equations;

/// <summary>Wind along and across the way, and with height. SI doubles, radians. Sources: [phak], [wind-profile].</summary>
internal static class WindLaws
{
    /// <summary>Along the heading, positive from ahead: W cos(from − heading).</summary>
    public static double Headwind(double speed, double from, double heading) => speed * Math.Cos(from - heading);

    /// <summary>Across the heading, positive from the right: W sin(from − heading).</summary>
    public static double Crosswind(double speed, double from, double heading) => speed * Math.Sin(from - heading);

    /// <summary>V cos γ − w.</summary>
    public static double GroundSpeed(double trueAirspeed, double pathAngle, double headwind) =>
        trueAirspeed * Math.Cos(pathAngle) - headwind;

    /// <summary>tan γ_g = V sin γ/(V cos γ − w); for a ground speed above zero.</summary>
    public static double AngleOverGround(double trueAirspeed, double pathAngle, double headwind) =>
        Math.Atan2(trueAirspeed * Math.Sin(pathAngle), GroundSpeed(trueAirspeed, pathAngle, headwind));

    /// <summary>s = k[√(V²(1 + k²) − w²k²) − w]/(1 + k²), k = tan γ_p: the sink that holds a path down over the ground.</summary>
    public static double SinkOnPath(double trueAirspeed, double descentAngle, double headwind)
    {
        double slope = Math.Tan(descentAngle);
        double square = 1 + slope * slope;
        return slope * (Math.Sqrt(trueAirspeed * trueAirspeed * square - headwind * headwind * slope * slope) - headwind) / square;
    }

    /// <summary>w = w_r (z/z_r)^p.</summary>
    public static double PowerLaw(double reference, double referenceHeight, double exponent, double height) =>
        reference * Math.Pow(height / referenceHeight, exponent);

    /// <summary>w = w_r ln(z/z₀)/ln(z_r/z₀), calm below the roughness length z₀.</summary>
    public static double Logarithmic(double reference, double referenceHeight, double roughness, double height) =>
        height <= roughness ? 0 : reference * Math.Log(height / roughness) / Math.Log(referenceHeight / roughness);
}
