namespace FlapAero.Lessons.Tests;

/// <summary>The approach-speed lesson tells a student which mistake was made.</summary>
[Trait("Speed", "slow")]
public sealed class ApproachSpeedTests
{
    [Theory]
    [InlineData("my-approach-speed", "is-it-the-right-approach-speed", "var mySpeed = today.Indicated(today.ReferenceSpeed(air));", "gust is missing")]
    [InlineData("my-approach-speed", "is-it-the-right-approach-speed", "var mySpeed = today.Indicated(today.ReferenceSpeed(air)) + factor;", "whole gust factor")]
    [InlineData("my-approach-speed", "is-it-the-right-approach-speed", "var mySpeed = today.Indicated(today.StallSpeed(air)) * 1.3 + Gust.Additive(factor);", "multiplies the needle")]
    [InlineData("my-approach-speed", "is-it-the-right-approach-speed", "var mySpeed = Speed.FromKnots((today.Indicated(today.ReferenceSpeed(air)) + Gust.Additive(factor)).MetersPerSecond);", "in metres per second")]
    [InlineData("my-approach-speed", "is-it-the-right-approach-speed", "var mySpeed = Speed.FromKnots(99);", "too high")]
    [InlineData("my-bank-limit", "is-it-the-right-bank-limit", "var myBank = stallingBank;", "no margin at all")]
    [InlineData("my-bank-limit", "is-it-the-right-bank-limit", "var myBank = Angle.FromDegrees(32);", "square the ratio")]
    public async Task Check_WrongAnswer_SaysWhatIsWrong(string answer, string check, string written, string words)
    {
        string source = written.Contains("mySpeed", StringComparison.Ordinal)
            ? "var today = aeroplane.Configure(aeroplane.FlapsUp, aeroplane.MaximumMass * 0.9);\n" + written
            : written;

        await LessonRun.RefusesAsync("approach-speed", answer, source, check, words);
    }

    [Fact]
    public async Task Page_Numbers_AreThoseWorkedByHand()
    {
        // By hand: W = 1090 × 9.80665 = 10 689 N; √(2 × 10 689/(1.225 × 16.6 × 1.40)) = 27.40 m/s = 53.3 kt CAS, nearly so at 600 ft;
        // × 1.3 = 69.2 kt; with 2.00 for 1.40, 44.6 kt and 57.9 kt: 11.3 kt faster; arccos(1/1.69) = 53.7°.
        LessonRun run = await LessonRun.OfAsync("approach-speed");

        Assert.Contains("11.3\u00a0kt", run.Said("the-prediction-tested"), StringComparison.Ordinal);
        Assert.Contains("53.7°", run.Said("the-bank-prediction-tested"), StringComparison.Ordinal);
        Assert.Contains("53.3\u00a0kt", run.Said("stalling-and-approach-speeds-by-flap-setting"), StringComparison.Ordinal);
    }
}
