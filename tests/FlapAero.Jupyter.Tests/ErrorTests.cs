using FlapAero.Handouts.Lessons;
using FlapAero.Tests;

namespace FlapAero.Jupyter.Tests;

/// <summary>What a student sees in Jupyter when a cell fails: three lines, never a stack.</summary>
[Trait("Speed", "slow")]
public sealed class ErrorTests(InstalledJupyter jupyter)
{
    [Fact]
    public async Task Cells_ThatFail_SayWhatWhereAndWhatToTry()
    {
        // A folder that nothing was built in; afterwards the assembly is taken from where it is.
        string notebooks = Directory.CreateDirectory(Path.Combine(jupyter.Checkout, "nichts gebaut", "notebooks")).FullName;
        string setup = LessonNotebook.ReadFolder(RepositoryRoot.Path("notebooks"))[0].Cells.First(cell => cell.Role == CellRole.Setup).Source;
        string notebook = Path.Combine(notebooks, "errors.ipynb");
        await File.WriteAllTextAsync(notebook, Notebooks.Of(
            ("not-built", setup),
            ("built", $"#r \"{jupyter.Checkout}/artifacts/lessons/FlapAero.Notebooks.dll\"\nusing FlapAero; using UnitsNet;\nLength Half(Length whole) => throw new System.IO.FileNotFoundException($\"no {{Environment.CurrentDirectory}}/half\");"),
            ("refused", "var bank = Angle.FromDegrees(90);\nLoadFactor.InTurn(bank)"),
            ("compile", "var factor = 2;\nSpeed knots = 65;\nnothing"),
            ("thrown-by-an-earlier-cell", "\n\nvar half = Half(Length.FromFeet(2));"),
            ("old-answer", "var lesson = new { Check = (Func<Length, string>)(length => \"judged\") }; var answer = Length.FromFeet(1);"),
            ("answer-fails-again", "answer = Length.FromFeat(2);"),
            ("check", "lesson.Check(answer)"),
            ("mended", "answer = Length.FromFeet(2);"),
            ("check-again", "lesson.Check(answer)"),
            ("after", "Console.WriteLine(1.5); 2.5.ToString()")), TestContext.Current.CancellationToken);

        SavedNotebook saved = await jupyter.RunAsync(notebook, "--allow-errors");

        AssertLines(saved.ErrorOf("not-built"), "not built", "line 1 of this cell: #r", "dotnet run --project src/FlapAero.Cli -- jupyter");
        AssertLines(saved.ErrorOf("refused"), "bank: 90° is refused; allowed is -85° to 85°.", "line 2 of this cell: LoadFactor.InTurn(bank)", "Change the value");
        AssertLines(saved.ErrorOf("compile"), "Cannot implicitly convert type 'int' to 'UnitsNet.Speed'. (1 more", "line 2 of this cell: Speed knots = 65;", "Speed.FromKnots(65)");
        AssertLines(saved.ErrorOf("thrown-by-an-earlier-cell"), "no ./half", "line 3 of this cell: var half", "the file's name");
        AssertLines(saved.ErrorOf("check"), "The last cell that sets answer failed", "this cell", "Mend that cell");
        Assert.Equal("judged", Assert.Single(saved.Outputs["check-again"]).Text);
        Assert.All(saved.Outputs.Where(cell => cell.Key is not ("built" or "old-answer" or "mended" or "after")), cell => Assert.Single(cell.Value));
        Assert.Equal("1.5,2.5", string.Join(',', saved.Outputs["after"].Select(output => output.Text)));
        // The reference to the assembly, which this test writes into its cell, is the only trace of the machine.
        Machine.AssertNotIn(saved.Text.Replace($"{jupyter.Checkout}/artifacts", "", StringComparison.Ordinal), jupyter.Checkout);
    }

    private static void AssertLines(string error, string what, string where, string advice)
    {
        string[] lines = error.Split('\n');
        Assert.Equal(["What: ", "Where: ", "Try: "], lines.Select(line => line[..(line.IndexOf(':', StringComparison.Ordinal) + 2)]));
        Assert.Contains(what, lines[0], StringComparison.Ordinal);
        Assert.Contains(where, lines[1], StringComparison.Ordinal);
        Assert.Contains(advice, lines[2], StringComparison.Ordinal);
    }
}
