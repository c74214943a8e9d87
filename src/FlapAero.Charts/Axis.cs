namespace FlapAero.Charts;

/// <summary>What an axis shows: a name, a symbol and a unit. Immutable.</summary>
public sealed class Axis
{
    private Axis(string name, string symbol, string unit, double? lowest, double? highest)
    {
        Name = name;
        Symbol = symbol;
        Unit = unit;
        Lowest = lowest;
        Highest = highest;
    }

    /// <summary>The name, for example <c>stall speed</c>.</summary>
    public string Name { get; }

    /// <summary>The symbol with its subscript after an underscore, for example <c>V_S</c>; empty where there is none.</summary>
    public string Symbol { get; }

    /// <summary>The unit, for example <c>kt CAS</c>; empty for a pure number.</summary>
    public string Unit { get; }

    /// <summary>A value that the axis reaches down to even where no data do.</summary>
    internal double? Lowest { get; }

    /// <summary>A value that the axis reaches up to even where no data do.</summary>
    internal double? Highest { get; }

    /// <summary>An axis with a name, a symbol and a unit.</summary>
    /// <param name="name">For example <c>stall speed</c>.</param>
    /// <param name="symbol">For example <c>V_S</c>; may be empty.</param>
    /// <param name="unit">For example <c>kt CAS</c>; empty for a pure number.</param>
    /// <returns>The axis.</returns>
    /// <exception cref="RefusedInputException">The name is empty.</exception>
    public static Axis Of(string name, string symbol = "", string unit = "")
    {
        Require.Words(name, "name of the axis");
        ArgumentNullException.ThrowIfNull(symbol);
        ArgumentNullException.ThrowIfNull(unit);
        return new Axis(name.Trim(), symbol.Trim(), unit.Trim(), null, null);
    }

    /// <summary>The same axis, reaching as far as a value even where no data do: <c>Including(0)</c>.</summary>
    /// <param name="value">A finite value in the axis' unit.</param>
    /// <returns>The axis that includes it.</returns>
    /// <exception cref="RefusedInputException">The value is not finite.</exception>
    public Axis Including(double value)
    {
        if (!double.IsFinite(value))
            throw Require.RefusedWhole(nameof(value), $"The axis \"{Name}\" can include a finite value only.");
        return new Axis(Name, Symbol, Unit, Math.Min(Lowest ?? value, value), Math.Max(Highest ?? value, value));
    }

    /// <summary>The same axis in another system of units, and the factor from this one's values to its.</summary>
    internal (Axis Axis, double Factor) In(DisplayUnits units)
    {
        (string unit, double factor) = units.UnitFor(Unit);
        return factor == 1 ? (this, 1) : (new Axis(Name, Symbol, unit, Lowest * factor, Highest * factor), factor);
    }

    /// <summary>The title in plain text, for example <c>stall speed VS (kt CAS)</c>.</summary>
    /// <returns>The title.</returns>
    public override string ToString() => Notation.ToPlain(Title);

    internal IReadOnlyList<Notation.Run> Title
    {
        get
        {
            var runs = new List<Notation.Run>(NameAndSymbol);
            if (Unit.Length > 0) runs.Add(new Notation.Run($" ({Unit})", Notation.Kind.Text));
            return runs;
        }
    }

    internal IReadOnlyList<Notation.Run> NameAndSymbol => Symbol.Length == 0 ? Notation.Parse(Name)
        : [.. Notation.Parse(Name), new Notation.Run(" ", Notation.Kind.Text), .. Notation.Parse(Symbol, isSymbol: true)];

    /// <summary>A number of this axis with its unit; a degree sign and a per cent sign of their own accord.</summary>
    internal string WithUnit(string number) =>
        Unit.Length == 0 ? number : Unit == "°" ? number + Unit : number + QuantityText.NoBreakSpace + Unit;
}
