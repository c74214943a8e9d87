using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems of the lesson on lift and the stall for a thousand seeds: each can be set, and its key is what a student
/// works out from the question alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class LiftKeyTests
{
    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        var hand = new HandAeroplane(RepositoryRoot.Path("data/aeroplanes/" + file));
        await HaveTheKeyAsync("lift-and-where-it-ends", aeroplane, distinct: 3, (title, question, answer) => title switch
        {
            "Read off the curve" => Near(OnTheCurve(hand, question), answer, 0.6),
            "By how much in the turn?" => Near(100 * (1 / Math.Sqrt(Math.Cos(Radians(Numbers(question, "°")[0]))) - 1), answer, 0.6),
            "Two come aboard" => Near(Numbers(question, "kt")[0] * Math.Sqrt(1 + Numbers(question, "lb")[1] / Numbers(question, "lb")[0]), answer, 0.2),
            "How far from the stall?" => Near(DegreesLeft(hand, question), answer, 0.2),
            "Another weight, another stall?" => Chosen(Difference(question), question, answer),
            "A tighter turn, please" => Chosen(Decision(hand, question), question, answer),
            _ => "no such problem",
        });
    }

    private static double OnTheCurve(HandAeroplane hand, string question)
    {
        double share = Numbers(question, "lb")[0] * 0.45359237 / hand.Of("masses", "maximum", "kg");
        return hand.Stall("up") * Math.Sqrt(share * Last(question, "load factor of ([0-9.]+)\\?"));
    }

    private static double DegreesLeft(HandAeroplane hand, string question)
    {
        double ratio = Numbers(question, "kt")[1] / Numbers(question, "kt")[0];
        double lift = Last(question, "coefficient is ([0-9.]+);") * ratio * ratio;
        // The straight part holds up to a lift coefficient of C_Lmax less half the rounding's share: here far above the one needed.
        Assert.InRange(lift, 0.1, 0.8);
        return hand.StallAngle("up") - (-Last(question, "none at \u2212([0-9.]+)°") + lift / Last(question, "gains ([0-9.]+) a degree"));
    }

    private static string Difference(string question) => Numbers(question, "lb") is [double from, double to] && to > from
        ? "The speed is higher, the angle of attack is the same."
        : "The speed is lower, the angle of attack is the same.";

    private static string Decision(HandAeroplane hand, string question)
    {
        double margin = Numbers(question, "kt")[0] / (hand.Stall("up") / Math.Sqrt(Math.Cos(Radians(Numbers(question, "°")[0])))) - 1;
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(margin - 0.10) < 0.02, $"{margin:P1} is too near the rule's ten per cent: {question}");
        return margin >= 0.10 ? "Turn level at this bank, at this speed." : "Not so: speed first, or less bank.";
    }

    private static double Last(string question, string pattern) =>
        double.Parse(Regex.Match(question, pattern).Groups[1].Value, CultureInfo.InvariantCulture);
}
