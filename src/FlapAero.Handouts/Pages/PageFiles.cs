using System.Text;

namespace FlapAero.Handouts.Pages;

/// <summary>Writes pages so that a reader meets the old page or the new one, never half of one.</summary>
internal sealed class PageFiles(string folder)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private bool _made;

    public bool Has(string name) => File.Exists(Path.Combine(folder, name));

    /// <summary>Refuses early: a lesson takes seconds to run, and its pages would then have nowhere to go.</summary>
    public void MakeSureOfFolder() => Try(() =>
    {
        _made = !Directory.Exists(folder);
        Directory.CreateDirectory(folder);
        string probe = Path.Combine(folder, ".writable");
        File.WriteAllText(probe, "");
        File.Delete(probe);
    });

    /// <summary>A build that fails leaves no trace, not even an empty folder.</summary>
    public void LeaveNoEmptyFolder() => Try(() =>
    {
        if (_made && Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any())
            Directory.Delete(folder);
    });

    public void Write(IReadOnlyDictionary<string, string> pages) => Try(() =>
    {
        try
        {
            foreach ((string name, string html) in pages)
                File.WriteAllText(Beside(name), html, Utf8);
            foreach (string name in pages.Keys)
                File.Move(Beside(name), Path.Combine(folder, name), overwrite: true);
        }
        finally
        {
            foreach (string name in pages.Keys)
                File.Delete(Beside(name));
        }
    });

    private string Beside(string name) => Path.Combine(folder, "." + name + ".new");

    private void Try(Action action)
    {
        try
        {
            action();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"The folder {folder} cannot be written: {e.Message} Name another with --out.", e);
        }
    }
}
