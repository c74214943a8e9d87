using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems of the circuit lesson for a thousand seeds: each can be set, and its key is what a student works out from
/// the question alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class CircuitKeyTests
{
    private const double FeetPerSecond = 1852 / 0.3048 / 3600;

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        JsonNode json = JsonNode.Parse(await File.ReadAllTextAsync(RepositoryRoot.Path("data/aeroplanes/" + file), TestContext.Current.CancellationToken))!;
        var drawn = await HaveTheKeyAsync("the-circuit-without-flaps", aeroplane, distinct: 3, (title, question, answer) => title switch
        {
            "Read it off" => Near(Radius(json, question), answer, 4),
            "The wind behind" => Near(Numbers(question, "s")[0] * Numbers(question, "kt")[0] * FeetPerSecond, answer, 1),
            "Late to base" => Near(TooLow(question), answer, 1.5),
            "The room that is left" => Near(Bank(Numbers(question, "°")[0], Numbers(question, "ft")[0], Numbers(question, "ft")[1]), answer, 0.15),
            "Faster, same bank" => Chosen(Grown(question), question, answer),
            "Continue the turn?" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
        Assert.Equal(2, Options(drawn["Continue the turn?"]));
    }

    /// <summary>V²/(g tan φ) in feet at 1.4 √(2 W/(ρ S C_Lmax)), in Saturday's air: 600 ft, 12 °C.</summary>
    private static double Radius(JsonNode json, string question)
    {
        string flaps = Regex.Match(question, "Flaps ([^,]+),").Groups[1].Value;
        JsonNode setting = json["flapSettings"]!.AsArray().Single(s => s!["name"]!.GetValue<string>() == flaps)!;
        double density = 101325 * Math.Pow(1 - 0.0065 * 182.88 / 288.15, 5.2559) / (287.05 * 285.15);
        double squared = 1.4 * 1.4 * 2 * Value(json["masses"]!["maximum"]!) * 9.80665 / (density * Value(json["wing"]!["area"]!) * Value(setting["maximumLiftCoefficient"]!));
        double bank = double.Parse(Regex.Match(question, "At ([0-9]+)° of bank").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        return squared / (9.80665 * Math.Tan(Radians(bank))) / 0.3048;
    }

    /// <summary>What downwind loses in the delay, and what the longer final should have begun higher.</summary>
    private static double TooLow(string question)
    {
        double late = Numbers(question, "s")[0], slope = Math.Tan(Radians(Numbers(question, "°")[0]));
        return Numbers(question, "ft/min")[0] / 60 * late + Numbers(question, "kt")[0] * FeetPerSecond * late * slope;
    }

    /// <summary>Radius and drift both go with 1/tan φ, and so does the room that they need.</summary>
    private static double Bank(double planned, double room, double left) =>
        Math.Atan(Math.Tan(Radians(planned)) * room / left) * 180 / Math.PI;

    private static string Grown(string question)
    {
        double more = Numbers(question, "per cent")[0] / 100;
        return $"It grows by {Math.Round(100 * (2 * more + more * more), MidpointRounding.AwayFromZero)} per cent.";
    }

    private static string Decision(string question)
    {
        double room = Numbers(question, "ft")[0];
        double bank = Bank(Numbers(question, "°")[0], room, room - Numbers(question, "s")[0] * Numbers(question, "kt")[0] * FeetPerSecond);
        Assert.Equal(30, Numbers(question, "°")[1]);
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(bank - 30) < 2, $"{bank:0.0} is too near the rule: {question}");
        Assert.InRange(bank, 20, 60);
        return bank < 30 ? "Turn, with the bank that makes the centreline." : "Go around.";
    }

    private static double Value(JsonNode node) => node["value"]!.GetValue<double>();
}
