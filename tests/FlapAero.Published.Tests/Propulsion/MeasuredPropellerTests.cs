using FlapAero.Equations;

namespace FlapAero.Published.Tests.Propulsion;

/// <summary>
/// Measured propellers: what the interpolation makes of a row that it was not given, and the shape that the model relies on.
/// </summary>
public sealed class MeasuredPropellerTests
{
    public static TheoryData<string> Names => [.. Evaluations.MeasuredPropellers.Select(propeller => propeller.Name)];

    // The rows are far apart (0.1 in J) and scatter by a per cent or two; 0.003 is 3 % of a propeller's largest coefficient.
    [Theory, MemberData(nameof(Names))]
    public void Curve_WithoutOneRow_ComesNearIt(string name)
    {
        PublishedRow[] rows = [.. Evaluations.MeasuredRows(name)];
        for (int left = 1; left < rows.Length - 1; left++)
        {
            PublishedRow[] others = [.. rows.Where((_, index) => index != left)];
            double ratio = Evaluations.AdvanceRatio(rows[left]);
            Assert.Equal(rows[left].Numbers[0].Value, Evaluations.Curve(others, 0).At(ratio), 0.003);
            Assert.Equal(rows[left].Numbers[1].Value, Evaluations.Curve(others, 1).At(ratio), 0.003);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Rows_PastZeroThrust_StillTakePower(string name)
    {
        // Which is why a table for the glide has to go on: an idling propeller brakes before it is driven.
        PublishedRow last = Evaluations.MeasuredRows(name).Last();
        Assert.True(last.Numbers[0].Value < 0 && last.Numbers[1].Value > 0);
    }

    [Theory, MemberData(nameof(Names))]
    public void PropellerTable_MeasuredRowsAlone_IsRefused(string name)
    {
        (double, double, double)[] rows =
            [(0, 0.09, 0.04), .. Evaluations.MeasuredRows(name).Select(row => (Evaluations.AdvanceRatio(row), row.Numbers[0].Value, row.Numbers[1].Value))];
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(() => new PropellerTable(rows));
        Assert.Contains("power coefficient", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ZeroThrust_CoarserPitch_IsLater()
    {
        double[] zeros = [.. Evaluations.MeasuredPropellers.Select(propeller =>
        {
            PublishedRow[] rows = [.. Evaluations.MeasuredRows(propeller.Name)];
            PropellerCurve thrust = Evaluations.Curve(rows, 0);
            return thrust.ZeroBetween(Evaluations.AdvanceRatio(rows[^2]), Evaluations.AdvanceRatio(rows[^1]));
        })];
        Assert.True(zeros[1] > zeros[0]);
    }
}
