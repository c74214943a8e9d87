using static FlapAero.Lessons.Tests.KeyProblems;

namespace FlapAero.Lessons.Tests;

/// <summary>
/// The problems on flaps that stay up for a thousand seeds: each can be set, and its key is what a student works out from the question
/// alone, with the list of loads and Peukert's law in place of the library.
/// </summary>
[Trait("Speed", "slow")]
public sealed class FlapsStayUpKeyTests
{
    private const double RatedAmperes = 20, RatedMinutes = 60, Exponent = 1.15;

    // As the lesson's table has them.
    private static readonly Dictionary<string, double> Amperes = new()
    {
        ["landing light"] = 9,
        ["pitot heat"] = 6,
        ["position lights"] = 5,
        ["strobes"] = 3,
        ["display"] = 2,
    };

    [Theory]
    [InlineData("TrainerH4")]
    [InlineData("TrainerL2")]
    public async Task Problems_ThousandSeeds_HaveTheKeyWorkedFromTheQuestion(string aeroplane)
    {
        var drawn = await HaveTheKeyAsync("when-the-flaps-stay-up", aeroplane, distinct: 10, (title, question, answer) => title switch
        {
            "Read it off" => Near(Remaining(question), answer, 1),
            "From watts to amperes" => Near(Together(question), answer, 0.1),
            "Twenty hours on the label" => Near(Labelled(question), answer, 1),
            "What may stay on?" => Near(MayStay(question), answer, 0.1),
            "Half of it off" => Chosen("More than twice as long.", question, answer),
            "Near or far?" => Chosen(Decision(question), question, answer),
            _ => "no such problem",
        });
        Assert.InRange(drawn["Near or far?"].Count(p => Option(p.Question, p.Answer).EndsWith("below.", StringComparison.Ordinal)), 300, 700);
    }

    private static double Remaining(string question)
    {
        double on = 30 - Amperes.Where(load => question.Contains(load.Key, StringComparison.Ordinal)).Sum(load => load.Value);
        double minutes = Lasts(Numbers(question, "%")[0] / 100, on);
        Assert.InRange(minutes, 25, 300);
        return minutes;
    }

    private static double Together(string question)
    {
        double[] watts = Numbers(question, "W");
        double amperes = (2 * watts[0] + watts[1]) / Numbers(question, "V")[0];
        Assert.InRange(amperes, 4, 30);
        return amperes;
    }

    private static double Labelled(string question)
    {
        double hours = Numbers(question, "h")[0], rated = Numbers(question, "Ah")[0] / hours;
        double exponent = Numbers(question, "\\. How")[0];
        Assert.Equal(20, hours);
        double minutes = 60 * hours * Math.Pow(rated / Numbers(question, "A")[0], exponent);
        Assert.InRange(minutes, 15, 200);
        return minutes;
    }

    private static double MayStay(string question)
    {
        double[] minutes = Numbers(question, "min");
        double amperes = Numbers(question, "A")[0] * Math.Pow(Numbers(question, "%")[0] / 100 * minutes[0] / minutes[1], 1 / Exponent);
        Assert.InRange(amperes, 3, 20);
        return amperes;
    }

    private static string Decision(string question)
    {
        double[] feet = Numbers(question, "ft"), minutes = Numbers(question, "min"), amperes = Numbers(question, "A");
        (double takes, double below, double away) = (feet[0], feet[1], minutes[0]);
        double carried = Lasts(Numbers(question, "%")[0] / 100, amperes[^1]);
        Assert.True(feet[2] > 1.3 * takes, $"the long one is too short: {question}");
        // A decision at the very edge of the rule would not be worth a problem, nor one that both runways pass.
        Assert.False(Math.Abs(below / takes - 1) < 0.1 || Math.Abs(2 * away / carried - 1) < 0.1, $"{below:0} against {takes:0}, {2 * away:0} against {carried:0}: {question}");
        Assert.NotEqual(below >= takes, carried >= 2 * away);
        Assert.InRange(away, 10, 110);
        return below >= takes ? "Switch off, brief, and land below." : "Switch off, and fly to the long one.";
    }

    private static double Lasts(double share, double amperes) => share * RatedMinutes * Math.Pow(RatedAmperes / amperes, Exponent);
}
