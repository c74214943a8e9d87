using FlapAero.Files;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>Finds notebooks and replaces one, so that a reader meets the old file or the new one, never half of one.</summary>
public static class NotebookFiles
{
    /// <summary>The notebook at a path, or all notebooks of the folder at it, in the order of their names.</summary>
    /// <param name="path">A file or a folder.</param>
    /// <returns>Full paths; none where the folder has no notebook.</returns>
    /// <exception cref="FileNotFoundException">Neither a file nor a folder stands there.</exception>
    public static IReadOnlyList<string> Find(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (File.Exists(path))
            return [path];
        if (!Directory.Exists(path))
            throw new FileNotFoundException($"{path}: there is no such notebook or folder.", path);
        string[] files = Directory.GetFiles(path, "*.ipynb");
        Array.Sort(files, StringComparer.Ordinal);
        return files;
    }

    /// <summary>Replaces a file in one step; its permissions stay, and where it is a link the file it leads to is replaced.</summary>
    /// <param name="path">The file.</param>
    /// <param name="content">Its new bytes.</param>
    /// <exception cref="IOException">It cannot be written; the old file still stands.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; the old file still stands.</exception>
    public static void Replace(string path, ReadOnlySpan<byte> content)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        WholeFile.Write(path, content.ToArray());
    }

    /// <summary>All of a notebook.</summary>
    /// <param name="path">The file; only an ordinary one of at most 64 MiB is read.</param>
    /// <returns>Its bytes.</returns>
    /// <exception cref="IOException">It is missing, is no ordinary file, is too long or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static byte[] Read(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return OrdinaryFile.Read(path, OrdinaryFile.NotebookLimit);
    }
}
