using System.Globalization;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public class LessonTests
{
    private static readonly Lesson TheLesson = Lesson.Begin();

    [Fact]
    public void Say_QuantitiesAndMaths_AreRendered()
    {
        var page = Html.Parse(TheLesson.Say($"**Speed** {Speed.FromKnots(51.13)} or {Speed.FromKnots(51.13):m/s 0.0}, $V_S = {Speed.FromKnots(51.13)}$, {1.2345:0.00}.").ToHtml());
        var said = page.QuerySelector("div.said")!;
        Assert.Equal("Speed", said.QuerySelector("strong")!.TextContent);
        Assert.Contains("51.1\u00A0kt or 26.3\u00A0m/s", said.TextContent, StringComparison.Ordinal);
        Assert.Equal(@"\(V_S = \text{51.1~kt}\)", said.QuerySelector("span.math")!.TextContent);
        Assert.Contains("1.23.", said.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Say_DisplayedMaths_IsADivWithTheNumber()
    {
        var maths = Html.Parse(TheLesson.Say($"""
            So

            $$
            C_{"{"}L{"}"} = {-1234.5:0.0}, {Ratio.FromPercent(40)}
            $$
            """).ToHtml()).QuerySelector("div.math")!;
        Assert.Contains(@"-1\,234.5", maths.TextContent, StringComparison.Ordinal);
        Assert.Contains(@"\text{40~\%}", maths.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("**bold** _it_ $x$ [a](javascript:b)")]
    [InlineData("# no heading")]
    [InlineData("&lt;b&gt;")]
    public void Say_ValueWithMarkup_StaysText(string value)
    {
        var said = Html.Parse(TheLesson.Say($"Value: {value}!").ToHtml()).QuerySelector("div.said")!;
        Assert.Equal($"Value: {value}!", said.TextContent);
        Assert.Equal("P", said.FirstElementChild!.TagName);
        Assert.Equal(0, said.FirstElementChild.ChildElementCount);
    }

    [Fact]
    public void Say_RawHtmlInMarkdown_IsText()
    {
        var page = Html.Parse(TheLesson.Say("Text <script>alert(1)</script> and <b>bold</b>").ToHtml());
        Assert.Empty(page.QuerySelectorAll("script, b"));
    }

    [Fact]
    public void Say_ValueInALinkAddress_IsRefused() =>
        Assert.Throws<RefusedInputException>(() => TheLesson.Say($"[link](https://example.org/{1})").ToHtml());

    [Fact]
    public void Table_Columns_AreHeadedAndInWords()
    {
        (string Name, Speed Speed, double Lift)[] rows = [("up", Speed.FromKnots(53.3), 1.4567), ("<35°>", Speed.FromKnots(46.1), 2.1)];
        Table table = TheLesson.Table("Stall speeds", rows, ("flaps", r => r.Name), ("stall speed V_S", r => r.Speed), ("C_Lmax", r => r.Lift));
        var html = Html.Parse(table.ToHtml()).QuerySelector("table.numbers")!;
        Assert.Equal("Stall speeds", html.QuerySelector("caption")!.TextContent);
        Assert.Equal(["flaps", "stall speed VS", "CLmax"], html.QuerySelectorAll("thead th[scope=col]").Select(e => e.TextContent));
        Assert.Equal(["up", "<35°>"], html.QuerySelectorAll("tbody th[scope=row]").Select(e => e.TextContent));
        Assert.Equal(["53.3\u00A0kt", "1.46", "46.1\u00A0kt", "2.10"], html.QuerySelectorAll("tbody td").Select(e => e.TextContent));
        Assert.Contains("up\t53.3\u00A0kt\t1.46", table.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Table_Formats_AreUsed()
    {
        Table table = TheLesson.Table("Sink", (int[])[500, 1500], ("row", r => r, ""), ("sink", r => Speed.FromFeetPerMinute(r), "ft/min 0"));
        Assert.Equal(["1\u202F500", "1\u202F500\u00A0ft/min"], table.Rows[1]);
    }

    [Fact]
    public void Table_OneFunctionForARow_FillsTheColumnsInTheirFormats()
    {
        Table table = TheLesson.Table("Sink", (int[])[500, 1500], ["row", "sink:ft/min 0"], r => [r, Speed.FromFeetPerMinute(r)]);

        Assert.Equal(["row", "sink"], table.Headings);
        Assert.Equal(["1\u202F500", "1\u202F500\u00A0ft/min"], table.Rows[1]);
        Assert.Contains("1 values for 2 columns", Assert.Throws<RefusedInputException>(() => TheLesson.Table("Sink", (int[])[1], ["row", "sink"], r => [r])).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => TheLesson.Table("Sink", (int[])[1], ["row"], r => [r, r]));
        Assert.Throws<RefusedInputException>(() => TheLesson.Table("Sink", (int[])[], ["row"], r => [r]));
    }

    [Fact]
    public void Table_RowsOfValues_MustFillTheColumns()
    {
        Assert.Equal(["a", "51.1\u00A0kt"], TheLesson.Table("T", ["x", "y"], ["a", Speed.FromKnots(51.1)]).Rows[0]);
        Assert.Throws<RefusedInputException>(() => TheLesson.Table("T", ["x", "y"], ["a"]));
        Assert.Throws<RefusedInputException>(() => TheLesson.Table("T", ["x", "y"]));
    }

    public static TheoryData<Speed, string> Guesses => new()
    {
        { Speed.FromKnots(0), "R: the model gives 69.3_kt." },
        { Speed.FromKnots(75), "R: you said 75.0_kt, the model gives 69.3_kt. That is 5.7_kt too high (8.2_%)." },
        { Speed.FromKnots(50), "R: you said 50.0_kt, the model gives 69.3_kt. That is 19.3_kt too low (28_%)." },
        { Speed.FromKilometersPerHour(120), "R: you said 120_km/h, the model gives 128_km/h. That is 8_km/h too low (6.5_%)." },
        { Speed.FromKnots(69.31), "R: you said 69.3_kt, the model gives 69.3_kt. That is as good as exact." },
    };

    [Theory]
    [MemberData(nameof(Guesses), DisableDiscoveryEnumeration = true)]
    public void Compare_Guess_SaysHowFarOffAndWhichWay(Speed guess, string expected)
    {
        Compared compared = TheLesson.Compare("R", guess, Speed.FromKnots(69.3));
        Assert.Equal(expected, compared.ToString().Replace('\u00A0', '_'));
        Assert.Equal(compared.ToString(), Html.Parse(compared.ToHtml()).QuerySelector("p.compared")!.TextContent);
    }

    [Fact]
    public void Compare_PlainNumber_HasThreeDigits() => Assert.Equal(
        "C: you said 2.00, the model gives 1.60. That is 0.400 too high (25_%).",
        TheLesson.Compare("C", 2, 1.6).ToString().Replace('\u00A0', '_'));

    [Fact]
    public void Compare_NotFinite_SaysSoOfTheGuessAndRefusesTheResult()
    {
        Assert.Contains("prediction is not a finite number", TheLesson.Compare("C", double.NaN, 1.6).ToString(), StringComparison.Ordinal);
        Assert.Contains("\"C\"", Assert.Throws<RefusedInputException>(() => TheLesson.Compare("C", 1, double.NaN)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Problem_Complete_HasItsParts()
    {
        Problem problem = TheLesson.Problem("A <turn>", question: $"How fast at {Angle.FromDegrees(30)}?", hint: "Load factor *first*.",
            answer: Speed.FromMetersPerSecond(29.4), tolerance: Speed.FromKnots(0.5), solution: $"$n = {1.1547:0.000}$, so {Speed.FromKnots(57.15)}.");
        var html = Html.Parse(problem.ToHtml()).QuerySelector("section.problem")!;
        Assert.Equal("A <turn>", html.QuerySelector("h3")!.TextContent);
        Assert.Equal("How fast at 30.0°?", html.QuerySelector("div.question")!.TextContent);
        Assert.Equal("HintLoad factor first.", html.QuerySelector("details.hint")!.TextContent);
        Assert.Equal("57.1 ± 0.5\u00A0kt", html.QuerySelector("div.solution > p.answer")!.TextContent);
        Assert.Equal(@"\(n = 1.155\)", html.QuerySelector("div.solution span.math")!.TextContent);
        Assert.Equal("57.1 ± 0.5\u00A0kt", problem.Answer);
    }

    [Fact]
    public void Problem_NotSolvable_IsRefused()
    {
        Speed one = Speed.FromKnots(1);
        Assert.Contains("\"t\"", Assert.Throws<RefusedInputException>(() => TheLesson.Problem("t", "q", "h", double.NaN, 0.1, "s")).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => TheLesson.Problem("t", "q", "h", one, Speed.FromKnots(0), "s"));
        Assert.Throws<RefusedInputException>(() => TheLesson.Problem("t", "q", " ", one, one, "s"));
        Assert.Throws<RefusedInputException>(() => TheLesson.Problem("t", "q", "h", double.PositiveInfinity, 0.1, "s"));
    }

    [Fact]
    public void Results_GermanCulture_AreTheSame()
    {
        string[] Texts() =>
        [
            TheLesson.Say($"{Speed.FromKnots(51.13)} {1234.5} {0.5:0.00}").ToHtml(),
            TheLesson.Compare("x", Speed.FromKnots(50.5), Speed.FromKnots(69.3)).ToHtml(),
            TheLesson.Check("x", Speed.FromKnots(50.5), Speed.FromKnots(69.3), Speed.FromKnots(0.5)).ToHtml(),
            TheLesson.Problem("x", "q", "h", 1.25, 0.05, "s").ToHtml(),
            TheLesson.Table("x", (double[])[1.5], ("v", v => v)).ToHtml(),
        ];
        string[] expected = Texts();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo("de-DE");
            Assert.Equal(expected, Texts());
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }
}
