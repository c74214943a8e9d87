namespace FlapAero;

/// <summary>How well a manual's numbers determine a value.</summary>
public enum FitStanding
{
    /// <summary>The manual's numbers determine it.</summary>
    Fitted,

    /// <summary>They narrow it down, but what is typical still counts.</summary>
    WeaklyFitted,

    /// <summary>They say nothing of it: it is what is typical, with the spread of the kind as its error.</summary>
    Assumed,
}

/// <summary>A value of an aeroplane, or of its manual's pilot, as the manual's numbers leave it. Immutable.</summary>
public sealed class FittedValue
{
    internal FittedValue(string name, string unit, double value, double error, FitStanding standing, string from) =>
        (Name, Unit, Value, StandardError, Standing, From) = (name, unit, value, error, standing, from);

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its unit; empty for a coefficient.</summary>
    public string Unit { get; }

    /// <summary>The value in its unit.</summary>
    public double Value { get; }

    /// <summary>Its standard error, in the same unit.</summary>
    public double StandardError { get; }

    /// <summary>How well it is determined.</summary>
    public FitStanding Standing { get; }

    /// <summary>What determined it, or from where it is assumed.</summary>
    public string From { get; }

    /// <summary>Name and value.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Name}: {Value:0.####} ± {StandardError:0.####} {Unit}").TrimEnd();
}
