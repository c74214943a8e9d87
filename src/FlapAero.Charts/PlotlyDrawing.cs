using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Unicode;
using Plotly.NET;
using CSharpChart = Plotly.NET.CSharp.Chart;

namespace FlapAero.Charts;

/// <summary>
/// The live drawing: a Plotly.NET chart without its default template, as JSON in a fixed order. No F# type leaves this file.
/// </summary>
internal static class PlotlyDrawing
{
    /// <summary>A figure on a phone 390 pixels wide, where labels are placed; on a narrower one letters shrink with it.</summary>
    private const double NarrowWidth = 340;

    private const double DrawingHeight = 430;
    private const double FontSize = 16;

    /// <summary>
    /// The other sizes of a figure, as many pixels as it would have with letters of this size: on a phone 320 pixels wide, on
    /// a desk, and on a projector above a long caption, above a short one, and with a control beside it.
    /// </summary>
    private static readonly IReadOnlyList<View> Views = [new(340, 540), new(960, 474), new(785, 286), new(785, 335), new(490, 355)];

    private static readonly JsonSerializerOptions Options = new()
    {
        // Escapes < and > too, so that a label cannot end the script element it stands in.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    internal static string Json(Figure figure) => Text(
        Drawing(figure, new FigureLayout(figure, NarrowWidth, DrawingHeight, FontSize, Views)));

    /// <summary>The drawings of figures with the same axes, all in the same place.</summary>
    internal static IReadOnlyList<JsonObject> Alike(IReadOnlyList<Figure> figures) =>
        [.. figures.Zip(FigureLayout.Alike(figures, NarrowWidth, DrawingHeight, FontSize, Views), Drawing)];

    internal static string Text(JsonObject json) => json.ToJsonString(Options);

    private static JsonObject Drawing(Figure figure, FigureLayout layout)
    {
        GenericChart chart = CSharpChart.Combine(
            [.. figure.Lines.Select((line, i) => line.IsBars ? Bars(figure, line, figure.LineStyles[i]) : Line(figure, line, figure.LineStyles[i])), .. Marks(figure)]);
        chart = GenericChart.setLayout(Layout(figure, layout), chart);
        chart = GenericChart.setConfig(Config(), chart);
        JsonNode drawing = JsonNode.Parse(GenericChart.toJson(chart))!;
        if (figure.IsToScale) HoldTheScale(drawing["layout"]!);
        if (figure.Predictions.Count > 0)
            drawing["predictions"] = new JsonArray([.. figure.Predictions.Select(p => new JsonObject
            {
                ["axis"] = p.IsAcross ? "x" : "y", ["from"] = p.From, ["label"] = Prediction.Label, ["name"] = p.Name, ["times"] = p.Times, ["value"] = p.Value,
            })]);
        return (JsonObject)Canonical(drawing)!;
    }

    /// <summary>The axes take as much room as one scale leaves them; their titles stand at what they take.</summary>
    private static void HoldTheScale(JsonNode layout)
    {
        layout["xaxis"]!["constrain"] = "domain";
        JsonNode y = layout["yaxis"]!;
        (y["constrain"], y["constraintoward"], y["scaleanchor"], y["scaleratio"]) = ("domain", "top", "x", 1.0);
        foreach (JsonNode? note in layout["annotations"]!.AsArray().Where(note => note!["xref"]?.GetValue<string>() == "paper"))
            (note!["xref"], note["yref"]) = ("x domain", "y domain");
        foreach (JsonNode? level in layout["shapes"]!.AsArray()) level!["xref"] = "x domain";
    }

    private static GenericChart Line(Figure figure, Series line, SeriesStyle style)
    {
        GenericChart chart = CSharpChart.Line<double, double, string>(line.X, line.Y, Name: line.Name, UseDefaults: false);
        Trace trace = GenericChart.getTraces(chart).First();
        trace.SetProperty("line", new { color = style.Line, width = 3, dash = style.Dash.Length == 0 ? "solid" : Pixels(style.Dash) });
        trace.SetProperty("hovertemplate", Hover(figure, line.X, line.Y, line.Name));
        trace.RemoveProperty("marker");
        return chart;
    }

    private static GenericChart Bars(Figure figure, Series bars, SeriesStyle style)
    {
        GenericChart chart = CSharpChart.Column<double, double, string>(bars.Y, new Plotly.NET.CSharp.Optional<IEnumerable<double>>(bars.X, true), Name: bars.Name, UseDefaults: false);
        Trace trace = GenericChart.getTraces(chart).First();
        trace.SetProperty("marker", new { color = style.Line, opacity = 0.55, line = new { color = style.Line, width = 1 } });
        trace.SetProperty("width", 0.86 * bars.BarStep);
        trace.SetProperty("hovertemplate", Hover(figure, bars.X, bars.Y, bars.Name));
        return chart;
    }

    private static IEnumerable<GenericChart> Marks(Figure figure)
    {
        if (figure.Marks.Count == 0) yield break;
        double[] xs = [.. figure.Marks.Select(m => m.X)], ys = [.. figure.Marks.Select(m => m.Y)];
        GenericChart chart = CSharpChart.Scatter<double, double, string>(xs, ys, StyleParam.Mode.Markers, Name: "marks", UseDefaults: false);
        Trace trace = GenericChart.getTraces(chart).First();
        trace.SetProperty("marker", new { color = FigureLayout.Ink, size = 10, line = new { color = "#FFFFFF", width = 2 } });
        trace.SetProperty("cliponaxis", false);
        trace.SetProperty("text", figure.Marks.Select(m => LabelText.Html(m.Name)).ToArray());
        trace.SetProperty("hovertemplate", Hover(figure, xs, ys, null));
        trace.RemoveProperty("line");
        yield return chart;
    }

    /// <summary>Both values with their units, for example "angle of bank 30°".</summary>
    private static string Hover(Figure figure, IEnumerable<double> xs, IEnumerable<double> ys, string? name) =>
        $"{Value(figure.X, "x", xs)}<br>{Value(figure.Y, "y", ys)}<extra>{(name is null ? "%{text}" : LabelText.Html(name))}</extra>";

    private static string Value(Axis axis, string variable, IEnumerable<double> values) =>
        $"{LabelText.Html(axis.Name)} {LabelText.Html(axis.WithUnit($"%{{{variable}:,.{NumbersTable.DecimalsFor(values)}f}}"))}";

    private static Layout Layout(Figure figure, FigureLayout place)
    {
        var layout = new Layout();
        layout.SetProperty("autosize", true);
        layout.SetProperty("height", DrawingHeight);
        layout.SetProperty("font", new { family = "system-ui, sans-serif", size = FontSize, color = FigureLayout.Ink });
        layout.SetProperty("margin", new { l = Math.Round(place.Plot.Left), t = Math.Round(place.Plot.Top), r = Math.Round(place.RightMargin), b = Math.Round(place.BottomMargin), pad = 0 });
        layout.SetProperty("paper_bgcolor", "#FFFFFF");
        layout.SetProperty("plot_bgcolor", "#FFFFFF");
        layout.SetProperty("showlegend", false);
        layout.SetProperty("hovermode", "closest");
        layout.SetProperty("dragmode", false);
        layout.SetProperty("separators", "." + QuantityText.NarrowNoBreakSpace);
        layout.SetProperty("hoverlabel", new { bgcolor = "#FFFFFF", bordercolor = FigureLayout.Grey, font = new { size = FontSize, color = FigureLayout.Ink } });
        layout.SetProperty("xaxis", AxisOf(place.XTicks, true));
        layout.SetProperty("yaxis", AxisOf(place.YTicks, false));
        layout.SetProperty("shapes", figure.LevelDashes.Select(drawn => new
        {
            type = "line",
            xref = "paper",
            x0 = 0,
            x1 = 1,
            y0 = drawn.Level.Y,
            y1 = drawn.Level.Y,
            layer = "above",
            line = new { color = FigureLayout.Grey, width = 1.5, dash = Pixels(drawn.Dash) },
        }).ToArray());
        layout.SetProperty("annotations", (object[])[.. Titles(place), .. place.Labels.Select(label => Annotation(label, place))]);
        return layout;
    }

    private static object AxisOf(Ticks ticks, bool isHorizontal) => new
    {
        range = new[] { ticks.From, ticks.To },
        tickmode = "array",
        tickvals = ticks.Values,
        ticktext = ticks.Labels,
        ticks = "outside",
        ticklen = 5,
        tickcolor = isHorizontal ? FigureLayout.Grey : "#FFFFFF",
        tickangle = 0,
        showline = isHorizontal,
        linecolor = FigureLayout.Grey,
        linewidth = 1,
        showgrid = true,
        gridcolor = FigureLayout.Grid,
        zeroline = false,
        fixedrange = true,
    };

    private static IEnumerable<object> Titles(FigureLayout place)
    {
        yield return new
        {
            text = Html(place.YTitle),
            align = "left",
            showarrow = false,
            xref = "paper",
            x = 0,
            xanchor = "left",
            xshift = Math.Round(4 - place.Plot.Left),
            yref = "paper",
            y = 1,
            yanchor = "bottom",
            yshift = 10,
        };
        yield return new
        {
            text = Html(place.XTitle),
            align = "center",
            showarrow = false,
            xref = "paper",
            x = 0.5,
            xanchor = "center",
            yref = "paper",
            y = 0,
            yanchor = "top",
            yshift = -Math.Round(place.LineHeight + 8),
        };
    }

    /// <summary>Held to its point in the axes' units and to its distance from it in pixels, so that it stays there at every width.</summary>
    private static object Annotation(PlacedLabel label, FigureLayout place)
    {
        double x = Invert(label.Anchor.X, place.Plot.Left, place.Plot.Width, place.XTicks);
        double y = Invert(place.Plot.Bottom - label.Anchor.Y, 0, place.Plot.Height, place.YTicks);
        double dy = label.Box.Top + label.Box.Height / 2 - label.Anchor.Y;
        (string side, double dx) = label.Side switch
        {
            LabelSide.Left => ("left", label.Box.Left - label.Anchor.X),
            LabelSide.Right => ("right", label.Box.Right - label.Anchor.X),
            _ => ("center", label.Box.Left + label.Box.Width / 2 - label.Anchor.X),
        };
        var font = new { color = label.Color, size = FontSize };
        if (label.Leader != Leader.None)
            return new
            {
                text = Html(label.Lines),
                font,
                align = side,
                x,
                y,
                ax = Math.Round(label.LeaderEnd.X - label.Anchor.X),
                ay = Math.Round(label.LeaderEnd.Y - label.Anchor.Y),
                xanchor = side,
                yanchor = label.Leader switch { Leader.ToTop => "top", Leader.ToBottom => "bottom", _ => "middle" },
                showarrow = true,
                arrowhead = 0,
                arrowwidth = 1,
                arrowcolor = label.Color,
                borderpad = 0,
            };
        return new
        {
            text = Html(label.Lines),
            font,
            align = side,
            x,
            y,
            xanchor = side,
            yanchor = "middle",
            xshift = Math.Round(dx),
            yshift = Math.Round(-dy),
            showarrow = false,
            borderpad = 0,
            bgcolor = "rgba(255,255,255,0.7)",
        };
    }

    private static string Pixels(string dash) => dash.Replace(",", "px,", StringComparison.Ordinal) + "px";

    private static double Invert(double pixel, double origin, double length, Ticks ticks) =>
        ticks.From + (pixel - origin) / length * (ticks.To - ticks.From);

    private static Config Config()
    {
        var config = new Config();
        config.SetProperty("displayModeBar", false);
        config.SetProperty("responsive", true);
        config.SetProperty("scrollZoom", false);
        config.SetProperty("doubleClick", false);
        return config;
    }

    private static string Html(IEnumerable<IReadOnlyList<Notation.Run>> lines) => string.Join("<br>", lines.Select(Notation.ToHtml));

    /// <summary>Properties in alphabetical order and numbers with six significant digits: the same figure gives the same text.</summary>
    private static JsonNode? Canonical(JsonNode? node) => node switch
    {
        JsonObject o => new JsonObject(o.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => KeyValuePair.Create(p.Key, Canonical(p.Value)))),
        JsonArray a => new JsonArray([.. a.Select(Canonical)]),
        JsonValue v when v.GetValueKind() == JsonValueKind.Number => JsonNode.Parse(Number(v.GetValue<double>())),
        _ => node?.DeepClone(),
    };

    private static string Number(double value) => value == 0 ? "0" : value.ToString("G6", CultureInfo.InvariantCulture);
}
