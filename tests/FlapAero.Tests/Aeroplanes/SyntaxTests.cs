namespace FlapAero.Tests.Aeroplanes;

/// <summary>Text that is no JSON, and files that cannot be read at all.</summary>
public sealed class SyntaxTests
{
    [Theory]
    [InlineData("", 1, 1, "")]
    [InlineData("   \n ", 2, 2, "")]
    [InlineData("aeroplane", 1, 1, "")]
    [InlineData("{ \"name\": NaN }", 1, 11, "name")]
    [InlineData("{\n  \"name\": \"H4\",\n}", 3, 1, "")]
    [InlineData("{\n  \"name\" \"H4\"\n}", 2, 10, "")]
    [InlineData("{\n  \"wing\": { \"span\": { \"value\": 10,9 } }\n}", 2, 35, "wing.span")]
    [InlineData("{\n  \"name\": \"20° and µ\", // a comment\n}", 2, 24, "")]
    [InlineData("{ \"name\": 'H4' }", 1, 11, "name")]
    [InlineData("{ \"flapSettings\": [ {}, { \"name\": }", 1, 35, "flapSettings[1].name")]
    [InlineData("{} {}", 1, 4, "")]
    [InlineData("{ \"wing\": t60,\n \"name\": 5 }", 1, 12, "wing")]
    [InlineData("{ \"name\": 01 }", 1, 12, "name")]
    public void Parse_NoJson_IsOneFaultAtLineAndColumn(string text, int line, int column, string place)
    {
        AeroplaneFileException refused = AeroplaneText.Refused(text);

        AeroplaneFault fault = Assert.Single(refused.Faults);
        Assert.Equal((line, column, place), (fault.Line, fault.Column, fault.Place));
        Assert.StartsWith("here the text stops being JSON: ", fault.Problem, StringComparison.Ordinal);
        Assert.Contains("a point in numbers", fault.Expected, StringComparison.Ordinal);
        Assert.DoesNotContain("LineNumber", refused.Message, StringComparison.Ordinal);
        Assert.Equal(2, refused.Message.Split('\n').Length);
        Assert.DoesNotContain("reader options", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("null"), InlineData("[]"), InlineData("5"), InlineData("\"text\"")]
    public void Parse_OtherJson_WantsAnObject(string text)
    {
        AeroplaneFault fault = Assert.Single(AeroplaneText.Refused(text).Faults);

        Assert.Equal(("", 1), (fault.Place, fault.Line));
        Assert.Contains("an object with \"name\", \"description\", \"wing\"", fault.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_Nothing_MissesEveryKeyAndNothingElse() =>
        Assert.Equal(
            ["name", "description", "wing", "zeroLiftDragCoefficient", "masses", "propeller", "flapSettings"],
            AeroplaneText.Refused("{}").Faults.Select(fault => fault.Place));

    [Fact]
    public void Parse_HalfACharacter_IsAFault()
    {
        AeroplaneFault fault = Assert.Single(
            AeroplaneText.Refused(AeroplaneText.Embedded("trainer-h4.json").Replace("Trainer H4", "Trainer \\ud800", StringComparison.Ordinal)).Faults);

        Assert.Equal(("name", 3), (fault.Place, fault.Line));
    }

    [Fact]
    public void Parse_ByteOrderMark_IsNoFault() =>
        Assert.Equal("Trainer H4", AeroplaneFile.Parse('\uFEFF' + AeroplaneText.Embedded("trainer-h4.json"), "trainer.json").Name);

    [Fact]
    public void Parse_VeryDeep_IsAFaultAndNoCrash() =>
        Assert.Single(AeroplaneText.Refused(new string('[', 100_000)).Faults);

    [Fact]
    public void Read_NoFile_SaysWhich()
    {
        AeroplaneFileException refused =
            Assert.Throws<AeroplaneFileException>(() => AeroplaneFile.Read(Path.Combine("no such folder", "trainer-x.json")));

        AeroplaneFault fault = Assert.Single(refused.Faults);
        Assert.Null(fault.Line);
        Assert.Equal("trainer-x.json", refused.Name);
        Assert.Contains("there is no file", fault.Problem, StringComparison.Ordinal);
        Assert.Contains("no such folder", fault.Problem, StringComparison.Ordinal);
        Assert.StartsWith("trainer-x.json: 1 fault\nthere is no file", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_Folder_SaysThatAFileIsWanted()
    {
        AeroplaneFileException refused = Assert.Throws<AeroplaneFileException>(() => AeroplaneFile.Read(AppContext.BaseDirectory));

        Assert.Contains("a file is wanted, not a folder", Assert.Single(refused.Faults).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NotUtf8_NamesTheLine()
    {
        using var file = new TemporaryFile([.. "{\n  \"name\": \"10"u8, 0xB0, .. "\"\n}"u8]);

        AeroplaneFault fault = Assert.Single(Assert.Throws<AeroplaneFileException>(() => AeroplaneFile.Read(file.Path)).Faults);

        Assert.Equal(2, fault.Line);
        Assert.Equal("save the file as UTF-8 text", fault.Expected);
    }

    [Fact]
    public void Read_GoodFile_GivesTheAeroplane()
    {
        using var file = new TemporaryFile(System.Text.Encoding.UTF8.GetBytes(AeroplaneText.Embedded("trainer-l2.json")));

        Assert.Equal("Trainer L2", AeroplaneFile.Read(file.Path).Name);
    }

    [Theory]
    [InlineData(""), InlineData("  ")]
    public void Read_NoPath_IsTheCallersError(string path) => Assert.Throws<RefusedInputException>(() => AeroplaneFile.Read(path));

    private sealed class TemporaryFile : IDisposable
    {
        public TemporaryFile(byte[] bytes) => File.WriteAllBytes(Path, bytes);

        public string Path { get; } = System.IO.Path.GetTempFileName();

        public void Dispose() => File.Delete(Path);
    }
}
