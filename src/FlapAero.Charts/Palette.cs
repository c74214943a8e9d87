namespace FlapAero.Charts;

/// <summary>
/// Colour and dash pattern of each series, in order: the colours of the Okabe-Ito set that reach 3:1 on white, and a
/// dash pattern of its own for each, so that the figure survives a black-and-white printer. Labels take a darker shade
/// of the same hue, since text needs 4.5:1.
/// </summary>
public static class Palette
{
    /// <summary>The styles in the order in which series take them.</summary>
    public static IReadOnlyList<SeriesStyle> Styles { get; } =
    [
        new("#0072B2", "#005F94", ""),
        new("#D55E00", "#A84A00", "9,4"),
        new("#009E73", "#007353", "9,3,2,3"),
        new("#CC79A7", "#9C4274", "2,3"),
        new("#000000", "#000000", "16,4"),
    ];

    /// <summary>The dashes of horizontal reference lines in their order; lines of data are thicker.</summary>
    internal static IReadOnlyList<string> LevelDashes { get; } = ["4,4", "12,3", "1.5,2.5", "12,3,1.5,3"];

    /// <summary>Flaps up, in every figure and picture.</summary>
    public static SeriesStyle FlapsUp => Styles[0];

    /// <summary>Full flap, in every figure and picture.</summary>
    public static SeriesStyle FullFlap => Styles[1];

    /// <summary>A flap setting between the two.</summary>
    public static SeriesStyle IntermediateFlap => Styles[2];

    /// <summary>What the reader changed.</summary>
    public static SeriesStyle Changed => Styles[3];

    /// <summary>The style of a configuration's flap setting. An aeroplane with one setting has flaps up only.</summary>
    /// <param name="configuration">The configuration.</param>
    /// <returns>The style.</returns>
    public static SeriesStyle For(Configuration configuration)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return configuration.Flaps == configuration.Aeroplane.FlapsUp ? FlapsUp
            : configuration.Flaps == configuration.Aeroplane.FullFlaps ? FullFlap : IntermediateFlap;
    }
}

/// <summary>How a series is drawn. Immutable.</summary>
/// <param name="Line">The line's colour.</param>
/// <param name="Text">The label's colour.</param>
/// <param name="Dash">The dash pattern in pixels, on and off in turn; empty for a solid line.</param>
public sealed record SeriesStyle(string Line, string Text, string Dash)
{
    /// <summary>The dash in letters, for a label that cannot stand clear of other lines.</summary>
    internal string Key => Dash switch
    {
        "" => "\u2014\u2014",
        "9,4" => "\u2013\u00A0\u2013",
        "9,3,2,3" => "\u2013·\u2013",
        "2,3" => "····",
        _ => "\u2014\u00A0\u2014",
    };
}
