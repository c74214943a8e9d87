using System.Text.RegularExpressions;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

/// <summary>The exercise on one page: its order, and that its numbers are those of the briefing and of its sheet.</summary>
public sealed partial class ExerciseSheetTests
{
    private static readonly string[] InOrder =
    [
        "Checks", "Windsock", "Call on downwind", "Power back", "Over the shoulder", "Base", "Clear final, and call", "Turn to final", "Final",
        "Stable, or go around", "Aiming point", "Round-out", "Let it sink", "Roll", "Leave the runway", "Checks",
    ];

    public static TheoryData<string> Aeroplanes => ["h4", "l2"];

    [Theory, MemberData(nameof(Aeroplanes))]
    public void Of_FlightThatFits_LeadsFromTheChecksToTheChecksWithANumberedLessonEach(string name)
    {
        string text = ExerciseSheet.Of(Flight(name, metres: 1600)).ToString();

        MatchCollection steps = StepLine().Matches(text);
        Assert.Equal(InOrder, steps.Select(step => step.Groups["name"].Value));
        Assert.Equal(Enumerable.Range(1, InOrder.Length), steps.Select(step => int.Parse(step.Groups["number"].Value, null)));
        Assert.Equal(InOrder.Length, OftenWrong().Count(text));
        // Wrapped at a blank, a lesson's number may begin the next line.
        Assert.All(LessonNumber().Matches(text), lesson => Assert.InRange(int.Parse(lesson.Groups[1].Value, null), 0, 11));
        Assert.Equal(InOrder.Length, LessonNumber().Count(text));
    }

    [Theory, MemberData(nameof(Aeroplanes))]
    public void Of_Flight_SaysTheBriefingsNumbers(string name)
    {
        Briefing briefing = Flight(name, metres: 1600);
        BriefedCircuit legs = briefing.Flapless.Circuit;
        LandingResult landing = briefing.Flapless.Landing.Result;
        Dictionary<string, string> steps = Steps(ExerciseSheet.Of(briefing));

        Assert.Contains($"{Up(legs.Level.Indicated.Knots)} kt, {Tens(legs.Level.EngineSpeed.RevolutionsPerMinute)} rpm", steps["Call on downwind"], StringComparison.Ordinal);
        Assert.Contains($"{Up(legs.Downwind.Indicated.Knots)} kt, {Tens(legs.Downwind.EngineSpeed.RevolutionsPerMinute)} rpm", steps["Power back"], StringComparison.Ordinal);
        Assert.Contains($"{legs.Circuit.AngleBehindWing.Degrees:0}° behind", steps["Over the shoulder"], StringComparison.Ordinal);
        Assert.Contains($"{Up(briefing.Flapless.Speeds.ApproachIndicated.Knots)} kt, {Tens(legs.Final.EngineSpeed.RevolutionsPerMinute)} rpm", steps["Final"], StringComparison.Ordinal);
        Assert.Contains("300 ft above the runway", steps["Stable, or go around"], StringComparison.Ordinal);
        Assert.Contains($"{UpToTens(briefing.AimingPoint)} m past the threshold", steps["Aiming point"], StringComparison.Ordinal);
        Assert.Contains($"wheels down at {UpToTens(landing.TouchdownDistance)} m", steps["Let it sink"], StringComparison.Ordinal);
        Assert.Contains($"roll {UpToTens(landing.GroundRoll)} m", steps["Roll"], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_FlightThatDoesNotFit_EndsInAGoAroundAndSaysWhy()
    {
        string text = ExerciseSheet.Of(Flight("h4", metres: 700)).ToString();

        Assert.Equal([.. InOrder[..10], "Go around"], StepLine().Matches(text).Select(step => step.Groups["name"].Value));
        Assert.Contains(">> DO NOT LAND HERE WITHOUT FLAPS.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("wheels down at", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_Sheet_SaysWhatTheTerminalSays()
    {
        ExerciseSheet sheet = ExerciseSheet.Of(Flight("h4", metres: 1600));
        string html = sheet.ToHtml();

        Assert.Equal(InOrder.Length, Regex.Count(html, "<li><h5>"));
        Assert.Contains(BriefingSheet.Caution, html, StringComparison.Ordinal);
        Assert.All(Steps(sheet).Keys, name => Assert.Contains($"<h5>{name}</h5>", html, StringComparison.Ordinal));
    }

    private static Briefing Flight(string name, double metres)
    {
        BriefingRequest demo = DemoBriefings.Flight;
        Aeroplane aeroplane = name == "l2" ? DemoAeroplanes.TrainerL2 : DemoAeroplanes.TrainerH4;
        return Briefing.For(new(
            aeroplane, aeroplane.MaximumMass, demo.Runway with { LengthAvailable = Length.FromMeters(metres) }, demo.Air, demo.Wind)).Value;
    }

    /// <summary>Each step's own text on one line; of the two that check, the last.</summary>
    private static Dictionary<string, string> Steps(ExerciseSheet sheet)
    {
        string text = sheet.ToString();
        Match[] steps = [.. StepLine().Matches(text).Cast<Match>()];
        var found = new Dictionary<string, string>();
        for (int i = 0; i < steps.Length; i++)
            found[steps[i].Groups["name"].Value] = Blanks().Replace(text[steps[i].Index..(i + 1 < steps.Length ? steps[i + 1].Index : text.Length)], " ");
        return found;
    }

    private static string Up(double value) => Grouped(Math.Ceiling(value - 1e-6));

    private static string UpToTens(Length length) => Grouped(10 * Math.Ceiling((length.Meters / 10) - 1e-6));

    private static string Tens(double value) => Grouped(10 * Math.Round(value / 10));

    private static string Grouped(double whole) =>
        whole >= 1000 ? string.Create(null, $"{(int)whole / 1000} {(int)whole % 1000:000}") : string.Create(null, $"{whole:0}");

    [GeneratedRegex(@"^(?<number>\d+)\. (?<name>[^:]+):", RegexOptions.Multiline)]
    private static partial Regex StepLine();

    [GeneratedRegex("Often wrong:")]
    private static partial Regex OftenWrong();

    [GeneratedRegex(@"Lesson\s+(\d+)\.")]
    private static partial Regex LessonNumber();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
