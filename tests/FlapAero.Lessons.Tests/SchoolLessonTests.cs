using System.Text.RegularExpressions;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>A school's lessons hold the school's rules, and no number of another's: all lessons, built for two schools.</summary>
[Trait("Speed", "slow")]
public sealed class SchoolLessonTests
{
    /// <summary>Lessons that name the reference multiple to students; the others name none.</summary>
    private static readonly HashSet<string> WithMultiple =
    [
        "start-here", "what-flaps-change", "drag-and-the-angle-of-descent", "approach-speed", "power-on-the-approach", "energy-on-final",
        "round-out-and-float", "the-landing-roll", "the-circuit-without-flaps", "when-the-flaps-stay-up", "how-much-landings-vary",
    ];

    /// <summary>Lessons that name the bank limit to students.</summary>
    private static readonly HashSet<string> WithBank = ["lift-and-where-it-ends", "approach-speed", "the-circuit-without-flaps"];

    private static readonly Mathematics Maths = new();

    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    /// <summary>Checks and leaks are held by the run and by the making of the pages.</summary>
    [Theory, MemberData(nameof(Lessons))]
    public async Task Lesson_OfAnotherSchool_HoldsItsRulesAndNoneOfTheUsual(string slug)
    {
        RanLesson run = await SecondSchool.RunAsync(slug);

        string read = SecondSchool.ReadBy(run, Maths);

        Assert.Equal(WithMultiple.Contains(slug), Multiple("1.4").IsMatch(read));
        Assert.Equal(WithBank.Contains(slug), Bank("15").IsMatch(read));
        Assert.Empty(Multiple("1.3").Matches(read).Concat(Bank("30").Matches(read)).Concat(Bank("20").Matches(read)).Select(found => Around(read, found)));
    }

    /// <summary>So that the search above can find something, it finds it where the rules are the usual ones.</summary>
    [Theory, MemberData(nameof(Lessons))]
    public async Task Lesson_WithoutASchool_HoldsTheUsualRules(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        RanLesson lesson = new(run.Lesson, run.ToRan().Outputs) { Sheets = [new RanSheet(1, 1, run.ToRan().Outputs)] };

        string read = SecondSchool.ReadBy(lesson, Maths);

        Assert.Equal(WithMultiple.Contains(slug), Multiple("1.3").IsMatch(read));
        Assert.Equal(WithBank.Contains(slug), Bank("30").IsMatch(read));
    }

    /// <summary>A page holds the height, the gusts, the margin and the tolerances of its school.</summary>
    [Theory]
    [InlineData("energy-on-final", "Stable by 400 ft, at most 8 kt fast", "Stable by 300 ft, at most 10 kt fast")]
    [InlineData("energy-on-final", "threshold 39 ft up", "threshold 50 ft up")]
    [InlineData("approach-speed", "Custom adds 60 % of it", "Custom adds half of it")]
    [InlineData("the-landing-roll", "within 67 % of the runway", "Your school keeps the rule: within 70 %")]
    [InlineData("when-the-flaps-stay-up", "1.50 times the way to the stop", "1.43 times the way to the stop")]
    public async Task Lesson_OfAnotherSchool_SaysEachRuleAsTheSchoolHasIt(string slug, string own, string usual)
    {
        string read = SecondSchool.ReadBy(await SecondSchool.RunAsync(slug), Maths), without = (await LessonRun.OfAsync(slug)).Results.Values
            .SelectMany(result => result.Outputs).Aggregate("", (all, output) => all + output.ForInstructor + " ").Replace('\n', ' ');

        Assert.Contains(own, read.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain(usual, read.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains(usual, Regex.Replace(without.Replace('\u00A0', ' ').Replace("&nbsp;", " ", StringComparison.Ordinal), "\\s+", " "), StringComparison.Ordinal);
    }

    /// <summary>The multiple where it multiplies a stall; the same digits may be a distance or a share.</summary>
    private static Regex Multiple(string number) =>
        new($@"(?<![\d.,\u2212]){Regex.Escape(number)}(?= times| ×| here, of|, up|, full| belongs| to \d)", RegexOptions.CultureInvariant);

    private static Regex Bank(string degrees) => new($@"(?<![\d.,\u2212]){degrees}°(?= of bank| bank|, is affordable|, the limit|: \d+ %)", RegexOptions.CultureInvariant);

    private static string Around(string text, Match found) => text[Math.Max(0, found.Index - 60)..Math.Min(text.Length, found.Index + 40)];
}
