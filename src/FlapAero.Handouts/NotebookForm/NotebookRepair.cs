using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>
/// Takes out of a notebook's tree what an editor put in, and names each thing taken. What a person may have written is
/// named and left where it is.
/// </summary>
internal sealed class NotebookRepair(string fileName)
{
    private readonly List<NotebookFault> _faults = [];

    public IReadOnlyList<NotebookFault> Faults => _faults;

    public void Mend(JsonObject notebook)
    {
        if (IntegerIn(notebook, "nbformat") is 4 && IntegerIn(notebook, "nbformat_minor") is >= 0 and < 5 and { } minor)
        {
            Report(null, "format", string.Create(CultureInfo.InvariantCulture, $"is nbformat 4.{minor}; allowed is 4.5, which gives each cell an id."));
            notebook["nbformat_minor"] = 5;
        }
        foreach (string name in VolatileMetadata.RemoveFromNotebook(notebook["metadata"]))
            Report(null, "editors' metadata", $"has \"{name}\" in its metadata, which an editor writes for itself.");
        foreach (string trace in MachineTraces.In(notebook["metadata"]))
            Refuse(null, $"holds {trace} in its metadata; a lesson is the same on every machine: take it out by hand.");

        HashSet<string> ids = [.. Kept(notebook)];
        var seen = new HashSet<string>(StringComparer.Ordinal);
        int number = 0;
        foreach (JsonObject cell in StoredForm.CellsOf(notebook))
            MendCell(cell, ++number, ids, seen);
    }

    /// <summary>The ids that stay, so that no new one takes the name of a later cell.</summary>
    private static IEnumerable<string> Kept(JsonObject notebook) =>
        StoredForm.CellsOf(notebook).Select(cell => (Id: Text(cell, "id"), Title: TitleOf(cell)))
            .Where(cell => CellIds.WhyNot(cell.Id, cell.Title) is null).Select(cell => cell.Id!);

    private void MendCell(JsonObject cell, int number, HashSet<string> ids, HashSet<string> seen)
    {
        string id = Text(cell, "id") ?? "";
        string title = TitleOf(cell);
        string name = title.Length > 0 ? $"cell \"{title}\" ({(id.Length > 0 ? id : "no id")})"
            : string.Create(CultureInfo.InvariantCulture, $"cell {number} ({(id.Length > 0 ? id : "no id")})");

        string? why = CellIds.WhyNot(id, title) ?? (seen.Add(id) ? null : $"has the id \"{id}\" of an earlier cell");
        if (why is not null)
        {
            string better = CellIds.Claim(title, ids);
            Report(name, "ids", $"{why}; from its title it is \"{better}\".");
            cell["id"] = better;
        }
        if (cell["metadata"] is null)
        {
            Report(name, "layout", "has no metadata; a cell has at least an empty one.");
            cell["metadata"] = new JsonObject();
        }
        foreach (string volatileName in VolatileMetadata.RemoveFromCell(cell["metadata"]))
            Report(name, "editors' metadata", $"has \"{volatileName}\" in its metadata, which an editor writes for itself.");
        MendRun(cell, name);
        FindTraces(cell, name);
    }

    /// <summary>What the last run left: outputs and counts.</summary>
    private void MendRun(JsonObject cell, string name)
    {
        bool isCode = Text(cell, "cell_type") == "code";
        if (!isCode)
        {
            foreach (string left in new[] { "execution_count", "outputs" }.Where(cell.ContainsKey))
            {
                Report(name, "layout", $"has \"{left}\"; only code cells have it.");
                cell.Remove(left);
            }
            return;
        }
        if (cell["outputs"] is not JsonArray outputs)
        {
            Report(name, "layout", "has no outputs list; a code cell has an empty one.");
            cell["outputs"] = new JsonArray();
        }
        else if (outputs.Count > 0)
        {
            Report(name, "outputs", string.Create(CultureInfo.InvariantCulture, $"has stored outputs ({outputs.Count}); allowed are none: pages are made by running the lesson."));
            foreach (string trace in MachineTraces.In(outputs))
                Report(name, "outputs", $"holds {trace} in its outputs.");
            cell["outputs"] = new JsonArray();
        }
        if (cell["execution_count"] is { } count)
            Report(name, "execution counts", $"has the execution count {count.ToJsonString()}; allowed is null.");
        else if (!cell.ContainsKey("execution_count"))
            Report(name, "layout", "has no execution_count; a code cell has null.");
        cell["execution_count"] = null;
    }

    private void FindTraces(JsonObject cell, string name)
    {
        foreach (string trace in MachineTraces.In(cell["source"]))
            Refuse(name, $"holds {trace} in its source; a lesson is the same on every machine: take it out by hand.");
        foreach (string trace in MachineTraces.In(cell["metadata"]))
            Refuse(name, $"holds {trace} in its metadata; a lesson is the same on every machine: take it out by hand.");
        if (StoredForm.TextOf(cell["source"])?.Contains('\r', StringComparison.Ordinal) == true)
            Refuse(name, "has line ends other than LF in its source; set the editor to LF and save the cell again.");
    }

    /// <summary>The title that an id is made from; a cell without one goes by its first heading.</summary>
    private static string TitleOf(JsonObject cell)
    {
        if ((cell["metadata"] as JsonObject)?["flapaero"] is JsonObject ours && Text(ours, "title") is { Length: > 0 } title)
            return title.ReplaceLineEndings(" ");
        string? heading = Text(cell, "cell_type") != "markdown" ? null
            : StoredForm.TextOf(cell["source"])?.Split('\n').FirstOrDefault(line => line.StartsWith('#'));
        return heading?.TrimStart('#').Trim() ?? "";
    }

    private void Report(string? cell, string kind, string words) =>
        _faults.Add(new NotebookFault(Placed(cell, words), CanBePutRight: true) { Kind = kind });

    private void Refuse(string? cell, string words) => _faults.Add(new NotebookFault(Placed(cell, words), CanBePutRight: false));

    private string Placed(string? cell, string words) => cell is null ? $"{fileName} {words}" : $"{fileName}, {cell} {words}";

    private static string? Text(JsonObject parent, string name) =>
        parent[name] is JsonValue value && value.TryGetValue(out string? text) ? text : null;

    private static int? IntegerIn(JsonObject parent, string name) =>
        parent[name] is JsonValue value && value.GetValueKind() == JsonValueKind.Number && value.TryGetValue(out int number) ? number : null;
}
