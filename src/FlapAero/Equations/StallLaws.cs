namespace FlapAero.Equations;

/// <summary>Stalling speed, load factor and the margin between them. SI doubles, radians. Source: [phak].</summary>
internal static class StallLaws
{
    /// <summary>V_S = √(2 n W/(ρ S C_Lmax)), true airspeed.</summary>
    public static double Speed(double weight, double loadFactor, double density, double area, double maximumLift) =>
        Math.Sqrt(2 * loadFactor * weight / (density * area * maximumLift));

    /// <summary>n = cos γ/cos φ, from L cos φ = W cos γ.</summary>
    public static double LoadFactor(double bank, double pathAngle) => Math.Cos(pathAngle) / Math.Cos(bank);

    /// <summary>φ at which n = 1/cos φ brings the stall to this speed: cos φ = (V_S/V)². No answer below V_S.</summary>
    public static double? StallingBank(double speed, double stallSpeed) =>
        speed < stallSpeed ? null : Math.Acos(stallSpeed * stallSpeed / (speed * speed));

    /// <summary>(V − ΔV)/V_S − 1.</summary>
    public static double Margin(double speed, double lull, double stallSpeed) => (speed - lull) / stallSpeed - 1;
}
