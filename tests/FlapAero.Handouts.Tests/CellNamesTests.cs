using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Tests;

public sealed class CellNamesTests
{
    [Theory]
    [InlineData("var mine = 0.0; // your answer", "mine")]
    [InlineData("var first = 1;\nSpeed second = Speed.FromKnots(0);", "second")]
    [InlineData("int a = 1, b = 2;", "b")]
    [InlineData("var (left, right) = (1, 2);", "right")]
    [InlineData("// var hidden = 1;\nvar shown = \"var inText = 1;\";", "shown")]
    [InlineData("var outer = 1;\n{ var inner = 2; }\ndouble Half(double x) { var y = x / 2; return y; }", "outer")]
    [InlineData("mine == 1", null)]
    [InlineData("", null)]
    public void LastVariable_Cell_IsTheLastThatLaterCellsSee(string source, string? name) =>
        Assert.Equal(name, CellNames.Of(source).LastVariable);

    [Theory]
    [InlineData("lesson.Check(\"W\", mine, 1.5, 0.1)", true)]
    [InlineData("lesson.Check(\"mine\", yours, 1.5, 0.1)", false)]
    [InlineData("lesson.mine(1) // mine", false)]
    public void Used_Cell_AreNamesAndNotWords(string source, bool isUsed) =>
        Assert.Equal(isUsed, CellNames.Of(source).Used.Contains("mine"));

    [Fact]
    public void StatementsOf_Variable_AreWholeStatements() =>
        Assert.Equal(["var mine = Math\n    .Sqrt(2);"], CellNames.Of("var other = 1;\nvar mine = Math\n    .Sqrt(2); // so").StatementsOf("mine"));

    [Theory]
    [InlineData("#r \"../artifacts/lessons/FlapAero.Notebooks.dll\"", null, null, "FlapAero.Notebooks.dll")]
    [InlineData("  #r   \"..\\\\artifacts\\\\FlapAero.dll\"", null, null, "FlapAero.dll")]
    [InlineData("#r \"nuget: FlapAero.Notebooks, *-*\"\nusing System;", "FlapAero.Notebooks", "*-*", null)]
    [InlineData("#r \"nuget:Some.Thing\"", "Some.Thing", null, null)]
    [InlineData("#r \"nuget: Some Thing, 1, 2\"", null, null, null)]
    public void In_Cell_FindsPackagesAndAssemblies(string source, string? package, string? version, string? assembly)
    {
        CellReference found = Assert.Single(CellReference.In(CellNames.Parsed(source)));

        Assert.Equal((package, version, assembly), (found.Package, found.Version, found.Assembly));
        Assert.StartsWith("\"", source[found.Quoted.Start..found.Quoted.End], StringComparison.Ordinal);
    }

    [Fact]
    public void In_TextThatLooksLikeOne_FindsNothing() =>
        Assert.Empty(CellReference.In(CellNames.Parsed("var text = \"\"\"\n    #r \"nuget: A\"\n    \"\"\";\n// #r \"B.dll\"")));
}
