using System.Text.Json.Nodes;
using CsCheck;

namespace FlapAero.Tests.Aeroplanes;

/// <summary>However a file is damaged, it is read or refused with its faults, and never anything else.</summary>
public sealed class AnyDamageTests
{
    private static string Good { get; } = AeroplaneText.Embedded("trainer-h4.json").TrimEnd();
    private static string[] Keys { get; } = [.. AeroplaneText.Keys(AeroplaneText.Good())];

    private static string[] Values { get; } =
    [
        "null", "true", "\"\"", "\"x\"", "-1", "0", "1", "0.5", "20", "1e300", "-1e300", "1e999", "1e-320", "[]", "[1, 2]", "{}", "[{}]",
        """{ "value": 1, "unit": "1", "origin": "invented" }""", """{ "indicated": 1, "calibrated": 2 }""",
        """{ "advanceRatio": 0.45, "thrustCoefficient": 0.07, "powerCoefficient": 0.06 }""", """{ "value": 1000, "unit": "rpm", "origin": "invented" }""",
    ];

    public static TheoryData<string> Demos => [.. AeroplaneText.DemoFiles];

    [Theory, MemberData(nameof(Demos))]
    public void Parse_AnyKeyGone_IsAFaultAtThatPlace(string name)
    {
        foreach (string key in AeroplaneText.Keys(AeroplaneText.Good(name)).Where(key => key is not "$schema" and not "crosswindLimit" and not "tailLimitAttitude" and not "propeller.fullThrottleTorque"))
        {
            JsonNode root = AeroplaneText.Good(name);
            root.Remove(key);

            AeroplaneFault fault = Assert.Single(AeroplaneText.Refused(AeroplaneText.Written(root)).Faults);
            Assert.Equal((key, "the key is missing"), (fault.Place, fault.Problem));
        }
    }

    [Theory, MemberData(nameof(Demos))]
    public void Parse_AnyKeyMisspelt_IsOneFaultWithTheRightSpelling(string name)
    {
        foreach (string key in AeroplaneText.Keys(AeroplaneText.Good(name)).Where(key => key != "$schema"))
        {
            JsonNode root = AeroplaneText.Good(name);
            string right = key.Split('.')[^1];
            root.Rename(key, right + "s");

            AeroplaneFault fault = Assert.Single(AeroplaneText.Refused(AeroplaneText.Written(root)).Faults);
            Assert.Equal((key + "s", $"did you mean \"{right}\"?"), (fault.Place, fault.Expected));
        }
    }

    [Fact]
    public void Parse_AnyBeginning_IsRefused() =>
        Gen.Int[0, Good.Length - 1].Sample(length => AeroplaneText.Refused(Good[..length]).Faults.Count > 0, iter: 500);

    [Fact]
    public void Parse_AnyOtherCharacter_IsReadOrRefused() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.OneOf(Gen.Char.AlphaNumeric, Gen.Char["{}[]\",:.-\\/ \n\u0000°"]))
            .Sample((at, other) => ReadOrRefused(Good[..at] + other + Good[(at + 1)..]), iter: 1000);

    [Fact]
    public void Parse_AnyOtherValues_AreReadOrRefused() =>
        Gen.Select(Gen.Int[0, Keys.Length - 1].Select(at => Keys[at]), Gen.Int[0, Values.Length - 1].Select(at => Values[at])).Array[1, 3].Sample(
            damages =>
            {
                JsonNode root = AeroplaneText.Good();
                // The deepest first: a place inside a part that is already gone is no place.
                foreach ((string key, string value) in damages.DistinctBy(damage => damage.Item1).OrderByDescending(damage => damage.Item1.Length))
                    root.Set(key, value);
                return ReadOrRefused(AeroplaneText.Written(root));
            },
            iter: 2000);

    private static bool ReadOrRefused(string text)
    {
        try
        {
            return AeroplaneFile.Parse(text, "trainer.json") is not null;
        }
        catch (AeroplaneFileException refused)
        {
            // One line a fault, whatever stands in the file.
            return refused.Faults.Count > 0 && refused.Message.Split('\n').Length == refused.Faults.Count + 1;
        }
    }
}
