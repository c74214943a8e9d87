namespace FlapAero.Equations;

/// <summary>
/// How whoever asked for a landing calls its numbers. This is the voice of tables, by their columns and in SI; a program that speaks in
/// quantities has another.
/// </summary>
internal class LandingVoice
{
    /// <summary>The voice of tables.</summary>
    public static LandingVoice OfTables { get; } = new();

    /// <summary>What a value is called where any that is finite would do.</summary>
    public virtual string Finite => "a finite number";

    /// <summary>What code calls an input.</summary>
    public virtual string Argument(LandingVariable variable) => Input(variable);

    /// <summary>What an input is called.</summary>
    public virtual string Input(LandingVariable variable) => LandingColumn.Of(variable).Name;

    /// <summary>What a result is called.</summary>
    public virtual string Result(int column) => ResultColumns.Names[column];

    /// <summary>A value of an input, from SI and degrees, where the input is named beside it.</summary>
    public virtual string Value(LandingVariable variable, double si) => PlainNumber.Of(si, "g6");

    /// <summary>A value of an input's kind with its unit, for a sentence.</summary>
    public virtual string Shown(LandingVariable variable, double si) =>
        $"{PlainNumber.InWords(si, "g5")} {LandingColumn.Of(variable).Unit}".TrimEnd();

    /// <summary>The value itself.</summary>
    public virtual object Actual(LandingVariable variable, double si) => si;
}
