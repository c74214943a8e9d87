using System.Globalization;

namespace FlapAero.Handouts.Printing;

/// <summary>Finds a Chromium, Chrome or Edge on this machine; any of them prints.</summary>
public static class InstalledBrowser
{
    /// <summary>The environment variable that names the browser's file where the usual places do not hold it.</summary>
    public const string Variable = "FLAPAERO_BROWSER";

    private static readonly string[] Names =
        ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "microsoft-edge-stable", "msedge", "chrome"];

    private static readonly string[] Apps = ["Chromium", "Google Chrome", "Microsoft Edge"];

    private static readonly string[] WindowsPlaces =
        [@"Chromium\Application\chrome.exe", @"Google\Chrome\Application\chrome.exe", @"Microsoft\Edge\Application\msedge.exe"];

    /// <summary>The browser's file.</summary>
    /// <returns>The full path.</returns>
    /// <exception cref="BrowserMissingException">There is none; the message says what to install.</exception>
    public static string Find() => Find(Environment.GetEnvironmentVariable(Variable), Environment.GetEnvironmentVariable("PATH"), UsualPlaces());

    /// <summary>What tells one installed browser from another without starting it: where it is, how large and how old.</summary>
    /// <remarks>For the cache's keys alone; Debian's is a script, so its program counts too.</remarks>
    internal static string Identity()
    {
        string path = Find();
        IEnumerable<FileInfo> files = UsualPlaces().Prepend(path).Distinct(StringComparer.Ordinal).Select(place => new FileInfo(place)).Where(file => file.Exists);
        return string.Join(' ', files.Select(file => string.Create(CultureInfo.InvariantCulture, $"{file.FullName} {file.Length} {file.LastWriteTimeUtc.Ticks}")));
    }

    internal static string Find(string? named, string? path, IEnumerable<string> usualPlaces)
    {
        if (!string.IsNullOrWhiteSpace(named))
            return File.Exists(named) ? named : throw new BrowserMissingException(
                $"The variable {Variable} names \"{named}\", and there is no such file. Let it name the browser's program, or unset it.");
        string ending = OperatingSystem.IsWindows() ? ".exe" : "";
        string[] folders = (path ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return Names.SelectMany(name => folders.Select(folder => Path.Combine(folder, name + ending)))
            .Concat(usualPlaces).FirstOrDefault(File.Exists) ?? throw new BrowserMissingException(
                "PDFs need Chromium, Chrome or Edge, and none was found. Install one (Debian or Ubuntu: sudo apt install chromium; "
                + $"macOS: Chrome or Edge in Applications; Windows: Edge is part of it), or let the variable {Variable} name its program.");
    }

    private static IEnumerable<string> UsualPlaces()
    {
        if (OperatingSystem.IsWindows())
        {
            Environment.SpecialFolder[] roots =
                [Environment.SpecialFolder.ProgramFiles, Environment.SpecialFolder.ProgramFilesX86, Environment.SpecialFolder.LocalApplicationData];
            return roots.Select(Environment.GetFolderPath).Where(root => root.Length > 0)
                .SelectMany(root => WindowsPlaces.Select(place => Path.Combine(root, place)));
        }
        if (OperatingSystem.IsMacOS())
            return new[] { "/Applications", Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), "Applications") }
                .SelectMany(root => Apps.Select(app => Path.Combine(root, $"{app}.app", "Contents", "MacOS", app)));
        return ["/snap/bin/chromium", "/opt/google/chrome/chrome", "/opt/microsoft/msedge/msedge", "/usr/lib/chromium/chromium"];
    }
}
