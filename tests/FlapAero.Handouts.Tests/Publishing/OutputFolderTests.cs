using System.Text;
using System.Text.Json;
using FlapAero.Handouts.Publishing;

namespace FlapAero.Handouts.Tests.Publishing;

/// <summary>Interrupted between any two steps, a set of files is afterwards the old one or the new one.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private static readonly string[] Names = ["a.html", "b.html", "index.html"];

    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-").FullName;

    private string Own => Path.Combine(_folder, ".flapaero");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Open_InterruptedAfterThePlan_FinishesTheNewSet(int moved)
    {
        Write("old", Names);
        Stage("new", Names);
        File.WriteAllText(Path.Combine(Own, "plan.json"), JsonSerializer.Serialize(new { Moves = Names, Removals = Array.Empty<string>() }));
        foreach (string name in Names[..moved])
            File.Move(Path.Combine(Own, "new", name), Path.Combine(_folder, name), overwrite: true);

        using (OutputFolder.Open(_folder))
            Assert.All(Names, name => Assert.Equal("new " + name, Read(name)));
        AssertClean();
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(3)]
    public void Open_InterruptedBeforeThePlan_KeepsTheOldSet(int staged)
    {
        Write("old", Names);
        Stage("new", Names[..staged]);

        using (OutputFolder.Open(_folder))
            Assert.All(Names, name => Assert.Equal("old " + name, Read(name)));
        AssertClean();
    }

    [Theory]
    [InlineData("{\"Moves\":[\"../a.html\"],\"Removals\":[]}")]
    [InlineData("{\"Moves\":[],\"Removals\":[\"../notes.txt\"]}")]
    [InlineData("{\"Mov")]
    public void Open_PlanThatNoRunOfOursWrote_TouchesNothing(string plan)
    {
        string inner = Directory.CreateDirectory(Path.Combine(_folder, "pages", ".flapaero")).FullName;
        File.WriteAllText(Path.Combine(_folder, "notes.txt"), "mine");
        File.WriteAllText(Path.Combine(inner, "plan.json"), plan);

        using (OutputFolder.Open(Path.Combine(_folder, "pages")))
            Assert.Equal("mine", Read("notes.txt"));
        Assert.False(File.Exists(Path.Combine(inner, "plan.json")));
    }

    [Fact]
    public void Write_Removal_TakesAwayOnlyWhatIsAsItWasMade()
    {
        Write("old", Names);
        File.AppendAllText(Path.Combine(_folder, "b.html"), " and a note of mine");

        using (OutputFolder output = OutputFolder.Open(_folder))
            output.Write(new Dictionary<string, byte[]>(), ["a.html", "b.html"], PageSet.Empty);

        Assert.False(File.Exists(Path.Combine(_folder, "a.html")));
        Assert.EndsWith("a note of mine", Read("b.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_FileOfAnotherHand_IsRefusedAndKept()
    {
        File.WriteAllText(Path.Combine(_folder, "a.html"), "mine");

        string message = Assert.Throws<HandoutException>(() => Write("new", Names)).Message;

        Assert.Contains("a.html, not made by this command", message, StringComparison.Ordinal);
        Assert.Equal("mine", Read("a.html"));
        Assert.Equal(["a.html"], Directory.GetFileSystemEntries(_folder).Select(Path.GetFileName));
    }

    [Fact]
    public void Unchanged_EveryWayToDiffer_IsNoticed()
    {
        Write("old", Names);
        using OutputFolder output = OutputFolder.Open(_folder);

        Assert.Equal(Names, output.Unchanged("lesson", "old", "all"));
        Assert.Null(output.Unchanged("lesson", "new", "all"));
        Assert.Null(output.Unchanged("lesson", "old", "student"));
        Assert.Null(output.Unchanged("other", "old", "all"));
        File.Delete(Path.Combine(_folder, "b.html"));
        Assert.Null(output.Unchanged("lesson", "old", "all"));
    }

    private void Write(string set, string[] names)
    {
        using OutputFolder output = OutputFolder.Open(_folder);
        output.Write(names.ToDictionary(n => n, n => Bytes(set, n)), [], SetOf(set, names));
    }

    private void Stage(string set, string[] names)
    {
        Directory.CreateDirectory(Path.Combine(Own, "new"));
        foreach (string name in names)
            File.WriteAllBytes(Path.Combine(Own, "new", name), Bytes(set, name));
        File.WriteAllBytes(Path.Combine(Own, "new", "pages.json"), SetOf(set, names).ToBytes());
    }

    private static PageSet SetOf(string set, string[] names) => new(
        names.ToDictionary(n => n, n => new PageSet.Entry("lesson", set, OutputFolder.HashOf(Bytes(set, n)))),
        new Dictionary<string, PageSet.Made> { ["lesson"] = new(set, "all", names) });

    private static byte[] Bytes(string set, string name) => Encoding.UTF8.GetBytes($"{set} {name}");

    private string Read(string name) => File.ReadAllText(Path.Combine(_folder, name));

    private void AssertClean() =>
        Assert.Equal(["lock", "pages.json"], Directory.GetFileSystemEntries(Own).Select(Path.GetFileName).Order(StringComparer.Ordinal));
}
