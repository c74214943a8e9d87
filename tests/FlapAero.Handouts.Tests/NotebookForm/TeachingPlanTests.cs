using System.Text.Json.Nodes;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Notebooks;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.NotebookForm;

/// <summary>What <c>check</c> says of the instructor's side of a lesson, each fault planted in a lesson of the project.</summary>
public sealed class TeachingPlanTests
{
    private const string Name = "02-what-flaps-change.ipynb";
    private const string Nose = "the-nose-at-every-speed";

    /// <summary>Each row: what is done to the lesson, and what the message must say.</summary>
    private static readonly Dictionary<string, (Action<JsonArray> Break, string[] Words)> Faults = new()
    {
        ["a prediction without minutes"] = (c => Ours(c, "where-the-nose-is").Remove("minutes"), ["(where-the-nose-is)", "begins a section", "no \"minutes\""]),
        ["problems without minutes"] = (c => Ours(c, "read-it-off").Remove("minutes"), ["(read-it-off)", "no \"minutes\""]),
        ["questions without minutes"] = (c => Ours(c, "your-turn").Remove("minutes"), ["(your-turn)", "no \"minutes\""]),
        ["more minutes than there are"] = (c => Ours(c, "your-turn")["minutes"] = 7, ["takes 51 minutes", "allowed are 50"]),
        ["minutes that are no number"] = (c => Ours(c, "your-turn")["minutes"] = "six", ["(your-turn)", "\"minutes\": \"six\"", "1 to 120"]),
        ["minutes where no section begins"] = (c => Ours(c, "sources")["minutes"] = 2, ["(sources)", "has \"minutes\"", "allows role, title"]),
        ["no plan"] = (c => c.Remove(Cell(c, "lesson-plan")), ["0 instructor's cells", "\"plan\"", "exactly one"]),
        ["two plans"] = (c => Ours(c, "questions-to-ask-aloud")["note"] = "plan", ["2 instructor's cells", "\"plan\""]),
        ["the plan at the end"] = (c => MoveToEnd(c, "lesson-plan"), ["(lesson-plan)", "comes after the lesson has begun", "(two-opinions)"]),
        ["a note of no kind"] = (c => Ours(c, "lesson-plan").Remove("note"), ["(lesson-plan)", "no \"note\"", "plan, questions, leave-out, before-flight, limits, guess, change"]),
        ["a note of another kind"] = (c => Ours(c, "lesson-plan")["note"] = "song", ["(lesson-plan)", "\"song\"", "leave-out"]),
        ["a prediction without its usual guess"] = (c => c.Remove(Cell(c, "usual-guess-the-nose")), ["(my-prediction-the-nose)", "\"guess\"", "right behind it"]),
        ["a usual guess elsewhere"] = (c => MoveToEnd(c, "usual-guess-the-nose"), ["(usual-guess-the-nose)", "stands behind no cell", "\"guess\""]),
        ["a number to change without its answer"] = (c => c.Remove(Cell(c, "when-they-change-it-another-speed")), ["(another-speed)", "\"change\"", "right behind it"]),
        ["a named cell that is gone"] = (c => Cell(c, Nose)["id"] = "another-id", ["(ten-minutes-before-a-flight)", "#" + Nose, "no section of this lesson"]),
        ["a named cell with a new title"] = (c => Ours(c, Nose)["title"] = "The nose again", ["(ten-minutes-before-a-flight)", "\"The nose at every speed\"", "\"The nose again\""]),
        ["a named cell without a heading"] = (
            c => Replace(c, "ten-minutes-before-a-flight", Nose, "my-prediction-the-nose"), ["#my-prediction-the-nose", "a heading of its own"]),
        ["another order in words and data"] = (c => Swap(Named(c, "ten-minutes-before-a-flight")), ["(ten-minutes-before-a-flight)", "in one order"]),
        ["two things before a flight"] = (c => Drop(c, "ten-minutes-before-a-flight"), ["shows 2 things", "there are 3"]),
        ["eleven minutes before a flight"] = (c => Named(c, "ten-minutes-before-a-flight")[0]!["minutes"] = 5, ["takes 11 minutes", "allowed are 10"]),
        ["too little to leave out"] = (c => Named(c, "when-ten-minutes-are-gone")[0]!["minutes"] = 4, ["saves 9 minutes", "needed are 10"]),
        ["more saved than a section has"] = (c => Named(c, "when-ten-minutes-are-gone")[0]!["minutes"] = 9, ["saves 9 minutes", "(the-outer-wing)", "takes 8"]),
        ["named cells that are no list"] = (c => Ours(c, "ten-minutes-before-a-flight")["cells"] = Nose, ["\"cells\"", "needed is a list"]),
        ["named cells where none belong"] = (c => Ours(c, "lesson-plan")["cells"] = Named(c, "when-ten-minutes-are-gone").DeepClone(), ["(lesson-plan)", "only the notes leave-out and before-flight"]),
    };

    public static TheoryData<string> Names => [.. Faults.Keys];

    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Check_OneFault_NamesItAndLeavesItToItsAuthor(string name)
    {
        JsonObject lesson = Parsed();
        Faults[name].Break(lesson["cells"]!.AsArray());

        IReadOnlyList<NotebookFault> faults = StoredNotebooks.Check(StoredNotebooks.Stored(lesson), Name).Faults;

        Assert.Contains(faults, fault => !fault.CanBePutRight && Faults[name].Words.Append(Name).All(word => fault.Words.Contains(word, StringComparison.Ordinal)));
    }

    [Fact]
    public void Check_MinutesOfTheWholeBesideThoseOfItsSections_AreRefused()
    {
        JsonObject lesson = Parsed();
        lesson["metadata"]!["flapaero"]!["minutes"] = 50;

        Assert.Contains("take out its own", Assert.Single(StoredNotebooks.Check(StoredNotebooks.Stored(lesson), Name).Faults).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LessonWithoutAnyMinutes_IsRefused()
    {
        JsonObject lesson = Parsed();
        foreach (JsonNode? cell in lesson["cells"]!.AsArray())
            cell!["metadata"]!["flapaero"]!.AsObject().Remove("minutes");

        Assert.Contains("has no \"minutes\"", Assert.Single(StoredNotebooks.Check(StoredNotebooks.Stored(lesson), Name).Faults).Words, StringComparison.Ordinal);
    }

    /// <summary>The rule asks nothing of a text without predictions and problems: so each lesson is looked at here as well.</summary>
    [Theory]
    [MemberData(nameof(Lessons))]
    public void Lesson_OfTheProject_IsTaughtFromItsPage(string slug)
    {
        LessonNotebook lesson = LessonCopies.Named(slug);

        Assert.Empty(TeachingPlan.Faults(lesson));
        Assert.Equal(lesson.Cells.Where(cell => cell.Minutes > 0).Sum(cell => cell.Minutes), lesson.Minutes);
        Assert.InRange(lesson.Minutes, 20, TeachingPlan.MostMinutes);
        Assert.Equal(lesson.Cells.Count(cell => cell.Role == CellRole.Commit), lesson.Cells.Count(cell => cell.Note == InstructorNote.Guess));
        Assert.True(lesson.Cells.Count(cell => cell.Note is not null) >= 8);
        Assert.Equal(TeachingPlan.BriefThings, lesson.Cells.Single(cell => cell.Note == InstructorNote.BeforeFlight).Names.Count);
    }

    /// <summary>What the model gives is computed: a number that someone typed into a note would stay when the model changes.</summary>
    [Theory]
    [MemberData(nameof(Lessons))]
    public void Notes_OfALesson_HoldNoTypedNumberWithAUnit(string slug) =>
        Assert.All(
            LessonCopies.Named(slug).Cells.Where(cell => cell.Role == CellRole.Instructor),
            note => Assert.DoesNotMatch(@"[0-9]\s?(?:kt|ft|rpm|°|%|per cent|NM|lb|min|s)\b", note.Source));

    [Fact]
    public void LinksWithin_AnyMarkdown_AreThoseToAPlaceInIt() =>
        Assert.Equal(
            [("The nose", "nose"), ("b", "b-2")],
            LessonMarkdown.LinksWithin("1. [The *nose*](#nose): see [there](https://example.org#x), [that](02-other.ipynb#y)\n2. [b](#b-2)"));

    private static JsonObject Parsed() => JsonNode.Parse(StoredNotebooks.Committed.Single(notebook => notebook.Name == Name).Text)!.AsObject();

    private static JsonNode Cell(JsonArray cells, string id) => cells.Single(cell => cell!["id"]!.GetValue<string>() == id)!;

    private static JsonObject Ours(JsonArray cells, string id) => Cell(cells, id)["metadata"]!["flapaero"]!.AsObject();

    private static JsonArray Named(JsonArray cells, string id) => Ours(cells, id)["cells"]!.AsArray();

    private static void MoveToEnd(JsonArray cells, string id)
    {
        JsonNode cell = Cell(cells, id);
        cells.Remove(cell);
        cells.Add(cell);
    }

    private static void Swap(JsonArray named)
    {
        JsonNode first = named[0]!;
        named.RemoveAt(0);
        named.Add(first);
    }

    /// <summary>Takes the last thing out of a note, in its words and in its data.</summary>
    private static void Drop(JsonArray cells, string id)
    {
        Named(cells, id).RemoveAt(2);
        JsonArray lines = Cell(cells, id)["source"]!.AsArray();
        lines.RemoveAt(lines.Count - 1);
    }

    /// <summary>Names another cell in a note, in its words and in its data.</summary>
    private static void Replace(JsonArray cells, string id, string old, string other) =>
        cells[cells.IndexOf(Cell(cells, id))] = JsonNode.Parse(Cell(cells, id).ToJsonString().Replace(old, other, StringComparison.Ordinal));
}
