namespace FlapAero.Equations;

/// <summary>
/// How whoever asked for a landing calls its numbers: a table by its columns in SI, a program by quantities in units of its own.
/// Columns count as in <see cref="LandingBounds"/>.
/// </summary>
internal abstract class LandingVoice
{
    /// <summary>The voice of tables.</summary>
    public static LandingVoice OfTables { get; } = new TableVoice();

    /// <summary>What code calls an input.</summary>
    public abstract string Argument(int column);

    /// <summary>What an input is called.</summary>
    public abstract string Input(int column);

    /// <summary>What a result is called.</summary>
    public abstract string Result(int column);

    /// <summary>What a value is called where any that is finite would do.</summary>
    public abstract string Finite { get; }

    /// <summary>A value of an input, from SI and degrees, where the input is named beside it.</summary>
    public abstract string Value(int column, double si);

    /// <summary>A value of an input's kind with its unit, for a sentence.</summary>
    public abstract string Shown(int column, double si);

    /// <summary>The value itself.</summary>
    public abstract object Actual(int column, double si);

    private sealed class TableVoice : LandingVoice
    {
        private static readonly string[] Units =
        [
            "kg", "m²", "m", "m", "", "", "", "kg/m³", "m/s", "m", "m/s", "°", "s", "m", "", "m", "s", "N", "", "", "", "", "", "",
        ];

        public override string Finite => "a finite number";

        public override string Argument(int column) => Input(column);

        public override string Input(int column) => LandingColumns.Inputs[column];

        public override string Result(int column) => LandingColumns.Results[column];

        public override string Value(int column, double si) => PlainNumber.Of(si, "g6");

        public override string Shown(int column, double si) => $"{PlainNumber.InWords(si, "g5")} {Units[column]}".TrimEnd();

        public override object Actual(int column, double si) => si;
    }
}
