using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems of the lesson on what flaps change for a thousand seeds: each can be set, and its key is what a student works out
/// from the question alone, with the aeroplane's file, a straight lift curve and school trigonometry in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class WhatFlapsChangeKeyTests
{
    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        string path = RepositoryRoot.Path("data/aeroplanes/" + file);
        var (hand, json) = (new HandAeroplane(path), JsonNode.Parse(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken))!);
        var drawn = await HaveTheKeyAsync("what-flaps-change", aeroplane, distinct: 3, (title, question, answer) => title switch
        {
            "Read it off" => Worth(SpeedOfTheNose(hand, json, question), 40, 110) ?? Near(SpeedOfTheNose(hand, json, question), answer, 0.6),
            "Below the level line" => Worth(BelowTheLevelLine(question), 1, 12) ?? Near(BelowTheLevelLine(question), answer, 0.12),
            "The usual picture" => Worth(SpeedOfThePicture(question), 50, 125) ?? Near(SpeedOfThePicture(question), answer, 0.5),
            "Which line turns?" => Worth(Turned(question), 1, 16) ?? Near(Turned(question), answer, 0.06),
            "A steeper path" => Chosen("Nearly nothing: it stays behind the nose.", question, answer),
            "Fly it, or see to the seat?" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
        Assert.Equal(2, Options(drawn["Fly it, or see to the seat?"]));
    }

    /// <summary>θ back to a speed: α = θ + 3° + i_w, C_L = a(α − α₀), V = V_S √(C_Lmax cos 3°/C_L).</summary>
    private static double SpeedOfTheNose(HandAeroplane hand, JsonNode json, string question)
    {
        JsonNode[] settings = [.. json["flapSettings"]!.AsArray().Select(s => s!)];
        JsonNode setting = question.Contains("full flap", StringComparison.Ordinal) ? settings[^1] : settings[0];
        double most = setting["maximumLiftCoefficient"]!["value"]!.GetValue<double>(), none = setting["zeroLiftAngle"]!["value"]!.GetValue<double>();
        double attack = Signed(question)[0] + 3 + hand.Of("wing", "incidence", "deg");
        double lift = hand.Of("wing", "liftCurveSlope", "1/rad") * Radians(attack - none);
        return hand.Stall(setting["name"]!.GetValue<string>()) * Math.Sqrt(most * Math.Cos(Radians(3)) / lift);
    }

    private static double BelowTheLevelLine(string question)
    {
        string rest = question[question.IndexOf("It has none at", StringComparison.Ordinal)..];
        return Signed(rest)[0] + Number(question, "coefficient of ([0-9.]+)\\.") / Number(question, "gains ([0-9.]+) a degree") - Number(question, "fuselage is ([0-9.]+)°");
    }

    /// <summary>α = θ + γ + i_w; C_L from it; V = V_S √(C_Lmax/C_L), the cosine of the path left out.</summary>
    private static double SpeedOfThePicture(string question)
    {
        double nose = Number(question, "the nose is at ([+\u2212]?[0-9.]+)°"), down = Number(question, "On a path of ([0-9.]+)°"), incidence = Number(question, "incidence ([0-9.]+)°");
        double lift = (nose + down + incidence - Number(question, "no lift at ([+\u2212]?[0-9.]+)°")) * Number(question, "gains ([0-9.]+) a degree");
        return Numbers(question, "kt")[0] * Math.Sqrt(Number(question, "lift coefficient of ([0-9.]+),") / lift);
    }

    /// <summary>The triangle with the hinge: two sides and the angle between them, by the law of sines.</summary>
    private static double Turned(string question)
    {
        double share = Numbers(question, "%")[0] / 100, lowered = Radians(Numbers(question, "°")[0]);
        double line = Math.Sqrt((1 - share) * (1 - share) + share * share + 2 * share * (1 - share) * Math.Cos(lowered));
        return Math.Asin(share * Math.Sin(lowered) / line) * 180 / Math.PI;
    }

    private static string Decision(string question)
    {
        double[] degrees = Numbers(question, "°");
        double margin = degrees[0] - (degrees[1] - degrees[2]);
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(margin - 1) < 0.4, $"{margin:0.00}° is too near the rule's one degree: {question}");
        return margin >= 1 ? "Fly it from this seat." : "See to the seat first.";
    }

    private static string? Worth(double worked, double least, double most) =>
        worked >= least && worked <= most ? null : string.Create(CultureInfo.InvariantCulture, $"{worked:0.00} is no answer worth working out");

    private static double[] Signed(string text) => [.. Regex.Matches(text, "([+\u2212]?[0-9.]+)°").Select(m => Parse(m.Groups[1].Value))];

    private static double Number(string question, string pattern) => Parse(Regex.Match(question, pattern).Groups[1].Value);

    private static double Parse(string number) => double.Parse(number.Replace('\u2212', '-'), CultureInfo.InvariantCulture);
}
