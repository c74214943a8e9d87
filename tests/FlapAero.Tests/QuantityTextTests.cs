using System.Globalization;
using UnitsNet;

namespace FlapAero.Tests;

public class QuantityTextTests
{
    private static string Plain(string text) => text.Replace('\u00A0', '_').Replace('\u202F', '\'');

    public static TheoryData<IQuantity, string?, string> Cases => new()
    {
        { Speed.FromKnots(51.13), null, "51.1_kt" },
        { Speed.FromMetersPerSecond(26.3), null, "51.1_kt" },
        { Speed.FromKnots(51.13), "kt 0", "51_kt" },
        { Speed.FromKnots(5), "ft/min", "506_ft/min" },
        { Speed.FromKnots(-12), "ft/min 0", "\u22121'215_ft/min" },
        { Speed.FromKnots(6.3), "kt +0.0", "+6.3_kt" },
        { Speed.FromKnots(-6.3), "+0.0", "\u22126.3_kt" },
        { Speed.FromKnots(51.1), "kn 0.0", "51.1_kt" },
        { Length.FromFeet(1250), null, "1'250_ft" },
        { Length.FromFeet(1250), "m 0.0", "381.0_m" },
        { Length.FromFeet(1234567), null, "1'234'567_ft" },
        { Mass.FromPounds(2300), null, "2'300_lb" },
        { Mass.FromPounds(2300), "kg 0", "1'043_kg" },
        { Angle.FromDegrees(4.2), null, "4.2°" },
        { Angle.FromDegrees(-4.24), null, "\u22124.2°" },
        { Angle.FromDegrees(-0.01), null, "0.0°" },
        { Temperature.FromDegreesCelsius(15), null, "15_°C" },
        { TemperatureDelta.FromDegreesCelsius(-20), null, "\u221220_°C" },
        { Pressure.FromPascals(101325), null, "1'013_hPa" },
        { Pressure.FromPascals(101325), "inHg", "29.92_inHg" },
        { Density.FromKilogramsPerCubicMeter(1.225), null, "1.225_kg/m³" },
        { RotationalSpeed.FromRevolutionsPerMinute(1850), null, "1'850_rpm" },
        { Force.FromNewtons(10231.4), null, "10'231_N" },
        { Force.FromPoundsForce(2300), null, "2'300_lbf" },
        { Ratio.FromPercent(23.5), null, "23.5_%" },
        { Ratio.FromDecimalFractions(0.4), null, "40_%" },
        { Duration.FromMinutes(1), null, "60.0_s" },
        { Duration.FromHours(0.5), "min", "30_min" },
        { ElectricCurrent.FromAmperes(30), null, "30_A" },
        { ElectricCurrent.FromMilliamperes(2500), null, "2.5_A" },
        { ElectricCharge.FromAmpereHours(20), null, "20.0_Ah" },
        { ElectricCharge.FromCoulombs(72000), "Ah 0.#", "20_Ah" },
        { ElectricPotential.FromVolts(12), null, "12_V" },
        { Power.FromWatts(108), null, "108_W" },
        { Power.FromMechanicalHorsepower(110.04), null, "110_hp" },
        { Area.FromSquareMeters(16.17), null, "16.2_m²" },
        { Energy.FromJoules(0.012345), null, "0.0123_J" },
    };

    [Theory]
    [MemberData(nameof(Cases), DisableDiscoveryEnumeration = true)]
    public void Of_Quantity_IsInAviationUnitsUnlessToldOtherwise(IQuantity quantity, string? format, string expected) =>
        Assert.Equal(expected, Plain(QuantityText.Of(quantity, format)));

    [Theory]
    [MemberData(nameof(Cases), DisableDiscoveryEnumeration = true)]
    public void Of_GermanCulture_IsTheSameText(IQuantity quantity, string? format, string expected)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo("de-DE");
            Assert.Equal(expected, Plain(QuantityText.Of(quantity, format)));
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }

    [Theory]
    [InlineData(1.2345, null, "1.23")]
    [InlineData(-0.04567, null, "\u22120.0457")]
    [InlineData(12345, null, "12'345")]
    [InlineData(0, null, "0")]
    [InlineData(1.5, "0.00", "1.50")]
    [InlineData(0.476, "% 0.0", "47.6_%")]
    [InlineData(0.476, "%", "47.6_%")]
    public void Of_Number_HasThreeSignificantDigitsUnlessToldOtherwise(double value, string? format, string expected) =>
        Assert.Equal(expected, Plain(QuantityText.Of(value, format)));

    [Fact]
    public void InOwnUnit_FeetPerMinute_StaysInFeetPerMinute() =>
        Assert.Equal("500_ft/min", Plain(QuantityText.InOwnUnit(Speed.FromFeetPerMinute(500))));

    [Theory]
    [InlineData("kg 0")]
    [InlineData("F1")]
    [InlineData("0.0.0")]
    [InlineData("kt 0 0")]
    public void Of_UnknownFormat_SaysWhatIsAllowed(string format)
    {
        var refusal = Assert.Throws<RefusedInputException>(() => QuantityText.Of(Speed.FromKnots(1), format));
        Assert.Contains(format, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("ft/min", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("speed", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kt")]
    [InlineData("G3")]
    public void Of_NumberWithUnit_IsRefused(string format) =>
        Assert.Throws<RefusedInputException>(() => QuantityText.Of(1.0, format));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Of_NotFinite_IsRefused(double value) =>
        Assert.Contains("finite", Assert.Throws<RefusedInputException>(() => QuantityText.Of(value)).Message, StringComparison.Ordinal);
}
