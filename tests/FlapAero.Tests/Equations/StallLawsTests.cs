using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

public sealed class StallLawsTests
{
    // √(20 000/29.4) and √(40 000/29.4).
    [Theory]
    [InlineData(1, 26.0820265)]
    [InlineData(2, 36.8855557)]
    public void Speed_TenKilonewtons_IsWhereMaximumLiftCarriesThem(double loadFactor, double speed) =>
        Assert.Equal(speed, StallLaws.Speed(10000, loadFactor, 1.225, 16, 1.5), 1e-6);

    // 0.995004/0.877583.
    [Fact]
    public void LoadFactor_DescendingTurn_IsCosineOverCosine() =>
        Assert.Equal(1.1338012, StallLaws.LoadFactor(0.5, -0.1), 1e-7);

    // cos φ = 1/1.69: φ = 53.72°.
    [Fact]
    public void StallingBank_ThirteenTenthsOfTheStall_IsItsArcCosine() =>
        Assert.Equal(0.93761053, StallLaws.StallingBank(1.3, 1)!.Value, 1e-8);

    // cos φ = (25/50)² = 1/4.
    [Fact]
    public void StallingBank_TwiceTheStall_IsTheArcCosineOfAQuarter() =>
        Assert.Equal(1.318116, StallLaws.StallingBank(50, 25)!.Value, 1e-6);

    [Fact]
    public void StallingBank_BelowTheStall_HasNoAnswer() => Assert.Null(StallLaws.StallingBank(0.99, 1));

    // (35 − 3)/28 − 1 = 1/7.
    [Fact]
    public void Margin_InALull_IsWhatItLeaves() => Assert.Equal(1.0 / 7, StallLaws.Margin(35, 3, 28), 1e-12);
}
