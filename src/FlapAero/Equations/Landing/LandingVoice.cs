namespace FlapAero.Equations;

/// <summary>
/// How whoever asked for a landing calls its numbers: a table by its columns in SI, a program by quantities in units of its own.
/// </summary>
internal abstract class LandingVoice
{
    /// <summary>The voice of tables.</summary>
    public static LandingVoice OfTables { get; } = new TableVoice();

    /// <summary>What code calls an input.</summary>
    public abstract string Argument(LandingVariable variable);

    /// <summary>What an input is called.</summary>
    public abstract string Input(LandingVariable variable);

    /// <summary>What a result is called.</summary>
    public abstract string Result(int column);

    /// <summary>What a value is called where any that is finite would do.</summary>
    public abstract string Finite { get; }

    /// <summary>A value of an input, from SI and degrees, where the input is named beside it.</summary>
    public abstract string Value(LandingVariable variable, double si);

    /// <summary>A value of an input's kind with its unit, for a sentence.</summary>
    public abstract string Shown(LandingVariable variable, double si);

    /// <summary>The value itself.</summary>
    public abstract object Actual(LandingVariable variable, double si);

    private sealed class TableVoice : LandingVoice
    {
        public override string Finite => "a finite number";

        public override string Argument(LandingVariable variable) => Input(variable);

        public override string Input(LandingVariable variable) => LandingColumn.Of(variable).Name;

        public override string Result(int column) => ResultColumns.Names[column];

        public override string Value(LandingVariable variable, double si) => PlainNumber.Of(si, "g6");

        public override string Shown(LandingVariable variable, double si) => $"{PlainNumber.InWords(si, "g5")} {LandingColumn.Of(variable).Unit}".TrimEnd();

        public override object Actual(LandingVariable variable, double si) => si;
    }
}
