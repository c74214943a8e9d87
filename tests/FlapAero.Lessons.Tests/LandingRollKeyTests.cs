using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems on the landing roll for a thousand seeds: each can be set, and its key is what a student works out from the question
/// alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class LandingRollKeyTests
{
    private const double Foot = 0.3048, FeetPerSecond = 1852 / Foot / 3600;

    // Temperature, headwind on 24 and half the gusts, as the week has them.
    private static readonly Dictionary<string, (double Celsius, double Headwind, double Faster)> Week = new()
    {
        ["Monday"] = (9, 0, 0),
        ["Tuesday"] = (14, 8, 0),
        ["Wednesday"] = (20, 14 * Math.Cos(Math.PI / 6), 5),
        ["Thursday"] = (17, 3 * Math.Cos(Math.PI / 9), 0),
        ["Friday"] = (31, -4, 0),
        ["Saturday"] = (12, 7, 0),
        ["Sunday"] = (15, 0, 0),
    };

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        var hand = new HandLanding(RepositoryRoot.Path("data/aeroplanes/" + file));
        Dictionary<string, double> rolls = Week.ToDictionary(
            day => day.Key, day => hand.Land(day.Value.Celsius, day.Value.Headwind, day.Value.Faster) is var l ? (l.Stop - l.Touchdown) / Foot : 0);
        var drawn = await HaveTheKeyAsync("the-landing-roll", aeroplane, distinct: 5, (title, question, answer) => title switch
        {
            "Read it off" => Near(rolls.Single(day => question.Contains(day.Key, StringComparison.Ordinal)).Value, answer, 4),
            "Energy and speed" => Near(Gone(question), answer, 0.5),
            "Brakes on" => Near(BrakesOn(question), answer, 0.02 * BrakesOn(question)),
            "The square of the ground speed" => Near(Squared(question), answer, 4),
            "Uphill or into the wind" => Chosen(Way(question), question, answer),
            "Will it fit?" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
        foreach (string choice in new[] { "Uphill or into the wind", "Will it fit?" })
            Assert.Equal(2, Options(drawn[choice]));
    }

    private static double Gone(string question)
    {
        double[] knots = Numbers(question, "kt");
        return 100 * (1 - knots[1] * knots[1] / (knots[0] * knots[0]));
    }

    /// <summary>V²/2a, with knots made feet a second.</summary>
    private static double BrakesOn(string question)
    {
        double speed = Numbers(question, "kt")[0], slowing = Numbers(question, "kt/s")[0];
        Assert.InRange(slowing, 3, 7);
        return speed * speed / (2 * slowing) * FeetPerSecond;
    }

    private static double Squared(string question)
    {
        double[] knots = Numbers(question, "kt");
        double ground = knots[0] + (question.Contains("from behind", StringComparison.Ordinal) ? knots[1] : -knots[1]);
        return Numbers(question, "ft")[0] * ground * ground / (knots[0] * knots[0]);
    }

    /// <summary>Level and calm, less so much a per cent, more so much a knot, and the other way round.</summary>
    private static string Way(string question)
    {
        double[] feet = Numbers(question, "ft");
        double[] knots = Numbers(question, "kt");
        double slope = Numbers(question, "%")[0], wind = knots[1] / knots[0];
        double uphill = -slope * feet[1] + wind * feet[3], downhill = slope * feet[2] - wind * feet[3];
        Assert.True(Math.Abs(uphill - downhill) > 80, $"{uphill:0} is too near {downhill:0}: {question}");
        return uphill < downhill ? "Land uphill, the wind from behind." : "Land downhill, into the wind.";
    }

    private static string Decision(string question)
    {
        double[] feet = Numbers(question, "ft"), knots = Numbers(question, "kt");
        bool behind = question.Contains("from behind", StringComparison.Ordinal);
        Assert.Equal(knots[0] * (behind ? 1.5 : 0.5), knots[1]);
        double allowed = 0.7 * feet[0];
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(feet[1] / allowed - 1) < 0.02, $"{feet[1]:0} is too near {allowed:0}: {question}");
        return feet[1] < allowed ? "Land here." : "Go where the runway is longer.";
    }
}
