using System.Diagnostics;
using System.Globalization;
using System.Text;
using FlapAero.Equations;

namespace FlapAero.Published.Tests.Landings;

/// <summary>
/// Random landings against landing_reference.py, which writes the definition a second time on SciPy's integrator. It runs where
/// the system's Python has SciPy, and is skipped with the reason elsewhere.
/// </summary>
public sealed class ReferenceProgramTests
{
    private const string Python = "/usr/bin/python3";
    private const int Count = 24;

    // What the library promises at its default tolerance.
    private const double Promised = 2e-4;

    [Fact]
    public async Task Landing_RandomInput_IsTheReferenceProgramsLanding()
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        Assert.SkipUnless(File.Exists(Python), $"There is no {Python}: install python3-scipy to run this.");
        (int exit, _) = await Run(["-c", "import scipy.integrate"], "", cancellation);
        Assert.SkipUnless(exit == 0, $"{Python} has no SciPy: install python3-scipy to run this.");

        LandingInput[] landings = [.. Random(seed: 20)];
        (exit, string output) = await Run([Path.Combine(AppContext.BaseDirectory, "landing_reference.py")], Table(landings), cancellation);

        Assert.Equal(0, exit);
        string[] rows = output.TrimEnd('\n').Split('\n');
        Assert.Equal(landings.Length, rows.Length);
        Assert.All(landings.Zip(rows), pair => AssertSame(pair.First, pair.Second));
        // Refused on both sides is agreement too, but not much of it.
        Assert.True(rows.Count(row => row.Length > 0) > Count / 2);
    }

    private static void AssertSame(in LandingInput input, string row)
    {
        LandingOutcome outcome = LandingSolver.Solve(input);
        if (row.Length == 0)
        {
            Assert.NotEqual(LandingRefusal.None, outcome.Refusal);
            return;
        }

        Assert.Equal(LandingRefusal.None, outcome.Refusal);
        double[] reference = [.. row.Split(',').Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
        double[] ours = LandingOutcome.Results(outcome).ToArray();
        Assert.All(ResultColumns.Names.Zip(reference, ours), column =>
            Assert.True(
                Math.Abs(column.Third - column.Second) <= Promised * Math.Abs(column.Second),
                FormattableString.Invariant($"{column.First}: {column.Second:g9} by the reference, {column.Third:g9} here.")));
    }

    private static string Table(IEnumerable<LandingInput> landings)
    {
        StringBuilder table = new();
        table.AppendJoin(',', LandingColumn.All.Select(column => column.Name)).Append('\n');
        foreach (LandingInput landing in landings)
        {
            double[] values = LandingInput.Rows([landing]).ToArray();
            table.AppendJoin(',', values.Select(value => value.ToString("r", CultureInfo.InvariantCulture))).Append('\n');
        }

        return table.ToString();
    }

    /// <summary>Light aeroplanes with 1.25 to 1.4 times their stalling speed over the threshold, uphill and down, in head- and tailwind.</summary>
    private static IEnumerable<LandingInput> Random(int seed)
    {
        Random random = new(seed);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        for (int i = 0; i < Count; i++)
        {
            LandingInput landing = new()
            {
                Mass = Between(500, 1500),
                WingArea = Between(11, 18),
                Span = Between(9, 12),
                WingHeight = Between(0.6, 2.2),
                ZeroLiftDrag = Between(0.025, 0.09),
                Oswald = Between(0.65, 0.85),
                MaximumLift = Between(1.3, 2.2),
                Density = Between(0.95, 1.25),
                Headwind = Between(-4, 8),
                ThresholdHeight = 15.24,
                PathAngleDegrees = Between(2.5, 4.5),
                FlareTimeConstant = Between(1, 2),
                HoldOffHeight = Between(0.2, 0.6),
                TouchdownLiftFraction = Between(0.8, 0.95),
                PowerCutHeight = Between(2, 25),
                PowerCutTime = Between(0, 5),
                IdleThrust = Between(-150, 50),
                NoseHighLift = Between(0.7, 1.2),
                NoseLowerSpeedFraction = Between(0.6, 0.9),
                LevelLift = Between(0.2, 0.6),
                RollingFriction = Between(0.02, 0.05),
                BrakingFriction = Between(0.15, 0.4),
                RunwaySlope = Between(-0.02, 0.02),
                IdleThrustSlope = Between(-6, 2),
                IdleThrustCurvature = Between(-0.2, 0.05),
            };
            double stall = StallLaws.Speed(
                landing.Mass * StandardConstants.Gravity, 1, landing.Density, landing.WingArea, landing.MaximumLift);
            yield return landing with { ThresholdSpeed = Between(1.25, 1.4) * stall };
        }
    }

    private static async Task<(int Exit, string Output)> Run(string[] arguments, string input, CancellationToken cancellation)
    {
        using Process process = Process.Start(new ProcessStartInfo(Python, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(cancellation);
        Task<string> errors = process.StandardError.ReadToEndAsync(cancellation);
        await process.StandardInput.WriteAsync(input.AsMemory(), cancellation);
        process.StandardInput.Close();
        await process.WaitForExitAsync(cancellation);
        TestContext.Current.SendDiagnosticMessage(await errors);
        return (process.ExitCode, await output);
    }
}
