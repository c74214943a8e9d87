using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using FlapAero.Handouts.NotebookForm;
using Json.Schema;

namespace FlapAero.Handouts.Tests.NotebookForm;

/// <summary>Whatever an editor does on saving, putting right gives back the committed bytes, and does so once and for all.</summary>
public sealed class NotebookRepairPropertyTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(
        // The schema keeps to what draft 4 and draft 7 share, but names draft 4, which the library does not read.
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "nbformat", "nbformat.v4.5.schema.json"))
            .Replace("http://json-schema.org/draft-04/schema#", "http://json-schema.org/draft-07/schema#", StringComparison.Ordinal));

    public static TheoryData<string> Committed => [.. StoredNotebooks.Committed.Select(notebook => notebook.Name)];

    [Theory]
    [MemberData(nameof(Committed))]
    public void PutRight_SavedByAnyEditor_GivesBackTheCommittedBytes(string name)
    {
        string committed = StoredNotebooks.Committed.Single(notebook => notebook.Name == name).Text;

        SavedByAnEditor.Of(committed).Sample(saved =>
        {
            NotebookCheck check = StoredNotebooks.Check(saved, name);
            return Encoding.UTF8.GetString(check.PutRight) == committed
                && check.HasBetter == (saved != committed)
                && (check.Faults.Count > 0) == (saved != committed)
                && check.Faults.All(fault => fault.CanBePutRight);
        }, iter: 60);
    }

    /// <summary>An editor that knows no ids loses them all: a cell's id is its title's, or the first save would rename it.</summary>
    [Theory]
    [MemberData(nameof(Committed))]
    public void PutRight_WithoutIds_GivesBackTheCommittedBytes(string name)
    {
        string committed = StoredNotebooks.Committed.Single(notebook => notebook.Name == name).Text;
        JsonObject without = JsonNode.Parse(committed)!.AsObject();
        foreach (JsonObject cell in StoredForm.CellsOf(without))
            cell.Remove("id");

        Assert.Equal(committed, StoredNotebooks.PutRight(without.ToJsonString(), name));
    }

    /// <summary>Any sources at all, also ones no lesson would have: the text stays to the letter, and a second time changes nothing.</summary>
    [Fact]
    public void PutRight_AnySources_StayToTheLetter() =>
        Gen.Select(Gen.String.Array[1, 5], Gen.Bool).Sample((sources, isWhole) =>
        {
            var notebook = new NotebookText();
            foreach (string source in sources)
                notebook.Markdown("explain", "3f9a01bc", "A cell", isWhole ? source : source + "\n" + source);
            string[] written = [.. SourcesOf(notebook.Root.ToJsonString())];

            string right = StoredNotebooks.PutRight(notebook.ToString());

            Assert.Equal(written, SourcesOf(right));
            Assert.Equal(right, StoredNotebooks.PutRight(right));
        }, iter: 60);

    [Theory]
    [MemberData(nameof(Committed))]
    public void PutRight_CommittedOrSaved_IsValidByTheFormatsOwnSchema(string name)
    {
        string committed = StoredNotebooks.Committed.Single(notebook => notebook.Name == name).Text;
        Assert.True(IsValid(committed));

        JsonObject broken = JsonNode.Parse(committed)!.AsObject();
        broken["cells"]![0]!.AsObject().Remove("id");
        broken["cells"]![1]!.AsObject().Remove("outputs");
        Assert.False(IsValid(broken.ToJsonString()));
        Assert.True(IsValid(StoredNotebooks.PutRight(broken.ToJsonString(), name)));
    }

    private static bool IsValid(string text)
    {
        using var document = System.Text.Json.JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static IEnumerable<string> SourcesOf(string text) =>
        StoredForm.CellsOf(JsonNode.Parse(text)!.AsObject()).Select(cell => StoredForm.TextOf(cell["source"])!);
}
