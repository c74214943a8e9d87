using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems on how much landings vary for a thousand seeds: each can be set, and its key is what a student works out from the
/// question alone; where a figure is read, an integration of our own stands for it.
/// </summary>
[Trait("Speed", "slow")]
public sealed partial class LandingsVaryKeyTests
{
    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        var hand = new HandTouchdown(RepositoryRoot.Path("data/aeroplanes/" + file));
        var slopes = new Dictionary<string, double>();
        var drawn = await HaveTheKeyAsync("how-much-landings-vary", aeroplane, distinct: 6, (title, question, answer) =>
        {
            double[] feet = Numbers(question, "ft"), knots = Numbers(question, "kt");
            double Asked(string unit) => Numbers(question.Split('?')[0], unit).FirstOrDefault();
            return title switch
            {
                // A tenth of a knot in the question is up to nine feet, half of it five.
                "Read it off" => Near(Once(slopes, question, () => hand.Later("up", Asked("kt"), Asked("ft"))), answer, 6),
                "From knots to feet" => Math.Abs(Once(slopes, Flaps(question), () => hand.Later(Flaps(question), 5)) - feet[0]) > 3 ? $"{feet[0]} ft for five knots"
                    : Near(feet[0] * knots[1] / knots[0], answer, 1),
                "Half the knots" => Near(Math.Sqrt(feet[0] * feet[0] / 4 + feet[1] * feet[1]), answer, 1),
                "What the book proves" => Near(TwoErrors(question), answer, 0.1),
                "Which habit first" => Chosen(Habit(feet, question), question, answer),
                "Long enough" => Chosen(Decision(feet, question), question, answer),
                _ => "no such problem",
            };
        });

        foreach (string title in (string[])["Which habit first", "Long enough"])
            Assert.InRange(Options(drawn[title]), 2, 3);
    }

    private static double Once(Dictionary<string, double> known, string key, Func<double> value) =>
        known.TryGetValue(key, out double already) ? already : known[key] = value();

    private static string Flaps(string question) => FlapsWord().Match(question).Groups[1].Value;

    /// <summary>Twice the standard error of a binomial share, in per cent.</summary>
    private static double TwoErrors(string question)
    {
        Match book = Book().Match(question);
        double n = double.Parse(book.Groups[1].Value, CultureInfo.InvariantCulture), hits = double.Parse(book.Groups[2].Value, CultureInfo.InvariantCulture);
        return 200 * Math.Sqrt(hits * (n - hits) / n) / n;
    }

    /// <summary>What is taken away of the variance: three quarters of the speed's square, or the whole of another's.</summary>
    private static string Habit(double[] feet, string question)
    {
        double[] taken = [0.75 * feet[0] * feet[0], feet[1] * feet[1], feet[2] * feet[2]];
        double[] ordered = [.. taken.Order()];
        Assert.True(ordered[2] > 1.2 * ordered[1], $"two habits are worth nearly the same: {question}");
        string[] options = ["Halve the part of the speed.", "Have the height exact.", "Have the end of the hold-off exact."];
        return options[Array.IndexOf(taken, ordered[2])];
    }

    private static string Decision(double[] feet, string question)
    {
        double deviations = (feet[2] - feet[0]) / feet[1];
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(deviations - 2) < 0.6, $"{deviations:0.0} is too near two: {question}");
        return deviations > 2 ? "Land here: the rule is kept." : "Fly to the longer runway.";
    }

    [GeneratedRegex("^Flaps (.*?):", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex FlapsWord();

    [GeneratedRegex("Of ([0-9]+) landings in a pilot's book ([0-9]+) stopped", RegexOptions.CultureInvariant)]
    private static partial Regex Book();
}
