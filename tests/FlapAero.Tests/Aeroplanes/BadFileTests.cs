using System.Text.Json.Nodes;

namespace FlapAero.Tests.Aeroplanes;

/// <summary>Each spoilt file is refused with one fault, at its place and line, in words that help.</summary>
public sealed class BadFileTests
{
    public static TheoryData<string> Form => [.. BadFile.OfForm.Keys];

    public static TheoryData<string> Sense => [.. BadFile.OfSense.Keys];

    [Theory, MemberData(nameof(Form))]
    public void Parse_FaultOfForm_IsOneFaultAtItsPlace(string which) => Check(BadFile.OfForm[which]);

    [Theory, MemberData(nameof(Sense))]
    public void Parse_FaultOfSense_IsOneFaultAtItsPlace(string which) => Check(BadFile.OfSense[which]);

    [Fact]
    public void Parse_SwappedSettings_SaysSoOnce()
    {
        string text = AeroplaneText.Edited(root =>
        {
            string second = root.At("flapSettings[1]").ToJsonString();
            root.Set("flapSettings[1]", root.At("flapSettings[2]").ToJsonString());
            root.Set("flapSettings[2]", second);
        });

        AeroplaneFault fault = Assert.Single(AeroplaneText.Refused(text).Faults);
        Assert.Equal("flapSettings[2].deflection", fault.Place);
    }

    [Fact]
    public void Parse_ManyFaults_AreAllReportedInTheOrderOfLines()
    {
        string text = AeroplaneText.Edited(root =>
        {
            root.Set("flapSettings[2].maximumLiftCoefficient.value", "1.2");
            root.Set("wing.span.value", "30");
            root.Remove("flapSettings[1].deflection.unit");
            root.Set("masses.maximum.origin", "\"who knows\"");
            root.Rename("flapSettings[3].oswaldFactor", "oswald");
            root.Set("wing.area.value", "2");
        });

        AeroplaneFileException refused = AeroplaneText.Refused(text);

        Assert.Equal(
            [
                "wing.span.value", "wing.area.value", "masses.maximum.origin", "flapSettings[1].deflection.unit",
                "flapSettings[2].maximumLiftCoefficient", "flapSettings[3].oswaldFactor", "flapSettings[3].oswald",
            ],
            refused.Faults.Select(fault => fault.Place));
        string[] lines = refused.Message.Split('\n');
        Assert.Equal("trainer.json: 7 faults", lines[0]);
        Assert.Equal(8, lines.Length);
        int line = AeroplaneText.LineOf(text, "\"value\": 1.2,");
        Assert.Contains(
            FormattableString.Invariant(
                $"line {line}, flapSettings[2].maximumLiftCoefficient: 1.2 is less than 1.6 of \"10°\"; flaps add lift, so it does not fall as they extend"),
            lines);
        Assert.Equal(refused.Faults.Select(fault => fault.Line).Order(), refused.Faults.Select(fault => fault.Line));
    }

    [Fact]
    public void Parse_ManyFaultsOfThePropeller_AreAllReported()
    {
        string text = AeroplaneText.Edited(root =>
        {
            root.Set("propeller.diameter.unit", "\"N.m\"");
            root.Set("propeller.closedThrottle.freeSpeed.value", "3000");
            root.Rename("propeller.closedThrottle.torqueAtStandstill", "torque");
            root.Set("propeller.table.rows[0].advanceRatio", "0.01");
            root.Set("propeller.table.rows[2].advanceRatio", "0.1");
            root.Set("propeller.table.rows[5].thrustCoefficient", "7.38");
            root.Remove("propeller.table.rows[6].thrustCoefficient");
            root.Set("propeller.table.rows[13].powerCoefficient", "0.08");
        });

        Assert.Equal(
            [
                "propeller.diameter.unit", "propeller.closedThrottle.torqueAtStandstill", "propeller.closedThrottle.torque",
                "propeller.closedThrottle.freeSpeed", "propeller.table.rows[0].advanceRatio", "propeller.table.rows[2].advanceRatio",
                "propeller.table.rows[5].thrustCoefficient", "propeller.table.rows[6].thrustCoefficient",
                "propeller.table.rows[13].powerCoefficient",
            ],
            AeroplaneText.Refused(text).Faults.Select(fault => fault.Place));
    }

    [Fact]
    public void Parse_ThrustAndPowerExchanged_AsksSo()
    {
        string text = AeroplaneText.Edited(root =>
        {
            foreach (JsonNode? row in root.At("propeller.table.rows").AsArray())
                (row!["thrustCoefficient"], row["powerCoefficient"]) = (row["powerCoefficient"]!.DeepClone(), row["thrustCoefficient"]!.DeepClone());
        });

        AeroplaneFileException refused = AeroplaneText.Refused(text);
        Assert.All(refused.Faults, fault => Assert.EndsWith("are the two columns exchanged?", fault.Expected, StringComparison.Ordinal));
        Assert.Equal("propeller.table.rows[10].powerCoefficient", refused.Faults[1].Place);
    }

    [Fact]
    public void Parse_KeyTwice_NamesBothLines()
    {
        const string text = """
            {
              "name": "One",
              "name": "Two"
            }
            """;

        AeroplaneFault fault = AeroplaneText.Refused(text).Faults.Single(fault => fault.Problem == "the key occurs twice");
        Assert.Equal(("name", 3, "each key once; the first is on line 2"), (fault.Place, fault.Line, fault.Expected));
    }

    private static void Check(BadFile bad)
    {
        string text = AeroplaneText.Edited(bad.Edit);

        AeroplaneFileException refused = AeroplaneText.Refused(text);

        AeroplaneFault fault = Assert.Single(refused.Faults);
        Assert.Equal(bad.Place, fault.Place);
        Assert.Contains(bad.Says, $"{fault.Problem}; {fault.Expected}", StringComparison.Ordinal);
        Assert.Equal(AeroplaneText.LineOf(text, bad.Piece) - bad.Above, fault.Line);
        Assert.Null(fault.Column);
        Assert.Equal($"trainer.json: 1 fault\n{fault}", refused.Message);
    }
}
