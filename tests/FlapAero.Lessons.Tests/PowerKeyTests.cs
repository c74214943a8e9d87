using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems of the lesson on power for a thousand seeds: each can be set, and its key is what a student works out from
/// the question alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class PowerKeyTests
{
    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        var hand = new HandApproach(RepositoryRoot.Path("data/aeroplanes/" + file));
        await HaveTheKeyAsync("power-on-the-approach", aeroplane, distinct: 3, (title, question, answer) => title switch
        {
            // The table is read along straight lines here, along curves there: half the key's tolerance.
            "Read it off" => Near(hand.Turns(Flaps(question), 1.3, 3), answer, 5),
            "The weight helps" => Near(Numbers(question, "lbf")[1] - Numbers(question, "lbf")[0] * Math.Sin(Radians(Numbers(question, "°")[0])), answer, 1.5),
            "The same recipe, lighter" => Near(Numbers(question, "rpm")[0] * Math.Sqrt(Numbers(question, "lb")[1] / Numbers(question, "lb")[0]), answer, 2),
            "What the thrust does" => Near(Numbers(question, "lbf")[0] * 4.44822 * Numbers(question, "kt")[0] * 1852 / 3600 / 1000, answer, 0.2),
            "More or less" => Chosen(MoreOrLess(hand, question), question, answer),
            "High on final" => Chosen(Decision(hand, question), question, answer),
            _ => "no such problem",
        });
    }

    private static string MoreOrLess(HandApproach hand, string question)
    {
        double multiple = double.Parse(Regex.Match(question, "to ([0-9.]+) times").Groups[1].Value, CultureInfo.InvariantCulture);
        double thrust = hand.Thrust(Flaps(question), multiple, 3) / hand.Thrust(Flaps(question), 1.3, 3);
        double turns = hand.Turns(Flaps(question), multiple, 3) - hand.Turns(Flaps(question), 1.3, 3);
        // A change that nobody could tell from none would not be worth a problem.
        Assert.False(Math.Abs(thrust - 1) < 0.02, $"thrust × {thrust:0.000}: {question}");
        Assert.False(Math.Abs(turns) < 10, $"{turns:+0;-0} rpm: {question}");
        return $"{(thrust > 1 ? "More" : "Less")} thrust{(thrust > 1 == turns > 0 ? " and" : ", but")} {(turns > 0 ? "more" : "fewer")} revolutions.";
    }

    private static string Decision(HandApproach hand, string question)
    {
        double needed = Math.Atan(Numbers(question, "ft")[0] / Numbers(question, "ft")[1]) * 180 / Math.PI;
        double left = hand.ClosedThrottle("up") - needed;
        Assert.False(Math.Abs(left - 1) < 0.2, $"{left:0.00}° is too near the rule's one degree: {question}");
        return left >= 1 ? "Reduce power and continue." : "Go around.";
    }

    private static string Flaps(string question) => Regex.Match(question, "flaps ([^,]+),").Groups[1].Value;
}
