using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Leaks;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// What one reads off each figure of each lesson, against the model's own answer by another way: a closed form, a search,
/// another function than the one that drew the line.
/// </summary>
[Trait("Speed", "slow")]
public sealed partial class ReadingTests
{
    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    [Theory, MemberData(nameof(Lessons))]
    public async Task Figures_OfALesson_SayWhatIsReadOffThem(string slug)
    {
        List<IElement> figures = await FiguresAsync(slug);

        Assert.NotEmpty(figures);
        Assert.All(figures, figure => Assert.NotEmpty(ReadingsOf(figure)));
        Assert.Equal(
            figures.Where(figure => !figure.ClassList.Contains("picture")).Select(figure => figure.Id!["fig-".Length..]).Order(StringComparer.Ordinal),
            ExpectedReadings.Of(slug).Select(expected => expected.Figure).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Lessons))]
    public async Task Readings_OfEachFigure_AreTheModelsNumbers(string slug)
    {
        List<IElement> figures = await FiguresAsync(slug);
        ExpectedReading[] all = [.. ExpectedReadings.Of(slug)];
        LessonRun run = await LessonRun.OfAsync(slug);
        CellResult computed = await run.RunAsync(
            $"string.Join(\"|\", new double[][] {{ {string.Join(", ", all.Select(expected => $"new double[] {{ {expected.Numbers} }}"))} }}"
            + ".Select(row => string.Join(\";\", row.Select(number => number.ToString(\"R\", System.Globalization.CultureInfo.InvariantCulture)))))");
        string[] rows = computed.Outputs.Single().Text.Trim().Split('|');
        Assert.Equal(all.Length, rows.Length);
        var wrong = new List<string>();
        foreach ((ExpectedReading expected, string row) in all.Zip(rows))
        {
            List<IReadOnlyList<string>> readings = ReadingsOf(figures.Single(figure => figure.Id == "fig-" + expected.Figure));
            IReadOnlyList<string> found = readings.Find(reading => reading[0] == expected.Reading)
                ?? readings.First(reading => reading[0].StartsWith(expected.Reading, StringComparison.Ordinal));
            // What is the same at every value stands once.
            string[] said = [.. Number().Matches(found[Math.Min(1 + expected.Column, found.Count - 1)]).Select(match => match.Value)];
            double[] numbers = [.. row.Split(';').Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
            if (said.Length < numbers.Length || !numbers.Zip(said).All(pair => double.IsNaN(pair.First) || IsNear(pair.Second, pair.First)))
                wrong.Add($"{expected.Figure}, \"{string.Join(" | ", found)}\": computed {row}");
        }
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    /// <summary>A reading that were the answer of a question would give it away: it is left out in the lesson, with <c>WithoutReading</c>.</summary>
    [Theory, MemberData(nameof(Lessons))]
    public async Task Readings_OfALesson_GiveNoAnswerAwayThatIsNotToldElsewhere(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        var readings = new List<string>();
        var told = new List<string>();
        foreach (LessonCell cell in run.Lesson.Cells)
        {
            if (cell.Role is not (CellRole.Answer or CellRole.Check or CellRole.Problem or CellRole.Instructor)) told.Add(cell.Source);
            if (!cell.IsCode || cell.Role == CellRole.Setup) continue;
            foreach (CellOutput output in run.Results[cell.Id].Outputs.Where(output => output.IsHtml))
            {
                var read = (IElement)output.Read.Clone();
                foreach (IElement list in read.QuerySelectorAll(".plot-readings").ToArray())
                {
                    readings.AddRange(list.QuerySelectorAll("li, td").Select(ArtefactText.Of));
                    list.Remove();
                }
                if (cell.Role is not (CellRole.Answer or CellRole.Check or CellRole.Problem or CellRole.Instructor)) told.Add(ArtefactText.Of(read));
            }
        }
        AnswerKey[] keys = [.. run.Lesson.Cells.Where(cell => cell.Role == CellRole.Check).SelectMany(cell => RanLesson.KeysIn(run.Results[cell.Id].Outputs))];
        Assert.NotEmpty(keys);

        Assert.Empty(LeakSearch.InText("a reading", string.Join('\n', readings), new Secrets(keys, [], string.Join('\n', told), "")));
    }

    private static async Task<List<IElement>> FiguresAsync(string slug)
    {
        LessonRun run = await LessonRun.OfAsync(slug);
        return [.. run.Results.Values.SelectMany(result => result.Outputs).Where(output => output.IsHtml)
            .SelectMany(output => new HtmlParser().ParseDocument(output.Text).QuerySelectorAll("figure.plot"))];
    }

    /// <summary>A name and a value for each value of what moves the figure; a picture's table says all of it.</summary>
    private static List<IReadOnlyList<string>> ReadingsOf(IElement figure) =>
        [.. figure.QuerySelectorAll("ul.plot-readings > li").Select(item => NameAndValue(item.TextContent)),
            .. figure.QuerySelectorAll(figure.ClassList.Contains("picture") ? ".plot-numbers tbody tr" : "table.plot-readings tbody tr")
                .Select(row => (IReadOnlyList<string>)[.. row.Children.Select(cell => cell.TextContent)])];

    private static IReadOnlyList<string> NameAndValue(string text) =>
        [text[..text.LastIndexOf(": ", StringComparison.Ordinal)], text[(text.LastIndexOf(": ", StringComparison.Ordinal) + 2)..]];

    /// <summary>Within one of its last digit.</summary>
    private static bool IsNear(string said, double computed)
    {
        string plain = said.Replace("\u202F", "", StringComparison.Ordinal).Replace('\u2212', '-');
        int decimals = plain.Contains('.', StringComparison.Ordinal) ? plain.Length - plain.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return Math.Abs(double.Parse(plain, CultureInfo.InvariantCulture) - computed) <= 1.001 * Math.Pow(10, -decimals);
    }

    [GeneratedRegex("\u2212?[0-9][0-9\u202F]*(?:\\.[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
