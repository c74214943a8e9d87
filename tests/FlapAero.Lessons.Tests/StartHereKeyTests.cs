using System.Text.RegularExpressions;
using FlapAero.Tests;
using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems of the first lesson for a thousand seeds: each can be set, and its key is what a student works out from the
/// question alone with a calculator: the miles' metres, a tangent, and which kinds can be added.
/// </summary>
[Trait("Speed", "slow")]
public sealed class StartHereKeyTests
{
    private const double FeetPerMinute = 1852 / 0.3048 / 60, FeetPerMile = 1852 / 0.3048;

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane, string file)
    {
        double reference = 1.3 * new HandAeroplane(RepositoryRoot.Path("data/aeroplanes/" + file)).Stall("up");
        var drawn = await HaveTheKeyAsync("start-here", aeroplane, distinct: 6, (title, question, answer) => title switch
        {
            "Read it off" => Near(Rate(question), answer, 0.6),
            "Another dial" => Near(InKnots(question) - Numbers(question, "kt")[0], answer, 0.11),
            "What one in sixty leaves out" => Near(LeftOut(question), answer, 0.6),
            "How long to the runway?" => Near(60 * Numbers(question, "ft")[0] / Rate(question), answer, 0.6),
            "Which line is refused?" => Kinds(Option(question, answer)) is ('v', '+', 'l') ? null : "the line has a meaning",
            "Hold it, or not?" => Chosen(Decision(question, reference), question, answer),
            _ => "no such problem",
        });
        // A decision that always falls one way would be none.
        Assert.Equal(3, Options(drawn["Hold it, or not?"]));
    }

    /// <summary>Ground speed in feet a minute, times the slope.</summary>
    private static double Rate(string question) =>
        Numbers(question, "kt")[0] * FeetPerMinute * Math.Tan(Radians(Numbers(question, "°")[0]));

    private static double InKnots(string question) => Numbers(question, "mph") is [var miles]
        ? miles * 1609.344 / 1852 : Numbers(question, "km/h")[0] * 1000 / 1852;

    private static double LeftOut(string question)
    {
        double degrees = Numbers(question, "°")[0];
        return Numbers(question, "NM")[0] * FeetPerMile * (Math.Tan(Radians(degrees)) - degrees / 60);
    }

    /// <summary>What an option's line puts together: v is the speed, s another speed, l a length, n a number.</summary>
    private static (char, char, char) Kinds(string line)
    {
        Match parts = Regex.Match(line, @"^`(.+) ([-+*/]) (.+)`$");
        char Kind(string term) => term == "v" ? 'v' : term.StartsWith("Length.", StringComparison.Ordinal) ? 'l' : term.StartsWith("Speed.", StringComparison.Ordinal) ? 's' : 'n';
        return (Kind(parts.Groups[1].Value), parts.Groups[2].Value[0], Kind(parts.Groups[3].Value));
    }

    private static string Decision(string question, double reference)
    {
        double[] knots = Numbers(question, "kt");
        Assert.Equal(5, knots[1]);
        Assert.Equal(reference, knots[0], 0.06);
        double more = InKnots(question) - knots[0];
        // A speed at the very edge of the rule would not be worth a problem, nor one near the stall.
        Assert.False(Math.Abs(Math.Abs(more) - 5) < 2, question);
        Assert.InRange(InKnots(question), 1.05 * reference / 1.3, 100);
        return more < -5 ? "Fly faster." : more > 5 ? "Fly slower." : "Hold this speed.";
    }
}
