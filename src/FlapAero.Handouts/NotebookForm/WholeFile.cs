using FlapAero.Files;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>
/// The one place where files that a user names are written: a reader meets the old file or the new one, never half of one. Only
/// an ordinary file is replaced. Where the path is a link, the file it leads to is replaced and the link stays.
/// </summary>
internal static class WholeFile
{
    /// <summary>Writes one file.</summary>
    /// <exception cref="UnfitFileException">A folder, a device, a pipe or a link to nothing stands there.</exception>
    /// <exception cref="IOException">It cannot be written; what stood there before still does.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; what stood there before still does.</exception>
    public static void Write(string path, byte[] content) => WriteAll([(path, content)]);

    /// <summary>Writes several files: the first is put in its place when all of them are on the disk.</summary>
    /// <inheritdoc cref="Write"/>
    public static void WriteAll(IReadOnlyList<(string Path, byte[] Content)> files)
    {
        string[] targets = [.. files.Select(file => Target(file.Path))];
        var beside = new List<string>();
        try
        {
            for (int i = 0; i < targets.Length; i++)
                beside.Add(WriteBeside(targets[i], files[i].Content));
            for (int i = 0; i < targets.Length; i++)
                File.Move(beside[i], targets[i], overwrite: true);
        }
        finally
        {
            foreach (string file in beside)
                File.Delete(file);
        }
    }

    /// <summary>Refuses what must not be replaced, before anything is computed for it.</summary>
    /// <exception cref="UnfitFileException">A folder, a device, a pipe or a link to nothing stands there.</exception>
    public static void Check(string path) => Target(path);

    private static string Target(string path)
    {
        if (OrdinaryFile.Fault(OrdinaryFile.KindOf(path)) is { } fault)
            throw new UnfitFileException(fault);
        if (new FileInfo(path).LinkTarget is null)
            return path;
        return File.ResolveLinkTarget(path, returnFinalTarget: true) is { Exists: true } target
            ? target.FullName
            : throw new UnfitFileException("it is a link that leads to no file; a file, a link to one or a free name is wanted");
    }

    /// <summary>
    /// To a file of a name that nobody can know beforehand, made only where nothing has that name: what others put there is
    /// neither followed nor lost.
    /// </summary>
    private static string WriteBeside(string target, ReadOnlySpan<byte> content)
    {
        string beside = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(target))!, $".{Guid.NewGuid():N}.partial");
        using var file = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        try
        {
            file.Write(content);
            if (!OperatingSystem.IsWindows() && File.Exists(target))
                File.SetUnixFileMode(file.SafeFileHandle, File.GetUnixFileMode(target));
            return beside;
        }
        catch (Exception e)
        {
            file.Dispose();
            File.Delete(beside);
            // So .NET calls a file that is larger than the system allows.
            if (e is ArgumentOutOfRangeException)
                throw new IOException(e.Message, e);
            throw;
        }
    }
}
