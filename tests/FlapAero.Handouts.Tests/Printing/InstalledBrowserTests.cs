using FlapAero.Handouts.Printing;

namespace FlapAero.Handouts.Tests.Printing;

public sealed class InstalledBrowserTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Find_NamedByTheVariable_TakesItBeforeAnyOther()
    {
        string named = Put("my-browser");
        Put(OnPath("chromium"));

        Assert.Equal(named, InstalledBrowser.Find(named, _folder, []));
    }

    [Fact]
    public void Find_NamedButMissing_SaysWhichVariableNamesWhat()
    {
        string message = Assert.Throws<BrowserMissingException>(() => InstalledBrowser.Find("/no/such/browser", _folder, [])).Message;

        Assert.Contains("FLAPAERO_BROWSER names \"/no/such/browser\"", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_OnThePath_TakesIt()
    {
        string found = Put(OnPath("google-chrome"));

        Assert.Equal(found, InstalledBrowser.Find(null, string.Join(Path.PathSeparator, "/no/such/folder", _folder), [Put("elsewhere")]));
    }

    [Fact]
    public void Find_InAUsualPlace_TakesIt()
    {
        string usual = Put("Microsoft Edge");

        Assert.Equal(usual, InstalledBrowser.Find("", _folder, ["/no/such/browser", usual]));
    }

    [Fact]
    public void Find_Nowhere_SaysWhatToInstall()
    {
        string message = Assert.Throws<BrowserMissingException>(() => InstalledBrowser.Find(null, _folder, [])).Message;

        Assert.All(new[] { "Chromium", "Chrome", "Edge", "apt install chromium", "FLAPAERO_BROWSER" }, word => Assert.Contains(word, message, StringComparison.Ordinal));
    }

    private static string OnPath(string name) => OperatingSystem.IsWindows() ? name + ".exe" : name;

    private string Put(string name)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllText(path, "");
        return path;
    }
}
