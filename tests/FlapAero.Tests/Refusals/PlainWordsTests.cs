namespace FlapAero.Tests.Refusals;

/// <summary>The runtime's own words for an argument are cut in one place, and nowhere else does code know how they look.</summary>
public sealed class PlainWordsTests
{
    [Fact]
    public void Of_RuntimesArgumentError_LosesTheArgumentsName()
    {
        Assert.Equal("no wind", PlainWords.Of(new ArgumentException("no wind", "wind")));
        Assert.Equal("no wind", PlainWords.Of(new ArgumentException("no wind")));
        Assert.Equal("(Parameter 'x') stays", PlainWords.Of(new InvalidOperationException("(Parameter 'x') stays")));
    }

    [Fact]
    public void Sources_RuntimesWords_StandInOneFileOnly()
    {
        string[] files = [.. Directory.EnumerateFiles(RepositoryRoot.Path("src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"))
            .Where(file => File.ReadAllText(file).Contains("(Parameter '", StringComparison.Ordinal))
            .Select(file => Path.GetFileName(file))];
        Assert.Equal(["PlainWords.cs"], files);
    }

    // What reaches a reader of a lesson or a file is ours; nothing there throws what the runtime would put its own words to.
    [Fact]
    public void Sources_OfWhatLessonsUse_ThrowNoArgumentErrorOfTheRuntime()
    {
        foreach (string project in (string[])["FlapAero", "FlapAero.Charts", "FlapAero.Notebooks"])
        {
            foreach (string file in Directory.EnumerateFiles(RepositoryRoot.Path(Path.Combine("src", project)), "*.cs", SearchOption.AllDirectories))
            {
                string code = File.ReadAllText(file);
                Assert.DoesNotContain("new ArgumentException(", code, StringComparison.Ordinal);
                Assert.DoesNotContain("new ArgumentOutOfRangeException(", code, StringComparison.Ordinal);
                Assert.DoesNotContain("ArgumentException.ThrowIf", code, StringComparison.Ordinal);
                Assert.DoesNotContain("ArgumentOutOfRangeException.ThrowIf", code, StringComparison.Ordinal);
            }
        }
    }
}
