namespace FlapAero.Handouts.Tests;

public sealed class LookTests
{
    [Fact]
    public async Task Look()
    {
        using var folder = new Folder();
        folder.With("04-stall-in-turn.ipynb", WholeLesson.Make()).With("05-other.ipynb", NotebookText.Sound("The other lesson", 5));
        await folder.BuildAsync();
        Directory.CreateDirectory("/tmp/look");
        foreach (string f in Directory.GetFiles(folder.Output))
            File.Copy(f, "/tmp/look/" + Path.GetFileName(f), true);
    }
}
