using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on how much landings vary: which mistake was made, and numbers worked without the library.</summary>
[Trait("Speed", "slow")]
public sealed partial class LandingsVaryTests
{
    [Theory]
    [InlineData("my-stretch", "is-it-the-right-stretch", "var myStretch = stretch;", "lesson's tolerance")]
    [InlineData("my-stretch", "is-it-the-right-stretch", "var myStretch = fullHand.WithSpeedWithin(five / 2).Fly(2000).NineteenOfTwenty();", "with full flap")]
    [InlineData("my-stretch", "is-it-the-right-stretch", "var myStretch = hand.WithSpeedWithin(five / 2).Fly(2000).NineteenOfTwenty() / 2;", "to one end")]
    [InlineData("my-stretch", "is-it-the-right-stretch", "var myStretch = hand.WithSpeedWithin(five / 2).Fly(2000).TouchdownDistance.StandardDeviation;", "one standard deviation")]
    [InlineData("my-stretch", "is-it-the-right-stretch", "var myStretch = hand.WithSpeedWithin(five / 2).Fly(2000).TouchdownDistance.Quantile(0.975);", "Where does it begin")]
    [InlineData("my-stretch", "is-it-the-right-stretch", "var spread = hand.WithSpeedWithin(five / 2).Fly(2000).TouchdownDistance; var myStretch = spread.Maximum - spread.Minimum;", "grows with their number")]
    [InlineData("my-stretch", "is-it-the-right-stretch", "var spread = hand.WithSpeedWithin(five / 2).Fly(2000).StopDistance; var myStretch = spread.Quantile(0.975) - spread.Quantile(0.025);", "where it stops")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = upMany.TouchdownDistance.Quantile(0.95);", "How long is the whole")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = 3 * upMany.TouchdownDistance.Mean;", "for the mean")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = 3 * upMany.TouchdownDistance.Quantile(0.975);", "One in forty")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = 3 * fullMany.TouchdownDistance.Quantile(0.95);", "with full flap")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = 3 * stretch;", "counts from the threshold")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = upMany.StopDistance.Quantile(0.95);", "Asked is the first third")]
    public Task Check_WrongAnswer_SaysWhatIsWrong(string answer, string check, string written, string words) =>
        LessonRun.RefusesAsync("how-much-landings-vary", answer, written, check, words);

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json", 1555, 652, 467, 42.4, 0.0, 310, 636, 5502, 428)]
    [InlineData("TrainerL2", "trainer-l2.json", 1611, 690, 484, 36.8, 0.0, 332, 666, 5731, 456)]
    public async Task Page_Numbers_AreThoseOfAnotherProgram(
        string aeroplane, string file, double mean, double stretch, double stretchFull, double stops, double third, double speedExact, double roundOutExact, double runway, double closer)
    {
        // Twelve thousand landings (with an input exact, six thousand; ±2.5 kt, five thousand) drawn in C++ by a generator of its own, each stepped by 3 ms
        // from the aeroplane's file alone. Two thousand know a mean to 13 ft, a stretch to 35 ft, a share to 3 points, three times its error.
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync("how-much-landings-vary", aeroplane)).Results;
        string Said(string id) => string.Concat(results[id].Outputs.Select(output => output.ForInstructor)).Replace('\n', ' ');
        double[][] counted = Rows(Said("counted")), parts = Rows(Said("what-to-practise-first"));

        Assert.InRange(counted[0][0], mean - 15, mean + 15);
        Assert.InRange(counted[0][1], stretch - 40, stretch + 40);
        Assert.InRange(counted[^1][1], stretchFull - 40, stretchFull + 40);
        Assert.Equal(third, counted[0][2]);
        Assert.InRange(counted[0][3], stops - 4, stops + 4);
        Assert.InRange(parts[0][4], speedExact - 25, speedExact + 25);
        Assert.InRange(Number(Said("the-round-out-tested")), roundOutExact - 40, roundOutExact + 40);
        Assert.InRange(Number(Said("is-it-the-right-stretch")), closer - 30, closer + 30);
        Assert.InRange(Number(Said("is-it-the-right-runway")), runway - 100, runway + 100);

        // Of the speed, by hand: the slope of an integration of our own, times the deviation of a normal cut off at two, 0.8796 of 2.5 kt.
        var hand = new HandTouchdown(RepositoryRoot.Path("data/aeroplanes/" + file));
        double alone = (hand.Later("up", 5) - hand.Later("up", -5)) / 10 * 0.8796 * 2.5;
        Assert.InRange(parts[0][0] / alone, 0.96, 1.04);
        // Independent parts: the root of the sum of the squares, and each square's share of it.
        double whole = Math.Sqrt(parts.Sum(row => row[0] * row[0]));
        double[] said = [.. Measured().Matches(Plain(Said("how-errors-add-up"))).Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];
        Assert.InRange(said[0], whole - 1, whole + 1);
        Assert.All(parts, row => Assert.InRange(row[1], 100 * row[0] * row[0] / whole / whole - 6, 100 * row[0] * row[0] / whole / whole + 6));
        Assert.All(parts, row => Assert.True(row[2] <= row[1] && row[1] <= row[3]));
        Assert.InRange(said[^2] - hand.Later("up", 5), -1, 1);
        Assert.InRange(said[^1] - hand.Later("35°", 5), -1, 1);
    }

    [Fact]
    public async Task Page_Intervals_AreWilsonsWorkedByHand()
    {
        // Ten landings, five stop: (p + z²/2n ± z√(p(1 − p)/n + z²/4n²))/(1 + z²/n) with z = 1.96 is 23.7 % to 76.3 %.
        LessonRun run = await LessonRun.OfAsync("how-much-landings-vary");
        double[] said = [.. Numbers().Matches(Plain(run.Said("how-sure-the-book-is"))).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
        string hits = string.Concat((await run.RunAsync("Console.Write(soFar[0].Hits)")).Outputs.Select(output => output.Text));
        double p = double.Parse(hits, CultureInfo.InvariantCulture) / 10, middle = (p + 0.19207) / 1.38415, half = 1.96 * Math.Sqrt(p * (1 - p) / 10 + 0.009604) / 1.38415;

        Assert.Equal(Math.Round(100 * (middle - half)), said[^2]);
        Assert.Equal(Math.Round(100 * (middle + half)), said[^1]);
    }

    /// <summary>The numbers of a table's rows, without their heads.</summary>
    private static double[][] Rows(string html) => [.. TableRow().Matches(html).Select(row => Cell().Matches(row.Value).Skip(1)
        .Select(cell => Numbers().Match(Plain(cell.Value)).Value).Where(text => text.Length > 0).Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray())
        .Where(row => row.Length > 2)];

    /// <summary>The first number with the unit of a length.</summary>
    private static double Number(string html) => double.Parse(Measured().Match(Plain(html)).Groups[1].Value, CultureInfo.InvariantCulture);

    private static string Plain(string html) => Tag().Replace(html, "").Replace("\u202F", "", StringComparison.Ordinal).Replace('\u00A0', ' ');

    [GeneratedRegex("<tr.*?</tr>", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex TableRow();

    [GeneratedRegex("<t[hd][^>]*>.*?</t[hd]>", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex Cell();

    [GeneratedRegex("<[^>]*>", RegexOptions.CultureInvariant)]
    private static partial Regex Tag();

    [GeneratedRegex("[0-9]+(\\.[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();

    [GeneratedRegex("([0-9]+(\\.[0-9]+)?) ft", RegexOptions.CultureInvariant)]
    private static partial Regex Measured();
}
