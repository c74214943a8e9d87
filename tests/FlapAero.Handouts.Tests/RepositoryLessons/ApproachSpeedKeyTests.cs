using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.RepositoryLessons;

/// <summary>
/// The problems of the approach-speed lesson for a thousand seeds: each can be set, and its key is what a student works
/// out from the question alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
public sealed partial class ApproachSpeedKeyTests
{
    private const int Seeds = 1000;

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        var hand = new HandAeroplane(RepositoryRoot.Path("data/aeroplanes/" + file));
        foreach ((string title, List<(string Question, string Answer)> problems) in await DrawAsync(aeroplane))
        {
            Assert.Equal(Seeds, problems.Count);
            Assert.InRange(problems.Select(p => p.Question).Distinct().Count(), 3, Seeds);
            foreach ((string question, string answer) in problems)
            {
                string? wrong = title switch
                {
                    "Read it off" => Near(hand.Stall(question.Contains("flaps up", StringComparison.Ordinal) ? "up" : Regex.Match(question, "flaps ([^.]+)\\.").Groups[1].Value) * 1.3, answer, 0.2),
                    "Stall in the turn" => Near(InTurn(question), answer, 0.2),
                    "A gusty afternoon" => Near(hand.Needle(1.3 * Numbers(question, "kt")[0]) + (Numbers(question, "kt")[2] - Numbers(question, "kt")[1]) / 2, answer, 0.7),
                    "What did it weigh?" => Near(Numbers(question, "lb")[0] * Math.Pow(Numbers(question, "kt")[0] / Numbers(question, "kt")[1], 2), answer, 15),
                    "Same bank, other flaps" => Option(question, answer) == "Both keep the same." ? null : "wrong option",
                    "Continue or go around?" => Option(question, answer) == Decision(question) ? null : $"{answer} for {Decision(question)}",
                    _ => "no such problem",
                };
                Assert.True(wrong is null, $"{title}: {wrong}\n{question}");
            }
        }
    }

    /// <summary>The problem cells as functions of a lesson, called for every seed in one cell: question and options, and the answer.</summary>
    private static async Task<Dictionary<string, List<(string Question, string Answer)>>> DrawAsync(string aeroplane)
    {
        LessonNotebook lesson = LessonCopies.Named("approach-speed");
        using var kernel = new InteractiveKernel();
        async Task<CellResult> Run(string code)
        {
            CellResult result = await kernel.RunAsync(code, TestContext.Current.CancellationToken);
            Assert.True(result.Failure is null, result.Failure);
            return result;
        }
        foreach (LessonCell cell in lesson.Cells.Where(c => c.IsCode && c.Role is not (CellRole.Problem or CellRole.Instructor)))
            await Run(LessonCopies.Begun(cell, $"aeroplane: DemoAeroplanes.{aeroplane}"));
        var drawn = new Dictionary<string, List<(string, string)>>();
        foreach (LessonCell cell in lesson.Cells.Where(c => c.Role == CellRole.Problem))
        {
            string body = Regex.Replace(cell.Source, "^lesson\\.", "return lesson.", RegexOptions.Multiline) + ";";
            CellResult result = await Run($$"""
                Problem Drawn(Lesson lesson)
                {
                {{body}}
                }
                Console.Write(System.Text.Json.JsonSerializer.Serialize(Enumerable.Range(1, {{Seeds}}).Select(seed => Drawn(Lesson.Begin(seed, aeroplane)))
                    .Select(p => new[] { p.ToString().Split("\nHint")[0], p.Answer })));
                """);
            string json = string.Concat(result.Outputs.Select(o => o.Text));
            drawn.Add(cell.Title, [.. JsonSerializer.Deserialize<string[][]>(json)!.Select(pair => (pair[0].Replace('\u00A0', ' ').Replace("\u202F", "", StringComparison.Ordinal), pair[1]))]);
        }
        return drawn;
    }

    private static double InTurn(string question) =>
        Numbers(question, "kt")[0] * Math.Sqrt(Numbers(question, "lb")[0] / Numbers(question, "lb")[1] / Math.Cos(Numbers(question, "°")[0] * Math.PI / 180));

    private static string Decision(string question)
    {
        double speed = Numbers(question, "kt")[0], lull = Numbers(question, "kt")[1], bank = Numbers(question, "°")[0];
        double margin = (speed - lull) / (speed / 1.3 / Math.Sqrt(Math.Cos(bank * Math.PI / 180))) - 1;
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(margin - 0.10) < 0.02, $"{margin:P1} is too near the rule's ten per cent: {question}");
        return bank <= 30 && margin >= 0.10 ? "Continue the turn at this bank." : "Go around.";
    }

    private static string Option(string question, string letter) => Regex.Match(question, $"^  {letter}\\. (.*)$", RegexOptions.Multiline).Groups[1].Value;

    /// <summary>Null where the two agree; the printed answer is rounded, in the gusty problem to a knot.</summary>
    private static string? Near(double worked, string answer, double off)
    {
        double key = double.Parse(Number().Match(answer.Replace("\u202F", "", StringComparison.Ordinal)).Value, CultureInfo.InvariantCulture);
        return Math.Abs(worked - key) <= off ? null : string.Create(CultureInfo.InvariantCulture, $"worked {worked:0.00}, the key says {answer}");
    }

    private static double[] Numbers(string text, string unit) =>
        [.. Regex.Matches(text, $"([0-9.]+) ?{unit}(?![a-z])").Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex("[0-9.]+", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
