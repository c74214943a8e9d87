
namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on power tells a student which mistake was made, and says what is true.</summary>
[Trait("Speed", "slow")]
public sealed class PowerTests
{
    private const string Slug = "power-on-the-approach";
    private const string Today = "var today = aeroplane.Configure(aeroplane.FlapsUp, aeroplane.MaximumMass * 0.9);\nvar steeper = Angle.FromDegrees(4);\n";

    [Theory]
    [InlineData("my-engine-speed", "today.EngineSpeed(today.ReferenceSpeed(air), path)", "for the lesson's path")]
    [InlineData("my-engine-speed", "up.EngineSpeed(upSpeed, steeper)", "at maximum weight and its speed")]
    [InlineData("my-engine-speed", "today.EngineSpeed(upSpeed, steeper)", "at the speed for maximum weight")]
    [InlineData("my-engine-speed", "aeroplane.Configure(aeroplane.FullFlaps, today.Mass).EngineSpeed(aeroplane.Configure(aeroplane.FullFlaps, today.Mass).ReferenceSpeed(air), steeper)", "with full flap")]
    [InlineData("my-engine-speed", "today.EngineSpeed(today.ReferenceSpeed(air), Angle.Zero)", "for level flight")]
    [InlineData("my-engine-speed", "today.EngineSpeed(today.ReferenceSpeed(air), -steeper)", "for a climb")]
    [InlineData("my-engine-speed", "RotationalSpeed.FromRevolutionsPerMinute(21.9)", "revolutions per second")]
    [InlineData("my-speed-of-least-thrust", "bottom.Calibrated", "at maximum weight")]
    [InlineData("my-speed-of-least-thrust", "bottom.Calibrated * 0.9", "square root of the weight")]
    [InlineData("my-speed-of-least-thrust", "today.MinimumPowerSpeed(air).Calibrated", "least power")]
    public async Task Check_WrongAnswer_SaysWhatIsWrong(string answer, string written, string words)
    {
        bool turns = answer == "my-engine-speed";
        string source = turns ? $"{Today}var myTurns = {written};" : $"var mySpeed = {written};";

        await LessonRun.RefusesAsync(Slug, answer, source, turns ? "is-it-the-right-engine-speed" : "is-it-the-speed-of-least-thrust", words);
    }

    [Fact]
    public async Task Page_Numbers_AreThoseWorkedByHand()
    {
        // By hand, flaps up: W = 1090 × 9.80665 = 10 689 N; C_L = 1.40/1.69 = 0.828; K = 1/(π × 7.157 × 0.74) = 0.0601;
        // C_D = 0.034 + 0.0601 × 0.686 = 0.0753; D = 10 689 × 0.0753/0.828 = 971 N; less W sin 3° = 559 N: 412 N = 92 lbf.
        // At 1.1: C_L = 1.157, C_D = 0.1145, D = 1 057 N, T = 498 N: 121 %. Least drag at C_L = √(0.034/0.0601) = 0.752: 72.7 kt.
        LessonRun run = await LessonRun.OfAsync(Slug);

        Assert.Contains("92\u00a0lbf", run.Said("what-each-setting-takes"), StringComparison.Ordinal);
        Assert.Contains("121\u00a0%", run.Said("the-second-prediction-tested"), StringComparison.Ordinal);
        Assert.Contains("72.7\u00a0kt", run.Said("where-the-curves-turn"), StringComparison.Ordinal);
    }
}
