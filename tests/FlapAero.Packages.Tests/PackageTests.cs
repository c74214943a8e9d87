using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using FlapAero.Tests;

namespace FlapAero.Packages.Tests;

[Trait("Speed", "slow")]
public sealed class PackageTests(PackedFeed packed)
{
    private static readonly Dictionary<string, string[]> Dependencies = new(StringComparer.Ordinal)
    {
        ["FlapAero"] = [],
        ["FlapAero.Charts"] = ["FlapAero"],
        ["FlapAero.Notebooks"] = ["FlapAero.Charts"],
        ["FlapAero.Cli"] = [],
    };

    public static TheoryData<string> Names => [.. Dependencies.Keys];

    [Fact]
    public void Pack_Solution_GivesThesePackagesEachWithSymbolsAndNoOther()
    {
        IEnumerable<string> expected = Dependencies.Keys.SelectMany(id => new[] { $"{id}.{PackedFeed.Version}.nupkg", $"{id}.{PackedFeed.Version}.snupkg" });

        Assert.Equal(expected.Order(StringComparer.Ordinal), Directory.GetFiles(packed.Feed).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Package_OfOurs_SaysWhatItIsUnderWhichLicence(string id)
    {
        using ZipArchive package = Open(id, "nupkg");
        XElement metadata = XDocument.Parse(Text(package, $"{id}.nuspec")).Root!.Elements().Single(e => e.Name.LocalName == "metadata");
        string Of(string name) => metadata.Elements().SingleOrDefault(e => e.Name.LocalName == name)?.Value ?? "";

        Assert.Equal((id, PackedFeed.Version, "MIT", "README.md"), (Of("id"), Of("version"), Of("license"), Of("readme")));
        Assert.InRange(Of("description").Length, 20, 200);
        Assert.NotEqual("", Of("tags"));
        Assert.Contains("training aid", Text(package, "README.md"), StringComparison.Ordinal);
        Assert.Equal(Dependencies[id], metadata.Descendants().Where(e => e.Name.LocalName == "dependency").Select(e => e.Attribute("id")!.Value)
            .Where(name => name.StartsWith("FlapAero", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Package_OfOurs_NamesWhatOthersWrote(string id)
    {
        using ZipArchive package = Open(id, "nupkg");

        Assert.Equal(File.ReadAllText(RepositoryRoot.Path("docs/THIRD-PARTY.md")), Text(package, "THIRD-PARTY.md"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Package_OfOurs_HasDocumentationAndSymbols(string id)
    {
        using ZipArchive package = Open(id, "nupkg"), symbols = Open(id, "snupkg");
        string folder = id == "FlapAero.Cli" ? "tools/net10.0/any" : "lib/net10.0";

        Assert.All(new[] { ".dll", ".xml" }, end => Assert.NotNull(package.GetEntry($"{folder}/{id}{end}")));
        Assert.NotNull(symbols.GetEntry($"{folder}/{id}.pdb"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Package_OfOurs_DoesNotTellWhereItWasBuilt(string id)
    {
        string root = RepositoryRoot.Path("").TrimEnd('/', '\\');
        using ZipArchive package = Open(id, "nupkg"), symbols = Open(id, "snupkg");

        foreach (ZipArchiveEntry entry in package.Entries.Concat(symbols.Entries).Where(entry => entry.Name.StartsWith("FlapAero", StringComparison.Ordinal)))
        {
            using var bytes = new MemoryStream();
            using (Stream stream = entry.Open())
                stream.CopyTo(bytes);
            Assert.All(new[] { Encoding.UTF8, Encoding.Unicode }, encoding =>
                Assert.True(bytes.ToArray().AsSpan().IndexOf(encoding.GetBytes(root)) < 0, $"{entry.FullName} holds the folder it was built in."));
        }
    }

    private ZipArchive Open(string id, string end) => ZipFile.OpenRead(Path.Combine(packed.Feed, $"{id}.{PackedFeed.Version}.{end}"));

    private static string Text(ZipArchive package, string name)
    {
        using var reader = new StreamReader(package.GetEntry(name)!.Open());
        return reader.ReadToEnd();
    }
}
