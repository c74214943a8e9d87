using System.Text.Json.Nodes;

namespace FlapAero.Charts;

/// <summary>
/// The live drawing of a figure that moves: the drawing at the start, and for each value what differs from it. An
/// element of a list that differs holds only its properties that do; null takes one away.
/// </summary>
internal static class PlotlyFrames
{
    internal static string Json(MovingFigure figure)
    {
        IReadOnlyList<JsonObject> drawings = PlotlyDrawing.Alike(figure.Frames);
        JsonObject start = drawings[figure.StartIndex];
        var frames = new JsonArray([.. drawings.Select((drawing, i) => Frame(start, drawing, figure.Texts[i], LabelText.Html(figure.Frames[i].FindingText)))]);
        var all = (JsonObject)start.DeepClone();
        all["moving"] = new JsonObject { ["frames"] = frames, ["start"] = figure.StartIndex };
        return PlotlyDrawing.Text(all);
    }

    private static JsonObject Frame(JsonObject start, JsonObject drawing, string value, string finding)
    {
        var frame = new JsonObject();
        foreach ((string name, JsonNode? from, JsonNode? to) in ((string, JsonNode?, JsonNode?)[])
            [
                ("annotations", start["layout"]!["annotations"], drawing["layout"]!["annotations"]),
                ("data", start["data"], drawing["data"]),
                ("shapes", start["layout"]!["shapes"], drawing["layout"]!["shapes"]),
            ])
            if (!JsonNode.DeepEquals(from, to))
                frame[name] = Changes((JsonArray)from!, (JsonArray)to!);
        frame["finding"] = finding;
        frame["value"] = value;
        return frame;
    }

    private static JsonArray Changes(JsonArray from, JsonArray to) =>
        [.. to.Select((element, i) => i < from.Count ? Change((JsonObject)from[i]!, (JsonObject)element!) : element!.DeepClone())];

    private static JsonObject Change(JsonObject from, JsonObject to)
    {
        var change = new JsonObject();
        foreach ((string name, JsonNode? value) in to)
            if (!JsonNode.DeepEquals(from[name], value)) change[name] = value?.DeepClone();
        foreach ((string name, _) in from)
            if (!to.ContainsKey(name)) change[name] = null;
        return change;
    }
}
