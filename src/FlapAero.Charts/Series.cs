namespace FlapAero.Charts;

/// <summary>A line or a row of bars of a figure: its name and its points in the axes' units. Immutable.</summary>
public sealed class Series
{
    internal Series(string name, IReadOnlyList<double> x, IReadOnlyList<double> y, bool isBars = false, SeriesStyle? style = null)
    {
        Style = style;
        IsBars = isBars;
        Name = name;
        X = x;
        Y = y;
    }

    /// <summary>The name, which is the label at the line.</summary>
    public string Name { get; }

    /// <summary>Whether it is drawn as bars that stand on zero rather than as a line.</summary>
    public bool IsBars { get; }

    /// <summary>The style that it was given; none where it takes one that is left.</summary>
    internal SeriesStyle? Style { get; }

    /// <summary>The distance between bars.</summary>
    internal double BarStep => X[1] - X[0];

    /// <summary>The values along the horizontal axis.</summary>
    public IReadOnlyList<double> X { get; }

    /// <summary>The values along the vertical axis.</summary>
    public IReadOnlyList<double> Y { get; }
}

/// <summary>A horizontal reference line with a label. Immutable.</summary>
public sealed class Level
{
    internal Level(string name, double y)
    {
        Name = name;
        Y = y;
    }

    /// <summary>The label.</summary>
    public string Name { get; }

    /// <summary>Its height in the vertical axis' unit.</summary>
    public double Y { get; }
}

/// <summary>A labelled point. Immutable.</summary>
public sealed class Mark
{
    internal Mark(string name, double x, double y)
    {
        Name = name;
        X = x;
        Y = y;
    }

    /// <summary>The label.</summary>
    public string Name { get; }

    /// <summary>Where along the horizontal axis.</summary>
    public double X { get; }

    /// <summary>Where along the vertical axis.</summary>
    public double Y { get; }
}
