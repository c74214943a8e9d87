using FlapAero.Handouts;

namespace FlapAero.Cli;

/// <summary>The repository that the command is called from inside of, and the standard places in it.</summary>
internal static class RepositoryFolder
{
    /// <summary>The nearest folder, the working folder or one above it, that holds the solution; null where there is none.</summary>
    public static string? Find(string workingFolder)
    {
        for (DirectoryInfo? folder = new(workingFolder); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "FlapAero.sln")))
                return folder.FullName;
        return null;
    }

    /// <summary>A named folder counts from the working folder, a standard one from the repository's root.</summary>
    /// <exception cref="HandoutException">None is named, and there is no repository.</exception>
    public static string Named(string? named, string workingFolder, string option, params string[] standard) =>
        named is not null ? Path.GetFullPath(named, workingFolder)
        : Find(workingFolder) is { } root ? Path.Combine([root, .. standard])
        : throw new HandoutException($"No FlapAero.sln stands in {workingFolder} or above it, so there is no standard place for {option}; call from inside the repository or name a folder with {option}.");

    /// <summary>Where runs of lessons are kept; null where no place is known.</summary>
    public static string? Cache(string workingFolder) =>
        Find(workingFolder) is { } root ? Path.Combine(root, "artifacts", "cache") : UserCache();

    /// <summary>The place that each system has for what may be lost.</summary>
    private static string? UserCache()
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        string root = Environment.GetEnvironmentVariable("XDG_CACHE_HOME") is { Length: > 0 } named && Path.IsPathRooted(named) ? named
            : OperatingSystem.IsWindows() ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData)
            : home.Length == 0 ? ""
            : OperatingSystem.IsMacOS() ? Path.Combine(home, "Library", "Caches")
            : Path.Combine(home, ".cache");
        return root.Length == 0 ? null : Path.Combine(root, "flapaero");
    }
}
