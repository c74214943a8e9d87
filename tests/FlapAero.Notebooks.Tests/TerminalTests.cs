using System.Reflection;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public sealed class TerminalTests
{
    [Theory]
    [InlineData("one two three four", "one two\nthree four")]
    [InlineData("one\ntwo", "one two")]
    [InlineData("one\n\ntwo", "one\n\ntwo")]
    [InlineData("# A heading too long", "# A\nheading\ntoo long")]
    [InlineData("- one two three\n- four", "- one two\n  three\n- four")]
    [InlineData("12. one two three", "12. one\n    two\n    three")]
    [InlineData("> one two three", "> one two\n> three")]
    [InlineData("| a | b | c | d |\n|---|", "| a | b | c | d |\n|---|")]
    [InlineData("$$\na + b + c + d\n$$\nafter it", "$$\na + b + c\n+ d\n$$\nafter it")]
    [InlineData("$$ a + b + c + d $$\nafter", "$$ a + b + c + d $$\nafter")]
    [InlineData("averyveryverylongword x", "averyveryverylongword\nx")]
    [InlineData("51.1\u00a0kt, 62.8\u00a0kt", "51.1\u00a0kt,\n62.8\u00a0kt")]
    public void Prose_AtTenColumns_WrapsWhatIsProse(string markdown, string expected) =>
        Assert.Equal(expected, Terminal.Prose(markdown, 10));

    [Fact]
    public void TextOf_TableQuantityAndSentence_AreInTheirOwnWords()
    {
        Lesson lesson = Lesson.Begin();

        Assert.Equal("Speeds\nflaps  speed\nup     51.1\u00a0kt\n35°    9.0\u00a0kt",
            Terminal.TextOf(lesson.Table("Speeds", ["flaps", "speed"], ["up", Speed.FromKnots(51.1)], ["35°", Speed.FromKnots(9)])));
        Assert.Equal("51.1\u00a0kt", Terminal.TextOf(Speed.FromKnots(51.1)));
        Assert.Equal("It is 51.1\u00a0kt, or so.", Terminal.TextOf(lesson.Say($"It is {Speed.FromKnots(51.1)},\nor so.")));
    }

    [Fact]
    public void Explain_WrappedException_IsThreeLinesWithoutAStack()
    {
        string text = Terminal.Explain(new TargetInvocationException(new ArgumentException("bank: 90° is refused.", "bank")));

        Assert.Equal(["The lesson stopped: bank: 90° is refused.", "Where: outside the lesson's own lines", "Try: undo the last change there; or export the lesson again."], text.Split('\n'));
    }
}
