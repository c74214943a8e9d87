using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public class DrawTests
{
    [Fact]
    public void Draw_PinnedSeed_GivesPinnedNumbers()
    {
        var draw = new Draw(7);
        double[] numbers = [.. Enumerable.Range(0, 5).Select(_ => draw.Between(0.0, 1.0, 0.001))];
        Assert.Equal([0.701, 0.279, 0.84, 0.982, 0.991], numbers);
    }

    [Theory]
    [InlineData(7)]
    [InlineData(0)]
    [InlineData(-12345)]
    public void Draw_AnySeed_IsThePublishedGenerator(int seed)
    {
        // xoshiro256** seeded by SplitMix64, both as published by D. Blackman and S. Vigna: whole-number arithmetic, so
        // that every machine draws the same. MathNet.Numerics does not promise its seeding; this holds it to it.
        ulong mix = unchecked((ulong)seed);
        ulong Next()
        {
            ulong z = mix += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
        ulong[] s = [Next(), Next(), Next(), Next()];
        var draw = new Draw(seed);
        for (int i = 0; i < 50; i++)
        {
            ulong result = ulong.RotateLeft(s[1] * 5, 7) * 9;
            ulong t = s[1] << 17;
            s[2] ^= s[0];
            s[3] ^= s[1];
            s[1] ^= s[2];
            s[0] ^= s[3];
            s[2] ^= t;
            s[3] = ulong.RotateLeft(s[3], 45);
            Assert.Equal((int)((result >> 11) * Math.Pow(2, -53) * 1_000_000), draw.Between(0, 999_999));
        }
    }

    [Fact]
    public void Draw_SameLessonSeedAndProblem_GivesTheSameNumbers()
    {
        Lesson lesson = Lesson.Begin(seed: 7);
        Assert.Equal(7, lesson.Seed);
        Assert.Equal(1, Lesson.Begin().Seed);
        Assert.Equal(Some(lesson.Draw(2)), Some(Lesson.Begin(seed: 7).Draw(2)));
        Assert.NotEqual(Some(lesson.Draw(1)), Some(lesson.Draw(2)));
        Assert.NotEqual(Some(lesson.Draw(1)), Some(Lesson.Begin(seed: 8).Draw(1)));
    }

    [Fact]
    public void Between_Speeds_StaysInRangeOnStepsInTheStepsUnit()
    {
        var draw = new Draw(3);
        var seen = new HashSet<double>();
        for (int i = 0; i < 500; i++)
        {
            Speed speed = draw.Between(Speed.FromKnots(50), Speed.FromKnots(60), Speed.FromKnots(2.5));
            Assert.Equal(UnitsNet.Units.SpeedUnit.Knot, speed.Unit);
            seen.Add(speed.Knots);
        }
        Assert.Equal([50, 52.5, 55, 57.5, 60], seen.Order());
    }

    [Fact]
    public void Between_MixedUnits_UsesTheStepsUnit()
    {
        Length length = new Draw(3).Between(Length.FromMeters(100), Length.FromMeters(100), Length.FromFeet(50));
        Assert.Equal(328.084, length.Feet, 1e-3);
        Assert.Equal(UnitsNet.Units.LengthUnit.Foot, length.Unit);
    }

    [Fact]
    public void Between_WholeNumbers_ReachesBothEndsAndNoFurther()
    {
        var draw = new Draw(11);
        Assert.Equal([-2, -1, 0, 1], Enumerable.Range(0, 300).Select(_ => draw.Between(-2, 1)).Distinct().Order());
        Assert.Equal(int.MaxValue, draw.Between(int.MaxValue, int.MaxValue));
    }

    [Fact]
    public void Pick_Values_ReachesEach()
    {
        var draw = new Draw(11);
        Assert.Equal([10, 20, 30], Enumerable.Range(0, 100).Select(_ => draw.Pick(10, 20, 30)).Distinct().Order());
        Assert.Equal("a", draw.Pick((string[])["a"]));
    }

    [Fact]
    public void Draw_NothingToDrawFrom_IsRefused()
    {
        var draw = new Draw(1);
        Assert.Throws<RefusedInputException>(() => draw.Pick<int>([]));
        Assert.Throws<RefusedInputException>(() => draw.Between(2, 1));
        Assert.Throws<RefusedInputException>(() => draw.Between(2.0, 1.0, 0.1));
        Assert.Throws<RefusedInputException>(() => draw.Between(1.0, 2.0, 0));
        Assert.Throws<RefusedInputException>(() => draw.Between(Speed.FromKnots(1), Speed.FromKnots(2), Speed.FromKnots(-1)));
    }

    private static int[] Some(Draw draw) => [.. Enumerable.Range(0, 6).Select(_ => draw.Between(0, 999))];
}
