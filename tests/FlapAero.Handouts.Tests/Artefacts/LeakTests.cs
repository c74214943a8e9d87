using System.Globalization;
using System.Text;
using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>Nothing that students get holds an answer, and the search for answers finds each kind that is planted.</summary>
[Collection<TestsOfArtefacts>]
[Trait("Speed", "slow")]
public sealed class LeakTests(ApproachSpeedArtefacts lesson)
{
    public static TheoryData<string> ForStudents =>
        [ApproachSpeedArtefacts.Student, ApproachSpeedArtefacts.Notebook, .. Enumerable.Range(1, 3).Select(k => $"{ApproachSpeedArtefacts.Stem}.sheet-{k}.html")];

    [Theory, MemberData(nameof(ForStudents))]
    public void In_WhatStudentsGet_FindsNothing(string name) => Assert.Empty(LeakSearch.In(Artefact(name), SecretsOf(name)));

    [Fact]
    public void In_WhatTheInstructorGets_FindsEveryAnswer()
    {
        Secrets secrets = Secrets.Of(lesson.Lesson);

        IReadOnlyList<string> leaks = LeakSearch.In(Artefact(ApproachSpeedArtefacts.Key), secrets);

        Assert.Equal(8, secrets.Keys.Count);
        Assert.InRange(secrets.Words.Count, 40, 400);
        Assert.InRange(leaks.Count, 25, 1000);
    }

    public static TheoryData<string, string> Plants
    {
        get
        {
            // {0} stands for the answer of "My approach speed", a number; see Plant.
            (string Where, string What)[] plants =
            [
                ("text", "<p>It is {number} kt.</p>"),
                ("text", "<p>It is {number}&nbsp;kt.</p>"),
                ("text", "<p>It is {rounded} ± 1 kt.</p>"),
                ("text", "<p>It is {comma} knots.</p>"),
                ("text", "<p>It is {kmh} km/h.</p>"),
                ("text", "<p>It is {ms} m/s.</p>"),
                ("text", "<!-- {number} kt -->"),
                ("text", "<p title=\"{number} kt\">Well.</p>"),
                ("text", "<script type=\"application/json\">{\"hint\":\"{number}\\u00a0kt\"}</script>"),
                ("text", "<script>const right = \"{number} kt\";</script>"),
                ("text", "<img alt=\"\" src=\"data:image/svg+xml;charset=utf-8,%3Csvg%3E%3Ctext%3E{number}%20kt%3C/text%3E%3C/svg%3E\">"),
                ("text", "<p data-x=\"{base64}\">Well.</p>"),
                ("text", "<p>The whole gust factor was added; custom is half of it.</p>"),
                ("text", "<p>The bank multiplies; <em>a skid at low speed</em> drops the inner wing: it is how this turn kills.</p>"),
                ("text", "<pre>var myBank = Angle.FromDegrees(double.RadiansToDegrees(Math.Acos(Math.Pow(1.1 / up.ReferenceMultiple, 2))));</pre>"),
                ("text", "<p>Collect predictions aloud before scrolling on; ask for reasons.</p>"),
                ("part", "<p>{number}</p>"),
                ("part", "<p>{rounded}</p>"),
                ("part", "<input value=\"{number}\">"),
                ("part", "<p data-right=\"{number}\"></p>"),
                ("choice", "<p>The answer is {letter}.</p>"),
                ("choice", "<p>Answer: {letter}</p>"),
                ("choice", "<p id=\"answer-{letter}\">Well.</p>"),
                ("choice", "<p aria-describedby=\"right-{letter}\">Well.</p>"),
                ("option", "<b>"),
            ];
            return [.. plants.Select(p => new TheoryDataRow<string, string>(p.Where, p.What))];
        }
    }

    [Theory, MemberData(nameof(Plants))]
    public void In_PageWithAPlantedLeak_FindsIt(string where, string planted)
    {
        Secrets secrets = Secrets.Of(lesson.Lesson);
        string html = lesson.LightText(ApproachSpeedArtefacts.Student);
        AnswerKey number = Number(secrets);
        AnswerKey choice = secrets.Keys.First(k => k.Choices.Count > 0);
        string leak = Filled(planted, number, choice);
        string leaky = where switch
        {
            "text" => html.Replace("</main>", leak + "</main>", StringComparison.Ordinal),
            "part" => html.Replace($"data-seal=\"{number.Seal}\">", $"data-seal=\"{number.Seal}\">{leak}", StringComparison.Ordinal),
            "choice" => html.Replace($"data-seal=\"{choice.Seal}\">", $"data-seal=\"{choice.Seal}\">{leak}", StringComparison.Ordinal),
            _ => html.Replace($"value=\"{choice.Answer}\"", $"value=\"{choice.Answer}\" class=\"x\"", StringComparison.Ordinal),
        };

        Assert.NotEqual(html, leaky);
        Assert.NotEmpty(LeakSearch.In(Artefact(ApproachSpeedArtefacts.Student) with { Content = leaky }, secrets));
    }

    [Theory]
    [InlineData("answer-{letter}-tighter-turn")]
    [InlineData("answer-is-{letter}")]
    public void In_PageWhoseFieldIsNamedAfterItsProblem_FindsNothing(string name)
    {
        Secrets secrets = Secrets.Of(lesson.Lesson);
        AnswerKey choice = secrets.Keys.First(k => k.Choices.Count > 0);
        string html = lesson.LightText(ApproachSpeedArtefacts.Student);
        string named = html.Replace("answer-" + Markup.Slug(choice.What), Filled(name, Number(secrets), choice), StringComparison.Ordinal);

        Assert.NotEqual(html, named);
        Assert.Empty(LeakSearch.In(Artefact(ApproachSpeedArtefacts.Student) with { Content = named }, secrets));
    }

    [Theory]
    [InlineData("My approach speed: {number} kt")]
    [InlineData("{rounded} ± 1 kt")]
    [InlineData("{ms} m/s")]
    [InlineData("The whole gust factor was added; custom is half of it.")]
    public void InText_PrintedPageWithAPlantedLeak_FindsIt(string planted)
    {
        Secrets secrets = Secrets.Of(lesson.Lesson);
        AnswerKey number = Number(secrets);

        Assert.Empty(LeakSearch.InText("page.pdf", "Approach speed on the needle ______ kt", secrets));
        Assert.NotEmpty(LeakSearch.InText("page.pdf", Filled(planted, number, number), secrets));
    }

    [Theory]
    [InlineData("deletable", "x\", \"hint\": \"{number} kt")]
    [InlineData("my-approach-speed", "x\", \"note\": \"{number}")]
    [InlineData("my-approach-speed", "x\", \"note\": \"{base64}")]
    public void In_NotebookWithAPlantedLeak_FindsIt(string at, string planted)
    {
        Secrets secrets = Secrets.Of(lesson.Lesson);
        string json = lesson.Text(ApproachSpeedArtefacts.Notebook);
        AnswerKey number = Number(secrets);
        string value = Filled(planted, number, number);
        string leaky = at == "deletable"
            ? json.Replace("\"deletable\": false", $"\"deletable\": \"{value}\"", StringComparison.Ordinal)
            : json.Replace("\"id\": \"my-approach-speed\"", $"\"x\": \"{value}\", \"id\": \"my-approach-speed\"", StringComparison.Ordinal);

        Assert.NotEqual(json, leaky);
        Assert.NotEmpty(LeakSearch.In(Artefact(ApproachSpeedArtefacts.Notebook) with { Content = leaky }, secrets));
    }

    [Fact]
    public void In_NotebookWithTheAuthorsCell_FindsIt()
    {
        string author = string.Concat(lesson.Lesson.Notebook.Cells.Single(c => c.Id == "my-bank-limit").Source);
        string json = lesson.Text(ApproachSpeedArtefacts.Notebook);
        string leaky = json.Replace("var myBank = Angle.FromDegrees(0);   // your answer", author, StringComparison.Ordinal);

        Assert.NotEqual(json, leaky);
        Assert.NotEmpty(LeakSearch.In(Artefact(ApproachSpeedArtefacts.Notebook) with { Content = leaky }, Secrets.Of(lesson.Lesson)));
    }

    [Fact]
    public void Of_LessonThatForgetsToBlankAnAnswer_MakesNothing()
    {
        const string Blank = "var myBank = Angle.FromDegrees(0);   // your answer";
        LessonNotebook notebook = LessonCopies.Named("approach-speed");
        string json = File.ReadAllText(RepositoryRoot.Path("notebooks/" + notebook.FileName));
        string author = notebook.Cells.Single(c => c.Id == "my-bank-limit").Source;
        LessonNotebook forgetful = LessonNotebook.Parse(notebook.FileName, json.Replace(Blank, author, StringComparison.Ordinal));
        var run = new RanLesson(forgetful, forgetful.Cells.ToDictionary(c => c.Id, lesson.Lesson.OutputsOf));
        using var mathematics = new Mathematics();

        Assert.DoesNotContain(Blank, forgetful.Cells.Single(c => c.Id == "my-bank-limit").StudentSource, StringComparison.Ordinal);
        foreach (Edition edition in new[] { Edition.Student, Edition.Notebook })
        {
            string message = Assert.Throws<HandoutException>(() => LessonArtefacts.Of(run, mathematics, new ArtefactChoice(new HashSet<Edition> { edition }))).Message;
            Assert.Contains("would get answers of lesson approach-speed; nothing was written", message, StringComparison.Ordinal);
            Assert.Contains("math.acos", message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Of_LessonThatTellsAFixedAnswer_WouldBeFound()
    {
        // What a lesson teaches is content; but the answer that its own check wants must not be among it.
        Secrets secrets = Secrets.Of(lesson.Lesson);
        foreach (AnswerKey key in secrets.Keys.Where(k => k.Question.Length == 0))
            Assert.Empty(LeakSearch.InText("lesson", secrets.Told, secrets with { Keys = [key], Told = "" }));
    }

    /// <summary>What a page says with another number is content to a problem, whose numbers a seed drew, and a leak to a check.</summary>
    [Fact]
    public void InText_NumberThatOnlyAChangeSays_IsALeakToAChecksKeyAlone()
    {
        Secrets secrets = Secrets.Of(lesson.Lesson);
        AnswerKey check = Number(secrets), problem = secrets.Keys.First(k => k.Question.Length > 0 && k.Value is not null);

        Assert.Single(LeakSearch.InText("a page", check.Answer, new Secrets([check], [], "", check.Answer)));
        Assert.Single(LeakSearch.InText("a page", problem.Answer, new Secrets([problem], [], "", "")));
        Assert.Empty(LeakSearch.InText("a page", problem.Answer, new Secrets([problem], [], "", problem.Answer)));
    }

    /// <summary>The author never saw the numbers of a user's aeroplane: there two digits agree by chance, three do not.</summary>
    [Theory]
    [InlineData("39", false, 1)]
    [InlineData("39", true, 0)]
    [InlineData("39.2", true, 1)]
    public void InText_NumberThatOnlyAChangeSays_IsContentToACheckOfAnOwnAeroplaneWhereTwoDigitsAgree(string number, bool isOwn, int leaks)
    {
        AnswerKey check = Number(Secrets.Of(lesson.Lesson)) with { Value = double.Parse(number, CultureInfo.InvariantCulture) };
        string written = $"{number} kt";

        Assert.Equal(leaks, LeakSearch.InText("a page", written, new Secrets([check], [], "", written) { HasOwnAeroplane = isOwn }).Count);
    }

    private static AnswerKey Number(Secrets secrets) => secrets.Keys.Single(k => k.What == "Approach speed, flaps up");

    private static string Filled(string text, AnswerKey number, AnswerKey choice)
    {
        double value = number.Value!.Value;
        string Of(double v, string format) => v.ToString(format, System.Globalization.CultureInfo.InvariantCulture);
        return text
            .Replace("{number}", Of(value, "0.0"), StringComparison.Ordinal)
            .Replace("{rounded}", Of(value, "0"), StringComparison.Ordinal)
            .Replace("{comma}", Of(value, "0.0").Replace('.', ','), StringComparison.Ordinal)
            .Replace("{kmh}", Of(value * 1.852, "0.0"), StringComparison.Ordinal)
            .Replace("{ms}", Of(value * 1852 / 3600, "0.0"), StringComparison.Ordinal)
            .Replace("{base64}", Convert.ToBase64String(Encoding.UTF8.GetBytes($"the answer is {Of(value, "0.0")} kt")), StringComparison.Ordinal)
            .Replace("{letter}", choice.Answer, StringComparison.Ordinal);
    }

    private Artefact Artefact(string name) => lesson.All.Single(a => a.Name == name);

    private Secrets SecretsOf(string name) =>
        lesson.Lesson.Sheets.FirstOrDefault(s => name.Contains($".sheet-{s.Number}.", StringComparison.Ordinal)) is { } sheet
            ? Secrets.Of(lesson.Lesson, sheet)
            : Secrets.Of(lesson.Lesson);
}
