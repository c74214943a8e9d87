using System.Text;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Watching;

namespace FlapAero.Handouts.Tests.Watching;

[Trait("Speed", "slow")]
public sealed class WatchedPagesTests(Browser browser) : IClassFixture<Browser>, IDisposable
{
    private const string Name = "01-turn.html";

    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-watched-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Page_OpenFromTheDiskWhenItIsMadeAnew_LoadsItselfAnewOnce()
    {
        var watched = new WatchedPages();
        Directory.CreateDirectory(Path.Combine(_folder, ".flapaero"));
        Write(watched, "first state");
        await using Tab tab = await browser.OpenAsync(new Uri(Path.Combine(_folder, Name)).AbsoluteUri, 800);
        Assert.Contains("first state", await tab.AskAsync<string>("document.body.textContent"), StringComparison.Ordinal);

        Write(watched, "second state");

        await tab.Page.WaitForFunctionAsync("() => document.body.textContent.includes('second state')");
        int loads = tab.Requests.Count(request => request.EndsWith(Name, StringComparison.Ordinal));
        await Task.Delay(1500, TestContext.Current.CancellationToken);
        Assert.Equal(2, loads);
        Assert.Equal(loads, tab.Requests.Count(request => request.EndsWith(Name, StringComparison.Ordinal)));
        Assert.DoesNotContain(tab.Complaints, complaint => complaint.StartsWith("error:", StringComparison.Ordinal) || complaint.Contains("Policy", StringComparison.Ordinal));

        WatchedPages.RemoveList(_folder);
        Assert.Empty(Directory.GetFiles(_folder, "watched.js", SearchOption.AllDirectories));
    }

    private void Write(WatchedPages watched, string words)
    {
        var files = new Dictionary<string, byte[]>
        {
            [Name] = Encoding.UTF8.GetBytes(PageShell.ToHtml(new PageFrame("A turn", "student", "To the page", "<h1>A turn</h1>", "", $"<p>{words}</p>"))),
            ["01-turn.ipynb"] = "{}"u8.ToArray(),
        };
        watched.AddTo(files);
        Assert.Equal("{}"u8.ToArray(), files["01-turn.ipynb"]);
        File.WriteAllBytes(Path.Combine(_folder, Name), files[Name]);
        watched.WriteList(_folder);
    }
}
