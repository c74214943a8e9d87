using System.Text.Json.Nodes;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>
/// What editors write into a notebook about themselves and the last run: how a cell was folded, when it ran, whether it
/// was trusted, what a widget showed. Names that are not here may be an author's, and stay.
/// </summary>
internal static class VolatileMetadata
{
    private static readonly HashSet<string> OfNotebook = new(StringComparer.Ordinal)
    {
        "accelerator", "celltoolbar", "colab", "dotnet_interactive", "interpreter", "notify_time", "orig_nbformat", "polyglot_notebook",
        "pycharm", "signature", "toc", "toc-autonumbering", "toc-showcode", "toc-showmarkdowntxt", "toc-showtags", "trusted", "varInspector", "vscode", "widgets",
    };

    private static readonly HashSet<string> OfCell = new(StringComparer.Ordinal)
    {
        "ExecuteTime", "colab", "collapsed", "dotnet_interactive", "execution", "executionInfo", "heading_collapsed", "hidden", "outputId",
        "polyglot_notebook", "pycharm", "run_control", "scrolled", "trusted", "vscode",
    };

    /// <summary>The part of nbformat's own "jupyter" that says how a cell was folded.</summary>
    private static readonly HashSet<string> OfView = new(StringComparer.Ordinal) { "outputs_hidden", "source_hidden" };

    /// <summary>Takes them out and gives their names.</summary>
    public static IReadOnlyList<string> RemoveFromNotebook(JsonNode? metadata) => Remove(metadata, OfNotebook);

    /// <summary>Takes them out and gives their names.</summary>
    public static IReadOnlyList<string> RemoveFromCell(JsonNode? metadata)
    {
        var removed = new List<string>(Remove(metadata, OfCell));
        if (metadata is not JsonObject map || map["jupyter"] is not JsonObject view)
            return removed;
        removed.AddRange(Remove(view, OfView).Select(name => "jupyter." + name));
        if (view.Count == 0)
            map.Remove("jupyter");
        return removed;
    }

    private static IReadOnlyList<string> Remove(JsonNode? metadata, HashSet<string> names)
    {
        if (metadata is not JsonObject map)
            return [];
        List<string> found = [.. map.Select(pair => pair.Key).Where(names.Contains)];
        foreach (string name in found)
            map.Remove(name);
        return found;
    }
}
