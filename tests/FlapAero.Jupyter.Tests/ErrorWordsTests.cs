using FlapAero.Handouts.Lessons;
using FlapAero.KernelStart;
using FlapAero.Tests;
using Microsoft.CodeAnalysis;
using Diagnostic = Microsoft.DotNet.Interactive.Diagnostic;
using LinePosition = Microsoft.DotNet.Interactive.LinePosition;
using LinePositionSpan = Microsoft.DotNet.Interactive.LinePositionSpan;

namespace FlapAero.Jupyter.Tests;

public sealed class ErrorWordsTests
{
    [Fact]
    public void OfCompiler_SeveralFaults_NamesTheFirstInTheCell()
    {
        string words = ErrorWords.OfCompiler([Fault("CS0103", 3, "no"), Fault("CS1002", 1, "; expected"), Fault("CS0103", 2, "no")], "a\r\nb\r\nc\r\nd");

        Assert.Equal(
            "What: ; expected. (2 more after it; the first is often the cause of the others.)\nWhere: line 2 of this cell: b\n"
            + "Try: Look for a bracket without its partner or a missing semicolon. Only the last line of a cell, which shows its value, goes without one.",
            words);
    }

    [Fact]
    public void OfCompiler_MissingAssembly_IsTheFaultToTell()
    {
        string words = ErrorWords.OfCompiler(
            [Fault("CS0246", 0, "unknown"), Fault("CS0006", 1, "Metadata file '../artifacts/lessons/FlapAero.Notebooks.dll' could not be found")], "using FlapAero;\n#r \"x\"");

        Assert.StartsWith("What: The lessons' assembly is not built", words, StringComparison.Ordinal);
        Assert.DoesNotContain("more", words, StringComparison.Ordinal);
    }

    [Fact]
    public void OfCompiler_LengthAddedToASpeed_IsWhatTheFirstLessonShows()
    {
        string lesson = LessonNotebook.ReadFolder(RepositoryRoot.Path("notebooks")).Single(n => n.Number == 0).Cells.Single(c => c.Id == "the-unit-is-in-the-name").Source;
        string words = ErrorWords.OfCompiler(
            [Fault("CS0019", 0, "Operator '+' cannot be applied to operands of type 'Speed' and 'Length'")], "speed + Length.FromFeet(50)");

        Assert.Contains(words, lesson.Replace("- **", "", StringComparison.Ordinal).Replace(":**", ":", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("CS0006"), InlineData("CS0103"), InlineData("CS1061"), InlineData("CS0029"), InlineData("CS1002"), InlineData("CS7036"), InlineData("CS9999"), InlineData(null)]
    public void OfCompiler_AnyFault_IsThreeLines(string? code) =>
        Assert.Equal(3, ErrorWords.OfCompiler([Fault(code, 7, "two\nlines")], "one").Split('\n').Length);

    [Fact]
    public void Of_WrappedException_IsTheInnermost()
    {
        string words = ErrorWords.Of(new AggregateException(new InvalidOperationException("no runway")), "", "a");

        Assert.StartsWith("What: no runway. (InvalidOperationException)\nWhere: this cell\nTry: ", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoException_IsTheMessage() =>
        Assert.StartsWith("What: Command cancelled.\nWhere: this cell\n", ErrorWords.Of(null, "Command cancelled\nat Somewhere", "a"), StringComparison.Ordinal);

    [Fact]
    public void Of_OurPackageNotFound_SaysHowToSetUp()
    {
        string words = ErrorWords.Of(null, "Project.fsproj : error NU1101: Unable to find package FlapAero.Notebooks.", "#r \"nuget: FlapAero.Notebooks, *-*\"\n1");

        Assert.StartsWith("What: The lessons' assembly is not where this kernel was set up", words, StringComparison.Ordinal);
        Assert.Contains("Where: line 1 of this cell: #r ", words, StringComparison.Ordinal);
        Assert.Contains("-- jupyter\"", words, StringComparison.Ordinal);
        Assert.Contains("NuGet.config", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_RefusalOfTheLibrary_IsItsMessageAlone()
    {
        var refusal = Assert.Throws<RefusedInputException>(() => LoadFactor.InTurn(UnitsNet.Angle.FromDegrees(90)));

        string words = ErrorWords.Of(refusal, "", "a");

        Assert.StartsWith("What: bank: 90° is refused; allowed is -85° to 85°.", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PathsOfThisMachine_AreLeftOut()
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        string words = ErrorWords.Of(new FileNotFoundException($"no {Environment.CurrentDirectory}/a and no {home}/b"), "", "a");

        Assert.StartsWith("What: no ./a and no ~/b. (FileNotFoundException)", words, StringComparison.Ordinal);
    }

    private static Diagnostic Fault(string? code, int line, string message) =>
        new(new LinePositionSpan(new LinePosition(line, 0), new LinePosition(line, 1)), DiagnosticSeverity.Error, code, message);
}
