using System.Text.RegularExpressions;

namespace FlapAero.Published.Tests.Landings;

/// <summary>docs/handbook-rules.md says what the model says today: every block of it that is computed is computed again.</summary>
public sealed partial class HandbookDocumentTests
{
    private static readonly string Document =
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "handbook-rules.md")).ReplaceLineEndings("\n");

    public static TheoryData<string> Blocks => [.. HandbookBlocks.All.Keys];

    [Theory, MemberData(nameof(Blocks))]
    public void Block_OfTheDocument_IsWhatTheModelGives(string name)
    {
        Match written = Assert.Single(Block().Matches(Document), match => match.Groups["name"].Value == name);
        Assert.Equal(string.Join('\n', HandbookBlocks.All[name]), written.Groups["lines"].Value);
    }

    [Fact]
    public void Blocks_OfTheDocument_AreAllComputed() =>
        Assert.Equal(HandbookBlocks.All.Keys.Order(), Block().Matches(Document).Select(match => match.Groups["name"].Value).Order());

    [GeneratedRegex(@"<!-- computed: (?<name>[\w-]+) -->\n\n(?<lines>.*?)\n\n<!-- end -->", RegexOptions.Singleline)]
    private static partial Regex Block();
}
