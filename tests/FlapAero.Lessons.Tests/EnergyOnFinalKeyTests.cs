using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems on energy on final for a thousand seeds: each can be set, and its key is what a student works out from the question
/// alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class EnergyOnFinalKeyTests
{
    private const double Knot = 1852 / 3600.0, Foot = 0.3048, Gravity = 9.80665;

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        string path = RepositoryRoot.Path("data/aeroplanes/" + file);
        var (hand, stalls) = (new HandApproach(path, celsius: 9), new HandAeroplane(path));
        var drawn = await HaveTheKeyAsync("energy-on-final", aeroplane, distinct: 6, (title, question, answer) => title switch
        {
            "Read it off" => Within(answer, FinalNeeded(hand, stalls, question), 0.02, 200, 6500),
            "Too fast, as height" => Within(answer, TooFast(question), 0.02, 15, 150),
            "How fast it drains" => Near(Drains(question), answer, 8),
            "What is left for the runway" => Near(LeftForTheRunway(question), answer, 0.2),
            "Three pilots on short final" => Chosen(MostToLose(question), question, answer),
            "On, or around?" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
        Assert.InRange(drawn["On, or around?"].Count(p => Option(p.Question, p.Answer) == "Go around."), Seeds / 4, 3 * Seeds / 4);
        Assert.Equal(3, Options(drawn["Three pilots on short final"]));
    }

    /// <summary>Δh/(tan γ − tan 3.5°), γ the closed throttle's: half the key's tolerance would ask more of a table read along straight lines.</summary>
    private static double FinalNeeded(HandApproach hand, HandAeroplane stalls, string question)
    {
        string flaps = Regex.Match(question, "Flaps ([^,]+),").Groups[1].Value;
        double multiple = Numbers(question, "kt")[0] / stalls.Stall(flaps);
        return Numbers(question, "ft")[0] / (Tangent(hand.ClosedThrottle(flaps, multiple)) - Tangent(3.5));
    }

    private static double TooFast(string question)
    {
        double[] knots = Numbers(question, "kt");
        return Worth(knots[0], knots[1] - knots[0]);
    }

    private static double Drains(string question)
    {
        double[] pounds = Numbers(question, "lbf");
        double thrust = Regex.IsMatch(question, "thrust \u2212") ? -pounds[2] : pounds[2];
        double drains = (pounds[1] - thrust) / pounds[0] * Numbers(question, "kt")[0] * Knot / Foot * 60;
        // At the least the sink on two degrees at 54 kt, 192 ft/min.
        Assert.InRange(drains, 185, 1400);
        return drains;
    }

    private static double LeftForTheRunway(string question)
    {
        double[] feet = Numbers(question, "ft"), degrees = Numbers(question, "°");
        double left = feet[0] - feet[1] * (Tangent(degrees[0]) - Tangent(degrees[1])), speed = Numbers(question, "kt")[0] * Knot;
        Assert.InRange(left, 20, 70);
        return (Math.Sqrt(speed * speed + 2 * Gravity * left * Foot) - speed) / Knot;
    }

    private static string MostToLose(string question)
    {
        double[] feet = Numbers(question, "ft"), knots = Numbers(question, "kt");
        (double Store, string Says)[] pilots =
        [
            (feet[0], "The high one."), (Worth(knots[0], knots[1]), "The fast one."),
            (feet[1] + Worth(knots[0], knots[2]), "The one who is both."),
        ];
        var ordered = pilots.OrderByDescending(p => p.Store).ToArray();
        // Two that nobody could tell apart would not be worth a problem.
        Assert.True(ordered[0].Store > 1.05 * ordered[1].Store, question);
        return ordered[0].Says;
    }

    private static string Decision(string question)
    {
        double[] feet = Numbers(question, "ft"), knots = Numbers(question, "kt"), degrees = Numbers(question, "°");
        Assert.True(feet[1] > 0, question);
        double needs = (feet[1] + Worth(knots[1], knots[0])) / (Tangent(degrees[0]) - Tangent(degrees[1])), rule = 0.8 * feet[0];
        Assert.False(Math.Abs(needs / rule - 1) < 0.08, $"{needs:0} is too near {rule:0}: {question}");
        return needs < rule ? "Close the throttle now and continue." : "Go around.";
    }

    /// <summary>Knots too fast as feet: the difference of two V²/2g.</summary>
    private static double Worth(double knots, double excess) =>
        (Math.Pow((knots + excess) * Knot, 2) - Math.Pow(knots * Knot, 2)) / (2 * Gravity) / Foot;

    private static double Tangent(double degrees) => Math.Tan(Radians(degrees));

    private static string? Within(string answer, double worked, double share, double low, double high)
    {
        Assert.InRange(worked, low, high);
        return Near(worked, answer, share * worked);
    }
}
