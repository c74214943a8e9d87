namespace FlapAero.Jupyter.Tests;

public sealed class DifferencesTests
{
    private static readonly Dictionary<string, IReadOnlyList<Output>> Run = new()
    {
        ["a"] = [new("html", "<div class=\"check\" data-outcome=\"passed\">51.1 kt is right.</div>")],
        ["b"] = [new("text", "1.5"), new("html", "<p>two</p><script>draw(7)</script>")],
    };

    public static TheoryData<string, string, string> Planted => new()
    {
        { "passed", "wrong", "a: " },
        { "51.1", "51.2", "a: " },
        { "is right", "is nearly right", "a: " },
        { "1.5", "1,5", "b: " },
        { "<p>two</p>", "<p>three</p>", "b: " },
    };

    [Fact]
    public void Between_OtherScripts_FindsNone() =>
        Assert.Empty(Differences.Between(Run, Changed("draw(7)", "draw(8)")));

    [Theory]
    [MemberData(nameof(Planted))]
    public void Between_PlantedDifference_NamesTheCell(string text, string replacement, string cell) =>
        Assert.StartsWith(cell, Assert.Single(Differences.Between(Run, Changed(text, replacement))), StringComparison.Ordinal);

    [Fact]
    public void Between_DataOfAFigure_CountsAlthoughItIsAScript()
    {
        Dictionary<string, IReadOnlyList<Output>> Figure(string data) =>
            new() { ["f"] = [new("html", $"<figure><script type=\"application/json\" class=\"plot-data\">{data}</script></figure>")] };

        Assert.Single(Differences.Between(Figure("[1]"), Figure("[2]")));
    }

    [Fact]
    public void Between_MissingCellOrOutput_SaysSo()
    {
        Assert.Equal(["b: ran in one engine alone"], Differences.Between(Run, new Dictionary<string, IReadOnlyList<Output>> { ["a"] = Run["a"] }));
        Assert.Equal(["b: 2 outputs against 1"], Differences.Between(Run, new Dictionary<string, IReadOnlyList<Output>>(Run) { ["b"] = [Run["b"][0]] }));
    }

    private static Dictionary<string, IReadOnlyList<Output>> Changed(string text, string replacement) => Run.ToDictionary(
        cell => cell.Key,
        cell => (IReadOnlyList<Output>)[.. cell.Value.Select(o => o with { Text = o.Text.Replace(text, replacement, StringComparison.Ordinal) })]);
}
