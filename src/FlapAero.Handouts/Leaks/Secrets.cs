using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Leaks;

/// <summary>What a lesson keeps from students, and what it tells them.</summary>
/// <param name="Keys">The answers of its checks and of the problems of one seed.</param>
/// <param name="Words">Sentences and lines of code that students do not get, normal and long enough to be told from others.</param>
/// <param name="Told">All that the lesson itself says: cells that teach, questions, hints, options, labels.</param>
/// <param name="Tried">What its cells say with the other numbers that a page offers: content to a problem, whose numbers come from a seed, but to a check only of an own aeroplane and where two digits agree.</param>
internal sealed partial record Secrets(IReadOnlyList<AnswerKey> Keys, IReadOnlyList<string> Words, string Told, string Tried)
{
    /// <summary>Whether the lesson is about an aeroplane of its user's: the author never saw its numbers, and some agree by chance.</summary>
    public bool HasOwnAeroplane { get; init; }

    /// <summary>Of a lesson with the problems of its own seed.</summary>
    public static Secrets Of(RanLesson lesson) => Of(lesson, lesson.OutputsOf);

    /// <summary>Of a lesson with the problems of a sheet.</summary>
    public static Secrets Of(RanLesson lesson, RanSheet sheet) =>
        Of(lesson, cell => cell.Role == CellRole.Problem ? sheet.Outputs.GetValueOrDefault(cell.Id, []) : lesson.OutputsOf(cell));

    private static Secrets Of(RanLesson lesson, Func<LessonCell, IReadOnlyList<CellOutput>> outputs)
    {
        var keys = new List<AnswerKey>();
        var kept = new List<string>();
        var answers = new List<string>();
        var told = new List<string> { lesson.Notebook.Title, lesson.Notebook.Summary };
        foreach (LessonCell cell in lesson.Notebook.Cells)
        {
            told.AddRange([cell.Title, cell.Label, cell.Unit, cell.StudentSource]);
            foreach (CellOutput output in outputs(cell).Where(o => o.Kept is not null))
                kept.AddRange(output.ReadForInstructor.QuerySelectorAll(".solution, .check").Select(WithoutMaths));
            keys.AddRange(RanLesson.KeysIn(outputs(cell)));
            if (cell.Role is not (CellRole.Answer or CellRole.Check or CellRole.Problem or CellRole.Instructor))
            {
                told.Add(cell.Source);
                told.AddRange(outputs(cell).Select(ArtefactText.Of));
                continue;
            }
            kept.Add(cell.Source);
            if (cell.Role == CellRole.Instructor)
                kept.AddRange(outputs(cell).Select(ArtefactText.Of));
            if (cell.Role == CellRole.Answer && CellNames.Of(cell.StudentSource).LastVariable is { } variable)
                answers.AddRange(CellNames.Of(cell.Source).StatementsOf(variable));
            foreach (CellOutput output in outputs(cell).Where(o => o.IsHtml))
                told.AddRange(output.Read.QuerySelectorAll(".question, .options, .hint").Select(ArtefactText.Of));
        }
        kept.AddRange(keys.SelectMany(k => k.Mistakes.Concat(k.Choices).Select(line => line.Because).Append(k.Reason)));
        string all = ArtefactText.Normal(string.Join('\n', told));
        string[] words = [.. kept.SelectMany(text => Sentence().Split(text)).Select(ArtefactText.Normal)
            .Where(s => s.Length >= 16 && s.Count(c => c == ' ') >= 2 && !all.Contains(s, StringComparison.Ordinal))
            // The statement that sets the answer is kept whatever the student's text says: that text may have been forgotten to blank.
            .Concat(answers.Select(ArtefactText.Normal)).Distinct()];
        IEnumerable<string> tried = lesson.Changes.Values.SelectMany(values => values.Values).SelectMany(outputs => outputs).Select(ArtefactText.Of);
        return new Secrets(keys, words, string.Join('\n', told), string.Join('\n', tried)) { HasOwnAeroplane = lesson.Input.Aeroplane is not null };
    }

    private static string WithoutMaths(AngleSharp.Dom.IElement element)
    {
        var copy = (AngleSharp.Dom.IElement)element.Clone();
        foreach (AngleSharp.Dom.IElement formula in copy.QuerySelectorAll(".math"))
            formula.TextContent = "\n";
        return ArtefactText.Of(copy);
    }

    [GeneratedRegex(@"(?<=[.;:?!])\s+|\n|\$+", RegexOptions.CultureInvariant)]
    private static partial Regex Sentence();
}
