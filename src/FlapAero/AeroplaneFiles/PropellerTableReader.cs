namespace FlapAero.AeroplaneFiles;

/// <summary>The propeller's table: each cell in its range, then each column's course, then what only both columns show.</summary>
internal static class PropellerTableReader
{
    public static PropellerTable? Read(ObjectPart part, FaultList faults)
    {
        part.Origin();
        const string rowsWanted = "five rows or more, each { \"advanceRatio\": …, \"thrustCoefficient\": …, \"powerCoefficient\": … },";
        if (part.List("rows", 5, rowsWanted) is not { } entries) return null;
        ObjectPart?[] rows = [.. entries.Select(entry => ObjectPart.Of(entry.Item, entry.Place, FileKeys.PropellerRow, faults))];
        Given<double>?[] Column(string key, Action<double> inRange) => [.. rows.Select(row => Cell(row?.Number(key), inRange, faults))];
        Given<double>?[] ratios = Column("advanceRatio", value => PropellerTable.RequireRow(value, 0, 0));
        Given<double>?[] thrusts = Column("thrustCoefficient", value => PropellerTable.RequireRow(0, value, 0));
        Given<double>?[] powers = Column("powerCoefficient", value => PropellerTable.RequireRow(0, 0, value));
        bool sound = StartsAtRest(ratios[0], faults)
            & Columns.Rise(ratios, "the advance ratio rises from row to row", faults)
            & CrossesOnce(thrusts, "thrust", faults)
            & CrossesOnce(powers, "power", faults);
        if (!sound || ratios.Concat(thrusts).Concat(powers).Contains(null)) return null;
        if (!GivesNoMoreThanItTakes(ratios, thrusts, powers, faults)) return null;

        PropellerTable Make() => new(ratios.Select((ratio, row) => (ratio!.Value, thrusts[row]!.Value, powers[row]!.Value)));
        if (Refusal.Of(Make) is not { } refusal) return Make();
        faults.Add(ratios[0]!.Line, ratios[0]!.Place, refusal.Problem, refusal.Expected);
        return null;
    }

    private static Given<double>? Cell(Given<double>? cell, Action<double> inRange, FaultList faults)
    {
        if (cell is null) return null;
        object Try()
        {
            inRange(cell.Value);
            return cell;
        }

        if (Refusal.Of(Try) is not { } refusal) return cell;
        faults.Add(cell.Line, cell.Place, refusal.Problem, refusal.Expected);
        return null;
    }

    private static bool StartsAtRest(Given<double>? first, FaultList faults)
    {
        if (first is null or { Value: 0 }) return true;
        faults.Add(
            first.Line, first.Place, $"the table starts at {first.Written}, not at 0",
            "the first row is the propeller at rest: add a row with an advance ratio of 0");
        return false;
    }

    /// <summary>One fault a column at most: after the first the rest would only say it again.</summary>
    private static bool CrossesOnce(Given<double>?[] column, string what, FaultList faults)
    {
        // Of a column with a hole nobody knows how it runs there.
        if (column.Contains(null)) return true;
        Given<double>[] cells = [.. column.OfType<Given<double>>()];
        int back = Enumerable.Range(1, cells.Length - 1).FirstOrDefault(row => cells[row].Value >= 0 && cells[row - 1].Value <= 0);
        bool Fault(Given<double> cell, string problem, string expected)
        {
            faults.Add(cell.Line, cell.Place, problem, expected);
            return false;
        }

        if (cells[0].Value <= 0) return Fault(cells[0], $"{cells[0].Written} is not positive", $"at rest the {what} coefficient is positive");
        if (back > 0)
            return Fault(
                cells[back], $"{cells[back].Written} follows on {cells[back - 1].Written} of the row before",
                $"the {what} coefficient changes its sign once");
        return cells[^1].Value < 0 || Fault(
            cells[^1], $"the table ends at {cells[^1].Written}",
            $"it must reach past zero of the {what} coefficient, where a glide turns the propeller: add rows");
    }

    private static bool GivesNoMoreThanItTakes(
        Given<double>?[] ratios, Given<double>?[] thrusts, Given<double>?[] powers, FaultList faults)
    {
        bool sound = true;
        for (int row = 0; row < ratios.Length; row++)
        {
            (Given<double> ratio, Given<double> thrust, Given<double> power) = (ratios[row]!, thrusts[row]!, powers[row]!);
            if (PropellerTable.GivesNoMoreThanItTakes(ratio.Value, thrust.Value, power.Value)) continue;
            faults.Add(
                power.Line, power.Place,
                $"{power.Written} is less than advance ratio times thrust coefficient, {ratio.Written} × {thrust.Written}",
                "no propeller gives more power than it takes, from the engine or from the air; are the two columns exchanged?");
            sound = false;
        }

        return sound;
    }
}
