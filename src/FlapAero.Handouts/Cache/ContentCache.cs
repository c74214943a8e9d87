using System.Security.Cryptography;
using System.Text;
using FlapAero.Files;
using FlapAero.Handouts.NotebookForm;

namespace FlapAero.Handouts.Cache;

/// <summary>
/// Keeps what was computed under the hash of all that it was computed from. Losing any of it costs time and nothing else, so
/// whatever cannot be read, or is not what was written, counts as not there, and what cannot be written is not kept.
/// </summary>
internal sealed class ContentCache(string? folder)
{
    private static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    /// <summary>What is kept under a key, or null.</summary>
    public byte[]? Find(string key)
    {
        if (folder is null)
            return null;
        try
        {
            string path = PathOf(key);
            byte[] stored = OrdinaryFile.Read(path, Array.MaxLength);
            if (stored.Length < SHA256.HashSizeInBytes)
                return null;
            byte[] content = stored[SHA256.HashSizeInBytes..];
            if (!Seal(key, content).AsSpan().SequenceEqual(stored.AsSpan(0, SHA256.HashSizeInBytes)))
                return null;
            File.SetLastWriteTimeUtc(path, DateTime.UtcNow);
            return content;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Keeps something under a key.</summary>
    public void Keep(string key, byte[] content)
    {
        if (folder is null)
            return;
        try
        {
            Directory.CreateDirectory(folder);
            WholeFile.Write(PathOf(key), [.. Seal(key, content), .. content]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // No room or no right.
        }
    }

    /// <summary>Forgets what nobody has asked for in a month.</summary>
    public void Tidy()
    {
        if (folder is null || !Directory.Exists(folder))
            return;
        try
        {
            foreach (FileInfo file in new DirectoryInfo(folder).EnumerateFiles().Where(f => DateTime.UtcNow - f.LastWriteTimeUtc > Kept))
                Forget(file.FullName);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It stays until the next time.
        }
    }

    private static byte[] Seal(string key, byte[] content) => SHA256.HashData([.. Encoding.UTF8.GetBytes(key), .. content]);

    private static void Forget(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It stays until it is a month old.
        }
    }

    private string PathOf(string key) => Path.Combine(folder!, key);
}
