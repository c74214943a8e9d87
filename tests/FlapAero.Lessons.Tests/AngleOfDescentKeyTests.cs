using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems of the lesson on drag and the angle of descent for a thousand seeds: each can be set, and its key is what a
/// student works out from the question alone, with the aeroplane's file and school physics in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class AngleOfDescentKeyTests
{
    private const double FeetPerMinuteInAKnot = 1852 / 0.3048 / 60;

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        var hand = new HandAeroplane(RepositoryRoot.Path("data/aeroplanes/" + file));
        await HaveTheKeyAsync("drag-and-the-angle-of-descent", aeroplane, distinct: 3, (title, question, answer) => title switch
        {
            "Read it off" => Near(hand.LiftToDrag(Regex.Match(question, "flaps ([^,]+),").Groups[1].Value, 1.3), answer, 0.1),
            "From coefficients to the path" => Near(Math.Atan(Coefficient(question, "drag") / Coefficient(question, "lift")) * 180 / Math.PI, answer, 0.02),
            "Sink on the path" => Near(SinkInKnots(question) * FeetPerMinuteInAKnot, answer, 3),
            "How high at the most?" => Near(Numbers(question, "ft")[0] * TangentOverGround(question), answer, 2),
            "Light and heavy" => Chosen("Neither: the angle is the same.", question, answer),
            "Close the throttle, or go around?" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
    }

    /// <summary>Ground speed times the tangent, with the level airspeed taken for its level part.</summary>
    private static double SinkInKnots(string question) =>
        (Numbers(question, "kt")[0] - Numbers(question, "kt")[1]) * Math.Tan(Radians(Numbers(question, "°")[0]));

    private static double TangentOverGround(string question)
    {
        double speed = Numbers(question, "kt")[0], headwind = Numbers(question, "kt")[1], glide = Radians(Numbers(question, "°")[0]);
        return speed * Math.Sin(glide) / (speed * Math.Cos(glide) - headwind);
    }

    private static string Decision(string question)
    {
        double needed = Math.Atan(Numbers(question, "ft")[0] / Numbers(question, "ft")[1]) * 180 / Math.PI;
        double inHand = Math.Atan(TangentOverGround(question)) * 180 / Math.PI - needed;
        // A decision at the very edge of the rule would not be worth a problem.
        Assert.False(Math.Abs(inHand - 1) < 0.3, string.Create(CultureInfo.InvariantCulture, $"{inHand:0.00}° is too near the rule's one degree: {question}"));
        return inHand >= 1 ? "Take power off, hold the speed." : "Go around.";
    }

    private static double Coefficient(string question, string name) =>
        double.Parse(Regex.Match(question, name + " coefficient (?:is )?([0-9]+\\.[0-9]+)").Groups[1].Value, CultureInfo.InvariantCulture);
}
