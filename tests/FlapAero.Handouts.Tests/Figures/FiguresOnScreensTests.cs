namespace FlapAero.Handouts.Tests.Figures;

/// <summary>Every figure of every lesson on a phone, a laptop, paper and a projector, and every screen of a projected lesson.</summary>
[Trait("Speed", "slow")]
public sealed class FiguresOnScreensTests(MeasuredLessons lessons) : IClassFixture<MeasuredLessons>
{
    [Fact]
    public void Figures_InEverySize_AreAllMeasured()
    {
        Assert.Equal(12, lessons.Lessons.Count);
        foreach ((string lesson, IReadOnlyList<Measured> sizes) in lessons.Lessons)
        {
            Assert.Equal(6, sizes.Count);
            string[] all = sizes[0].Figures;
            Assert.True(all.Length >= 2, lesson);
            Assert.All(sizes.Where((_, size) => size != 3), size => Assert.Equal(all.Order(StringComparer.Ordinal), size.Figures.Order(StringComparer.Ordinal)));
            Assert.All(sizes.Where((_, size) => size != 3), size => Assert.True(size.Looked > all.Length, $"{lesson}: {size.Looked} drawings of {all.Length} figures"));
            Assert.All(sizes.Skip(4), size => Assert.True(size.Screens > 15, $"{lesson}: {size.Screens} screens"));
        }
    }

    [Fact]
    public void Labels_InEverySize_LieOnNoOtherAndInsideTheirFigure() => None(size => size.Labels);

    [Fact]
    public void Lines_InEverySize_AreAsThickAsLettersAreLarge() => None(size => size.Lines);

    [Fact]
    public void Lines_WithoutColour_DifferAndAreNamedByTheLabelsNextToThem() => None(size => size.Grey);

    [Fact]
    public void Screens_OnAProjector_EachHoldSomethingToSee() => None(size => size.Empty);

    [Fact]
    public void Screens_OnAProjector_AreSeenWholeWithoutScrolling() => None(size => size.Tall);

    [Fact]
    public void Bars_AtHeadAndFoot_CoverNothing() => None(size => size.Covered);

    /// <summary>All faults at once, each with its lesson.</summary>
    private void None(Func<Measured, string[]> faults)
    {
        string all = string.Join('\n', lessons.Lessons.SelectMany(lesson => lesson.Value.SelectMany(faults).Select(fault => $"{lesson.Key}: {fault}")));
        Assert.True(all.Length == 0, all);
    }
}
