using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;

namespace FlapAero.Tests.Architecture;

/// <summary>Every example in a doc comment is run: what stands behind its // is what it gives, to the last printed digit.</summary>
public sealed class ExampleTests
{
    private static readonly Lazy<Task<IReadOnlyDictionary<string, double>>> Results = new(Evaluate);

    public static TheoryData<string> Examples => [.. Written().Keys];

    [Theory, MemberData(nameof(Examples))]
    public async Task Example_Evaluated_GivesWhatItSays(string id)
    {
        string expected = Written()[id].Result;
        int decimals = expected.Contains('.') ? expected.Length - expected.IndexOf('.') - 1 : 0;
        double tolerance = 0.5 * Math.Pow(10, -decimals) * (1 + 1e-9);

        double actual = (await Results.Value)[id];

        Assert.InRange(actual, double.Parse(expected, CultureInfo.InvariantCulture) - tolerance, double.Parse(expected, CultureInfo.InvariantCulture) + tolerance);
    }

    private static Dictionary<string, (string Code, string Result)> Written()
    {
        var written = new Dictionary<string, (string, string)>();
        foreach (MethodInfo method in DocumentedCalculations.Methods())
        {
            string code = DocumentedCalculations.Comment(method)?.Element("example")?.Value ?? "";
            if (code.Split("//") is [var expression, var result])
                written[DocumentedCalculations.Id(method)] = (expression.Trim(), result.Trim());
        }

        return written;
    }

    private static async Task<IReadOnlyDictionary<string, double>> Evaluate()
    {
        Dictionary<string, (string Code, string Result)> written = Written();
        // One submission for all: compiling is what takes time.
        string script = $"new double[] {{\n{string.Join(",\n", written.Values.Select(example => $"(double)({example.Code})"))}\n}}";
        ScriptOptions options = ScriptOptions.Default
            .AddReferences(typeof(Air).Assembly, typeof(UnitsNet.Length).Assembly)
            .AddImports("System", "FlapAero", "UnitsNet", "UnitsNet.Units");
        double[] values = await CSharpScript.EvaluateAsync<double[]>(
            script, options, globals: new Names(), cancellationToken: TestContext.Current.CancellationToken);
        return written.Keys.Zip(values).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    /// <summary>The names that examples may use.</summary>
    public sealed class Names
    {
#pragma warning disable CA1822, IDE1006 // Script globals are instance members, and read as local variables do.
        public Configuration flapsUp => DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp);

        public LiftingLine elliptic => new(
            WingPlanform.Elliptic(UnitsNet.Length.FromMeters(10), UnitsNet.Length.FromMeters(1.5)),
            new WingSection(2 * Math.PI, UnitsNet.Angle.FromDegrees(-2), 1.5));

        public Propeller propeller => new(
            UnitsNet.Length.FromMeters(2),
            new PropellerTable([(0, 0.1, 0.05), (0.4, 0.08, 0.05), (0.8, 0.03, 0.03), (1, 0, 0.01), (1.2, -0.04, -0.02)]),
            UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(2700));

        public ClosedThrottleEngine engine => new(
            UnitsNet.Torque.FromNewtonMeters(100), UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(800));

        public LandingSetup landing => UsualLanding.Setup;
#pragma warning restore CA1822, IDE1006
    }
}
