using System.Security;
using FlapAero.Tests;

namespace FlapAero.Packages.Tests;

/// <summary>
/// All packages, packed in one go into a folder feed, and folders outside the checkout that know that feed. Ours come from
/// there alone, the others from the packages that the checkout restored, so that no network is needed.
/// </summary>
public sealed class PackedFeed : IAsyncLifetime
{
    /// <summary>No one else has it, so that nothing stale can stand in.</summary>
    public const string Version = "0.1.0-packed";

    private readonly string _root = Directory.CreateTempSubdirectory("flapaero-packed-").FullName;

    public string Feed => Path.Combine(_root, "feed");

    public async ValueTask InitializeAsync()
    {
        // Its own place for what the build makes: the checkout's is in use by the tests that run beside. Its code style the checkout's
        // own build looks at, a third of the time.
        string build = RepositoryRoot.Path("artifacts/packed");
        (int code, string output, string error) = await Command.RunAsync(RepositoryRoot.Path("."), "dotnet",
            ["pack", "FlapAero.sln", "-o", Feed, "--artifacts-path", build, $"-p:Version={Version}", $"-p:LessonFolder={Path.Combine(build, "lessons")}/",
            "-p:RunAnalyzers=false", "-p:EnforceCodeStyleInBuild=false", "-v", "quiet"]);
        Assert.True(code == 0, output + error);
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(_root, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>A folder outside the checkout with the feed set up in it, and a package folder of its own.</summary>
    public async Task<string> FolderAsync(string name)
    {
        string folder = Directory.CreateDirectory(Path.Combine(_root, name)).FullName;
        (int code, string cache, _) = await Command.RunAsync(_root, "dotnet", ["nuget", "locals", "global-packages", "--list"]);
        Assert.Equal(0, code);
        string restored = cache[(cache.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim();
        await File.WriteAllTextAsync(Path.Combine(folder, "NuGet.config"), $"""
            <configuration>
              <config><add key="globalPackagesFolder" value="{SecurityElement.Escape(Path.Combine(_root, "packages"))}" /></config>
              <packageSources>
                <clear />
                <add key="packed" value="{SecurityElement.Escape(Feed)}" />
                <add key="restored" value="{SecurityElement.Escape(restored)}" />
              </packageSources>
              <packageSourceMapping>
                <packageSource key="packed"><package pattern="FlapAero" /><package pattern="FlapAero.*" /></packageSource>
                <packageSource key="restored"><package pattern="*" /></packageSource>
              </packageSourceMapping>
            </configuration>
            """, TestContext.Current.CancellationToken);
        return folder;
    }
}
