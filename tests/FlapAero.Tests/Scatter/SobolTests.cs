using FlapAero.Equations;

namespace FlapAero.Tests.Scatter;

/// <summary>Shares of a variance on functions whose shares are known in closed form.</summary>
public sealed class SobolTests
{
#if MUTATION_RUN
    // A mutated library runs a hundred times slower.
    private const int Resamples = 50;
#else
    private const int Resamples = 1000;
#endif

    internal const double A = 7;
    internal const double B = 0.1;

    [Fact]
    public void Ishigami_FirstOrderAndTotal_LieInTheirIntervals()
    {
        // Closed form: V₁ = ½(1 + bπ⁴/5)², V₂ = a²/8, V₁₃ = 8b²π⁸/225; usually printed 0.314, 0.442, 0 and 0.558, 0.442, 0.244.
        double v1 = 0.5 * Math.Pow(1 + B * Math.Pow(Math.PI, 4) / 5, 2);
        double v2 = A * A / 8;
        double v13 = 8 * B * B * Math.Pow(Math.PI, 8) / 225;
        double v = v1 + v2 + v13;
        Assert.Equal([0.314, 0.442, 0.244], ((double[])[v1 / v, v2 / v, v13 / v]).Select(share => Math.Round(share, 3)));
        double[] first = [v1 / v, v2 / v, 0];
        double[] total = [(v1 + v13) / v, v2 / v, v13 / v];

        SobolIndices indices = Sample(8192, 3, seed: 1, Ishigami);
        (SobolEstimate First, SobolEstimate Total)[] estimates = indices.Estimate(Resamples, 0.95, 1);

        Assert.Equal(1, indices.Variance / v, 0.03);
        for (int i = 0; i < 3; i++)
        {
            Assert.InRange(first[i], estimates[i].First.Low, estimates[i].First.High);
            Assert.InRange(total[i], estimates[i].Total.Low, estimates[i].Total.High);
            Assert.InRange(estimates[i].First.High - estimates[i].First.Low, 0.005, 0.08);
            Assert.InRange(estimates[i].Total.High - estimates[i].Total.Low, 0.005, 0.08);
        }
    }

    [Fact]
    public void LinearFunction_Shares_AreThoseOfItsSquares()
    {
        (SobolEstimate First, SobolEstimate Total)[] estimates =
            Sample(8192, 3, 2, x => 1e6 + 3 * x[0] + 2 * x[1] + 0 * x[2]).Estimate(Resamples, 0.95, 2);
        double[] shares = [9.0 / 13, 4.0 / 13, 0];
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(shares[i], estimates[i].First.Value, 0.03);
            Assert.Equal(shares[i], estimates[i].Total.Value, 0.03);
        }

        // What an input does not touch is nothing at all in the total, and not just small.
        Assert.Equal(0, estimates[2].Total.Value);
        Assert.Equal(0, estimates[2].Total.High);
    }

    // Σ of the six is 16, of their squares 56: V = (56 − 16²/6)/5 = 8/3, and 2 · 3 V = 16. The differences are read off.
    [Fact]
    public void Estimate_ThreeRows_IsWhatTheEstimatorsGiveByHand()
    {
        SobolIndices indices = new([1, 2, 4], [3, 1, 5], [[2, 1, 5], [1, 2, 4.5]]);
        Assert.Equal(8.0 / 3, indices.Variance, 1e-14);
        (SobolEstimate First, SobolEstimate Total)[] estimates = indices.Estimate(10, 0.9, 1);
        Assert.Equal(1 - 1.0 / 16, estimates[0].First.Value, 1e-14);
        Assert.Equal(3.0 / 16, estimates[0].Total.Value, 1e-14);
        Assert.Equal(1 - 5.25 / 16, estimates[1].First.Value, 1e-14);
        Assert.Equal(0.25 / 16, estimates[1].Total.Value, 1e-14);
    }

    [Fact]
    public void Rows_WithoutAResult_AreLeftOutOfAllMatrices()
    {
        double[] a = [1, 2, double.NaN, 4, 5];
        double[] b = [2, double.NaN, 1, 1, 3];
        double[] mixed = [3, 1, 2, 7, 2], other = [3, 1, 2, double.NaN, 2];
        SobolIndices holes = new(a, b, [mixed, other]);
        SobolIndices whole = new([1, 5], [2, 3], [[3, 2], [3, 2]]);
        Assert.Equal(2, holes.Rows);
        Assert.Equal(whole.Variance, holes.Variance);
        Assert.Equal(whole.Estimate(10, 0.9, 1)[0], holes.Estimate(10, 0.9, 1)[0]);
    }

    [Fact]
    public void Estimate_BySameSeed_IsTheSame()
    {
        SobolIndices indices = Sample(300, 3, 5, Ishigami);
        Assert.Equal(indices.Estimate(100, 0.95, 9), indices.Estimate(100, 0.95, 9));
        Assert.NotEqual(indices.Estimate(100, 0.95, 9)[0].First.Low, indices.Estimate(100, 0.95, 10)[0].First.Low);
    }

    internal static double Ishigami(double[] u)
    {
        double[] x = [.. u.Select(value => Math.PI * (2 * value - 1))];
        return Math.Sin(x[0]) + A * Math.Pow(Math.Sin(x[1]), 2) + B * Math.Pow(x[2], 4) * Math.Sin(x[0]);
    }

    internal static SobolIndices Sample(int rows, int inputs, ulong seed, Func<double[], double> model)
    {
        double[] Matrix(ulong mask) =>
        [
            .. Enumerable.Range(0, rows).Select(k =>
            {
                SaltelliUniforms row = new(seed, (ulong)k, mask);
                return model([.. Enumerable.Range(0, inputs).Select(slot => row[slot])]);
            }),
        ];
        return new(
            Matrix(SaltelliUniforms.First), Matrix(SaltelliUniforms.Second),
            [.. Enumerable.Range(0, inputs).Select(i => Matrix(SaltelliUniforms.Mask([i])))]);
    }
}
