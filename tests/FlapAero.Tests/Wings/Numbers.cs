using CsCheck;

namespace FlapAero.Tests.Wings;

/// <summary>Mostly shares, now and then an edge of the number line or any 64 bits.</summary>
internal static class Numbers
{
    private static readonly double[] Edges =
    [
        double.NaN, double.PositiveInfinity, double.NegativeInfinity, -0.0, double.Epsilon, double.MaxValue, double.MinValue, 1e300, -1e-300, 1e16,
    ];

    public static readonly Gen<double> Any = Gen.Frequency(
        (30, Gen.Double[0, 1]), (1, Gen.Double[-100, 2000]), (1, Gen.Int[0, Edges.Length - 1].Select(index => Edges[index])), (1, Gen.Double));
}
