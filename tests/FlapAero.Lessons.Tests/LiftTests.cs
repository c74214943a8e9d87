namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on lift and the stall tells a student which mistake was made, and prints numbers that hold by hand.</summary>
[Trait("Speed", "slow")]
public sealed class LiftTests
{
    private const string Slug = "lift-and-where-it-ends";
    private const string Today = "var today = aeroplane.Configure(aeroplane.FlapsUp, (aeroplane.MinimumMass + aeroplane.MaximumMass) / 2);\n";

    [Theory]
    [InlineData("var myStall = today.StallSpeed(air).Calibrated;", "the bank is missing")]
    [InlineData("var myStall = up.StallSpeed(air, Angle.FromDegrees(45)).Calibrated;", "at maximum weight")]
    [InlineData("var myStall = today.StallSpeed(air).Calibrated * LoadFactor.InTurn(Angle.FromDegrees(45));", "load factor goes under the root")]
    [InlineData("var myStall = up.StallSpeed(air, Angle.FromDegrees(45)).Calibrated * (today.Mass / up.Mass);", "weight goes under the root")]
    [InlineData("var myStall = today.StallSpeed(air).Calibrated * Math.Sqrt(Math.Cos(Math.PI / 4));", "it raises the stalling speed")]
    [InlineData("var myStall = Speed.FromKnots(99);", "too high")]
    public Task StallInTheTurn_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-stall-in-the-turn", Today + written, "is-it-the-right-stalling-speed", words);

    [Theory]
    [InlineData("var myLoad = 1.5;", "square the ratio")]
    [InlineData("var myLoad = 1.22;", "You took the root")]
    [InlineData("var myLoad = 0.44;", "Turned round")]
    [InlineData("var myLoad = 3.0;", "too high")]
    public Task LoadFactor_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-load-factor", written, "is-it-the-right-load-factor", words);

    [Fact]
    public async Task Page_Numbers_AreThoseWorkedByHand()
    {
        // By hand: W = 1090 × 9.80665 = 10 689 N; √(2 × 10 689/(1.225 × 16.6 × 1.40)) = 27.40 m/s = 53.3 kt; × √2 = 75.3 kt; × √(700/1090) = 42.7 kt.
        // Stall at −2.5° + 1.40/4.85 rad + 4°/2 = 16.04°, with full flap −10.3° + 2.00/4.85 rad + 2° = 15.33°. At 1.2 times the stall C_L is
        // 1.40/1.44 = 0.972, 11.49° past no lift: 8.99° and 1.19°, which leaves 7.05° and 14.14°.
        LessonRun run = await LessonRun.OfAsync(Slug);

        Assert.Contains("53.3\u00a0kt", run.Said("the-aeroplane-and-its-stall"), StringComparison.Ordinal);
        Assert.Contains("16.0°", run.Said("the-angle-under-load-tested"), StringComparison.Ordinal);
        Assert.Contains("75.3\u00a0kt", run.Said("what-the-pull-changes"), StringComparison.Ordinal);
        Assert.Contains("42.7\u00a0kt", run.Said("the-stall-when-light-tested"), StringComparison.Ordinal);
        Assert.Contains("15.3°", run.Said("angles-and-speeds-by-flap-setting"), StringComparison.Ordinal);
        Assert.Contains("7.1°", run.Said("the-degrees-gained-tested"), StringComparison.Ordinal);
    }

}
