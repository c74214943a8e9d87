using FlapAero.Equations;

namespace FlapAero;

/// <summary>
/// Landings whose inputs are spread: what a pilot who does not hit every number gets. Immutable, safe for any thread. Inputs are
/// independent, except threshold speed and height where a correlation is asked for. The wind of a landing is steady, each landing's
/// its own; with a gust among the inputs it rises and falls once on top of that: the pilot holds the path and adds no power for it.
/// </summary>
public sealed class LandingScatter
{
    private const int MostLandings = 1_000_000;
    private const int MostRows = 100_000;
    private const int MostResamples = 10_000;

    private readonly LandingSampler _sampler;

    /// <summary>A scatter of landings.</summary>
    /// <param name="inputs">
    /// How each of the 30 inputs is spread; fixed where it is not. Those of the gust, of a slip and of the idle thrust's change with airspeed
    /// may be left out: then there is none.
    /// </param>
    /// <param name="speedHeightCorrelation">
    /// Correlation ρ of threshold speed and height, −1 to 1: of the normals of a Gaussian copula. Where both inputs are normals it is
    /// theirs; where they are truncated or of another family theirs is a little smaller.
    /// </param>
    /// <exception cref="RefusedInputException">
    /// An input that is missing, or that reaches values that make no sense.
    /// </exception>
    public LandingScatter(LandingSpread inputs, double speedHeightCorrelation = 0)
    {
        SpeedHeightCorrelation = Require.Between(
            speedHeightCorrelation, -1, 1, "correlation of threshold speed and height", "No two inputs go together more closely.");
        Inputs = ScatterCheck.Inputs(inputs);
        DistributionLaw[] laws = [.. LandingVariables.All.Select(variable => Inputs[variable]!.Law)];
        _sampler = new LandingSampler(
            laws, (int)LandingVariable.ThresholdSpeed, (int)LandingVariable.ThresholdHeight, SpeedHeightCorrelation);
    }

    /// <summary>How each input is spread: all are given.</summary>
    public LandingSpread Inputs { get; }

    /// <summary>Correlation of threshold speed and height, of the normals behind them.</summary>
    public double SpeedHeightCorrelation { get; }

    /// <summary>A scatter round one canonical landing: every input is that landing's, fixed, unless it is given.</summary>
    /// <remarks>
    /// Formula: none. Without any spread every landing is the canonical one. Range: as the constructor's. Source: [canonical-landing].
    /// </remarks>
    /// <param name="setup">The canonical landing.</param>
    /// <param name="spread">The inputs that vary. Their distributions stand for themselves: the landing's own values are not added.</param>
    /// <param name="speedHeightCorrelation">As in the constructor.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="RefusedInputException">As in the constructor.</exception>
    /// <example><code>LandingScatter.Around(landing, new LandingSpread()).Fly(10).StopDistance.StandardDeviation.Meters // 0.000</code></example>
    public static LandingScatter Around(LandingSetup setup, LandingSpread spread, double speedHeightCorrelation = 0)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(spread);
        return new(spread.Over(LandingSpread.Fixed(setup.Checked(), variable => setup.Given(variable)?.Unit)), speedHeightCorrelation);
    }

    /// <summary>The same scatter with some inputs spread in another way. The other inputs' draws stay what they were.</summary>
    /// <remarks>Formula: none. Range: as the constructor's. Source: [canonical-landing].</remarks>
    /// <param name="spread">The inputs that are spread in another way.</param>
    /// <returns>The other scatter.</returns>
    /// <exception cref="RefusedInputException">As in the constructor.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).With(new LandingSpread { Headwind = Distribution.Fixed(Speed.Zero) }).Fly(1000).StopDistance.Mean.Meters // 797</code></example>
    public LandingScatter With(LandingSpread spread)
    {
        ArgumentNullException.ThrowIfNull(spread);
        return new(spread.Over(Inputs), SpeedHeightCorrelation);
    }

    /// <summary>Flies landings drawn from the distributions.</summary>
    /// <remarks>
    /// Formula: landing i takes the quantile of each input at its own number from a counter-based generator, whose counter is i and
    /// the input and whose key is the seed. The draws are the same on every machine, and every result the same whatever the number of
    /// threads; results of machines with vectors of another width agree to the integrator's tolerance. A landing that cannot happen is
    /// an outcome: it is counted and not drawn again. Range: 1 to 1 000 000 landings. Source: [philox].
    /// </remarks>
    /// <param name="count">How many.</param>
    /// <param name="seed">Any number; the same one gives the same landings.</param>
    /// <param name="threads">At most so many at once; all of the machine's where none is given.</param>
    /// <returns>The outcomes.</returns>
    /// <exception cref="RefusedInputException">
    /// A count or a number of threads outside the range, or an aeroplane whose landing cannot be computed.
    /// </exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000, seed: 1).StopDistance.Quantile(0.95).Meters // 864</code></example>
    public LandingScatterResult Fly(int count = 10_000, long seed = 1, int? threads = null)
    {
        Require.Between(count, 1, MostLandings, "number of landings", "None says nothing, and more than a million fill the memory.");
        return new(ScatterRun.Fly(_sampler, count, unchecked((ulong)seed), Threads(threads), Voice), seed);
    }

    /// <summary>What an input was in the landings of <see cref="Fly"/>: for plots of a result against an input.</summary>
    /// <remarks>Formula: as <see cref="Fly"/>. Range: as <see cref="Fly"/>. Source: [philox].</remarks>
    /// <param name="variable">The input.</param>
    /// <param name="count">Of how many landings.</param>
    /// <param name="seed">The seed.</param>
    /// <returns>One number a landing, in the unit of the input's distribution.</returns>
    /// <exception cref="RefusedInputException">A count outside the range, or no such input.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Draws(LandingVariable.ThresholdSpeed, 10, seed: 1)[0] // 72.62</code></example>
    public IReadOnlyList<double> Draws(LandingVariable variable, int count = 10_000, long seed = 1)
    {
        Require.Between(count, 1, MostLandings, "number of landings", "None says nothing, and more than a million fill the memory.");
        Distribution distribution = Inputs[variable]!;
        var values = new double[count];
        for (int i = 0; i < count; i++)
        {
            _sampler.Draw(new RandomStream(unchecked((ulong)seed), (ulong)i, StreamPurpose.Scatter), out LandingInput landing);
            values[i] = distribution.InUnit(LandingInput.Row(ref landing)[(int)variable]);
        }

        return values;
    }

    /// <summary>Which input moves touchdown and stop the most: shares of their variance.</summary>
    /// <remarks>
    /// Formula: with A and B two samples of the inputs and A_B,i the first with input i of the second,
    /// S_i = 1 − ½⟨(f(B) − f(A_B,i))²⟩/V and S_Ti = ½⟨(f(A) − f(A_B,i))²⟩/V; intervals by bootstrap over rows. Where speed and height
    /// are correlated they count as one factor: a share of each of them has no meaning. A row in which one of its landings cannot
    /// happen has no difference and is left out: the shares are then of the other rows' variance, which only makes sense while
    /// such rows are few. Range: 100 to 100 000 rows, 10 to 10 000 resamples. Source: [jansen], [saltelli].
    /// </remarks>
    /// <param name="rows">Rows of each sample; as many landings as rows times inputs that vary plus two.</param>
    /// <param name="seed">Any number.</param>
    /// <param name="maximumRefusedShare">Refused where a larger share of the rows is left out; 1 % where none is given.</param>
    /// <param name="resamples">Of the bootstrap.</param>
    /// <param name="confidence">Of the intervals, 0.5 to 0.999.</param>
    /// <param name="threads">At most so many at once for the landings; all of the machine's where none is given.</param>
    /// <returns>The shares, factor by factor.</returns>
    /// <exception cref="RefusedInputException">
    /// A value outside its range, nothing that varies, or too many rows left out.
    /// </exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Sensitivity(1000).StopDistance[0].Total.Value // 0.44</code></example>
    public LandingSensitivity Sensitivity(
        int rows = 4096, long seed = 1, double maximumRefusedShare = 0.01, int resamples = 1000, double confidence = 0.95, int? threads = null)
    {
        Require.Between(rows, 100, MostRows, "rows", "Fewer have no error to speak of; more are too many landings.");
        Require.Between(resamples, 10, MostResamples, "resamples", "An interval needs some.");
        Require.Between(confidence, 0.5, 0.999, "confidence", "Less is no confidence; more needs more resamples than there are.");
        Require.Between(maximumRefusedShare, 0, 0.5, "maximum share of rows left out", "With more, the rest says nothing of the whole.");
        IReadOnlyList<IReadOnlyList<int>> factors = _sampler.Factors;
        if (factors.Count == 0)
            throw Require.Refused(
                nameof(Inputs), "inputs", "a set in which every one is fixed", "at least one that varies",
                "There is no variance to share out.");

        ulong key = unchecked((ulong)seed);
        LandingOutcome[] Matrix(ulong fromSecond) => ScatterRun.Fly(rows, Threads(threads), (first, inputs) =>
        {
            for (int i = 0; i < inputs.Length; i++)
                _sampler.Draw(new SaltelliUniforms(key, (ulong)(first + i), fromSecond), out inputs[i]);
        }, Voice);
        double[] Results(LandingOutcome[] outcomes, Func<LandingOutcome, double> result) =>
            [.. outcomes.Select(outcome => outcome.Refusal == LandingRefusal.None ? result(outcome) : double.NaN)];

        LandingOutcome[] a = Matrix(SaltelliUniforms.First);
        LandingOutcome[] b = Matrix(SaltelliUniforms.Second);
        LandingOutcome[][] mixed = [.. factors.Select(factor => Matrix(SaltelliUniforms.Mask(factor)))];
        SobolIndices Of(Func<LandingOutcome, double> result) =>
            new(Results(a, result), Results(b, result), [.. mixed.Select(m => Results(m, result))]);

        SobolIndices touchdown = Of(outcome => outcome.TouchdownDistance);
        SobolIndices stop = Of(outcome => outcome.StopDistance);
        double leftOut = 1 - (double)touchdown.Rows / rows;
        if (leftOut > maximumRefusedShare)
            throw Require.Refused(
                nameof(maximumRefusedShare), "share of rows with a landing that cannot happen",
                PlainNumber.Of(leftOut, "g3"), $"at most {PlainNumber.Of(maximumRefusedShare, "g3")}",
                "A variance is of numbers, and a landing that cannot happen has none; narrow the distributions, or allow more and read the shares as those of the landings that happen.");
        IReadOnlyList<SensitivityIndex> Shares(SobolIndices indices) =>
            SensitivityIndex.List(factors, indices.Variance > 0 ? indices.Estimate(resamples, confidence, key) : null);
        return new LandingSensitivity(rows, rows - touchdown.Rows, Shares(touchdown), Shares(stop));
    }

    private LandingVoice Voice => ScatterCheck.Voice(Inputs);

    private static int Threads(int? threads) => threads is null
        ? Environment.ProcessorCount
        : (int)Require.Between(threads.Value, 1, 1024, "number of threads", "One does the work; more share it.", nameof(threads));
}
