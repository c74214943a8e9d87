using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace FlapAero.Handouts.Tests;

/// <summary>The tests that share these pages.</summary>
[CollectionDefinition]
public sealed class TestsOfWholePages : ICollectionFixture<WholePages>;

/// <summary>The pages of the whole lesson, built once for all tests that only read them.</summary>
public sealed class WholePages : IAsyncLifetime
{
    public const string Student = "04-stall-in-turn.html";
    public const string Instructor = "04-stall-in-turn.instructor.html";
    public const string Index = "index.html";

    private readonly Folder _folder = new();

    public async ValueTask InitializeAsync()
    {
        _folder
            .With("04-stall-in-turn.ipynb", WholeLesson.Make())
            .With("05-other.ipynb", NotebookText.Sound("The other lesson", 5).Markdown("explain", "rule", "The rule", "Custom multiplies:\n\n$$ V = 1.3\\,V_S $$"));
        await _folder.BuildAsync();
    }

    public ValueTask DisposeAsync()
    {
        _folder.Dispose();
        return ValueTask.CompletedTask;
    }

    public string Text(string page) => _folder.Read(page);

    public IHtmlDocument Document(string page) => new HtmlParser().ParseDocument(Text(page));

    public string Address(string page) => new Uri(_folder.Page(page)).AbsoluteUri;
}
