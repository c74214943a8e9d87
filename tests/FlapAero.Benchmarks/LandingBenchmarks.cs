using BenchmarkDotNet.Attributes;
using FlapAero.Equations;

namespace FlapAero.Benchmarks;

/// <summary>One landing, and one of a scatter, at the default tolerance. Invented landings: no file is needed.</summary>
[MemoryDiagnoser]
public class LandingBenchmarks
{
    private const int Count = 1024;
    private readonly LandingOutcome[] _outcomes = new LandingOutcome[Count];
    private LandingInput[] _inputs = [];

    [GlobalSetup]
    public void Draw() => _inputs = Scatter.Draw(Scatter.LightAeroplanes, Count, 1);

    [Benchmark(Baseline = true, OperationsPerInvoke = Count)]
    public double OneByOne()
    {
        double sum = 0;
        foreach (LandingInput input in _inputs)
            sum += LandingSolver.Solve(input).StopDistance;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public double SideBySide()
    {
        LandingSolver.Solve(_inputs, _outcomes);
        return _outcomes[Count - 1].StopDistance;
    }
}
