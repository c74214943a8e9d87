using System.Text.Json.Nodes;
using FlapAero.Tests.Aeroplanes;

namespace FlapAero.Tests.Manuals;

/// <summary>A slip of the pen in a manual's file is one fault at its place, with value, range, reason and the likely slip.</summary>
public sealed class ManualRulesTests
{
    [Theory]
    [InlineData("masses.maximum", "\"2403 kg\"", "stallSpeeds[", "did you mean 2403 lb?")]
    [InlineData("masses.maximum", "\"24030 lb\"", "masses.maximum", "allowed is 440.9 to 12566.3 lb")]
    [InlineData("masses.minimum", "\"2500 lb\"", "masses.minimum", "is not less than the maximum, 2403 lb")]
    [InlineData("wing.span", "\"10.9 ft\"", "wing.span", "did you mean 10.9 m?")]
    [InlineData("wing.span", "\"35.8 m\"", "wing.span", "did you mean 35.8 ft?")]
    [InlineData("wing.area", "\"178.7 m2\"", "wing.area", "did you mean 178.7 ft2?")]
    [InlineData("glides[0].speed", "\"40 KIAS\"", "glides[0].speed", "below 1.00 times the stall with flaps up")]
    [InlineData("glides[0].ratio", "24", "glides[0].ratio", "is more than a span of 35.8 ft allows")]
    [InlineData("glides[0].ratio", "1.56", "glides[0].ratio", "Nautical miles per 1000 ft? That is 9.5.")]
    [InlineData("glides[0].propeller", "\"iddling\"", "glides[0].propeller", "did you mean \"idling\"?")]
    [InlineData("stallSpeeds[12].speed", "\"52 KIAS\"", "stallSpeeds[12].speed", "flaps add lift, so they do not raise the stalling speed")]
    [InlineData("stallSpeeds[1].speed", "\"80 KIAS\"", "stallSpeeds[1].speed", "does not go with the other stalls of flaps up")]
    [InlineData("landings[0].groundRoll", "\"165 ft\"", "landings[0].groundRoll", "is shorter than any braking could make it")]
    [InlineData("landings[0].groundRoll", "\"162 ft\"", "landings[0].groundRoll", "did you mean 162 m?")]
    [InlineData("landings[0].from50ft", "\"535 ft\"", "landings[0].from50ft", "for the way from 50 ft to the ground")]
    [InlineData("landings[3].temperature", "\"68 C\"", "landings[3].temperature", "did you mean 68 F?")]
    [InlineData("approachSpeeds[1].speed", "\"150 KIAS\"", "approachSpeeds[1].speed", "is faster than the highest speed with flaps 35°, 85 KIAS")]
    [InlineData("levelFlights[0].engineSpeed", "\"2900 rpm\"", "levelFlights[0].engineSpeed", "is more than the highest engine speed, 2700 rpm")]
    [InlineData("climbs[0].rate", "\"650 m/s\"", "climbs[0].rate", "did you mean 650 ft/min?")]
    [InlineData("climbs[0].rate", "\"2900 ft/min\"", "climbs[0].rate", "is more than the whole power of 171 hp lifts")]
    [InlineData("flapsUpLanding.distanceFactor", "50", "flapsUpLanding.distanceFactor", "Did you mean 1.5?")]
    [InlineData("stallSpeeds[0].flaps", "\"u\"", "stallSpeeds[0].flaps", "is not known here")]
    [InlineData("landings[0].from50ft", "\"1,740 ft\"", "landings[0].from50ft", "has a comma")]
    [InlineData("stallSpeeds[0].speed", "\"47 knots\"", "stallSpeeds[0].speed", "is no unit of an airspeed")]
    public void Parse_OneSlip_IsNamedWithItsPlaceAndTheLikelySlip(string path, string json, string place, string words)
    {
        AeroplaneFileException refused = ManualText.Refused(ManualText.Edited(root => root.Set(path, json)));

        Assert.Contains(refused.Faults, fault => fault.Place.StartsWith(place, StringComparison.Ordinal) && fault.ToString().Contains(words, StringComparison.Ordinal));
        Assert.All(refused.Faults, fault => Assert.NotNull(fault.Line));
    }

    [Fact]
    public void Parse_ManySlips_AreAllThereAtOnce()
    {
        AeroplaneFileException refused = ManualText.Refused(ManualText.Edited(root =>
        {
            root.Set("glides[0].ratio", "24");
            root.Set("glides[1].speed", "\"30 KIAS\"");
            root.Set("landings[0].groundRoll", "\"150 ft\"");
            root.Set("landings[4].from50ft", "\"620 ft\"");
            root.Set("levelFlights[2].engineSpeed", "\"2800 rpm\"");
        }));

        Assert.Equal(
            ["glides[0].ratio", "glides[1].speed", "landings[0].groundRoll", "landings[4].from50ft", "levelFlights[2].engineSpeed"],
            refused.Faults.Select(fault => fault.Place));
    }

    [Fact]
    public void Parse_ExchangedStallRows_AreRefused()
    {
        AeroplaneFileException refused = ManualText.Refused(ManualText.Edited(root =>
        {
            JsonNode up = root["stallSpeeds"]![0]!["speed"]!.DeepClone();
            root["stallSpeeds"]![0]!["speed"] = root["stallSpeeds"]![12]!["speed"]!.DeepClone();
            root["stallSpeeds"]![12]!["speed"] = up;
        }));

        Assert.NotEmpty(refused.Faults);
        Assert.All(refused.Faults, fault => Assert.StartsWith("stallSpeeds", fault.Place, StringComparison.Ordinal));
    }

    [Fact]
    public void Parse_OnlyWhatIsNeeded_IsAManual()
    {
        Manual manual = Manual.Parse(
            """{ "name": "Bare", "masses": { "maximum": "2300 lb" }, "wing": { "span": "35 ft", "area": "175 ft2" }, "flapSettings": [ { "name": "up", "deflection": "0 deg" } ] }""",
            "bare.json");

        ManualFit fit = ManualFit.Of(manual).Value;
        Assert.All(fit.Values, value => Assert.Equal(FitStanding.Assumed, value.Standing));
        Assert.All(fit.Uses, use => Assert.Equal(UseVerdict.No, use.Verdict));
    }
}
