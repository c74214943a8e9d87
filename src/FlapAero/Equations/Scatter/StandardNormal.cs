using MathNet.Numerics.Distributions;

namespace FlapAero.Equations;

/// <summary>The standard normal, as MathNet.Numerics has it.</summary>
internal static class StandardNormal
{
    public static double Cdf(double z) => Normal.CDF(0, 1, z);

    public static double Quantile(double p) => Normal.InvCDF(0, 1, p);
}
