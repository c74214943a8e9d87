using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Tests;

public sealed class SheetSeedsTests
{
    [Fact]
    public void Of_AnySeed_RepeatsNeitherItNorAnother()
    {
        foreach (int seed in Enumerable.Range(0, 200).Append(int.MaxValue))
        {
            IReadOnlyList<int> seeds = SheetSeeds.Of(seed, 99);

            Assert.DoesNotContain(seed, seeds);
            Assert.Equal(99, seeds.Distinct().Count());
            Assert.All(seeds, s => Assert.InRange(s, 1, 999_999));
        }
    }

    [Fact]
    public void Of_MoreSheets_ChangesNoneOfTheEarlier() =>
        Assert.Equal(SheetSeeds.Of(7, 3), SheetSeeds.Of(7, 50).Take(3));

    [Fact]
    public void Of_NeighbouringSeeds_ShareNoSheet() =>
        Assert.Empty(SheetSeeds.Of(7, 20).Intersect(SheetSeeds.Of(8, 20)));

    /// <summary>Sheets handed out once must come out the same years later; these numbers were computed apart, in Python.</summary>
    [Fact]
    public void Of_Seven_IsAsItEverWas() => Assert.Equal([622526, 484981, 423321, 641423], SheetSeeds.Of(7, 4));
}
