using System.Text.Json.Nodes;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>
/// The student's copy of a notebook. Answers are blank, the instructor's cells are gone, checks hold a seal in place of the
/// answer, and a problem is its question with the numbers of the run, since code that draws them would compute the answer too.
/// Prose is prose, with the numbers of the run, and folded where it tells what a prediction asks; of its code stays what later
/// cells take names from.
/// </summary>
internal sealed class StudentNotebook
{
    private readonly RanLesson _lesson;
    private readonly JsonArray _cells = [];
    private int _problems;
    private bool _tellsResult;

    private readonly IReadOnlyDictionary<LessonCell, string> _seen;

    private StudentNotebook(RanLesson lesson) => (_lesson, _seen) = (lesson, SeenCode.Of(lesson.Notebook));

    /// <summary>The notebook's text: nbformat 4.5, without outputs.</summary>
    /// <exception cref="HandoutException">A check stands behind no answer that the student's copy declares.</exception>
    public static string Of(RanLesson lesson)
    {
        var copy = new StudentNotebook(lesson);
        LessonCell? answer = null;
        foreach (LessonCell cell in lesson.Notebook.Cells.Where(cell => cell.Role != CellRole.Instructor))
        {
            copy.Add(cell, answer);
            answer = cell.Role == CellRole.Answer ? cell : null;
        }
        LessonNotebook notebook = lesson.Notebook;
        var root = new JsonObject
        {
            ["cells"] = copy._cells,
            ["metadata"] = new JsonObject
            {
                ["flapaero"] = new JsonObject { ["lesson"] = notebook.Number, ["title"] = notebook.Title, ["summary"] = notebook.Summary, ["minutes"] = notebook.Minutes },
                ["kernelspec"] = new JsonObject { ["display_name"] = LessonNotebook.KernelDisplayName, ["language"] = "C#", ["name"] = LessonNotebook.KernelName },
                ["language_info"] = new JsonObject { ["file_extension"] = ".cs", ["mimetype"] = "text/x-csharp", ["name"] = "C#", ["pygments_lexer"] = "csharp", ["version"] = "13.0" },
            },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        };
        StoredForm.Arrange(root);
        return CanonicalJson.Write(root);
    }

    private void Add(LessonCell cell, LessonCell? answer)
    {
        _tellsResult = cell.Role == CellRole.Commit || (_tellsResult && LessonPage.TeachesResult(cell.Role));
        switch (cell.Role)
        {
            case CellRole.Answer:
                AddAnswer(cell.Id, cell.Title, cell.StudentSource, cell.Label, cell.Unit);
                break;
            case CellRole.Check:
                AnswerKey? key = _lesson.KeysOf(cell).FirstOrDefault();
                if (key is not null)
                    AddCheck(cell.Id, cell.Title, VariableOf(answer, cell), key);
                break;
            case CellRole.Problem:
                AddProblem(cell);
                break;
            case CellRole.Explain or CellRole.Scenario when SeenCode.IsProse(cell) && Prose(cell) is { Length: > 0 } prose:
                if (_seen.TryGetValue(cell, out string? numbers))
                    _cells.Add(Cell(Stem(cell) + "-numbers", CellRules.Name(cell.Role), cell.Title, true, numbers));
                _cells.Add(Cell(cell.Id, CellRules.Name(cell.Role), cell.Title, false, $"## {cell.Title}\n\n{Folded(prose)}"));
                break;
            default:
                string source = cell.Role switch { CellRole.Setup => Setup(cell), CellRole.Opening => Opening(cell), _ => cell.Source };
                JsonObject copy = Cell(cell.Id, CellRules.Name(cell.Role), cell.Title, cell.IsCode, source);
                if (cell.Role == CellRole.Commit)
                    Label(copy, cell.Label, cell.Unit);
                _cells.Add(copy);
                break;
        }
    }

    /// <summary>The opening says how long the lesson takes, right under its title.</summary>
    private string Opening(LessonCell cell)
    {
        int end = cell.Source.IndexOf('\n', StringComparison.Ordinal);
        string takes = $"\n\n**It takes** about {PageShell.Minutes(_lesson.Notebook)}.";
        return end < 0 ? cell.Source + takes : cell.Source[..end] + takes + cell.Source[end..];
    }

    /// <summary>A student's copy lies anywhere: no path leads from there to the project.</summary>
    private string Setup(LessonCell cell) =>
        _lesson.Input.Begun(cell.Source).Replace(Lesson.ProjectReference, Lesson.PackageReference, StringComparison.Ordinal);

    private void AddProblem(LessonCell cell)
    {
        foreach (AnswerKey key in _lesson.KeysOf(cell))
        {
            string part = ++_problems == 1 ? "## Problems\n\n" : "";
            string stem = Stem(cell);
            string reason = key.Reason.Length > 0 ? "\n\nGive your reason in a sentence." : "";
            string options = key.Choices.Count == 0 ? "" : "\n\n" + string.Join('\n', key.Choices.Select((c, i) => $"- **{OptionLetters.Of(i)}.** {c.Text}"));
            string hints = string.Concat(key.Hints.Select((hint, i) => $"\n\n<details><summary>{ProblemTexts.HintName(i, key.Hints.Count)}</summary>\n\n{hint}\n\n</details>"));
            _cells.Add(Cell(cell.Id, "explain", key.What, false, $"{part}### {key.What}\n\n{key.Question}{options}{reason}{hints}"));
            string variable = System.FormattableString.Invariant($"problem{_problems}");
            string comment = key.Choices.Count > 0 ? "the letter of your answer" + (key.Reason.Length > 0 ? "; your reason: " : "") : "your answer" + (key.Sign.Length > 0 ? $", in {key.Sign}" : "");
            AddAnswer(stem + "-answer", $"My answer: {key.What}", $"var {variable} = {key.Blank};   // {comment}", "Your answer", key.Sign);
            AddCheck(stem + "-check", $"Is it right: {key.What}", variable, key);
        }
    }

    /// <summary>What a cell of prose says, as Markdown.</summary>
    private string Prose(LessonCell cell) => string.Join("\n\n", _lesson.OutputsOf(cell).Select(o => o.Kept?.Markdown.Trim()).OfType<string>());

    private string Folded(string prose) => _tellsResult
        ? $"<details><summary>{LessonPage.AfterPrediction}</summary>\n\n{prose}\n\n</details>" : prose;

    /// <summary>The beginning of an id that is made from a cell's.</summary>
    private static string Stem(LessonCell cell) => cell.Id.Length > 50 ? cell.Id[..50] : cell.Id;

    private void AddAnswer(string id, string title, string source, string label, string unit)
    {
        JsonObject cell = Cell(id, "answer", title, true, source);
        Label(cell, label, unit)["student"] = source;
        _cells.Add(cell);
    }

    /// <summary>
    /// A check is locked: the two standard words of nbformat's metadata say so to the editor. A third folds its code, so that the
    /// seal does not fill the screen.
    /// </summary>
    private void AddCheck(string id, string title, string variable, AnswerKey key)
    {
        JsonObject cell = Cell(id, "check", title, true, $"lesson.CheckSealed({variable},\n    \"{key.Seal}\")");
        JsonObject metadata = cell["metadata"]!.AsObject();
        metadata["deletable"] = false;
        metadata["editable"] = false;
        metadata["jupyter"] = new JsonObject { ["source_hidden"] = true };
        _cells.Add(cell);
    }

    /// <summary>The last variable that the student's answer cell declares, which is the one that its check tests.</summary>
    private string VariableOf(LessonCell? answer, LessonCell check)
    {
        if (answer is not null && CellNames.Of(answer.StudentSource).LastVariable is { } name && CellNames.Of(check.Source).Used.Contains(name))
            return name;
        throw new HandoutException($"{Where(check)} tests nothing that the cell before it declares; a check stands behind an answer cell and tests the last variable of its \"student\" text.");
    }

    private static JsonObject Cell(string id, string role, string title, bool isCode, string source)
    {
        var cell = new JsonObject
        {
            ["cell_type"] = isCode ? "code" : "markdown",
            ["id"] = id,
            ["metadata"] = new JsonObject { ["flapaero"] = new JsonObject { ["role"] = role, ["title"] = title } },
            ["source"] = source,
        };
        if (isCode)
        {
            cell["execution_count"] = null;
            cell["outputs"] = new JsonArray();
        }
        return cell;
    }

    private static JsonObject Label(JsonObject cell, string label, string unit)
    {
        JsonObject ours = cell["metadata"]!["flapaero"]!.AsObject();
        ours["label"] = label;
        ours["unit"] = unit;
        return ours;
    }

    private string Where(LessonCell cell) => LessonRunner.Where(_lesson.Notebook, cell);
}
