using System.Text;
using System.Text.Json.Nodes;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.NotebookForm;

/// <summary>The committed notebooks, and ways to ask what the check makes of a text.</summary>
internal static class StoredNotebooks
{
    public const string Name = "01-turn.ipynb";

    public static IReadOnlyList<(string Name, string Text)> Committed { get; } =
    [
        .. Directory.GetFiles(RepositoryRoot.Path("notebooks"), "*.ipynb").Order(StringComparer.Ordinal)
            .Select(file => (Path.GetFileName(file), File.ReadAllText(file))),
    ];

    /// <summary>A small sound lesson as the repository would store it.</summary>
    public static string Sound { get; } = Stored(NotebookText.Sound().Root);

    public static string Stored(JsonNode notebook)
    {
        var copy = (JsonObject)notebook.DeepClone();
        StoredForm.Arrange(copy);
        return CanonicalJson.Write(copy);
    }

    public static NotebookCheck Check(string text, string name = Name) => NotebookCheck.Of(name, Encoding.UTF8.GetBytes(text));

    public static string PutRight(string text, string name = Name) => Encoding.UTF8.GetString(Check(text, name).PutRight);
}
