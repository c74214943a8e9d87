namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on drag and the angle of descent tells a student which mistake was made.</summary>
[Trait("Speed", "slow")]
public sealed class AngleOfDescentTests
{
    [Theory]
    [InlineData("my-angle-over-the-ground", "is-it-the-right-angle", "var myAngle = descent.GlideAngle;", "the wind is missing")]
    [InlineData("my-angle-over-the-ground", "is-it-the-right-angle", "var myAngle = -descent.AngleOverGround(headwind);", "Tuesday's wind")]
    [InlineData("my-angle-over-the-ground", "is-it-the-right-angle", "var myAngle = -descent.AngleOverGround(-strong);", "with a tailwind")]
    [InlineData("my-angle-over-the-ground", "is-it-the-right-angle", "var myAngle = -glideFull.AngleOverGround(strong);", "with full flap")]
    [InlineData("my-angle-over-the-ground", "is-it-the-right-angle", "var myAngle = descent.AngleOverGround(strong);", "wrong sign")]
    [InlineData("my-angle-over-the-ground", "is-it-the-right-angle", "var myAngle = Angle.FromDegrees(30);", "too high")]
    [InlineData("my-greatest-height", "is-it-the-right-height", "var myHeight = distance * Math.Tan(descent.GlideAngle.Radians);", "in still air")]
    [InlineData("my-greatest-height", "is-it-the-right-height", "var myHeight = distance * Math.Tan(Angle.FromDegrees(3).Radians);", "three-degree path")]
    [InlineData("my-greatest-height", "is-it-the-right-height", "var myHeight = distance * Math.Tan(myAngle.Degrees);", "radians, not degrees")]
    [InlineData("my-greatest-height", "is-it-the-right-height", "var myHeight = distance / Math.Tan(myAngle.Radians);", "You divided")]
    [InlineData("my-greatest-height", "is-it-the-right-height", "var myHeight = Length.FromFeet((distance * Math.Tan(myAngle.Radians)).Meters);", "in metres")]
    public Task Check_WrongAnswer_SaysWhatIsWrong(string answer, string check, string written, string words) =>
        LessonRun.RefusesAsync("drag-and-the-angle-of-descent", answer, written, check, words);

    [Fact]
    public async Task Page_Numbers_AreThoseWorkedByHand()
    {
        // By hand: A = 10.9²/16.6 = 7.157, K = 1/(π 7.157 × 0.74) = 0.0601; at 1.3 × stall C_L = 1.40/1.69 = 0.828 and
        // C_D = 0.034 + 0.0601 × 0.828² = 0.0752: lift is 11.0 times drag, arctan 0.0908 = 5.2°. Full flap: K = 0.0635, C_L = 1.183,
        // C_D = 0.034 + 0.052 + 0.0889 = 0.1749: 6.8 and 8.4°. The propeller's 0.9° is the model's: 6.1° in all, at 69.5 kt over the
        // ground. With 8 kt off, tan 6.1° × 69.5/61.5 = 0.1208: 6.9°, which is 0.8° more.
        // A slip of 15°: 0.3 to 0.6 times 0.2618 sin 15° is a drag of 0.0203 to 0.0407; over C_L 0.824 the tangent grows by 0.0247 to 0.0494, the
        // angle from 6.1° to 7.5° or 8.9°.
        LessonRun run = await LessonRun.OfAsync("drag-and-the-angle-of-descent");

        Assert.All(["11.0", "5.2°", "6.8", "8.4°"], number => Assert.Contains(number, run.Said("glide-and-sink-by-flap-setting"), StringComparison.Ordinal));
        Assert.Contains("6.1°", run.Said("the-angle-tested"), StringComparison.Ordinal);
        Assert.All(["7.5°", "8.9°", "53.3"], number => Assert.Contains(number, run.Said("a-slip-beside-full-flap"), StringComparison.Ordinal));
        Assert.All(["1.4°", "2.8°"], number => Assert.Contains(number, run.Said("is-a-slip-the-same-as-flap"), StringComparison.Ordinal));
        Assert.Contains("0.8°", run.Said("the-wind-s-part-tested"), StringComparison.Ordinal);
    }
}
