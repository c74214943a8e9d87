using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>A prediction is worth making only where nobody has read its number before.</summary>
[Trait("Speed", "slow")]
public sealed class PredictionTests
{
    /// <summary>
    /// How coarse a number may be and still tell a prediction, as half of its last digit's unit over the number:
    /// "3°" does not tell 2.9°. In the same lesson less precision is enough, since the reader looks for it there.
    /// </summary>
    private const double CoarsestInTheLesson = 0.1, CoarsestBefore = 0.025;

    /// <summary>Numbers that are those of a prediction by chance, and belong to another thing.</summary>
    private static readonly (string Prediction, string Cell, string Of)[] OfAnotherThing =
    [
        ("gainGuess", "what-one-speed-can-carry", "the angle flown at one of the figure's speeds"),
        ("endGuess", "where-the-extra-speed-goes", "how much sooner a closed throttle lands"),
        ("tenGuess", "margin-left-in-the-turn", "the margin over the stall"),
        ("lostGuess", "what-the-threshold-inherits", "energy height that short final takes off"),
        ("hourGuess", "one-excess-three-ways", "energy height half-way down"),
    ];

    /// <summary>
    /// Each prediction's number is looked for in all that is read before it, earlier lessons too. What problems say is left
    /// out: their numbers are drawn anew for each class, and agree by chance.
    /// </summary>
    [Fact]
    public async Task Lesson_Predictions_StandInNothingReadBefore()
    {
        var read = new List<(string Lesson, string Cell, string Text)>();
        var told = new List<(string Prediction, string Cell, string Where)>();
        int predictions = 0;
        foreach (LessonNotebook lesson in LessonCopies.All)
        {
            LessonRun run = await LessonRun.OfAsync(lesson.Slug);
            var asked = new Dictionary<string, int>();
            foreach (LessonCell cell in lesson.Cells)
            {
                IReadOnlyList<CellOutput> outputs = run.Results.GetValueOrDefault(cell.Id)?.Outputs ?? [];
                if (cell.Role == CellRole.Commit)
                    asked.Add(CellNames.Of(cell.Source).LastVariable!, read.Count);
                IEnumerable<CellOutput> pages = outputs.Where(output => output.IsHtml);
                foreach (IElement compared in pages.SelectMany(output => output.Read.QuerySelectorAll(".compared")))
                {
                    JsonElement facts = JsonDocument.Parse(compared.GetAttribute("data-facts")!).RootElement;
                    string prediction = facts.GetProperty("prediction").GetString()!;
                    string what = $"{prediction} of {lesson.Slug}, {facts.GetProperty("shown")}, stands in";
                    foreach ((string where, string before, string text) in read.Take(asked[prediction]))
                        told.AddRange(Numbers(facts, text, where == lesson.Slug ? CoarsestInTheLesson : CoarsestBefore)
                            .Select(found => (prediction, before, $"{what} {where}, {before}: \"{found}\"")));
                    predictions++;
                }
                if (cell.Role is not (CellRole.Setup or CellRole.Problem or CellRole.Instructor or CellRole.Sources))
                {
                    string said = cell.IsCode ? string.Join('\n', outputs.Select(Said)) : cell.Source;
                    read.Add((lesson.Slug, cell.Id, said));
                }
            }
        }

        Assert.True(predictions >= 24, $"only {predictions} predictions were looked for");
        var known = OfAnotherThing.Select(number => (number.Prediction, number.Cell)).ToHashSet();
        string[] away = [.. told.Where(t => !known.Contains((t.Prediction, t.Cell))).Select(t => t.Where).Distinct()];
        Assert.True(away.Length == 0, string.Join('\n', away));
        known.ExceptWith(told.Select(t => (t.Prediction, t.Cell)));
        Assert.True(known.Count == 0, $"found no more, to be taken out: {string.Join(", ", known)}");
    }

    [Theory]
    [InlineData("It stalls at 16.0°.", true)]
    [InlineData("It changes by −16.04°.", true)]
    [InlineData("About 16°, whatever the load.", true)]
    [InlineData("It stalls at 16.1°.", false)]
    [InlineData("It turns at 16.0 kt.", false)]
    [InlineData("Some 20°.", false)]
    [InlineData("0.28 radians", true)]
    public void Numbers_AngleOfSixteenDegrees_IsFoundWhereItIsTold(string text, bool isTold)
    {
        JsonElement facts = JsonDocument.Parse("""
            {
              "model": 16.04,
              "units": [
                { "sign": "°", "words": "degrees", "factor": 1 },
                { "sign": "rad", "words": "radians", "factor": 57.29578 }
              ]
            }
            """).RootElement;

        Assert.Equal(isTold, Numbers(facts, text, CoarsestInTheLesson).Any());
    }

    /// <summary>
    /// What an output says to a reader: its words, and the texts in place of its pictures, which tell what the numbers under a
    /// figure tell. Those stand in columns without their units, so that a count would be found in any of them.
    /// </summary>
    private static string Said(CellOutput output)
    {
        if (!output.IsHtml)
            return output.Text;
        IEnumerable<string> words = output.Read.Descendants<IText>()
            .Where(text => text.ParentElement?.Closest("script, style, .plot-numbers") is null).Select(text => text.Data);
        IEnumerable<string?> pictures = output.Read.QuerySelectorAll("[aria-label], [alt]")
            .Select(picture => picture.GetAttribute("aria-label") ?? picture.GetAttribute("alt"));
        return string.Join('\n', words.Concat(pictures));
    }

    /// <summary>Where a text tells the number, in any of its units, to within the rounding of what is printed.</summary>
    private static IEnumerable<string> Numbers(JsonElement facts, string text, double coarsest)
    {
        double model = Math.Abs(facts.GetProperty("model").GetDouble());
        foreach ((int n, JsonElement unit) in facts.GetProperty("units").EnumerateArray().Index())
        {
            string sign = unit.GetProperty("sign").GetString()!;
            // A share may be told as a plain number too, but every plain number is not a share.
            if (n > 0 && sign.Length == 0)
                continue;
            string words = Regex.Escape(unit.GetProperty("words").GetString()!);
            string named = sign.Length == 0 ? "(?![0-9.\u202F])(?![\\s\u00A0]*[\\p{L}°%])"
                : $"[\\s\u00A0]*(?:{Regex.Escape(sign)}|{words})(?![\\w/])";
            double wanted = model / unit.GetProperty("factor").GetDouble();
            const string Number = "(?<![\\w.,])([0-9]+(?:[ \u202F][0-9]{3})*)(\\.[0-9]+)?";
            foreach (Match match in Regex.Matches(text, Number + named))
            {
                string whole = Regex.Replace(match.Groups[1].Value, "[ \u202F]", ""), part = match.Groups[2].Value;
                double printed = double.Parse(whole + part, CultureInfo.InvariantCulture);
                double half = 0.5 * Math.Pow(10, -Math.Max(0, part.Length - 1));
                if (Math.Abs(printed - wanted) <= half * (1 + 1e-9) && half <= coarsest * wanted)
                    yield return Around(text, match);
            }
        }
    }

    private static string Around(string text, Match match)
    {
        int from = Math.Max(0, match.Index - 40), to = Math.Min(text.Length, match.Index + match.Length + 10);
        return text[from..to].ReplaceLineEndings(" ");
    }
}
