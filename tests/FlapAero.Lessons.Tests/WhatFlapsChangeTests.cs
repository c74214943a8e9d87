using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>The lesson on what flaps change tells a student which mistake was made, and prints numbers that hold by hand.</summary>
[Trait("Speed", "slow")]
public sealed class WhatFlapsChangeTests
{
    private const string Slug = "what-flaps-change";
    private const string Today = "var today = aeroplane.Configure(aeroplane.FlapsUp, (aeroplane.MinimumMass + aeroplane.MaximumMass) / 2);\n";

    [Theory]
    [InlineData("onUp.BelowLevelLine()", "at maximum weight, or at this weight's own reference speed")]
    [InlineData("today.OnPath(upSpeed, -path).AngleOfAttack", "incidence is missing")]
    [InlineData("today.OnPath(upSpeed, -path).PitchAttitude", "against the horizon")]
    [InlineData("today.OnPath(upSpeed, -path).BelowLevelLine() + path", "path has dropped out")]
    [InlineData("onFull.BelowLevelLine()", "with full flap")]
    [InlineData("Angle.FromDegrees(25)", "too high")]
    public Task BelowTheLevelLine_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-angle-below-the-level-line", $"{Today}var myAngle = {written};", "is-it-the-right-angle", words);

    [Theory]
    [InlineData("400 / Math.Tan(seen.Radians)", "with the fuselage level")]
    [InlineData("400 / Math.Tan((seen + noseUp).Radians)", "sign is turned")]
    [InlineData("400 / Math.Tan((seen - noseFull).Radians)", "with full flap")]
    [InlineData("400 / Math.Tan(path.Radians)", "That is the aiming point")]
    [InlineData("400 * Math.Tan((seen - noseUp).Radians)", "You multiplied")]
    [InlineData("400 / Math.Tan((seen - noseUp).Radians) * 0.3048", "in metres")]
    public Task NearestGround_WrongAnswer_SaysWhatIsWrong(string written, string words) =>
        LessonRun.RefusesAsync(Slug, "my-nearest-ground", $"var myGround = Length.FromFeet({written});", "is-it-the-right-distance", words);

    [Fact]
    public async Task Page_Angles_AreThoseWorkedByHand()
    {
        // By hand, flaps up: C_L = 1.40 × cos 3°/1.69 = 0.827, which is 9.77° past no lift at −2.5°: 7.27°; stall at −2.5° + 16.54° + 2° = 16.04°; 8.77°
        // left. Full flap: 2.00 × cos 3°/1.69 = 1.182, 13.96° past −10.3°: 3.66°; stall at 15.33°, 11.67° left: 2.9° more. Nose at 7.27° − 1.5° − 3° = 2.77°
        // and at −0.84°: 3.6° apart. Flaps up at 3.66°: C_L = 4.85 × 6.16°/57.3° = 0.5216, 53.27 kt × √(1.398/0.5216) = 87.2 kt, 18.0 kt above 69.2 kt.
        // Flap of a quarter chord at 35°: arctan(0.1434/0.9548) = 8.54°; 15.33° + 8.54° = 23.9°.
        // The check: 895 kg for 1 090 kg takes C_L to 0.679, 8.02° past no lift: 5.52°, 4.02° below the level line.
        // Nearest ground: 400 ft/tan(8° − 2.77°) = 4 372 ft.
        LessonRun run = await LessonRun.OfAsync(Slug);

        Assert.Contains("2.9°", run.Said("the-degrees-tested"), StringComparison.Ordinal);
        string moved = run.Said("lower-measured-from-where");
        Assert.Contains("no lift by −7.8° and the stalling angle by", moved, StringComparison.Ordinal);
        Assert.Contains("11.7° are left instead of 8.8°", moved, StringComparison.Ordinal);
        Assert.Contains("23.9° instead of 16.0°", moved, StringComparison.Ordinal);
        Assert.Contains("3.6°", run.Said("the-nose-tested"), StringComparison.Ordinal);
        string hides = run.Said("nose-path-and-runway");
        Assert.Contains("5.8° with flaps up, 2.2° with full", hides, StringComparison.Ordinal);
        Assert.Contains("87\u00a0kt: +18\u00a0kt against the reference speed", hides, StringComparison.Ordinal);
        await run.RunAsync("if (Math.Abs(myAngle.Degrees - 4.025) > 0.005 || Math.Abs(myGround.Feet - 4372) > 2) throw new Exception($\"{myAngle.Degrees} {myGround.Feet}\");");
    }

    [Fact]
    public async Task Page_LoadAlongTheWing_IsThatOfAnIndependentLiftingLine()
    {
        // By an independent script: the Fourier series with 120 odd terms at 120 stations, the flap as a plain jump of 15.4° (0.609 × 0.722 × 35°) over the inner
        // 45 %, taper 0.7, washout 2°, at C_L = 0.827. Lift per span over its mean: at the centreline 1.279 clean and 1.944 flapped, at 0.8 of the half
        // span 0.806 and 0.274; angle of no lift moved by −8.16°. First stall at 0.23 (C_L 1.374) and 0.59 (1.815). The plain jump costs it two per cent at the tip.
        LessonRun run = await LessonRun.OfAsync(Slug);

        Assert.Contains("by −8.1°, in the file by −7.8°", run.Said("a-wing-to-calculate"), StringComparison.Ordinal);
        Assert.Contains("34.5\u00a0%", run.Said("the-outer-wing-tested"), StringComparison.Ordinal);
        Assert.Contains("With 35° of flap the lift per span at the centreline is 1.95 times the mean instead of 1.28", run.Said("lift-along-the-wing"), StringComparison.Ordinal);
        Assert.Contains("With 35° of flap the stall begins at 0.59", run.Said("where-the-stall-begins"), StringComparison.Ordinal);
        string lifting = run.Said("who-does-the-lifting");
        Assert.Contains("23\u00a0% of the half span with flaps up, at 59\u00a0% with them down", lifting, StringComparison.Ordinal);
        // Whatever the flap does, the mean over the half span stays 1: the trapezium misses about half a per cent at the tip.
        await run.RunAsync("""
            foreach (var degrees in new[] { 0.0, 20, 40 })
            {
                var line = wing.With(degrees);
                var mean = Samples.Between(0, 0.99, 0.01).Average(s => line.LoadAt(s, same).CirculationRatio * 2 * line.Planform.AspectRatio / same);
                if (Math.Abs(mean - 1) > 0.015) throw new Exception($"{degrees}: {mean}");
            }
            """);
    }

    [Fact]
    public async Task Load_EllipticWing_IsAnEllipse()
    {
        // The lesson's own measure on the wing whose answer is known: lift per span over its mean is (4/π)√(1 − s²), 0.764 at 0.8.
        LessonRun run = await LessonRun.OfAsync(Slug);

        await run.RunAsync("""
            {
                var ellipse = WingPlanform.Elliptic(Length.FromMeters(10), Length.FromMeters(1.5));
                var plain = new LiftingLine(ellipse, new WingSection(2 * Math.PI, Angle.Zero, 1.5));
                var there = plain.LoadAt(0.8, same).CirculationRatio * 2 * ellipse.AspectRatio / same;
                if (Math.Abs(there - 4 / Math.PI * 0.6) > 0.001) throw new Exception($"{there}");
            }
            """);
    }

    [Fact]
    public async Task Lesson_OneFlapSetting_SaysSoAndRuns()
    {
        var results = await OneFlapSetting.RunAsync(Slug);

        Assert.All(results, result => Assert.True(result.Value.Failure is null, $"{result.Key}: {result.Value.Failure}"));
        string Said(string cell) => string.Concat(results[cell].Outputs.Select(o => o.Text));
        Assert.Contains("one flap setting only", Said("the-aeroplane-and-the-path"), StringComparison.Ordinal);
        Assert.DoesNotContain("in the file by", Said("a-wing-to-calculate"), StringComparison.Ordinal);
        Assert.Contains("one picture", Said("nose-path-and-runway"), StringComparison.Ordinal);
        Assert.Equal("passed", LessonCopies.Check(results["is-it-the-right-angle"]).Outcome);
    }
}
