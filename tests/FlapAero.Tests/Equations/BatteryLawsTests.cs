using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

public sealed class BatteryLawsTests
{
    private const double Hour = 3600;

    // 100 Ah at 1 A, exponent 1.2, 5 A: 100/5^1.2 = 14.5 h, as a page of worked values prints [peukert].
    [Fact]
    public void Endurance_HundredAmpereHoursAtFiveAmperes_IsFourteenAndAHalfHours() =>
        Assert.Equal(14.5, BatteryLaws.Endurance(1, 100 * Hour, 1, 5, 1.2) / Hour, 0.05);

    // 250 Ah at 1 A, exponent 1.3, 20 A: another page prints 5.088631644 h [peukert].
    [Fact]
    public void Endurance_TwentyAmperes_IsThePrintedTime() =>
        Assert.Equal(5.088631644, BatteryLaws.Endurance(1, 250 * Hour, 1, 20, 1.3) / Hour, 1e-8);

    // By hand: 2^1.2 = 2.2974.
    [Fact]
    public void Endurance_HalfTheRatedCurrent_IsMoreThanTwiceTheRatedTime() =>
        Assert.Equal(2.29740, BatteryLaws.Endurance(1, Hour, 20, 10, 1.2) / Hour, 1e-5);

    [Theory]
    [InlineData(1)]
    [InlineData(1.15)]
    [InlineData(2)]
    public void Endurance_RatedCurrent_IsTheShareOfTheRatedTime(double exponent) =>
        Assert.Equal(0.6 * Hour, BatteryLaws.Endurance(0.6, Hour, 20, 20, exponent), 1e-9);

    [Fact]
    public void Endurance_ExponentOne_IsChargeOverCurrent() =>
        Assert.Equal(20.0 / 7 * Hour, BatteryLaws.Endurance(1, Hour, 20, 7, 1), 1e-9);

    // A time in two parts takes what it takes in one, and all of it takes all.
    [Fact]
    public void ShareTaken_OfTheEndurance_IsTheShareThatWasLeft()
    {
        double time = BatteryLaws.Endurance(0.7, Hour, 20, 33, 1.15);
        Assert.Equal(0.7, BatteryLaws.ShareTaken(time, Hour, 20, 33, 1.15), 1e-12);
        Assert.Equal(0.7, BatteryLaws.ShareTaken(time / 3, Hour, 20, 33, 1.15) + BatteryLaws.ShareTaken(time * 2 / 3, Hour, 20, 33, 1.15), 1e-12);
    }

    [Fact]
    public void CurrentFor_OfTheEndurance_IsTheCurrent() =>
        Assert.Equal(33, BatteryLaws.CurrentFor(0.7, Hour, 20, BatteryLaws.Endurance(0.7, Hour, 20, 33, 1.15), 1.15), 1e-10);
}
