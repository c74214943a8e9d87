using FlapAero.Charts;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Tests;

/// <summary>What a notebook's figure becomes on a page.</summary>
public sealed class FigureMarkupTests
{
    private static readonly Figure Figure = new Figure("Stall, 100 % sure", Axis.Of("bank", "φ", "°"), Axis.Of("stall speed", "V_S", "kt"))
        .Line("flaps \"up\" & 'clean'", [0, 30, 60], [51.1, 54.9, 72.3]).Caption("Caption.").Finding("At 60° it is 72.3 kt.");

    [Fact]
    public void ForPage_NotebooksFigure_IsTheFigureForAPage()
    {
        string page = OnAPage(Figure.ToNotebookHtml());

        Assert.Equal(OnAPage(Figure.ToHtml()), page);
        Assert.DoesNotContain("flapaeroFigures", page, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_ScriptOutsideAFigure_IsStillRefused()
    {
        string message = Assert.Throws<HandoutException>(() => OnAPage("<p>a</p><script>alert(1)</script>")).Message;

        Assert.Contains("has a script", message, StringComparison.Ordinal);
    }

    private static string OnAPage(string html)
    {
        using var mathematics = new Mathematics();
        return Fragment.Parse(html, "here").ToHtml(new IdRegistry(), mathematics);
    }
}
