using System.Text.Json;
using System.Xml.Linq;
using FlapAero.Charts;
using FlapAero.Tests;

namespace FlapAero.Cli.Tests;

/// <summary>The list of what others wrote, against what the projects restore and the pages carry.</summary>
public sealed class ThirdPartyListTests
{
    private static string List { get; } = File.ReadAllText(RepositoryRoot.Path("docs/THIRD-PARTY.md"));

    [Fact]
    public void List_Packages_AreThoseThatAreShippedWithVersionAndLicence()
    {
        // What is outside the solution is in no package and on no page: the engine is made where it is used.
        string solution = File.ReadAllText(RepositoryRoot.Path("FlapAero.sln"));
        IEnumerable<string> shipped = Directory.GetDirectories(RepositoryRoot.Path("src"))
            .Where(project => solution.Contains($"{Path.GetFileName(project)}.csproj", StringComparison.Ordinal)).SelectMany(Shipped).Distinct();

        string packages = List[List.IndexOf("## Packages from NuGet", StringComparison.Ordinal)..List.IndexOf("## Scripts", StringComparison.Ordinal)];
        IEnumerable<string> listed = packages.Split('\n').Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(2)
            .Select(line => string.Join(' ', line.Split('|', StringSplitOptions.TrimEntries)[1..4]));
        Assert.Equal(shipped.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void List_Licences_StandInItWithTheirText()
    {
        foreach (string licence in new[] { "MIT", "MIT-0", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "OFL-1.1" })
            Assert.Contains($"\n### {licence}\n\n```\n", List, StringComparison.Ordinal);
        Assert.Contains(File.ReadAllText(RepositoryRoot.Path("src/FlapAero.Handouts/Assets/third-party/temml/LICENSE")).Split('\n')[2], List, StringComparison.Ordinal);
        string face = File.ReadAllText(RepositoryRoot.Path("src/FlapAero.Handouts/Assets/third-party/inter/LICENSE"));
        Assert.Contains(face[..face.IndexOf(" (", StringComparison.Ordinal)], List, StringComparison.Ordinal);
    }

    /// <summary>What the script says of itself, so that another version brings another notice.</summary>
    [Fact]
    public void PlotlyNotice_SaysWhatTheScriptSaysWithTheWholeLicence()
    {
        string own = FigureScript.Plotly[FigureScript.PlotlyNotice.Length..];
        string[] head = [.. own.Split('\n').Take(6).Select(line => line.TrimStart('/', '*', ' '))];

        Assert.StartsWith("/*!\n" + head[1] + ", " + head[2], FigureScript.PlotlyNotice, StringComparison.Ordinal);
        string mit = List[List.IndexOf("Permission is hereby", StringComparison.Ordinal)..List.IndexOf("### MIT-0", StringComparison.Ordinal)].TrimEnd('\n', '`');
        Assert.Contains(mit, FigureScript.PlotlyNotice, StringComparison.Ordinal);
        Assert.Contains($"| plotly.js (basic - minified) | {head[1].Split('v')[^1]} | MIT | {head[2]} {head[3]} |", List, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Shipped(string project)
    {
        string assets = Path.Combine(project, "obj", "project.assets.json");
        using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(assets));
        string folder = document.RootElement.GetProperty("packageFolders").EnumerateObject().First().Name;
        foreach (JsonProperty package in document.RootElement.GetProperty("targets").EnumerateObject().SelectMany(target => target.Value.EnumerateObject()))
        {
            if (package.Value.GetProperty("type").GetString() != "package" || !package.Value.TryGetProperty("runtime", out JsonElement runtime)
                || runtime.EnumerateObject().All(file => file.Name.EndsWith("/_._", StringComparison.Ordinal)))
                continue;
            string[] name = package.Name.Split('/');
            yield return $"{name[0]} {name[1]} {Licence(Path.Combine(folder, package.Name.ToLowerInvariant(), name[0].ToLowerInvariant() + ".nuspec"))}";
        }
    }

    private static string Licence(string nuspec)
    {
        XElement? licence = XDocument.Load(nuspec).Descendants().SingleOrDefault(e => e.Name.LocalName == "license");
        return licence?.Attribute("type")?.Value switch
        {
            null => "not named; see below",
            "expression" => licence.Value,
            _ => $"MIT, its file {licence.Value}",
        };
    }
}
