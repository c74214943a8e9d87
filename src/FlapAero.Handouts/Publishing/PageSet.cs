using System.Text.Json;
using System.Text.Json.Serialization;
using FlapAero.Files;

namespace FlapAero.Handouts.Publishing;

/// <summary>What an output folder holds of ours: each file, its hash, and what it was made from.</summary>
internal sealed class PageSet
{
    /// <summary>One file.</summary>
    /// <param name="Lesson">The stem of the lesson it belongs to; empty for the index.</param>
    /// <param name="Inputs">The hash of all that the lesson's files were made from.</param>
    /// <param name="Hash">The SHA-256 of its bytes.</param>
    public sealed record Entry(string Lesson, string Inputs, string Hash);

    /// <summary>What was made of a lesson the last time.</summary>
    /// <param name="Inputs">The hash of all that the lesson's files were made from.</param>
    /// <param name="Choice">The hash of what was wanted of it.</param>
    /// <param name="Files">The files that made.</param>
    public sealed record Made(string Inputs, string Choice, IReadOnlyList<string> Files);

    [JsonConstructor]
    public PageSet(IReadOnlyDictionary<string, Entry> files, IReadOnlyDictionary<string, Made> lessons)
    {
        Files = new SortedDictionary<string, Entry>(files.ToDictionary(), StringComparer.Ordinal);
        Lessons = new SortedDictionary<string, Made>(lessons.ToDictionary(), StringComparer.Ordinal);
    }

    public static PageSet Empty { get; } = new(new Dictionary<string, Entry>(), new Dictionary<string, Made>());

    /// <summary>The files by their names.</summary>
    public IReadOnlyDictionary<string, Entry> Files { get; }

    /// <summary>The lessons by their stems.</summary>
    public IReadOnlyDictionary<string, Made> Lessons { get; }

    /// <summary>A set as a file keeps it, or none where the file is missing or not readable as one.</summary>
    public static PageSet Read(string path)
    {
        try
        {
            return File.Exists(path) && JsonSerializer.Deserialize<PageSet>(OrdinaryFile.Read(path, OrdinaryFile.NotebookLimit)) is { } set ? set : Empty;
        }
        catch (Exception e) when (e is JsonException or ArgumentNullException)
        {
            return Empty;
        }
    }

    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this);
}
