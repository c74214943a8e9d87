using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Handouts.Kernels;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on the landing roll: which mistake was made, and numbers worked without the library.</summary>
[Trait("Speed", "slow")]
public sealed class LandingRollTests
{
    private const double Foot = 0.3048;

    [Theory]
    [InlineData("my-stop", "is-it-the-right-stop", "var myStop = up.Land(Quillmere.Tuesday, r24).StopDistance;", "wind on the nose")]
    [InlineData("my-stop", "is-it-the-right-stop", "var myStop = up.LandingOn(Quillmere.Tuesday, r06, Speed.Zero).Flown().StopDistance;", "without wind")]
    [InlineData("my-stop", "is-it-the-right-stop", "var myStop = wrongEnd.TouchdownDistance;", "where the wheels touch")]
    [InlineData("my-stop", "is-it-the-right-stop", "var myStop = wrongEnd.GroundRoll;", "the roll alone")]
    [InlineData("my-stop", "is-it-the-right-stop", "var myStop = up.LandingOn(friday, r06, Quillmere.Tuesday.HeadwindOn(r06)).Flown().StopDistance;", "hot air")]
    [InlineData("my-stop", "is-it-the-right-stop", "var myStop = full.Land(Quillmere.Tuesday, r06).StopDistance;", "with full flap")]
    [InlineData("my-stop", "is-it-the-right-stop", "var myStop = Length.FromFeet(wrongEnd.StopDistance.Meters);", "in metres")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = planned;", "margin is missing")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = planned * 0.7;", "longer than the distance")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = Tuesday(1).StopDistance / 0.7;", "all of the headwind")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = Tuesday(1.5).StopDistance / 0.7;", "from behind")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = Tuesday(0).StopDistance / 0.7;", "no wind at all")]
    [InlineData("my-runway", "is-it-the-right-runway", "var myRunway = Tuesday(0.5).GroundRoll / 0.7;", "the roll alone")]
    public Task Check_WrongAnswer_SaysWhatIsWrong(string answer, string check, string written, string words) =>
        LessonRun.RefusesAsync("the-landing-roll", answer, written, check, words);

    [Theory]
    [InlineData("TrainerH4", "trainer-h4.json")]
    [InlineData("TrainerL2", "trainer-l2.json")]
    public async Task Page_Numbers_AreThoseOfAnotherIntegration(string aeroplane, string file)
    {
        // Newton's law stepped through the whole landing from the aeroplane's file; see HandLanding.
        var hand = new HandLanding(RepositoryRoot.Path("data/aeroplanes/" + file));
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync("the-landing-roll", aeroplane)).Results;
        double Said(string id, string after, string unit) => double.Parse(
            Regex.Match(
                string.Concat(results[id].Outputs.Select(output => output.Text)).Replace("\u202F", "", StringComparison.Ordinal),
                $"{after}[^0-9]*?([0-9.]+)\u00a0{unit}").Groups[1].Value, CultureInfo.InvariantCulture);
        (double touch, double down, double stop) = hand.Land(31, 0);
        (double touchBehind, _, double behind) = hand.Land(31, -10);

        Assert.Equal(100 * (down - touch) / (stop - touch), Said("the-prediction-tested", "gives", "%"), 0.3);
        Assert.Equal(100 * ((behind - touchBehind) / (stop - touch) - 1), Said("ten-knots-tested", "gives", "%"), 0.3);
        Assert.Equal((hand.Land(31, -4).Stop - hand.Land(31, 4).Stop) / Foot, Said("that-breath-tested", "gives", "ft"), 3.0);
        Assert.Equal((behind - stop) / Foot, Said("what-the-wind-does-to-a-landing", "In all, ", "ft"), 3.0);
        Assert.Equal((stop - hand.Land(31, 10).Stop) / Foot, Said("what-the-wind-does-to-a-landing", "saves", "ft"), 3.0);
        Assert.Equal(hand.Land(31, 2).Stop / 0.7 / Foot, Said("the-runway-you-need", "asks for", "ft"), 5.0);
    }

    [Fact]
    public void Hand_TrainerH4OnAFineDay_IsWhereAnotherLanguageHasIt()
    {
        // The same law stepped by 0.5 ms in C++, Friday on 24 and on 06: 2802.7 ft and 2496.2 ft.
        var hand = new HandLanding(RepositoryRoot.Path("data/aeroplanes/trainer-h4.json"));

        Assert.Equal(2802.7, hand.Land(31, -4).Stop / Foot, 3.0);
        Assert.Equal(2496.2, hand.Land(31, 4).Stop / Foot, 3.0);
    }
}
