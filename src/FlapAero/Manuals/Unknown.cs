namespace FlapAero.Manuals;

/// <summary>Which laws an unknown enters, or a number hangs on.</summary>
[Flags]
internal enum Parts
{
    None = 0,
    Lift = 1,
    Drag = 2,
    FlapDrag = 4,
    Propeller = 8,
    ClosedThrottle = 16,
    FullThrottle = 32,
    StoppedPropeller = 64,
    Attitude = 128,
    RoundOut = 256,
    ApproachSpeed = 512,
}

/// <summary>
/// A value of the aeroplane or of the manual's pilot that is looked for, with what is typical of light trainers: counted in spreads from
/// the typical value. Immutable.
/// </summary>
internal sealed class Unknown
{
    private readonly bool _isFactor;

    private Unknown(string name, string unit, Parts parts, int? flaps, double typical, double spread, bool isFactor, double low, double high, string why)
    {
        (Name, Unit, Parts, Flaps, Typical, Spread, Why) = (name, unit, parts, flaps, typical, spread, why);
        _isFactor = isFactor;
        (Lowest, Highest) = (Math.Min(0, Count(low)), Math.Max(0, Count(high)));
    }

    public string Name { get; }

    public string Unit { get; }

    public Parts Parts { get; }

    /// <summary>The one flap setting that it belongs to; all where none is given.</summary>
    public int? Flaps { get; }

    public double Typical { get; }

    public double Spread { get; }

    /// <summary>Where the typical value comes from.</summary>
    public string Why { get; }

    public double Lowest { get; }

    public double Highest { get; }

    /// <summary>One that may be a share more or less than typical.</summary>
    public static Unknown Factor(
        string name, string unit, Parts parts, double typical, double share, double low, double high, string why, int? flaps = null) =>
        new(name, unit, parts, flaps, Math.Clamp(typical, low, high), share, isFactor: true, low, high, why);

    /// <summary>One that may be an amount more or less than typical.</summary>
    public static Unknown Amount(
        string name, string unit, Parts parts, double typical, double amount, double low, double high, string why, int? flaps = null) =>
        new(name, unit, parts, flaps, Math.Clamp(typical, low, high), amount, isFactor: false, low, high, why);

    public double Value(double spreads) => _isFactor ? Typical * Math.Exp(Spread * spreads) : Typical + Spread * spreads;

    /// <summary>Standard error of the value for one in spreads.</summary>
    public double Error(double spreads, double error) => _isFactor ? Value(spreads) * Spread * error : Spread * error;

    private double Count(double value) => _isFactor ? Math.Log(value / Typical) / Spread : (value - Typical) / Spread;
}
