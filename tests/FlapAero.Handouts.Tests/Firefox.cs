using System.Diagnostics;
using FlapAero.Handouts.Tests.WebDriver;

namespace FlapAero.Handouts.Tests;

/// <summary>
/// An installed Firefox, started once, when the first page is opened, and driven by WebDriver BiDi; tests are skipped where there is
/// none, except in CI. It reaches no network, since all it asks for goes to a proxy that is not there.
/// </summary>
public sealed class Firefox : IAsyncDisposable
{
    private const string Listening = "WebDriver BiDi listening on ";

    private static readonly string[] Names = ["firefox-esr", "firefox"];

    private static readonly string[] Preferences =
    [
        "user_pref('network.proxy.type', 1);",
        "user_pref('network.proxy.http', '127.0.0.1');",
        "user_pref('network.proxy.http_port', 9);",
        "user_pref('network.proxy.ssl', '127.0.0.1');",
        "user_pref('network.proxy.ssl_port', 9);",
        "user_pref('network.captive-portal-service.enabled', false);",
        "user_pref('network.connectivity-service.enabled', false);",
        // One tab at a time is looked at: one process for pages is enough, and none is kept ready.
        "user_pref('dom.ipc.processCount', 1);",
        "user_pref('dom.ipc.processPrelaunch.enabled', false);",
    ];

    private readonly Lazy<Task<Started?>> _started = new(StartAsync);

    public async ValueTask DisposeAsync()
    {
        if (_started.IsValueCreated && await _started.Value is { } started)
            await started.DisposeAsync();
    }

    /// <summary>A tab of its own with a page that has been loaded; it keeps a list of everything that went wrong or out.</summary>
    public async Task<FirefoxTab> OpenAsync(string address, int width, int height = 720)
    {
        Started? started = await _started.Value;
        if (started is null)
        {
            const string Missing = "no Firefox found";
            if (Environment.GetEnvironmentVariable("CI") == "true")
                Assert.Fail(Missing + "; CI needs one");
            Assert.Skip(Missing);
        }
        return await FirefoxTab.OpenAsync(started.Session, address, width, height);
    }

    private static async Task<Started?> StartAsync()
    {
        if (Find() is not { } path)
            return null;
        string profile = Directory.CreateTempSubdirectory("flapaero-firefox-").FullName;
        await File.WriteAllLinesAsync(Path.Combine(profile, "user.js"), Preferences.Select(line => line.Replace('\'', '"')));
        // Preferences that a reader sets are the browser's own, not a page's: hence the access to its system.
        string[] arguments = ["--headless", "--no-remote", "--remote-debugging-port=0", "--remote-allow-system-access", "--profile", profile];
        var process = Process.Start(new ProcessStartInfo(path, arguments)
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        })!;
        _ = process.StandardOutput.ReadToEndAsync();
        string address = await AddressAsync(process);
        _ = process.StandardError.ReadToEndAsync();
        return new Started(process, profile, await BidiSession.BeginAsync(new Uri(address + "/session")));
    }

    private static async Task<string> AddressAsync(Process process)
    {
        while (await process.StandardError.ReadLineAsync().WaitAsync(TimeSpan.FromMinutes(2)) is { } line)
            if (line.StartsWith(Listening, StringComparison.Ordinal))
                return line[Listening.Length..].Trim();
        throw new InvalidOperationException("Firefox ended before it listened.");
    }

    private static string? Find()
    {
        if (Environment.GetEnvironmentVariable("FIREFOX") is { Length: > 0 } named)
            return named;
        string ending = OperatingSystem.IsWindows() ? ".exe" : "";
        IEnumerable<string> places = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name + ending)))
            .Append("/Applications/Firefox.app/Contents/MacOS/firefox");
        if (Environment.GetFolderPath(Environment.SpecialFolder.ProgramFiles) is { Length: > 0 } programs)
            places = places.Append(Path.Combine(programs, "Mozilla Firefox", "firefox.exe"));
        return places.FirstOrDefault(File.Exists);
    }

    private sealed record Started(Process Process, string Profile, BidiSession Session) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            await Session.SendAsync("browser.close", new { });
            await Session.DisposeAsync();
            using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(20));
            try
            {
                await Process.WaitForExitAsync(patience.Token);
            }
            catch (OperationCanceledException)
            {
                Process.Kill(entireProcessTree: true);
                await Process.WaitForExitAsync(CancellationToken.None);
            }
            Process.Dispose();
            Directory.Delete(Profile, recursive: true);
        }
    }
}
