namespace FlapAero.Tests;

/// <summary>A surface goes by every name that a pilot gives it.</summary>
public sealed class RunwaySurfaceTests
{
    [Theory]
    [InlineData("paved"), InlineData("asphalt"), InlineData("tarmac"), InlineData("concrete"), InlineData("TARMAC")]
    public void ByName_Paved_IsOneSurface(string name)
    {
        Assert.Same(RunwaySurface.DryPaved, RunwaySurface.ByName[name]);
        Assert.Same(RunwaySurface.WetPaved, RunwaySurface.ByName["wet-" + name]);
    }

    [Fact]
    public void ByName_Surfaces_AreAllOfThem()
    {
        Assert.Equal(RunwaySurface.All.ToHashSet(), RunwaySurface.ByName.Values.ToHashSet());
        Assert.Equal("paved", RunwaySurface.ByName.Keys.First());
        Assert.False(RunwaySurface.ByName.ContainsKey("mud"));
    }
}
