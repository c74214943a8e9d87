using FlapAero.Charts;
using FlapAero.Notebooks.Seals;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public class ProblemTests
{
    private static readonly Lesson TheLesson = Lesson.Begin();

    [Fact]
    public void Decide_SafeOptionBesideTheRightOne_IsAcceptedWithItsReason()
    {
        Problem problem = TheLesson.Decide("D", "q", [Option.Right("Go on.", "The rule is kept."), Option.Safe(false, "Go around.", "Say why.")], "r", ["h"], "s");
        var html = Html.Parse(problem.ToHtml());
        string safe = problem.Answer == "a" ? "b" : "a";
        CheckResult verdict = TheLesson.CheckSealed(safe, problem.Kept().Key!.Seal);

        Assert.Equal(CheckOutcome.Passed, verdict.Outcome);
        Assert.Equal($"D: {safe} is safe and accepted; it is more than the rule asks. Say why.", verdict.Words);
        Assert.Contains(html.QuerySelectorAll(".because > li"), li => li.TextContent == "Accepted too, as safe. Say why.");
        // Where it is the right one, it is simply right.
        Assert.True(Option.Safe(true, "Go around.", "x").IsRight);
    }

    [Fact]
    public void Problem_HintsInSteps_AreEachFoldedUnderItsNumber()
    {
        Problem problem = TheLesson.Problem("T", $"At {Angle.FromDegrees(30):0}?", ["First *this*.", $"Then $1/\\cos\\varphi$."], Speed.FromKnots(57.15), Speed.FromKnots(1), "So.", new Mistake(Speed.FromKnots(53), "No bank."));
        var html = Html.Parse(problem.ToHtml());

        Assert.Equal(["Hint 1 of 2", "Hint 2 of 2"], html.QuerySelectorAll("details.hint > summary").Select(s => s.TextContent));
        AnswerKey key = KeyOutput.Parse(problem.Kept().ToJson()).Key!;
        Assert.Equal("57.2 ± 1\u00A0kt", key.Answer);
        Assert.Equal("Speed.FromKnots(0)", key.Blank);
        Assert.Equal("At 30°?", key.Question);
        Assert.Equal(["First *this*.", "Then $1/\\cos\\varphi$."], key.Hints);
        Assert.Equal(new AnswerKey.Line("53\u00A0kt", "No bank.") { Value = 53 }, Assert.Single(key.Mistakes));
        Assert.Equal(CheckOutcome.Passed, TheLesson.CheckSealed(Speed.FromKnots(57), key.Seal).Outcome);
    }

    [Fact]
    public void Choose_Seeds_DrawEveryOrderAndKeepTheReasons()
    {
        var answers = new HashSet<string>();
        var orders = new HashSet<string>();
        for (int seed = 1; seed <= 60; seed++)
        {
            Problem problem = Choice(Lesson.Begin(seed));
            Assert.Equal(problem.ToString(), Choice(Lesson.Begin(seed)).ToString());
            Assert.Equal("yes", problem.Options[problem.Answer[0] - 'a'].Text.ToString());
            answers.Add(problem.Answer);
            orders.Add(string.Join(' ', problem.Options.Select(o => o.Text.ToString())));
        }
        Assert.Equal(["a", "b", "c"], answers.Order());
        Assert.Equal(6, orders.Count);
    }

    [Fact]
    public void Decide_Html_HasOptionsReasonAndWhyNot()
    {
        var html = Html.Parse(TheLesson.Decide("D", "q", [Option.Right("Go around.", "It is safe."), Option.Wrong("Go on.", "It is not.")], "Names the margin.", ["h"], "s").ToHtml());

        Assert.Equal(2, html.QuerySelectorAll("ol.options > li").Length);
        Assert.NotNull(html.QuerySelector("p.reason"));
        Assert.Contains("Names the margin.", html.QuerySelector(".solution .good-reason")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(2, html.QuerySelectorAll(".solution ol.because > li").Length);
        Assert.StartsWith("Right. It is safe.", html.QuerySelectorAll(".because > li").Single(li => li.TextContent.Contains("Right", StringComparison.Ordinal)).TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Right", html.QuerySelector(".options")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_InANotebook_HasTheSolutionAndNoKey()
    {
        Problem problem = Choice(TheLesson);

        Assert.NotNull(Html.Parse(problem.ToHtml()).QuerySelector(".solution"));
        Assert.DoesNotContain(problem.Kept().Key!.Seal, problem.ToHtml(), StringComparison.Ordinal);
        // Only the kernel that makes the handouts asks for it.
        Assert.DoesNotContain(KeyOutput.MimeType, Formatter.GetPreferredMimeTypesFor(typeof(Problem)));
        Assert.Null(Html.Parse(problem.QuestionHtml()).QuerySelector(".solution"));
    }

    [Fact]
    public void Choose_AtFault_IsRefusedInWords()
    {
        string Refusal(params Option[] options) => Assert.Throws<RefusedInputException>(() => TheLesson.Choose("C", "q", options, ["h"], "s")).Message;

        Assert.Contains("needed is exactly one", Refusal(Option.Wrong("a", "x"), Option.Wrong("b", "x")), StringComparison.Ordinal);
        Assert.Contains("needed is exactly one", Refusal(Option.Right("a", "x"), Option.Right("b", "x")), StringComparison.Ordinal);
        Assert.Contains("allowed are 2 to 6", Refusal(Option.Right("a", "x")), StringComparison.Ordinal);
        Assert.Contains("say the same", Refusal(Option.Right("a", "x"), Option.Wrong("a", "y")), StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => Option.Wrong("a", " "));
        Assert.Contains("no hint", Assert.Throws<RefusedInputException>(() => TheLesson.Problem("P", "q", [], 1.5, 0.1, "s")).Message, StringComparison.Ordinal);
    }

    public static TheoryData<Words, Words> GiveAways => new()
    {
        { $"At {Speed.FromKnots(57.4)} or so?", "h" },
        { $"At {Speed.FromKnots(57.15):m/s 0.0}?", "h" },
        { "q", "It is 57." },
        { "q", "Nearly 57,2 knots." },
    };

    [Theory, MemberData(nameof(GiveAways), DisableDiscoveryEnumeration = true)]
    public void Problem_QuestionOrHintWithTheAnswer_IsRefused(Words question, Words hint) => Assert.Contains(
        "gives its answer away", Assert.Throws<RefusedInputException>(() => TheLesson.Problem("P", question, [hint], Speed.FromKnots(57.15), Speed.FromKnots(1), "s")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("It was 57°, 57 lb and 57 ft/min.", null)]
    [InlineData("57 A of 57 Ah at 57 V are 57 W.", null)]
    [InlineData("At 1 057 or 570 or 5.7 or 56.", null)]
    [InlineData("The answer: 57.15", "57.15")]
    [InlineData("57\u00A0± 1\u00A0kt", "57 ± 1 kt")]
    [InlineData("106 km/h", "106 km/h")]
    [InlineData("65.8mph", "65.8mph")]
    [InlineData("\u221257.2 kt", "57.2 kt")]
    [InlineData("fig-57-a1b57", null)]
    public void FirstWithin_Text_FindsEveryWritingOfTheAnswer(string text, string? found)
    {
        string? first = new WrittenNumbers(text.Replace("1 057", "1\u202F057", StringComparison.Ordinal)).FirstWithin(57.15, 1, UnitSpelling.All(Speed.FromKnots(1)));
        Assert.Equal(found, first?.TrimStart('-'));
    }

    private static Problem Choice(Lesson lesson) =>
        lesson.Choose("C", "q", [Option.Right("yes", "1"), Option.Wrong("no", "2"), Option.Wrong("perhaps", "3")], ["h"], "s");
}
