using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Lessons.Tests;

/// <summary>A lesson's problems for a thousand seeds, and what it takes to work them again from their questions.</summary>
internal static partial class KeyProblems
{
    public const int Seeds = 1000;

    /// <summary>The problem cells as functions of a lesson, called for every seed in one cell: question and options, and the answer.</summary>
    private static async Task<Dictionary<string, List<(string Question, string Answer)>>> DrawAsync(string slug, string aeroplane)
    {
        LessonRun run = await LessonRun.OfAsync(slug, aeroplane);
        var drawn = new Dictionary<string, List<(string, string)>>();
        foreach (LessonCell cell in run.Lesson.Cells.Where(c => c.Role == CellRole.Problem))
        {
            CellResult result = await run.RunAsync($$"""
                Problem Drawn(Lesson lesson)
                {
                {{LessonRun.Returned(cell)}}
                }
                Console.Write(System.Text.Json.JsonSerializer.Serialize(Enumerable.Range(1, {{Seeds}}).Select(seed => Drawn(Lesson.Begin(seed, aeroplane)))
                    .Select(p => new[] { p.ToString().Split("\nHint")[0], p.Answer })));
                """);
            string json = string.Concat(result.Outputs.Select(o => o.Text));
            drawn.Add(cell.Title, [.. JsonSerializer.Deserialize<string[][]>(json)!.Select(pair => (pair[0].Replace('\u00A0', ' ').Replace("\u202F", "", StringComparison.Ordinal), pair[1]))]);
        }
        return drawn;
    }

    /// <summary>Draws a lesson's six problems for every seed and holds each to its key; a fault names the problem and its question.</summary>
    /// <param name="slug">The lesson.</param>
    /// <param name="aeroplane">The aeroplane of the demonstration.</param>
    /// <param name="distinct">The fewest different questions of a problem.</param>
    /// <param name="fault">What is wrong with a key, from title, question and answer; null where it is what the question gives.</param>
    public static async Task<Dictionary<string, List<(string Question, string Answer)>>> HaveTheKeyAsync(
        string slug, string aeroplane, int distinct, Func<string, string, string, string?> fault)
    {
        Dictionary<string, List<(string Question, string Answer)>> drawn = await DrawAsync(slug, aeroplane);
        Assert.Equal(6, drawn.Count);
        foreach ((string title, List<(string Question, string Answer)> problems) in drawn)
        {
            Assert.Equal(Seeds, problems.Count);
            Assert.InRange(problems.Select(p => p.Question).Distinct().Count(), distinct, Seeds);
            foreach ((string question, string answer) in problems)
            {
                string? wrong = fault(title, question, answer);
                Assert.True(wrong is null, $"{title}: {wrong}\n{question}");
            }
        }
        return drawn;
    }

    /// <summary>The text of the option that the key names.</summary>
    public static string Option(string question, string letter) => Regex.Match(question, $"^  {letter}\\. (.*)$", RegexOptions.Multiline).Groups[1].Value;

    /// <summary>Null where the key names the option with these words.</summary>
    public static string? Chosen(string worked, string question, string answer) =>
        Option(question, answer) is var key && worked == key ? null : $"worked \"{worked}\", the key says \"{key}\"";

    /// <summary>How many different options are right, over all seeds: a decision that always falls one way would be none.</summary>
    public static int Options(List<(string Question, string Answer)> problems) => problems.Select(p => Option(p.Question, p.Answer)).Distinct().Count();

    public static double Radians(double degrees) => degrees * Math.PI / 180;

    /// <summary>Null where the two agree; the printed answer is rounded.</summary>
    public static string? Near(double worked, string answer, double off)
    {
        double key = double.Parse(Number().Match(answer.Replace("\u202F", "", StringComparison.Ordinal)).Value, CultureInfo.InvariantCulture);
        return Math.Abs(worked - key) <= off ? null : string.Create(CultureInfo.InvariantCulture, $"worked {worked:0.00}, the key says {answer}");
    }

    /// <summary>The numbers with a unit in a question, in their order, without their signs.</summary>
    public static double[] Numbers(string text, string unit) =>
        [.. Regex.Matches(text, $"([0-9.]+) ?{unit}(?![a-z])").Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex("[0-9.]+", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
