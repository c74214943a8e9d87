using FlapAero.Charts;

namespace FlapAero.Handouts.Tests;

/// <summary>The tests that share these pages.</summary>
[CollectionDefinition]
public sealed class TestsOfMovingPages : ICollectionFixture<MovingPages>;

/// <summary>A page, and what a notebook shows without Jupyter round it, each with a figure that moves.</summary>
public sealed class MovingPages : IAsyncLifetime
{
    public const string Figure = "document.querySelector('figure.plot:has(.plot-control)')";

    private const string Code = """
        new Figure("Lighter", Axis.Of("bank", "φ", "°"), Axis.Of("stall speed", "V_S", "kt"))
            .Line("full", [0, 30, 60], [50.0, 54, 71]).Caption("Stall speed against bank.")
            .Moving(Axis.Of("weight", "W", "%"), Samples.Between(60, 110, 5), start: 85, (figure, share) => figure
                .Line("now", [0, 30, 60], [share / 2, share / 2 + 4, share / 2 + 21]).Finding($"At {share:0} % the stall speed V_S is {share / 2:0.0} kt."))
        """;

    private readonly Folder _folder = new();

    public static MovingFigure Lighter => new Figure("Lighter", Axis.Of("bank", "φ", "°"), Axis.Of("stall speed", "V_S", "kt"))
        .Line("full", [0, 30, 60], [50.0, 54, 71]).Caption("Stall speed against bank.")
        .Moving(Axis.Of("weight", "W", "%"), Samples.Between(60, 110, 5), start: 85, (figure, share) => figure
            .Line("now", [0, 30, 60], [share / 2, share / 2 + 4, share / 2 + 21]).Finding($"At {share:0} % the stall speed V_S is {share / 2:0.0} kt."));

    public string Page => new Uri(_folder.Page("01-turn.html")).AbsoluteUri;

    public async ValueTask InitializeAsync()
    {
        _folder.With("01-turn.ipynb", NotebookText.Sound().Code("compute", "lighter", "The same turn, lighter", Code));
        await _folder.BuildAsync();
    }

    public ValueTask DisposeAsync()
    {
        _folder.Dispose();
        return ValueTask.CompletedTask;
    }

    /// <summary>Outputs one below the other, in a page with a module loader, as a notebook has it.</summary>
    public string Outputs(string before, params string[] outputs)
    {
        string file = Path.Combine(_folder.Output, $"outputs-{Guid.NewGuid():N}.html");
        string body = string.Concat(outputs.Select(output => $"<div class=\"output\">{output}</div>"));
        File.WriteAllText(file, $"<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>t</title><link rel=\"icon\" href=\"data:,\"><script>window.define = () => {{ window.wasDefined = true; }}; define.amd = {{}};{before}</script></head><body>{body}</body></html>");
        return new Uri(file).AbsoluteUri;
    }
}
