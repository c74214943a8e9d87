using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Rules.AfterARun;

/// <summary>
/// A prediction is worth making only where nobody has read its number before: in its own lesson or in an earlier one. It is told where
/// a number with a unit of its kind is the result to within the rounding of what is printed. What problems say is left out: their numbers
/// are drawn anew for each class, and agree by chance.
/// </summary>
internal sealed class PredictionsGivenAway : IRunRule
{
    /// <summary>
    /// How coarse a number may be and still tell a prediction, as half of its last digit's unit over the number:
    /// "3°" does not tell 2.9°. In the same lesson less precision is enough, since the reader looks for it there.
    /// </summary>
    public const double CoarsestInTheLesson = 0.1, CoarsestBefore = 0.025;

    /// <summary>Numbers that are those of a prediction by chance, and belong to another thing; a test takes out what is no longer found.</summary>
    public static readonly IReadOnlyList<(string Prediction, string Cell, string Of)> OfAnotherThing =
    [
        ("gainGuess", "what-one-speed-can-carry", "the angle flown at one of the figure's speeds"),
        ("endGuess", "where-the-extra-speed-goes", "how much sooner a closed throttle lands"),
        ("tenGuess", "margin-left-in-the-turn", "the margin over the stall"),
        ("lostGuess", "what-the-threshold-inherits", "energy height that short final takes off"),
        ("hourGuess", "one-excess-three-ways", "energy height half-way down"),
    ];

    /// <summary>A place where a prediction is told, chance among them.</summary>
    public sealed record Told(string Prediction, LessonCell Cell, LessonFault Fault);

    public IEnumerable<LessonFault> Faults(RanLesson lesson, IReadOnlyList<RanLesson> before) => All(lesson, before)
        .Where(told => !OfAnotherThing.Any(known => known.Prediction == told.Prediction && known.Cell == told.Cell.Id))
        .Select(told => told.Fault).Distinct();

    /// <summary>Every place where a prediction of the lesson is told before it is asked for.</summary>
    public static IEnumerable<Told> All(RanLesson lesson, IReadOnlyList<RanLesson> before)
    {
        (RanLesson Lesson, LessonCell Cell)[] read = [.. before.Append(lesson).SelectMany(one => one.Notebook.Cells.Select(cell => (one, cell)))];
        var texts = new Dictionary<(string, string), string>();
        foreach ((string name, JsonElement facts) in Compared(lesson))
        {
            int asked = Array.FindIndex(read, at => at.Lesson == lesson && at.Cell.Role == CellRole.Commit && CellNames.Of(at.Cell.Source).LastVariable == name);
            foreach ((RanLesson where, LessonCell cell) in read.Take(Math.Max(0, asked)).Where(at => IsRead(at.Cell)))
            {
                if (!texts.TryGetValue((where.Notebook.Slug, cell.Id), out string? text))
                    texts.Add((where.Notebook.Slug, cell.Id), text = Said(where, cell));
                foreach (string found in Numbers(facts, text, where == lesson ? CoarsestInTheLesson : CoarsestBefore))
                    yield return new Told(name, cell, new LessonFault(where.Notebook.FileName, cell,
                        $"says \"{found}\" and gives away the prediction {name} of {lesson.Notebook.FileName}, {facts.GetProperty("shown")}",
                        "a prediction's number stands in nothing that is read before its question"));
            }
        }
    }

    /// <summary>The predictions of a lesson with their results.</summary>
    public static IEnumerable<(string Name, JsonElement Facts)> Compared(RanLesson lesson) =>
        from cell in lesson.Notebook.Cells
        from output in lesson.OutputsOf(cell)
        where output.IsHtml
        from compared in output.Read.QuerySelectorAll(".compared")
        where compared.HasAttribute("data-facts")
        let facts = JsonDocument.Parse(compared.GetAttribute("data-facts")!).RootElement
        select (facts.GetProperty("prediction").GetString()!, facts);

    private static bool IsRead(LessonCell cell) => cell.Role is not (CellRole.Setup or CellRole.Problem or CellRole.Instructor or CellRole.Sources);

    private static string Said(RanLesson lesson, LessonCell cell) => cell.IsCode ? string.Join('\n', lesson.OutputsOf(cell).Select(Said)) : cell.Source;

    /// <summary>
    /// What an output says to a reader: its words, and the texts in place of its pictures. The numbers under a figure stand in columns
    /// without their units, so that a count would be found in any of them: they are left out.
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
    public static IEnumerable<string> Numbers(JsonElement facts, string text, double coarsest)
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
        return text[from..to].ReplaceLineEndings(" ").Trim();
    }
}
