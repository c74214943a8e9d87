using System.Text.Json.Nodes;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems on round-out and float for a thousand seeds: each can be set, and its key is what a student works out from the question
/// alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class RoundOutAndFloatKeyTests
{
    private const double FeetPerSecond = 1852 / 0.3048 / 3600;

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        JsonNode wing = JsonNode.Parse(await File.ReadAllTextAsync(RepositoryRoot.Path("data/aeroplanes/" + file), TestContext.Current.CancellationToken))!["wing"]!;
        await HaveTheKeyAsync("round-out-and-float", aeroplane, distinct: 3, (title, question, answer) => title switch
        {
            "Read it off" => Near(TakenByTheGround(wing, Numbers(question, "ft")[0]), answer, 1),
            // A tenth of a second in the time that ten knots take is up to 2.5 per cent.
            "Knots into feet" => Near(Further(question), answer, 0.025 * Further(question)),
            "Into the wind" => Near(OverTheGround(question), answer, 6),
            "Pushed on" => Near(100 * Math.Pow(Numbers(question, "kt")[1] / Numbers(question, "kt")[0], 2), answer, 1),
            "Same speed, other weight" => Chosen(Floater(question), question, answer),
            "Still floating" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
    }

    /// <summary>exp(−2.48 (2z/b)^0.768) in per cent, from the height of the wheels in feet.</summary>
    private static double TakenByTheGround(JsonNode wing, double wheels)
    {
        double height = wheels * 0.3048 + wing["heightOnWheels"]!["value"]!.GetValue<double>();
        return 100 * Math.Exp(-2.48 * Math.Pow(2 * height / wing["span"]!["value"]!.GetValue<double>(), 0.768));
    }

    private static double Further(string question)
    {
        double[] knots = Numbers(question, "kt");
        Assert.Equal(10, knots[2]);
        return knots[1] * FeetPerSecond * Numbers(question, "s")[0] * knots[0] / knots[2];
    }

    private static double OverTheGround(string question)
    {
        double[] knots = Numbers(question, "kt");
        return (knots[0] - knots[1]) * FeetPerSecond * Numbers(question, "s")[0];
    }

    /// <summary>The float is as long as the speed to lose, over the deceleration: it ends at 0.8 of the most lift, 1.118 stalls, which go with √W.</summary>
    private static string Floater(string question)
    {
        double[] pounds = Numbers(question, "lb");
        // Parasitic drag a mass goes with 1/W, induced drag a mass with W; at 1.3 stalls the two are about alike.
        double Float(double share) => (1.3 - 1.118 * Math.Sqrt(share)) / (0.5 / share + 0.5 * share);
        return Float(pounds[1] / pounds[0]) > Float(1) ? "The lighter one." : "The heavier one: it has more energy.";
    }

    private static string Decision(string question)
    {
        double[] feet = Numbers(question, "ft"), knots = Numbers(question, "kt");
        Assert.Equal(10, knots[1]);
        double needed = knots[2] * FeetPerSecond * Numbers(question, "s")[0] * knots[0] / knots[1], left = feet[0] - feet[1];
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(needed / left - 1) < 0.2, $"{needed:0} is too near {left:0}: {question}");
        return needed < left ? "Hold it off and let it land." : "Go around.";
    }
}
