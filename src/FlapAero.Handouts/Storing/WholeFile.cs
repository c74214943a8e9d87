namespace FlapAero.Handouts.Storing;

/// <summary>Writes a file in one step: a reader meets the old file or the new one, never half of one.</summary>
internal static class WholeFile
{
    /// <exception cref="IOException">It cannot be written; what stood there before still does.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; what stood there before still does.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        string beside = Path.Combine(Path.GetDirectoryName(path)!, "." + Path.GetFileName(path) + ".new");
        try
        {
            File.WriteAllBytes(beside, content);
            if (!OperatingSystem.IsWindows() && File.Exists(path))
                File.SetUnixFileMode(beside, File.GetUnixFileMode(path));
            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
