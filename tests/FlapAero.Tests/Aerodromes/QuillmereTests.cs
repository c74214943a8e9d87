using UnitsNet;

namespace FlapAero.Tests;

public sealed class QuillmereTests
{
    [Fact]
    public void Week_EveryDay_HasAirAndAWindOfItsOwn()
    {
        Assert.Equal(7, Quillmere.Week.Select(day => day.Name).Distinct().Count());
        Assert.All(Quillmere.Week, day => Assert.Equal(day.Temperature.Kelvins, day.Air.Temperature.Kelvins, 1e-9));
    }

    // By hand: 10 kt of gust factor; 30° off the runway, 14 kt × cos 30° = 12.1 kt.
    [Fact]
    public void Wednesday_OnRunway24_IsGustyFromTheLeft()
    {
        Assert.Equal(10, Quillmere.Wednesday.Wind.GustFactor.Knots, 1e-9);
        Assert.Equal(12.12, Quillmere.Wednesday.Wind.Mean.Headwind(Quillmere.Runway24.Direction).Knots, 0.01);
        Assert.Equal(-7, Quillmere.Wednesday.Wind.Mean.Crosswind(Quillmere.Runway24.Direction).Knots, 0.01);
    }

    [Fact]
    public void Friday_OnRunway24_IsHotWithATailwind()
    {
        Assert.True(Quillmere.Friday.Air.DensityAltitude > Length.FromFeet(2500));
        Assert.True(Quillmere.Friday.Wind.Mean.Headwind(Quillmere.Runway24.Direction) < Speed.Zero);
    }
}
