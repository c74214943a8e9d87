namespace FlapAero.Equations;

/// <summary>
/// A fixed-pitch propeller in numbers without dimension; N in revolutions per second. Source: [uiuc-propellers] for the
/// definitions.
/// </summary>
internal static class PropellerLaws
{
    /// <summary>J = V/(N D).</summary>
    public static double AdvanceRatio(double speed, double revolutions, double diameter) => speed / (revolutions * diameter);

    /// <summary>T = C_T ρ N² D⁴.</summary>
    public static double Thrust(double coefficient, double density, double revolutions, double diameter) =>
        coefficient * density * revolutions * revolutions * Math.Pow(diameter, 4);

    /// <summary>P = C_P ρ N³ D⁵.</summary>
    public static double Power(double coefficient, double density, double revolutions, double diameter) =>
        coefficient * density * Math.Pow(revolutions, 3) * Math.Pow(diameter, 5);

    /// <summary>Q = P/2πN = C_P ρ N² D⁵/2π.</summary>
    public static double Torque(double coefficient, double density, double revolutions, double diameter) =>
        coefficient * density * revolutions * revolutions * Math.Pow(diameter, 5) / (2 * Math.PI);

    /// <summary>η = J C_T/C_P.</summary>
    public static double Efficiency(double advanceRatio, double thrust, double power) => advanceRatio * thrust / power;

    /// <summary>(σ − c)/(1 − c): the share of an unsupercharged engine's full torque that is left in thinner air. Source: [gagg-farrar].</summary>
    public static double FullThrottleShare(double densityRatio) => Math.Max(0, (densityRatio - 0.12) / (1 - 0.12));

    /// <summary>D = q k π D_p²/4: a propeller that stands still, its blades a share k of the disc as a plate across the stream. The form is this library's own.</summary>
    public static double StoppedDrag(double dynamicPressure, double diameter, double shareOfDisc) =>
        dynamicPressure * shareOfDisc * Math.PI * diameter * diameter / 4;
}
