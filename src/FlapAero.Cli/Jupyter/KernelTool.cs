using System.Text.Json;
using System.Xml;
using System.Xml.Linq;

namespace FlapAero.Cli.Jupyter;

/// <summary>The kernel's program, in the version that the tool manifest pins.</summary>
/// <param name="Version">The pinned version.</param>
/// <param name="Assembly">The program's assembly in the folder of packages: it starts from any folder, which a local tool's command does not.</param>
internal sealed record KernelTool(string Version, string Assembly)
{
    private const string Package = "microsoft.dotnet-interactive";

    /// <summary>Fetches the tool, unless it is there; says so before, since it takes a while.</summary>
    public static async Task<KernelTool> RestoreAsync(Checkout checkout, TextWriter output, CancellationToken cancellationToken)
    {
        string version = PinnedVersion(checkout.ToolManifest);
        string folder = Path.Combine(await PackagesFolderAsync(checkout, cancellationToken), Package, version);
        // Restoring is content with what an earlier one put into the standard folder, also where packages now go elsewhere.
        string standard = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages", Package, version);
        if ((Find(folder) ?? Find(standard)) is { } present)
            return new KernelTool(version, present);
        await output.WriteLineAsync($"Fetching the kernel tool {version}, once: 50 MB, about a minute with a usual connection …");
        await checkout.DotnetAsync(cancellationToken, "tool", "restore");
        return new KernelTool(version, Find(folder) ?? Find(standard) ?? throw new SetupException(
            $"\"dotnet tool restore\" ended well, yet {folder} holds no kernel program; empty that folder and run this again."));
    }

    private static string PinnedVersion(string manifest)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(manifest));
            return document.RootElement.GetProperty("tools").GetProperty(Package).GetProperty("version").GetString()!;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new SetupException($"{manifest} does not pin the tool {Package}; take the file back from the project's history. ({e.Message})");
        }
    }

    private static async Task<string> PackagesFolderAsync(Checkout checkout, CancellationToken cancellationToken)
    {
        const string Name = "global-packages";
        string said = await checkout.DotnetAsync(cancellationToken, "nuget", "locals", Name, "--list");
        int start = said.IndexOf(Name + ":", StringComparison.Ordinal);
        return start >= 0
            ? said[(start + Name.Length + 1)..].Split('\n')[0].Trim()
            : throw new SetupException($"\"dotnet nuget locals {Name} --list\" named no folder; it said: {said.Trim()}");
    }

    /// <summary>The program as the package itself names it, or null where the package is missing or broken.</summary>
    private static string? Find(string packageFolder)
    {
        string tools = Path.Combine(packageFolder, "tools");
        if (!Directory.Exists(tools))
            return null;
        foreach (string settings in Directory.EnumerateFiles(tools, "DotnetToolSettings.xml", SearchOption.AllDirectories))
            try
            {
                string? entry = XDocument.Load(settings).Descendants("Command").FirstOrDefault()?.Attribute("EntryPoint")?.Value;
                if (entry is not null && Path.Combine(Path.GetDirectoryName(settings)!, entry) is var program && File.Exists(program))
                    return program;
            }
            catch (XmlException)
            {
                // Half a package: restoring it again may help.
            }
        return null;
    }
}
