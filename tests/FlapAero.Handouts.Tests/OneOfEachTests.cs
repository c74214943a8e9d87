using FlapAero.Charts;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Tests;

/// <summary>Names, escapes and letters, which all parts take from one place.</summary>
public sealed class OneOfEachTests
{
    [Theory]
    [InlineData("Stall speed, flaps up", "stall-speed-flaps-up")]
    [InlineData("  Größe – à la carte! ", "gro-e-a-la-carte")]
    [InlineData("?!", "")]
    public void Of_Words_AreSmallLettersDigitsAndHyphens(string words, string name)
    {
        Assert.Equal(name, Slug.Of(words));
        Assert.Equal(name.Length > 0 ? name : "part", Slug.Of(words, otherwise: "part"));
        Assert.Equal(name, CellIds.Slug(words));
    }

    [Fact]
    public void Of_LongWords_EndBeforeAHyphen() => Assert.Equal("a-b", Slug.Of("a b c", longest: 4));

    [Fact]
    public void ForNotebook_TitleWithAnApostrophe_DoesNotEndTheAddress()
    {
        string html = new Figure("The pilot's \"line\" & more", Axis.Of("x", "x", "m"), Axis.Of("y", "y", "m"))
            .Line("it's up", [0, 1], x => x).Caption("Nothing.").Finding($"It's going up.").ToNotebookHtml();
        string address = new AngleSharp.Html.Parser.HtmlParser().ParseDocument(html).QuerySelector("img")!.GetAttribute("src")!;
        string drawing = Uri.UnescapeDataString(address[(address.IndexOf(',', StringComparison.Ordinal) + 1)..]);

        Assert.Contains("it's up", System.Xml.Linq.XDocument.Parse(drawing).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void OptionLetters_AreThereAndBack() =>
        Assert.All(Enumerable.Range(0, 6), index => Assert.Equal(index, OptionLetters.IndexOf(OptionLetters.Of(index).ToString())));

    [Fact]
    public void Caution_EveryForm_NamesManualRulesAndInstructor() => Assert.All(
        [Caution.Text, Caution.OfABriefing, Caution.OfTheCommand],
        words => Assert.All(["manual", "local rules", "qualified instructor"], who => Assert.Contains(who, words, StringComparison.Ordinal)));
}
