namespace FlapAero.Equations;

/// <summary>How long a battery carries a current. SI doubles. Source: [peukert].</summary>
internal static class BatteryLaws
{
    /// <summary>t = s H (I_r/I)^k: Peukert's law about the rated point, for the share s that is left.</summary>
    public static double Endurance(double shareLeft, double ratedTime, double ratedCurrent, double current, double exponent) =>
        shareLeft * ratedTime * Math.Pow(ratedCurrent / current, exponent);

    /// <summary>s = (t/H)(I/I_r)^k: what share of a full battery a current takes in a time.</summary>
    public static double ShareTaken(double time, double ratedTime, double ratedCurrent, double current, double exponent) =>
        time / ratedTime * Math.Pow(current / ratedCurrent, exponent);

    /// <summary>I = I_r (s H/t)^(1/k): the current that a battery carries for a time.</summary>
    public static double CurrentFor(double shareLeft, double ratedTime, double ratedCurrent, double time, double exponent) =>
        ratedCurrent * Math.Pow(shareLeft * ratedTime / time, 1 / exponent);
}
