using System.Diagnostics;
using System.Globalization;
using FlapAero.Equations;
using nietras.SeparatedValues;

namespace FlapAero.Benchmarks;

/// <summary>The short mode: times and worst errors, in lines to be read beside those of another program run in the same minute.</summary>
internal static class LandingTimes
{
    private const int ScatterSize = 10_240;
    private static readonly TimeSpan Measured = TimeSpan.FromSeconds(1);

    public static int Print(string path, TextWriter output, TextWriter error)
    {
        if (!File.Exists(path))
        {
            error.WriteLine($"There is no file {path}.");
            return 2;
        }

        (LandingInput[] inputs, double[][] expected) = Read(path);
        var outcomes = new LandingOutcome[inputs.Length];
        double one = Nanoseconds(inputs.Length, () =>
        {
            for (int i = 0; i < inputs.Length; i++)
                outcomes[i] = LandingSolver.Solve(inputs[i]);
        });
        Line(output, $"one by one, one core:      {inputs.Length} landings, {one:0} ns a landing, worst relative error of 13 columns {Worst(outcomes, expected):e1}");

        double many = Nanoseconds(inputs.Length, () => LandingSolver.Solve(inputs, outcomes));
        Line(output, $"side by side, one core:    {inputs.Length} landings, {many:0} ns a landing, worst relative error of 13 columns {Worst(outcomes, expected):e1}");

        LandingInput[] scatter = Scatter.Draw(Scatter.Around(inputs), ScatterSize, 1);
        var scattered = new LandingOutcome[ScatterSize];
        double core = Nanoseconds(ScatterSize, () => LandingSolver.Solve(scatter, scattered));
        Line(output, $"scatter, one core:         {ScatterSize} landings, {core:0} ns a landing, {core * ScatterSize / 1e6:0.0} ms");
        LandingInput[] gusts = Scatter.InGusts(scatter, 2);
        double gusty = Nanoseconds(ScatterSize, () => LandingSolver.Solve(gusts, scattered));
        Line(output, $"in gusts, one core:        {ScatterSize} landings, {gusty:0} ns a landing, {gusty / core:0.00} times the calm one");
        double all = Nanoseconds(ScatterSize, () => LandingSolver.SolveInParallel(scatter, scattered));
        Line(output, $"scatter, {Environment.ProcessorCount} cores:        {ScatterSize} landings, {all:0} ns a landing, {all * ScatterSize / 1e6:0.0} ms");
        double alone = Nanoseconds(ScatterSize, () =>
        {
            for (int i = 0; i < ScatterSize; i++)
                scattered[i] = LandingSolver.Solve(scatter[i]);
        });
        Line(output, $"scatter, one by one:       {ScatterSize} landings, {alone:0} ns a landing");
        return 0;
    }

    /// <summary>The fastest of many runs: what the machine does beside it only ever adds.</summary>
    private static double Nanoseconds(int landings, Action run)
    {
        var whole = Stopwatch.StartNew();
        double best = double.PositiveInfinity;
        while (whole.Elapsed < Measured * 2)
        {
            long start = Stopwatch.GetTimestamp();
            run();
            double taken = Stopwatch.GetElapsedTime(start).TotalNanoseconds / landings;
            // The first half is for the just-in-time compiler.
            if (whole.Elapsed > Measured)
                best = Math.Min(best, taken);
        }

        return best;
    }

    private static double Worst(LandingOutcome[] outcomes, double[][] expected)
    {
        double worst = 0;
        for (int i = 0; i < outcomes.Length; i++)
        {
            ReadOnlySpan<double> results = LandingOutcome.Results(outcomes[i]);
            for (int j = 0; j < expected[i].Length; j++)
                worst = Math.Max(worst, Math.Abs(results[j] / expected[i][j] - 1));
        }

        return worst;
    }

    private static (LandingInput[] Inputs, double[][] Expected) Read(string path)
    {
        using SepReader reader = Sep.Reader(o => o with { CultureInfo = CultureInfo.InvariantCulture }).FromFile(path);
        SepReaderHeader header = reader.Header;
        string[] resultColumns = [.. ResultColumns.Names];
        List<LandingInput> inputs = [];
        List<double[]> expected = [];
        foreach (SepReader.Row row in reader)
        {
            double[] values = [.. row[..].ToStringsArray().Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
            inputs.Add(LandingInput.FromRow(
            [
                .. LandingColumn.All.Select(column => header.TryIndexOf(column.Name, out int place) ? values[place] : column.LeftOut!.Value),
            ]));
            expected.Add(row[resultColumns].ParseToArray<double>());
        }

        return ([.. inputs], [.. expected]);
    }

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(FormattableString.Invariant(text));
}
