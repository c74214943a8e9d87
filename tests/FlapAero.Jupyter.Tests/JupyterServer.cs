using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace FlapAero.Jupyter.Tests;

/// <summary>Jupyter Notebook on loopback, as a user starts it in a folder of lessons.</summary>
internal sealed class JupyterServer : IAsyncDisposable
{
    /// <summary>What the installed Jupyter Notebook says its version is.</summary>
    private static ProgramRun? _version;

    private readonly Process _process;
    private readonly Task _output;

    private JupyterServer(Process process, Uri address)
    {
        _process = process;
        // Read, or the server would wait for a reader at some point.
        _output = Task.WhenAll(process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        Address = address;
    }

    public Uri Address { get; }

    public static async Task<JupyterServer> StartAsync(InstalledJupyter jupyter, string folder, string data, params string[] options)
    {
        CancellationToken cancellationToken = TestContext.Current.CancellationToken;
        IReadOnlyDictionary<string, string?> environment = jupyter.Environment(data);
        await SkipWithoutNotebook6Async(environment, cancellationToken);
        string port = FreePort().ToString(CultureInfo.InvariantCulture);
        Process process = ProgramRun.Start("jupyter", folder, environment,
            ["notebook", "--no-browser", "--ip=127.0.0.1", "--port=" + port, "--NotebookApp.port_retries=0",
            "--NotebookApp.token=", "--NotebookApp.password=", "--NotebookApp.allow_root=True", .. options]);
        var server = new JupyterServer(process, new Uri($"http://127.0.0.1:{port}/"));
        using var client = new HttpClient();
        while (true)
        {
            Assert.False(process.HasExited, "Jupyter Notebook did not start");
            try
            {
                using HttpResponseMessage answer = await client.GetAsync(new Uri(server.Address, "api"), cancellationToken);
                if (answer.IsSuccessStatusCode)
                    return server;
            }
            catch (HttpRequestException)
            {
                await Task.Delay(100, cancellationToken);
            }
        }
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        await _output;
        _process.Dispose();
    }

    /// <summary>The tests speak to the page of Notebook 6, the one in Debian; a later one has another page.</summary>
    private static async Task SkipWithoutNotebook6Async(IReadOnlyDictionary<string, string?> environment, CancellationToken cancellationToken)
    {
        _version ??= await ProgramRun.OfAsync("jupyter", AppContext.BaseDirectory, environment, ["notebook", "--version"], cancellationToken);
        if (_version.ExitCode == 0 && _version.Output.StartsWith("6.", StringComparison.Ordinal))
            return;
        const string Missing = "no Jupyter Notebook 6 found";
        if (Environment.GetEnvironmentVariable("CI") == "true")
            Assert.Fail(Missing + "; CI needs one");
        Assert.Skip(Missing);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
