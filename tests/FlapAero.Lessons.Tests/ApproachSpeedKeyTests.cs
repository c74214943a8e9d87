using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems of the approach-speed lesson for a thousand seeds: each can be set, and its key is what a student works
/// out from the question alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class ApproachSpeedKeyTests
{
    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        var hand = new HandAeroplane(RepositoryRoot.Path("data/aeroplanes/" + file));
        await HaveTheKeyAsync("approach-speed", aeroplane, distinct: 3, (title, question, answer) => title switch
        {
            "Read it off" => Near(hand.Stall(question.Contains("flaps up", StringComparison.Ordinal) ? "up" : Regex.Match(question, "flaps ([^.]+)\\.").Groups[1].Value) * 1.3, answer, 0.2),
            "Stall in the turn" => Near(InTurn(question), answer, 0.2),
            "A gusty afternoon" => Near(hand.Needle(1.3 * Numbers(question, "kt")[0]) + (Numbers(question, "kt")[2] - Numbers(question, "kt")[1]) / 2, answer, 0.7),
            "What did it weigh?" => Near(Numbers(question, "lb")[0] * Math.Pow(Numbers(question, "kt")[0] / Numbers(question, "kt")[1], 2), answer, 15),
            "Same bank, other flaps" => Chosen("Both keep the same.", question, answer),
            "Continue or go around?" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
    }

    private static double InTurn(string question) =>
        Numbers(question, "kt")[0] * Math.Sqrt(Numbers(question, "lb")[0] / Numbers(question, "lb")[1] / Math.Cos(Radians(Numbers(question, "°")[0])));

    private static string Decision(string question)
    {
        double speed = Numbers(question, "kt")[0], lull = Numbers(question, "kt")[1], bank = Numbers(question, "°")[0];
        double margin = (speed - lull) / (speed / 1.3 / Math.Sqrt(Math.Cos(Radians(bank)))) - 1;
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(margin - 0.10) < 0.02, $"{margin:P1} is too near the rule's ten per cent: {question}");
        return bank <= 30 && margin >= 0.10 ? "Continue the turn at this bank." : "Go around.";
    }
}
