using FlapAero.Handouts.Exporting;
using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests.Exporting;

public sealed class LessonProgramTests
{
    private readonly List<string> _faults = [];

    [Fact]
    public void Of_CellsOfAllKinds_GivesOneProgramInTheirOrder()
    {
        NotebookText notebook = NotebookText.Sound()
            .Code("compute", "a", "A cell", "using System.Globalization;\nrecord Wing(double Span);\nvar wing = new Wing(11);\ndouble Half(double x) => x / 2;\nHalf(wing.Span) // the value")
            .Code("compute", "b", "Another", "Console.WriteLine(Half(2));");

        string program = Program(notebook);

        Assert.StartsWith("// Lesson 1: A turn to final\n", program, StringComparison.Ordinal);
        Assert.Contains("\n#:project ../x.csproj\n", program, StringComparison.Ordinal);
        Assert.Contains("\nusing System.Globalization;\n", program, StringComparison.Ordinal);
        Assert.Contains("\n// A cell\nvar wing = new Wing(11);\ndouble Half(double x) => x / 2;\nTerminal.Show(Half(wing.Span)); // the value\n", program, StringComparison.Ordinal);
        Assert.Contains("\n// Another\nConsole.WriteLine(Half(2));\n", program, StringComparison.Ordinal);
        Assert.EndsWith("\n\nrecord Wing(double Span);\n", program, StringComparison.Ordinal);
        Assert.DoesNotContain("#r", program, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Prose_IsPrintedWrappedWhateverItHolds()
    {
        string source = "## Why\n\nIt says \"\"\"so\"\"\" {here} and \\there, " + string.Join(' ', Enumerable.Repeat("word", 40)) + "\n\n- one\n- two";

        string program = Program(NotebookText.Sound().Markdown("explain", "e", "E", source));

        Assert.Contains("Terminal.Say(\"\"\"\"\n    ## Why\n\n    It says \"\"\"so\"\"\" {here} and \\there, word", program, StringComparison.Ordinal);
        Assert.Contains("\n\n    - one\n    - two\n    \"\"\"\");", program, StringComparison.Ordinal);
        Assert.All(program.Split('\n').Where(line => line.StartsWith("    ", StringComparison.Ordinal)), line => Assert.InRange(line.Length, 0, 84));
    }

    /// <summary>In a terminal no link leads anywhere, and no page prints the minutes.</summary>
    [Fact]
    public void Of_NotesOfALesson_NameCellsAndMinutesInWords()
    {
        LessonNotebook lesson = LessonCopies.Named("what-flaps-change");

        string program = LessonProgram.Of(lesson, LibraryReference.Project("../x.csproj"), _faults)!;

        Assert.Empty(_faults);
        Assert.DoesNotContain("](#", program, StringComparison.Ordinal);
        Assert.Contains("1. The aeroplane on its path (4 min): ", program, StringComparison.Ordinal);
        Assert.Contains("- Degrees in hand: 8 min\n", program, StringComparison.Ordinal);
        Assert.Contains($"- **Together: {lesson.Minutes} min**\n", program, StringComparison.Ordinal);
        Assert.Contains($"**It takes** about {lesson.Minutes} minutes.", program, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NameDeclaredAnewAndUsedNowhereElse_GetsBraces()
    {
        string program = Program(NotebookText.Sound()
            .Code("compute", "a", "A", "var (draw, other) = (1, 2);\ndraw + other")
            .Code("compute", "b", "B", "var draw = 2;\nnew[] { 1 }.Select(draw => draw).Count()"));

        Assert.Contains("// A\n{\nvar (draw, other) = (1, 2);\nTerminal.Show(draw + other);\n}\n", program, StringComparison.Ordinal);
        Assert.Contains("// B\n{\nvar draw = 2;\n", program, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NameDeclaredAnewAndUsedLater_NamesTheCellsAndTheName()
    {
        Refuse(NotebookText.Sound()
            .Code("compute", "a", "A", "var draw = 1;")
            .Code("compute", "b", "B", "var draw = 2;\nvar kept = 3;")
            .Code("compute", "c", "C", "kept"));

        Assert.Equal(
            "01-turn.ipynb, cell \"B\" (b) declares \"draw\", which cell \"A\" (a) declares too; a notebook allows it, a program only where no later cell uses what the cell declares, but cell \"C\" (c) uses \"kept\". Choose another name in one of them.",
            Assert.Single(_faults));
    }

    [Theory]
    [InlineData("#!time\n1", "the line #!time")]
    [InlineData("#i \"nuget:https://example.org\"\n1", "the line #i")]
    [InlineData("#r \"../other.dll\"\n1", "the line #r \"../other.dll\"")]
    [InlineData("nothing.Here()", "'nothing' does not exist")]
    [InlineData("Console.WriteLine(1)", "does not compile in a program")]
    public void Of_WhatOnlyANotebookAllows_NamesTheCellAndSaysWhat(string source, string words)
    {
        Refuse(NotebookText.Sound().Code("compute", "a", "A", source));

        Assert.StartsWith("01-turn.ipynb, cell \"A\" (a) ", Assert.Single(_faults), StringComparison.Ordinal);
        Assert.Contains(words, _faults[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PackageOfACell_IsAPackageOfTheProgram() =>
        Assert.Contains("\n#:package Some.Thing@1.2.3\n#:property", Program(NotebookText.Sound().Code("compute", "a", "A", "#r \"nuget: Some.Thing, 1.2.3\"\n1")), StringComparison.Ordinal);

    [Fact]
    public void Of_Checkout_SaysInItsFirstLinesHowItIsRunAndForWhom()
    {
        string[] lines = Of(NotebookText.Sound(), LibraryReference.Project("../x.csproj"))!.Split('\n');

        Assert.EndsWith(": dotnet run 01-turn.cs", lines[1], StringComparison.Ordinal);
        Assert.Contains("checkout", lines[2], StringComparison.Ordinal);
        Assert.Contains("--packages", lines[2], StringComparison.Ordinal);
        Assert.Contains("For the instructor", lines[3], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Package_SaysInItsFirstLinesWhereThePackageComesFrom()
    {
        string[] lines = Of(NotebookText.Sound(), LibraryReference.Package("0.9.0"))!.Split('\n');

        Assert.EndsWith(": dotnet run 01-turn.cs", lines[1], StringComparison.Ordinal);
        Assert.Contains("FlapAero.Notebooks 0.9.0", lines[2], StringComparison.Ordinal);
        Assert.Contains("NuGet.config", lines[2], StringComparison.Ordinal);
        Assert.Contains("#:package FlapAero.Notebooks@0.9.0", lines);
    }

    private string Program(NotebookText notebook)
    {
        string? program = Of(notebook, LibraryReference.Project("../x.csproj"));
        Assert.Empty(_faults);
        return program!;
    }

    private void Refuse(NotebookText notebook) => Assert.Null(Of(notebook, LibraryReference.Project("../x.csproj")));

    private string? Of(NotebookText notebook, LibraryReference library) =>
        LessonProgram.Of(LessonNotebook.Parse("01-turn.ipynb", notebook.ToString()), library, _faults);
}
