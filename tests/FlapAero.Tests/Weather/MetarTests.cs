using UnitsNet;

namespace FlapAero.Tests.Weather;

/// <summary>
/// Reports in the code form FM 15 METAR [wmo-fm-15]: the order of the groups as read in a copy of the form, the rules for each group from
/// memory. All stations are invented.
/// </summary>
public sealed class MetarTests
{
    [Theory]
    [InlineData("METAR XQAA 291450Z 24012G22KT 9999 SCT030 18/09 Q1013", 240, 12, 22.0, 18, 1013)]
    [InlineData("xqaa 291450z auto 24012kt 9999ndv // //////TCU 18/09 q1013=", 240, 12, null, 18, 1013)]
    [InlineData("SPECI COR XQAA 010000Z 36005MPS 310V050 4000NE R24L/1200U -SHRA BKN012CB M01/M03 Q0998 RERA WS R24", 360, 9.719, null, -1, 998)]
    [InlineData("XQAA 291450Z 09020KMH CAVOK M00/ Q1031 NOSIG", 90, 10.799, null, 0, 1031)]
    [InlineData("XQAA 291450Z 27015G25KT 1 1/2SM VCTS OVC010 21/20 A2992 RMK AO2 SLP132 T02110200", 270, 15, 25.0, 21, 1013.207)]
    [InlineData("XQAA 291450Z 12008KT 9999 18/09 Q1013 TEMPO 24030G45KT 2000 +TSRA", 120, 8, null, 18, 1013)]
    public void Decode_Report_GivesWhatALandingNeeds(string text, double from, double mean, double? gust, double celsius, double qnh)
    {
        Metar metar = Metar.Decode(text).Value;
        Assert.Equal("XQAA", metar.Station);
        Assert.Equal(from, metar.Wind.Value.From!.Value.Degrees, 6);
        Assert.Equal(mean, metar.Wind.Value.Mean.Knots, 3);
        Assert.Equal(gust, metar.Wind.Value.Gust?.Knots);
        Assert.Equal(celsius, metar.Temperature!.Value.DegreesCelsius, 6);
        Assert.Equal(qnh, metar.Qnh!.Value.Hectopascals, 3);
    }

    [Fact]
    public void Decode_LightVariable_ComesFromBehind()
    {
        MetarWind wind = Metar.Decode("XQAA 291450Z VRB03KT CAVOK 18/09 Q1013").Value.Wind.Value;
        Assert.Null(wind.From);
        Assert.Equal(-3, wind.For(Angle.FromDegrees(240)).Mean.Headwind(Angle.FromDegrees(240)).Knots, 6);
    }

    [Fact]
    public void Decode_Variation_IsKept()
    {
        MetarWind wind = Metar.Decode("XQAA 291450Z 21014KT 180V240 CAVOK 18/09 Q1013").Value.Wind.Value;
        Assert.Equal((180, 240), (wind.VariesFrom!.Value.Degrees, wind.VariesTo!.Value.Degrees));
    }

    [Theory]
    [InlineData("XQAA 291450Z /////KT 9999 18/09 Q1013", "no wind")]
    [InlineData("XQAA 291450Z VRB15G25KT 9999 18/09 Q1013", "variable and not light")]
    [InlineData("XQAA 291450Z 240P99KT 9999 18/09 Q1013", "stronger")]
    [InlineData("XQAA 291450Z 24020G15KT 9999 18/09 Q1013", "gust")]
    [InlineData("XQAA 291450Z 9999 18/09 Q1013", "no wind group")]
    public void Decode_WindThatCannotBeUsed_SaysWhy(string text, string why)
    {
        Metar metar = Metar.Decode(text).Value;
        Assert.False(metar.Wind.Happened);
        Assert.Contains(why, metar.Wind.Explanation, StringComparison.Ordinal);
        Assert.Equal(18, metar.Temperature!.Value.DegreesCelsius, 6);
    }

    [Fact]
    public void Decode_MissingTemperatureAndPressure_AreMissing()
    {
        Metar metar = Metar.Decode("XQAA 291450Z 24012KT 9999 ///// Q////").Value;
        Assert.Null(metar.Temperature);
        Assert.Null(metar.Qnh);
        Assert.True(metar.Wind.Happened);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("METAR XQAA 291450Z NIL", "NIL")]
    [InlineData("METAR XQAA 291450Z 24012KT 18/09 Q1013= METAR XQBB 291450Z 24012KT 18/09 Q1013=", "several")]
    [InlineData("METAR XQAA 291450Z 24012KT METAR XQBB 291450Z 24012KT", "several")]
    [InlineData("hello world", "no station")]
    [InlineData("XQAA 24012KT 18/09 Q1013", "no time")]
    [InlineData("XQAA 321450Z 24012KT 18/09 Q1013", "no time")]
    [InlineData("XQAA 291450Z 24012KT <b>x</b> 18/09 Q1013", "stands in no METAR")]
    [InlineData("XQAA 291450Z 24012KT BANANA 18/09 Q1013", "\"BANANA\" is no group")]
    [InlineData("XQAA 291450Z 24012KT 25012KT 18/09 Q1013", "second wind")]
    [InlineData("XQAA 291450Z 37012KT 18/09 Q1013", "360")]
    [InlineData("XQAA 291450Z 00012KT 18/09 Q1013", "360")]
    [InlineData("XQAA 291450Z 24012KT 18/09 17/08 Q1013", "second temperature")]
    [InlineData("XQAA 291450Z 24012KT 88/09 Q1013", "M60 to 60")]
    [InlineData("XQAA 291450Z 24012KT 18/09 Q0013", "Q0850")]
    [InlineData("XQAA 291450Z 24012KT 18/09 Q1013 A2800", "second pressure")]
    public void Decode_NoSingleReport_IsRefusedInWords(string text, string why)
    {
        Outcome<Metar> outcome = Metar.Decode(text);
        Assert.False(outcome.Happened);
        Assert.Contains(why, outcome.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Decode_AnyText_IsDecodedOrRefusedAndNeverThrows()
    {
        const string letters = "METARXQ 0123456789/KTGVRBQ=<\u0000é+-\n";
        const string good = "METAR XQAA 291450Z 24012G22KT 210V270 9999 SCT030 18/09 Q1013";
        (int decoded, int refused) = (0, 0);
        for (int seed = 0; seed < 2000; seed++)
        {
            var random = new Random(seed);
            char[] text = good.ToCharArray();
            for (int n = random.Next(1, 4); n > 0; n--) text[random.Next(text.Length)] = letters[random.Next(letters.Length)];
            Outcome<Metar> outcome = Metar.Decode(new string(text));
            if (outcome.Happened) decoded++;
            else refused++;
            Assert.True(outcome.Happened || outcome.Explanation.Length > 0);
        }

        Assert.True(decoded > 100 && refused > 500, $"{decoded} decoded, {refused} refused");
    }
}
