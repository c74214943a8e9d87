using FlapAero.Tests.Aeroplanes;
using UnitsNet;

namespace FlapAero.Tests.Schools;

/// <summary>What a school's file says, and what it is told where it says nothing that can be used.</summary>
public sealed class SchoolFileTests
{
    [Fact]
    public void Parse_NameAlone_IsTheUsual()
    {
        School school = School.Parse("{ \"name\": \"A\" }", "school.json");
        Assert.Equal("A", school.Name);
        Assert.Equal(BriefingRules.Usual, school.Rules);
        Assert.Equal(new SchoolCircuit(), school.Circuit);
        Assert.Empty(school.Aerodromes);
        Assert.Empty(school.Lessons);
        Assert.Null(school.Paper);
    }

    [Fact]
    public void Quillmere_Runway_HasWhatLiesBehindTheDisplacedThreshold()
    {
        SchoolRunway runway = DemoSchools.Quillmere.Aerodromes[0].Find("24")!;
        Assert.Equal(780, runway.Runway.LengthAvailable.Meters, 6);
        Assert.Equal(80, runway.ThresholdDisplaced.Meters, 6);
        Assert.Equal(600, runway.Runway.Elevation.Feet, 6);
        Assert.Equal("the white gate on the right", runway.ForFirstThird!.Name);
        Assert.Equal(605, DemoSchools.Quillmere.Aerodromes[0].Find("33")!.Runway.Elevation.Feet, 6);
        Assert.Equal(0.015, DemoSchools.Quillmere.Aerodromes[0].Find("33")!.Runway.Slope, 9);
        Assert.Equal(CircuitHand.Right, DemoSchools.Quillmere.Aerodromes[0].Find("06")!.Hand);
    }

    [Fact]
    public void Quillmere_RulesAndCircuit_AreRead()
    {
        School school = DemoSchools.Quillmere;
        Assert.Equal(10, school.Rules.MostForGusts!.Value.Knots, 6);
        Assert.Equal(1.2, school.Rules.RuleFor(RunwaySurface.FirmGrass)!.Factor);
        Assert.Equal(1.15, school.Rules.RuleFor(RunwaySurface.WetPaved)!.Factor);
        Assert.Equal(800, school.Rules.LeastCircuitHeight!.Value.Feet, 6);
        Assert.Equal("the school's flying order", school.Rules.Margin.Origin);
        Assert.Equal(12, school.Circuit.CrosswindLimit!.Value.Knots, 6);
        Assert.Equal(SchoolPaper.A4, school.Paper);
        Assert.Equal(["1", "4", "6", "7", "8", "9", "10"], school.Lessons);
    }

    [Theory]
    [InlineData(270, "24")]
    [InlineData(90, "06")]
    [InlineData(340, "33")]
    public void InUse_Wind_IsTheRunwayWithTheMostHeadwind(double from, string name)
    {
        BriefingWind wind = new(new Wind(Angle.FromDegrees(from), Speed.FromKnots(10)));
        Assert.Equal(name, DemoSchools.Quillmere.Aerodromes[0].InUse(wind).Runway.Name);
    }

    [Fact]
    public void InUse_VariableOrCalm_IsTheFirst()
    {
        foreach (string wind in (string[])["VRB03KT", "00000KT"])
        {
            MetarWind reported = Metar.Decode($"XQAA 291450Z {wind} CAVOK 18/09 Q1013").Value.Wind.Value;
            Assert.Equal("24", DemoSchools.Quillmere.Aerodromes[0].InUse(reported).Runway.Name);
        }
    }

    [Theory]
    [InlineData("name", "\"\"", "name")]
    [InlineData("name", "\"two\\nlines\"", "one line")]
    [InlineData("footLine", "\"a\\u202eb\"", "plain text")]
    [InlineData("logo", "\"../logo.png\"", "folder of this file")]
    [InlineData("logo", "\"/etc/logo.png\"", "folder of this file")]
    [InlineData("logo", "\"a\\\\..\\\\logo.png\"", "folder of this file")]
    [InlineData("logo", "\"c:logo.png\"", "folder of this file")]
    [InlineData("units", "\"cubits\"", "aviation")]
    [InlineData("lessons", "[1, 1]", "once")]
    [InlineData("aerodromes[0].station", "\"QUILL\"", "four letters")]
    [InlineData("aerodromes[0].runways[0].heading", "\"400 deg\"", "360")]
    [InlineData("aerodromes[0].runways[0].thresholdDisplaced", "\"800 m\"", "100 m")]
    [InlineData("aerodromes[0].runways[1].name", "\"24\"", "second runway")]
    [InlineData("aerodromes[0].runways[0].surface", "\"gras\"", "grass")]
    [InlineData("weather[0].metar", "\"hello\"", "XQAA 291450Z")]
    [InlineData("weather[2].wind", "\"strong\"", "210/12")]
    [InlineData("weather[2].qnh", "\"29 hPa\"", "")]
    [InlineData("rules.bankLimit", "\"60 deg\"", "45")]
    [InlineData("rules.headwindShare", "1.5", "0 to 1")]
    [InlineData("rules.margin.factor", "0.9", "1 to 3")]
    [InlineData("rules.surfaceFactors[0].surface", "\"paved\"", "margin")]
    [InlineData("circuit.height", "\"700 ft\"", "800 ft")]
    [InlineData("circuit.downwind", "\"400 KIAS\"", "150")]
    [InlineData("circuit.descending", "\"1 VS\"", "1.2")]
    public void Parse_OneBadValue_IsRefusedWithItsPlaceAndWhatIsAllowed(string place, string json, string allowed)
    {
        AeroplaneFileException refused = SchoolText.Refused(SchoolText.Edited(root => root.Set(place, json)));
        AeroplaneFault fault = Assert.Single(refused.Faults);
        Assert.StartsWith(place.Replace(".name", "", StringComparison.Ordinal), fault.Place, StringComparison.Ordinal);
        Assert.NotNull(fault.Line);
        Assert.Contains(allowed, fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_SeveralFaults_AreToldAtOnce()
    {
        AeroplaneFileException refused = SchoolText.Refused(SchoolText.Edited(root =>
        {
            root.Set("rules.bankLimit", "\"60 deg\"");
            root.Rename("rules.gusts", "gust");
            root.Set("paper", "\"a5\"");
        }));
        Assert.Equal(["paper", "rules.gust", "rules.bankLimit"], refused.Faults.Select(fault => fault.Place).Order(StringComparer.Ordinal).Reverse().OrderBy(p => p == "paper" ? 0 : p == "rules.gust" ? 1 : 2));
    }
}
