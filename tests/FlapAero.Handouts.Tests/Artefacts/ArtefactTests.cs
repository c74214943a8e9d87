using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Tests.Artefacts;

/// <summary>Which files are made, and what is in each.</summary>
public sealed class ArtefactTests(ApproachSpeedArtefacts lesson) : IClassFixture<ApproachSpeedArtefacts>
{
    [Fact]
    public void Of_AllEditions_NamesEachFileAndWhoItIsFor()
    {
        if (Environment.GetEnvironmentVariable("KEEP") is { } keep) foreach (Artefact a in lesson.All) File.WriteAllText(Path.Combine(keep, a.Name), a.Content);
        string[] names = [.. lesson.All.Select(a => a.Name)];
        Assert.Equal(
            [
                ApproachSpeedArtefacts.Student, ApproachSpeedArtefacts.Instructor, ApproachSpeedArtefacts.Key,
                "04-approach-speed.sheet-1.html", "04-approach-speed.sheet-1.key.html", ApproachSpeedArtefacts.Sheet, ApproachSpeedArtefacts.SheetKey,
                "04-approach-speed.sheet-3.html", "04-approach-speed.sheet-3.key.html", ApproachSpeedArtefacts.Notebook, ApproachSpeedArtefacts.Index,
            ],
            names);
    }
}
