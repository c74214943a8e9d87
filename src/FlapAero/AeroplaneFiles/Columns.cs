namespace FlapAero.AeroplaneFiles;

/// <summary>What must hold down a column of a table.</summary>
internal static class Columns
{
    /// <summary>Whether the cells that could be read rise from row to row; each that does not is a fault.</summary>
    public static bool Rise(IEnumerable<Given<double>?> column, string why, FaultList faults)
    {
        bool rises = true;
        Given<double>? before = null;
        foreach (Given<double> cell in column.OfType<Given<double>>())
        {
            if (before is not null && cell.Value <= before.Value)
            {
                faults.Add(cell.Line, cell.Place, $"{cell.Written} is not more than {before.Written} of the row before", why);
                rises = false;
            }

            before = cell;
        }

        return rises;
    }
}
