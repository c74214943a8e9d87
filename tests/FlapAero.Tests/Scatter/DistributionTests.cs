using CsCheck;
using FlapAero.Equations;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using UnitsNet;

namespace FlapAero.Tests.Scatter;

/// <summary>Each family's quantile function against its own moments, its own edges and somebody else's distribution function.</summary>
public sealed class DistributionTests
{
    private const int Count = 20_000;

    private static readonly Dictionary<string, (DistributionLaw Law, Func<double, double> Cumulative)> Laws = new()
    {
        ["uniform"] = (DistributionLaw.Uniform(2, 5), x => ContinuousUniform.CDF(2, 5, x)),
        ["normal"] = (DistributionLaw.Normal(-3, 2), x => Normal.CDF(-3, 2, x)),
        ["triangular"] = (DistributionLaw.Triangular(1, 2, 6), x => Triangular.CDF(1, 6, 2, x)),
        ["triangular to the left"] = (DistributionLaw.Triangular(1, 1, 6), x => Triangular.CDF(1, 6, 1, x)),
        ["triangular to the right"] = (DistributionLaw.Triangular(1, 6, 6), x => Triangular.CDF(1, 6, 6, x)),
        ["truncated"] = (DistributionLaw.TruncatedNormal(10, 2, 7, 12), x => Truncated(x, 10, 2, 7, 12)),
        ["truncated to the upper tail"] = (DistributionLaw.TruncatedNormal(0, 1, 3, 4), x => 1 - Truncated(-x, 0, 1, -4, -3)),
        ["truncated to the lower tail"] = (DistributionLaw.TruncatedNormal(0, 1, -4, -3), x => Truncated(x, 0, 1, -4, -3)),
    };

    public static TheoryData<string> Names => [.. Laws.Keys];

    [Theory, MemberData(nameof(Names))]
    public void Law_Draws_FollowTheDistributionFunction(string name)
    {
        (DistributionLaw law, Func<double, double> cumulative) = Laws[name];
        double[] draws = Draws(law);
        Array.Sort(draws);
        Assert.True(Ks.Distance(draws, cumulative) < Ks.Limit(Count), name);
        Assert.InRange(draws[0], law.Minimum, law.Maximum);
        Assert.InRange(draws[^1], law.Minimum, law.Maximum);
    }

    [Theory, MemberData(nameof(Names))]
    public void Law_Draws_HaveMeanAndDeviation(string name)
    {
        DistributionLaw law = Laws[name].Law;
        double[] draws = Draws(law);
        double error = law.StandardDeviation / Math.Sqrt(Count);
        Assert.InRange(draws.Mean(), law.Mean - 4 * error, law.Mean + 4 * error);
        Assert.InRange(draws.StandardDeviation() / law.StandardDeviation, 0.97, 1.03);
    }

    [Theory, MemberData(nameof(Names))]
    public void Law_Moments_AreTheIntegralsOfTheQuantile(string name)
    {
        // ∫₀¹ Q dp and ∫₀¹ Q² dp by midpoints: another way to the same moments than the closed forms.
        DistributionLaw law = Laws[name].Law;
        const int cells = 200_000;
        double[] values = [.. Enumerable.Range(0, cells).Select(i => law.Quantile((i + 0.5) / cells))];
        Assert.Equal(law.Mean, values.Mean(), 1e-4);
        Assert.Equal(law.StandardDeviation, values.PopulationStandardDeviation(), 1e-4);
    }

    [Theory, MemberData(nameof(Names))]
    public void Law_Quantile_IsTheInverseOfTheDistributionFunction(string name)
    {
        (DistributionLaw law, Func<double, double> cumulative) = Laws[name];
        Gen.Double[1e-9, 1 - 1e-9].Sample(p => Math.Abs(cumulative(law.Quantile(p)) - p) < 1e-9);
    }

    [Fact]
    public void Uniform_AQuarter_LiesAQuarterOfTheWay() => Assert.Equal(31.5, DistributionLaw.Uniform(28, 42).Quantile(0.25), 1e-14);

    // So far out the distribution function rounds to one on the upper side, and has all its digits on the lower.
    [Theory, InlineData(0.1), InlineData(0.5), InlineData(0.9)]
    public void TruncatedNormal_FarOut_IsTheMirrorImageOfTheOtherTail(double p)
    {
        double upper = DistributionLaw.TruncatedNormal(0, 1, 9, 10).Quantile(p);
        double lower = DistributionLaw.TruncatedNormal(0, 1, -10, -9).Quantile(1 - p);
        Assert.Equal(-lower, upper, 1e-12);
        // Beyond 9 the density falls by e^(−9x), nearly: half of it lies within ln 2/9 = 0.077.
        Assert.InRange(upper, 9 + 0.8 * -Math.Log(1 - p) / 9.3, 9 - Math.Log(1 - p) / 9);
    }

    // The half-normal: √(1 − 2/π).
    [Fact]
    public void TruncatedNormal_OpenOnOneSide_HasTheHalfNormalsDeviation() =>
        Assert.Equal(Math.Sqrt(1 - 2 / Math.PI), DistributionLaw.TruncatedNormal(0, 1, 0, double.PositiveInfinity).StandardDeviation, 1e-12);

    [Fact]
    public void Quantile_OfAnyTruncation_RisesAndStaysInside() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[0.01, 3], Gen.Double[-2, 2], Gen.Double[0.01, 3], Gen.Double[0, 1], Gen.Double[0, 1])
            .Sample((mean, deviation, edge, width, p, q) =>
            {
                double low = mean + edge * deviation;
                double high = low + width * deviation;
                var law = DistributionLaw.TruncatedNormal(mean, deviation, low, high);
                double a = law.Quantile(Math.Min(p, q));
                double b = law.Quantile(Math.Max(p, q));
                return low <= a && a <= b && b <= high && law.Mean > low && law.Mean < high && law.StandardDeviation < deviation;
            });

    [Fact]
    public void ZeroWidth_OfEveryFamily_IsTheValueItself()
    {
        DistributionLaw[] laws =
        [
            DistributionLaw.Fixed(0.1), DistributionLaw.Uniform(0.1, 0.1), DistributionLaw.Normal(0.1, 0),
            DistributionLaw.TruncatedNormal(0.1, 0, -1, 1), DistributionLaw.Triangular(0.1, 0.1, 0.1),
        ];
        Assert.All(laws, law =>
        {
            Assert.True(law.IsFixed);
            Assert.Equal(0.1, law.Quantile(0.3));
            Assert.Equal(0.1, law.Mean, 1e-16);
            Assert.Equal(0, law.StandardDeviation);
        });
    }

    [Fact]
    public void Distribution_Numbers_AreInTheUnitOfItsFirstValue()
    {
        var speed = Distribution.Normal(Speed.FromKnots(65), Speed.FromMetersPerSecond(1));
        Assert.Equal("kt", speed.Unit);
        Assert.Equal(65, speed.Mean.Knots, 1e-9);
        Assert.Equal(3600.0 / 1852, speed.StandardDeviation.Value, 1e-9);
        Assert.Null(speed.Minimum);
        Assert.Equal(3, Distribution.Fixed(Angle.FromDegrees(3)).Law.Mean);
        Assert.Equal(3, Distribution.Fixed(Angle.FromRadians(Math.PI / 60)).Law.Mean, 1e-12);
        Assert.Equal(3, Distribution.Fixed(Angle.FromDegrees(3)).Mean.Degrees, 1e-12);
    }

    [Theory, InlineData("Mass = Distribution.Fixed(Speed.FromKnots(1))"), InlineData("OswaldFactor = Distribution.Uniform(Length.Zero, Length.Zero)"),
     InlineData("Headwind = Distribution.Fixed(1.0)"), InlineData("Span = Distribution.Uniform(Length.Zero, Area.Zero)")]
    public void Spread_DistributionOfAnotherKind_DoesNotCompile(string input)
    {
        ScriptOptions options = ScriptOptions.Default
            .AddReferences(typeof(Air).Assembly, typeof(Length).Assembly).AddImports("FlapAero", "UnitsNet");
        Assert.Empty(CSharpScript.Create("new LandingSpread { Headwind = Distribution.Fixed(Speed.Zero) }", options).Compile(TestContext.Current.CancellationToken));
        Assert.Contains(
            CSharpScript.Create($"new LandingSpread {{ {input} }}", options).Compile(TestContext.Current.CancellationToken),
            diagnostic => diagnostic.Id is "CS0029" or "CS0411");
    }

    public static TheoryData<string, Func<object>> Nonsense => new()
    {
        { "minimum", () => Distribution.Uniform(double.NaN, 1) },
        { "maximum", () => Distribution.Uniform(2.0, 1) },
        { "maximum", () => Distribution.Uniform(-double.MaxValue, double.MaxValue) },
        { "mean", () => Distribution.Normal(double.PositiveInfinity, 1) },
        { "standard deviation", () => Distribution.Normal(0.0, -1) },
        { "standard deviation", () => Distribution.Normal(0, double.NaN) },
        { "mode", () => Distribution.Triangular(0.0, -1, 2) },
        { "maximum", () => Distribution.Triangular(0.0, 3, 2) },
        { "truncation", () => Distribution.TruncatedNormal(0.0, 1, 6, 7) },
        { "truncation", () => Distribution.TruncatedNormal(0, 1, 0.5, 0.5) },
        { "mean", () => Distribution.TruncatedNormal(0.0, 0, 1, 2) },
        { "standard deviation", () => Distribution.Normal(Speed.FromKnots(60), Speed.FromKnots(-1)) },
        { "no standard deviation", () => Distribution.Fixed(2.0).StandardScore(1) },
        { "Int32", () => Distribution.Fixed(1) },
        { "Temperature", () => Distribution.Fixed(Temperature.FromDegreesCelsius(15)) },
    };

    [Theory, MemberData(nameof(Nonsense))]
    public void Distribution_OfNonsense_IsRefusedByName(string named, Func<object> make)
    {
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(make);
        Assert.Contains(named, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Distribution_OfAnyNumbers_DrawsFinitelyInsideOrIsRefused()
    {
        int drawn = 0;
        Gen<double> number = Gen.Frequency((5, Gen.Double[-10, 10]), (1, Gen.Double), (1, Gen.Const(0.0)));
        Gen.Select(Gen.Int[0, 3], number, number, number, number, Gen.Double[1e-16, 1 - 1e-16]).Sample(
            (family, a, b, c, d, p) =>
            {
                try
                {
                    Distribution<double> distribution = family switch
                    {
                        0 => Distribution.Uniform(a, b),
                        1 => Distribution.Normal(a, b),
                        2 => Distribution.TruncatedNormal(a, b, c, d),
                        _ => Distribution.Triangular(a, b, c),
                    };
                    double value = distribution.Law.Quantile(p);
                    Interlocked.Increment(ref drawn);
                    return value >= distribution.Law.Minimum && value <= distribution.Law.Maximum
                        && !double.IsNaN(distribution.Mean) && distribution.StandardDeviation >= 0;
                }
                catch (ArgumentException)
                {
                    return true;
                }
            },
            iter: 20_000);
        Assert.True(drawn > 1000);
    }

    private static double[] Draws(DistributionLaw law) =>
        [.. Enumerable.Range(0, Count).Select(i => law.Quantile(new RandomStream(11, (ulong)i, StreamPurpose.Scatter)[3]))];

    private static double Truncated(double x, double mean, double deviation, double low, double high) =>
        (Normal.CDF(mean, deviation, x) - Normal.CDF(mean, deviation, low))
        / (Normal.CDF(mean, deviation, high) - Normal.CDF(mean, deviation, low));
}
