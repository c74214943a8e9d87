using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using FlapAero.Charts;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Watching;

/// <summary>
/// Pages that load themselves anew when they have been made anew: each holds a script and the state it was made in, and a list
/// beside the pages says which states are the newest. A normal build makes no such page.
/// </summary>
internal sealed class WatchedPages
{
    /// <summary>The list, in the folder that the command keeps for itself beside the pages.</summary>
    public static readonly string ListName = Path.Combine(".flapaero", "watched.js");

    private const string InlineOnly = "script-src 'unsafe-inline'";

    private static readonly Lazy<string> Script = new(() => HtmlText.InScript(Assets.Watch).Trim());

    private readonly SortedDictionary<string, string> _states = new(StringComparer.Ordinal);

    /// <summary>Puts the script into each page among a lesson's files.</summary>
    public void AddTo(IDictionary<string, byte[]> files)
    {
        foreach (string name in files.Keys.Where(name => name.EndsWith(".html", StringComparison.Ordinal)).ToArray())
        {
            string page = Encoding.UTF8.GetString(files[name]);
            string state = Convert.ToHexStringLower(SHA256.HashData(files[name]))[..16];
            int end = page.LastIndexOf("</body>", StringComparison.Ordinal);
            files[name] = Encoding.UTF8.GetBytes(page[..end].Replace(InlineOnly, InlineOnly + " 'self' file:", StringComparison.Ordinal)
                + $"<script data-page=\"{HtmlText.Escape(name)}\" data-made=\"{state}\">\n{Script.Value}\n</script>\n{page[end..]}");
            _states[name] = state;
        }
    }

    /// <summary>Writes the list, after the pages: a page that reads it finds the state that it names.</summary>
    /// <exception cref="HandoutException">It cannot be written.</exception>
    public void WriteList(string folder)
    {
        try
        {
            WholeFile.Write(Path.Combine(folder, ListName), Encoding.UTF8.GetBytes($"flapaeroWatched({JsonSerializer.Serialize(_states)});\n"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"The pages are written, and what reloads them cannot be: {e.Message.ReplaceLineEndings(" ").TrimEnd('.')}.", e);
        }
    }

    /// <summary>Takes the list away: nobody watches any more.</summary>
    public static void RemoveList(string folder)
    {
        if (Directory.Exists(Path.GetDirectoryName(Path.Combine(folder, ListName))))
            File.Delete(Path.Combine(folder, ListName));
    }
}
