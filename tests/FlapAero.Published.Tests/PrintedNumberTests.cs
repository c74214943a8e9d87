namespace FlapAero.Published.Tests;

/// <summary>The yardstick itself.</summary>
public sealed class PrintedNumberTests
{
    [Theory]
    [InlineData("1.1673", 1e-4)]
    [InlineData("1.16730", 1e-5)]
    [InlineData("77", 1)]
    [InlineData("30800", 1)]
    [InlineData("1.01e5", 1e3)]
    [InlineData("-165", 1)]
    public void Unit_OfPrintedText_IsThatOfItsLastDigit(string text, double unit) =>
        Assert.Equal(unit, new PrintedNumber(text, "").Unit, unit * 1e-9);

    [Theory]
    [InlineData("1.1673", "", 1.16734, true)]
    [InlineData("1.1673", "", 1.16736, false)]
    [InlineData("1.16730", "", 1.16734, false)]
    [InlineData("-165", "", -164.6, true)]
    [InlineData("-165", "", -164.4, false)]
    [InlineData("2.923", "cut", 2.9238, true)]
    [InlineData("2.923", "cut", 2.9241, false)]
    [InlineData("2.923", "cut", 2.9229, false)]
    [InlineData("-2.9", "cut", -2.98, true)]
    [InlineData("-2.9", "cut", -2.89, false)]
    [InlineData("7700", "50", 7749, true)]
    [InlineData("7700", "50", 7751, false)]
    [InlineData("1", "", double.NaN, false)]
    public void Agrees_ComputedValue_KeepsToTheTolerance(string text, string tolerance, double computed, bool agrees) =>
        Assert.Equal(agrees, new PrintedNumber(text, tolerance).Agrees(computed));

    [Fact]
    public void Numbers_SeveralValues_TakeTheirOwnTolerances()
    {
        PublishedRow row = new("f", "id", "q", "c", "284.900; 95461", "K; Pa", "s", "read", "; cut", "", "r");
        Assert.True(row.Numbers[1].Agrees(95461.9));
        Assert.False(row.Numbers[0].Agrees(284.9009));
    }

    [Fact]
    public void Numbers_TolerancesThatDoNotFit_AreRefused()
    {
        PublishedRow row = new("f", "id", "q", "c", "1; 2; 3", "m", "s", "read", "; cut", "", "r");
        Assert.Throws<FormatException>(() => row.Numbers);
    }
}
