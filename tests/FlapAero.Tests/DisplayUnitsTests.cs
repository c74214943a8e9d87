using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Tests;

public sealed class DisplayUnitsTests
{
    [Fact]
    public void Of_InSI_TakesTheSystemsUnitWithItsUsualDecimals()
    {
        // By hand: 1 kt is 1852 m/h, 1 ft 0.3048 m, 1 lb 0.45359237 kg.
        Assert.Equal("30.9 m/s", Text(Speed.FromKnots(60)));
        Assert.Equal("15 m", Text(Length.FromFeet(50)));
        Assert.Equal("1 090 kg", Text(Mass.FromKilograms(1090)).Replace(QuantityText.NarrowNoBreakSpace, ' '));
        Assert.Equal("2.5 m/s", Text(Speed.FromFeetPerMinute(500), "ft/min 0"));
        Assert.Equal("+0.5 m/s", Text(Speed.FromKnots(1), "kt +0"));
        Assert.Equal("3.5°", Text(Angle.FromDegrees(3.5)));
        // No customary pattern: three digits. 1 hp is 745.7 W.
        Assert.Equal("74.6 kW", Text(Power.FromMechanicalHorsepower(100), "hp 0"));
    }

    [Theory]
    [InlineData("ft 0.0", "0.2 m")]
    [InlineData("ft +0.00", "+0.21 m")]
    [InlineData("ft 0", "0 m")]
    public void Of_MoreDecimalsThanUsual_KeepsAsManyMoreInSI(string format, string words) =>
        Assert.Equal(words, Text(Length.FromFeet(0.7), format));

    [Fact]
    public void Of_InSI_LeavesAFormatThatIsAlreadySIAsItIs() =>
        Assert.Equal("30.87 m/s", Text(Speed.FromKnots(60), "m/s 0.00"));

    [Theory]
    [InlineData("kt CAS", "m/s CAS", 1852.0 / 3600)]
    [InlineData("ft", "m", 0.3048)]
    [InlineData("ft/min", "m/s", 0.3048 / 60)]
    [InlineData("NM", "km", 1.852)]
    [InlineData("°", "°", 1)]
    [InlineData("% of maximum", "% of maximum", 1)]
    [InlineData("", "", 1)]
    public void UnitFor_AnAbbreviation_GivesUnitAndFactor(string unit, string wanted, double factor)
    {
        (string si, double by) = DisplayUnits.SI.UnitFor(unit);
        Assert.Equal(wanted, si);
        Assert.Equal(factor, by, 1e-12);
        Assert.Equal((unit, 1), DisplayUnits.Aviation.UnitFor(unit));
    }

    [Fact]
    public void UnitFor_AUnit_IsTheSameTwice()
    {
        Enum once = DisplayUnits.SI.UnitFor(SpeedUnit.Knot);
        Assert.Equal(once, DisplayUnits.SI.UnitFor(once));
        Assert.Equal(SpeedUnit.Knot, (SpeedUnit)DisplayUnits.Aviation.UnitFor(SpeedUnit.Knot));
    }

    private static string Text(IQuantity quantity, string? format = null) =>
        QuantityText.Of(quantity, format, DisplayUnits.SI).Replace(QuantityText.NoBreakSpace, ' ');
}
