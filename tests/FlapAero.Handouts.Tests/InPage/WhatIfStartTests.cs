using System.Text.Json.Nodes;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.InPage;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts.Tests.InPage;

/// <summary>The controls of the what-if page begin where the school's file has them.</summary>
public sealed class WhatIfStartTests
{
    private const string Ours = """
        {
          "name": "Downfield Flyers",
          "units": "si",
          "aerodromes": [{ "name": "Downfield", "elevation": "1200 ft",
            "runways": [{ "name": "27", "heading": "270 deg", "length": "900 m", "thresholdDisplaced": "100 m", "surface": "grass", "slope": "1.5 % up" }] }],
          "rules": { "referenceMultiples": { "flapsUp": 1.4, "partFlaps": 1.35, "fullFlaps": 1.3 }, "thresholdHeight": "40 ft",
            "gusts": { "share": 0.4, "most": "8 kt" }, "margin": { "factor": 1.6, "origin": "the flying order" } }
        }
        """;

    [Theory]
    [InlineData("multipleUp", "1.4")]
    [InlineData("multiplePart", "1.35")]
    [InlineData("multipleFull", "1.3")]
    [InlineData("height", "40")]
    [InlineData("gustShare", "40")]
    [InlineData("gustMost", "8")]
    [InlineData("margin", "1.6")]
    [InlineData("length", "900")]
    [InlineData("displaced", "100")]
    [InlineData("slope", "1.5")]
    [InlineData("altitude", "1200")]
    [InlineData("path", "3.5")]
    public void Of_School_BeginsWithItsRulesAndRunway(string field, string value)
    {
        IDocument page = Page(Ours);

        Assert.Equal(value, page.GetElementById(field)!.GetAttribute("value"));
        Assert.Equal(value, page.GetElementById(field + "-slider")!.GetAttribute("value"));
        JsonNode data = JsonNode.Parse(page.GetElementById("what-if")!.TextContent)!;
        Assert.Equal(value, data["fields"]!.AsArray().Single(one => (string?)one!["key"] == field)!["usual"]!.ToJsonString());
        Assert.Equal("grass", (string?)data["surface"]);
        Assert.Equal("si", (string?)data["units"]);
        Assert.Contains("rules of Downfield Flyers, on runway 27 of Downfield.", page.QuerySelector(".begins")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("does not take", page.QuerySelector(".begins")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ValueBeyondAControl_SaysWhereItBeginsInstead()
    {
        IDocument page = Page(Ours.Replace("\"900 m\"", "\"3600 m\"", StringComparison.Ordinal));

        Assert.Equal("3000", page.GetElementById("length")!.GetAttribute("value"));
        Assert.Contains("Length of the runway is 3\u202F600\u00A0m there, and begins at 3\u202F000\u00A0m here", page.QuerySelector(".begins")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoSchool_BeginsAtTheUsualValues()
    {
        IDocument page = new HtmlParser().ParseDocument(WhatIfPage.Of(Paper.A4));

        Assert.Null(page.QuerySelector(".begins"));
        Assert.Equal("1.3", page.GetElementById("multipleUp")!.GetAttribute("value"));
        Assert.Equal("1200", page.GetElementById("length")!.GetAttribute("value"));
    }

    private static IDocument Page(string school) =>
        new HtmlParser().ParseDocument(WhatIfPage.Of(Paper.A4, SchoolMarks.Of(School.Parse(school, "school.json"), "school.json")));
}
