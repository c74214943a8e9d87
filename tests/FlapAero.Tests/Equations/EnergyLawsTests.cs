using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

public sealed class EnergyLawsTests
{
    // 500 N more drag than thrust, at 35 m/s, on 10 kN: 500 × 35/10 000 = 1.75 m lost a second.
    [Fact]
    public void Rate_DragBeyondThrust_IsItsPowerPerWeight() =>
        Assert.Equal(-1.75, EnergyLaws.Rate(1000, 1500, 35, 10000), 1e-12);

    // 30 m/s are 900/19.6133 = 45.8872 m.
    [Fact]
    public void Height_OfThirtyMetresASecond_IsTheFallThatGivesThem()
    {
        Assert.Equal(145.8872, EnergyLaws.Height(100, 30), 1e-4);
        Assert.Equal(30, EnergyLaws.Speed(45.88722), 1e-5);
    }

    // (36² − 30²)/19.6133 = 396/19.6133 = 20.1904 m, and back; 12 % less speed: (26.4² − 900)/19.6133 = −10.3521 m.
    [Theory]
    [InlineData(6, 20.1904)]
    [InlineData(-3.6, -10.3521)]
    public void OfSpeed_FasterOrSlower_IsTheDifferenceOfTwoSquares(double excess, double height)
    {
        Assert.Equal(height, EnergyLaws.OfSpeed(30, excess), 1e-4);
        Assert.Equal(excess, EnergyLaws.InSpeed(30, EnergyLaws.OfSpeed(30, excess)), 1e-12);
    }

    [Fact]
    public void InSpeed_FurtherDownThanTheSpeedReaches_IsNoNumber() => Assert.True(double.IsNaN(EnergyLaws.InSpeed(30, -46)));

    // 800 N where 300 N would hold the path, on 10 kN: five metres in a hundred.
    [Fact]
    public void PerPath_ThrustBeyondThePaths_IsItsShareOfTheWeight() => Assert.Equal(0.05, EnergyLaws.PerPath(800, 300, 10000), 1e-12);
}
