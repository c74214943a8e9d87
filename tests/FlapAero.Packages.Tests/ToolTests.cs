using FlapAero.Tests;

namespace FlapAero.Packages.Tests;

/// <summary>The command, installed from the feed, works where there is no checkout.</summary>
[Trait("Speed", "slow")]
public sealed class ToolTests(PackedFeed packed)
{
    [Fact]
    public async Task Tool_InstalledOutsideTheCheckout_MakesPagesAndProgramsOfALesson()
    {
        string folder = await packed.FolderAsync("a class");
        string lessons = Directory.CreateDirectory(Path.Combine(folder, "lessons")).FullName;
        File.Copy(RepositoryRoot.Path("notebooks/04-approach-speed.ipynb"), Path.Combine(lessons, "04-approach-speed.ipynb"));
        await DoneAsync(folder, "dotnet", "tool", "install", "FlapAero.Cli", "--version", PackedFeed.Version, "--tool-path", "tool");
        string flapaero = Path.Combine(folder, "tool", OperatingSystem.IsWindows() ? "flapaero.exe" : "flapaero");

        string help = await DoneAsync(folder, flapaero, "--help");
        Assert.All(new[] { "handouts", "check", "export", "landings" }, command => Assert.Contains(command, help, StringComparison.Ordinal));

        await DoneAsync(folder, flapaero, "handouts", "--notebooks", "lessons", "--out", "pages");
        Assert.Contains("53.3", await File.ReadAllTextAsync(Path.Combine(folder, "pages", "04-approach-speed.html"), TestContext.Current.CancellationToken), StringComparison.Ordinal);

        Assert.Contains("fit to be stored", await DoneAsync(folder, flapaero, "check", "lessons"), StringComparison.Ordinal);

        await DoneAsync(folder, flapaero, "export", "--packages", "--notebooks", "lessons", "--out", "programs");
        string said = await DoneAsync(folder, "dotnet", "run", Path.Combine("programs", "04-approach-speed.cs"));
        Assert.Matches("Approach speed, flaps up: [0-9.]+\u00a0kt is right, within", said);
        Assert.Contains("at 53.3\u00a0kt CAS", said, StringComparison.Ordinal);
    }

    private static async Task<string> DoneAsync(string folder, string file, params string[] arguments)
    {
        (int code, string output, string error) = await Command.RunAsync(folder, file, arguments);
        Assert.True(code == 0, $"{Path.GetFileName(file)} {string.Join(' ', arguments)}: {code}\n{output}{error}");
        return output;
    }
}
