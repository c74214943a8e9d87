using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;

namespace FlapAero.Explorer.Tests;

/// <summary>A web space as a school has one: files of a folder below a path, whatever their names, and nothing else.</summary>
internal sealed class WebSpace : IDisposable
{
    private const string Below = "/school/course/";

    private readonly string _folder;
    private readonly HttpListener _listener = new();

    public WebSpace(string folder)
    {
        _folder = folder;
        using (var free = new TcpListener(IPAddress.Loopback, 0))
        {
            free.Start();
            Origin = $"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}";
        }

        _listener.Prefixes.Add(Origin + "/");
        _listener.Start();
        _ = AnswerAsync();
    }

    public string Origin { get; }

    /// <summary>What stands where the folder has something else.</summary>
    public ConcurrentDictionary<string, byte[]> Newer { get; } = [];

    public string Address(string file) => Origin + Below + file;

    public void Dispose() => _listener.Close();

    private async Task AnswerAsync()
    {
        try
        {
            while (true)
            {
                HttpListenerContext asked = await _listener.GetContextAsync();
                try
                {
                    Answer(asked);
                }
                catch (Exception e) when (e is HttpListenerException or IOException or InvalidOperationException)
                {
                    // The browser went away.
                }
            }
        }
        catch (Exception e) when (e is HttpListenerException or ObjectDisposedException or InvalidOperationException)
        {
            // The space is closed.
        }
    }

    private void Answer(HttpListenerContext asked)
    {
        string path = asked.Request.Url!.AbsolutePath, name = path.StartsWith(Below, StringComparison.Ordinal) ? path[Below.Length..] : "";
        string file = Path.Combine(_folder, name);
        bool isThere = Newer.ContainsKey(name) || (name.Length > 0 && File.Exists(file));
        asked.Response.StatusCode = isThere ? 200 : 404;
        asked.Response.ContentType = Path.GetExtension(name) switch
        {
            ".html" => "text/html; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            _ => "application/octet-stream",
        };
        if (isThere)
            asked.Response.OutputStream.Write(Newer.GetValueOrDefault(name) ?? File.ReadAllBytes(file));
        asked.Response.Close();
    }
}
