namespace FlapAero;

/// <summary>A number of a manual beside the fitted aeroplane's own. Immutable.</summary>
public sealed class ManualResidual
{
    internal ManualResidual(Manuals.ManualNumber number, double model, double own, double used)
    {
        (What, Written, Unit, Given, Rounding, Model, Line) =
            (number.What, number.Written, number.Unit, number.Given, number.Step, double.IsFinite(model) ? model : null, number.Line);
        IsCompared = !number.IsFitted;
        IsTakenOut = number.IsFitted && double.IsInfinity(used);
        Enlarged = number.IsFitted && double.IsFinite(used) ? used / own : 1;
        IsReached = Model is { } has && Math.Abs(has - Given) <= Rounding;
    }

    /// <summary>What it is.</summary>
    public string What { get; }

    /// <summary>As the manual prints it.</summary>
    public string Written { get; }

    /// <summary>The line in the manual's file.</summary>
    public int Line { get; }

    /// <summary>The unit of the two numbers; empty for a ratio.</summary>
    public string Unit { get; }

    /// <summary>The manual's number; an indicated airspeed through the calibration table.</summary>
    public double Given { get; }

    /// <summary>The step by which it is rounded.</summary>
    public double Rounding { get; }

    /// <summary>The fitted aeroplane's number; none where it cannot do what the manual has.</summary>
    public double? Model { get; }

    /// <summary>Whether the aeroplane has it within one step of the rounding.</summary>
    public bool IsReached { get; }

    /// <summary>Whether it is only compared, and determines nothing.</summary>
    public bool IsCompared { get; }

    /// <summary>Whether it lies so far outside its kind that it was taken out.</summary>
    public bool IsTakenOut { get; }

    /// <summary>By how much its error had to be enlarged so that it does not bend other numbers; 1 where the model follows its kind.</summary>
    public double Enlarged { get; }

    /// <summary>Both numbers.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{What}: {Written}, model {Model:0.##} {Unit}").TrimEnd();
}
