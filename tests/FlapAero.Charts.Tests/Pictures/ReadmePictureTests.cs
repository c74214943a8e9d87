using FlapAero.Tests;

namespace FlapAero.Charts.Tests.Pictures;

/// <summary>
/// The pictures of the README are what the library draws today. <c>FLAPAERO_README_PICTURES=1</c> in the environment of this test writes them anew.
/// </summary>
public sealed class ReadmePictureTests
{
    private const string WritesThem = "FLAPAERO_README_PICTURES";

    [Fact]
    public void ViewOverTheNose_OfTheReadme_IsDrawnFromTodaysNumbers() => AssertIs("view-over-the-nose.svg", Charts.Pictures
        .ViewOverTheNose("The runway over the nose", Quillmere.Runway24, Drawn.See("flaps up", Drawn.Flaps(0).Up), Drawn.See("full flap", Drawn.Flaps(0).Full)));

    [Fact]
    public void RoundOut_OfTheReadme_IsDrawnFromTodaysNumbers() => AssertIs("round-out.svg", Charts.Pictures
        .RoundOut("The round-out in three moments", Drawn.Landed("flaps up", Drawn.Flaps(0).Up), Drawn.Landed("full flap", Drawn.Flaps(0).Full)));

    private static void AssertIs(string file, Picture picture)
    {
        string path = RepositoryRoot.Path("docs/pictures/" + file), drawn = picture.ToSvg() + "\n";
        if (Environment.GetEnvironmentVariable(WritesThem) == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, drawn);
        }
        Assert.Equal(drawn, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }
}
