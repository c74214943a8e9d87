using FlapAero.Handouts.Kernels;

namespace FlapAero.Lessons.Tests;

/// <summary>The circuit lesson: which mistake was made, and numbers worked without the library.</summary>
[Trait("Speed", "slow")]
public sealed class CircuitTests
{
    private const string Slug = "the-circuit-without-flaps";

    [Theory]
    [InlineData("var myTurns = cleanTurns;", "lighter, and slower")]
    [InlineData("var myTurns = usualTurns;", "with flaps")]
    [InlineData("var myTurns = cleanTurns * 0.9;", "root of the thrust")]
    [InlineData("var myTurns = RotationalSpeed.FromRevolutionsPerMinute(2000);", "too high")]
    public Task EngineSpeed_WrongAnswer_SaysWhatIsWrong(string written, string words) => LessonRun.RefusesAsync(
        Slug, "my-engine-speed", "var light = aeroplane.Configure(aeroplane.FlapsUp, aeroplane.MaximumMass * 0.9);\n" + written, "is-it-the-right-engine-speed", words);

    [Theory]
    [InlineData("var myBank = Angle.FromDegrees(20);", "the planned bank")]
    [InlineData("var myBank = Angle.FromDegrees(37.2);", "tangent of the bank")]
    [InlineData("var myBank = Angle.FromDegrees(28.7);", "at the usual place")]
    [InlineData("var myBank = Angle.FromDegrees(11.1);", "turn the ratio over")]
    [InlineData("var myBank = Angle.FromDegrees(50);", "too high")]
    public Task Bank_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-bank", written, "is-it-the-right-bank", words);

    [Theory]
    [InlineData("TrainerH4", "125", "1\u202f217", "3.2", "1\u202f366", "1\u202f583", "29")]
    [InlineData("TrainerL2", "307", "3\u202f477", "2.5", "1\u202f157", "1\u202f357", "30")]
    public async Task Page_Numbers_AreThoseOfAnotherProgram(
        string aeroplane, string high, string further, string seconds, string room, string roomInWind, string bank)
    {
        // Glides and turns from the aeroplane's file in another language: sin γ = (D − T)/W with D of the polar and T of the propeller's
        // table read along straight lines, in the air of 600 ft and 12 °C; R = V² cos γ/(g tan φ), drift w t; legs summed from abeam.
        // H4, 1 650 rpm: 125.2 ft, 1 212 ft; 1 366 and 1 583 ft; 28.7°, 3.25 s. L2, 1 730 rpm: 306.7 ft, 3 465 ft; 1 157 and 1 357 ft;
        // 30.4°, 2.55 s. A difference of two slopes shows the curve between the propeller table's rows most: half a per cent.
        IReadOnlyDictionary<string, CellResult> results = (await LessonRun.OfAsync(Slug, aeroplane)).Results;
        string Said(string id) => string.Concat(results[id].Outputs.Select(output => output.Text)).Replace('\n', ' ');

        Assert.Contains($"{high}\u00a0ft", Said("flown-as-always"), StringComparison.Ordinal);
        Assert.Contains($"{further}\u00a0ft", Said("two-ways-that-fit"), StringComparison.Ordinal);
        Assert.Contains($"{seconds}\u00a0s", Said("the-seconds-tested"), StringComparison.Ordinal);
        string rooms = Said("room-for-the-turn");
        Assert.All([$"{room}\u00a0ft", $"{roomInWind}\u00a0ft", $"{bank}°"], number => Assert.Contains(number, rooms, StringComparison.Ordinal));
    }
}
