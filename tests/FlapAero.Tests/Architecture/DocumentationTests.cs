using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace FlapAero.Tests.Architecture;

/// <summary>A calculation without formula, range, source, errors and a worked example is refused.</summary>
public sealed partial class DocumentationTests
{
    private static readonly HashSet<string> SourceKeys =
        [.. ReferenceHeading().Matches(File.ReadAllText(RepositoryRoot.Path("docs/references.md"))).Select(match => match.Groups[1].Value)];

    public static TheoryData<string> Calculations =>
        [.. DocumentedCalculations.Methods().Select(DocumentedCalculations.Id)];

    [Fact]
    public void Library_Calculations_AreFound() => Assert.True(DocumentedCalculations.Methods().Count() > 25);

    [Theory, MemberData(nameof(Calculations))]
    public void Calculation_Comment_SaysEverything(string id)
    {
        MethodInfo method = DocumentedCalculations.Methods().Single(candidate => DocumentedCalculations.Id(candidate) == id);
        XElement comment = Assert.IsType<XElement>(DocumentedCalculations.Comment(method));
        string remarks = comment.Element("remarks")?.Value ?? "";

        Assert.False(string.IsNullOrWhiteSpace(comment.Element("summary")?.Value), "no summary");
        Assert.Contains("Formula:", remarks, StringComparison.Ordinal);
        Assert.Contains("Range:", remarks, StringComparison.Ordinal);
        Assert.NotNull(comment.Element("returns"));
        Assert.NotNull(comment.Element("exception"));
        Assert.NotNull(comment.Element("example"));
        Assert.Equal(
            method.GetParameters().Select(parameter => parameter.Name),
            comment.Elements("param").Select(parameter => (string?)parameter.Attribute("name")));
    }

    [Theory, MemberData(nameof(Calculations))]
    public void Calculation_SourceKeys_Resolve(string id)
    {
        MethodInfo method = DocumentedCalculations.Methods().Single(candidate => DocumentedCalculations.Id(candidate) == id);
        string remarks = DocumentedCalculations.Comment(method)?.Element("remarks")?.Value ?? "";
        string[] keys = [.. SourceKey().Matches(remarks[Math.Max(0, remarks.IndexOf("Source:", StringComparison.Ordinal))..])
            .Select(match => match.Groups[1].Value)];

        Assert.NotEmpty(keys);
        Assert.All(keys, key => Assert.Contains(key, SourceKeys));
    }

    [GeneratedRegex(@"^#+ \[([a-z0-9-]+)\]", RegexOptions.Multiline)]
    private static partial Regex ReferenceHeading();

    [GeneratedRegex(@"\[([a-z][a-z0-9-]+)\]")]
    private static partial Regex SourceKey();
}
