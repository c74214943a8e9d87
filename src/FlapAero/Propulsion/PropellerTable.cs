using FlapAero.Equations;

namespace FlapAero;

/// <summary>
/// Thrust and power coefficients of a fixed-pitch propeller against its advance ratio, C_T(J) and C_P(J). Immutable. Between
/// rows piecewise cubic without overshoot; from rest to the last row, which lies past zero of both, and nowhere else.
/// </summary>
public sealed class PropellerTable
{
    private readonly PropellerCurve _thrust;
    private readonly PropellerCurve _power;

    /// <summary>A table.</summary>
    /// <param name="rows">
    /// J, C_T, C_P: at least five rows, J rising from 0 to at most 5; both coefficients positive at rest, negative in the
    /// last row, and without a second change of sign; sizes to 1; C_P at least J C_T, for none gives more than it takes.
    /// </param>
    /// <exception cref="RefusedInputException">Rows that are no propeller's; a value outside its range.</exception>
    public PropellerTable(IEnumerable<(double AdvanceRatio, double ThrustCoefficient, double PowerCoefficient)> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        Rows = [.. rows];
        if (Rows.Count < 5)
            throw Require.RefusedWhole(nameof(rows), "rows: a propeller's table needs at least five.");
        foreach ((double ratio, double thrust, double power) in Rows)
            RequireRow(ratio, thrust, power, nameof(rows));

        if (Rows[0].AdvanceRatio != 0 || Rows.Zip(Rows.Skip(1)).Any(pair => !(pair.Second.AdvanceRatio > pair.First.AdvanceRatio)))
            throw Require.RefusedWhole(
                nameof(rows),
                "rows: the advance ratio starts at 0 (at rest) and rises from row to row.");
        double[] ratios = [.. Rows.Select(row => row.AdvanceRatio)];
        double[] thrusts = [.. Rows.Select(row => row.ThrustCoefficient)];
        double[] powers = [.. Rows.Select(row => row.PowerCoefficient)];
        _thrust = new PropellerCurve(ratios, thrusts);
        _power = new PropellerCurve(ratios, powers);
        ZeroThrustAdvanceRatio = Zero(_thrust, ratios, thrusts, "thrust");
        ZeroPowerAdvanceRatio = Zero(_power, ratios, powers, "power");
        if (!Rows.All(row => GivesNoMoreThanItTakes(row.AdvanceRatio, row.ThrustCoefficient, row.PowerCoefficient)))
            throw Require.RefusedWhole(
                nameof(rows), "rows: no propeller gives more power than it takes: C_P is at least J C_T in every row.");
    }

    /// <summary>The rows.</summary>
    public IReadOnlyList<(double AdvanceRatio, double ThrustCoefficient, double PowerCoefficient)> Rows { get; }

    /// <summary>J without thrust.</summary>
    public double ZeroThrustAdvanceRatio { get; }

    /// <summary>J without power: beyond it the air drives the propeller.</summary>
    public double ZeroPowerAdvanceRatio { get; }

    /// <summary>The last J of the table.</summary>
    public double LargestAdvanceRatio => Rows[^1].AdvanceRatio;

    /// <summary>Thrust coefficient at an advance ratio.</summary>
    /// <remarks>
    /// Formula: the table, piecewise cubic (Pchip). Range: J from 0 to the last row. Source: [uiuc-propellers] for
    /// C_T's definition.
    /// </remarks>
    /// <param name="advanceRatio">J = V/(N D).</param>
    /// <returns>C_T.</returns>
    /// <exception cref="RefusedInputException">A J beyond the table.</exception>
    /// <example><code>propeller.Table.ThrustCoefficient(0.4) // 0.08</code></example>
    public double ThrustCoefficient(double advanceRatio) => _thrust.At(InTable(advanceRatio));

    /// <summary>Power coefficient at an advance ratio.</summary>
    /// <remarks>
    /// Formula: the table, piecewise cubic (Pchip). Range: J from 0 to the last row. Source: [uiuc-propellers] for
    /// C_P's definition.
    /// </remarks>
    /// <param name="advanceRatio">J = V/(N D).</param>
    /// <returns>C_P.</returns>
    /// <exception cref="RefusedInputException">A J beyond the table.</exception>
    /// <example><code>propeller.Table.PowerCoefficient(0.8) // 0.03</code></example>
    public double PowerCoefficient(double advanceRatio) => _power.At(InTable(advanceRatio));

    /// <summary>Refuses numbers of one row that lie outside their ranges.</summary>
    internal static void RequireRow(double ratio, double thrust, double power, string? argument = null)
    {
        Require.Between(ratio, 0, 5, "advance ratio", "Propellers of light aeroplanes work inside it.", argument);
        Require.Between(thrust, -1, 1, "thrust coefficient", "No propeller has more.", argument);
        Require.Between(power, -1, 1, "power coefficient", "No propeller has more.", argument);
    }

    /// <summary>T V ≤ P: an efficiency of 1 at most, and a windmill that takes no more than it brakes for.</summary>
    internal static bool GivesNoMoreThanItTakes(double ratio, double thrust, double power) => power >= ratio * thrust;

    internal double SiThrust(double advanceRatio) => _thrust.At(advanceRatio);

    internal double SiPower(double advanceRatio) => _power.At(advanceRatio);

    internal double InTable(double advanceRatio) => Require.Between(
        advanceRatio, 0, LargestAdvanceRatio, "advance ratio", "The propeller was not measured beyond its table.");

    private static double Zero(PropellerCurve curve, double[] ratios, double[] values, string what)
    {
        int last = Array.FindLastIndex(values, value => value > 0);
        bool single = values[0] > 0 && last < values.Length - 1 && values.Take(last + 1).All(value => value > 0)
            && values.Skip(last + 2).All(value => value < 0) && values[^1] < 0;
        if (!single)
            throw Require.RefusedWhole(
                nameof(values), $"rows: the {what} coefficient is positive at rest, changes sign once, and is negative in the last row: "
                + "a gliding aeroplane's propeller works past zero.");
        return values[last + 1] == 0 ? ratios[last + 1] : curve.ZeroBetween(ratios[last], ratios[last + 1]);
    }
}
