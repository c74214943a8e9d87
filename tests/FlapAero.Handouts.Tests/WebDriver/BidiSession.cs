using System.Collections.Concurrent;
using System.Net.WebSockets;
using System.Text.Json;

namespace FlapAero.Handouts.Tests.WebDriver;

/// <summary>A session of WebDriver BiDi (W3C): commands with their results, and the events that a browser tells of itself.</summary>
public sealed class BidiSession : IAsyncDisposable
{
    /// <summary>On a shared machine seconds become a minute.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly ClientWebSocket _socket = new();
    private readonly ConcurrentDictionary<long, TaskCompletionSource<JsonElement>> _waiting = new();
    private readonly SemaphoreSlim _turn = new(1, 1);
    private Task _reading = Task.CompletedTask;
    private long _last;

    private BidiSession()
    {
    }

    /// <summary>The method and the parameters of each event.</summary>
    public event Action<string, JsonElement>? Told;

    /// <summary>Connects to a browser and begins its only session, which tells of errors in pages and of what they ask for.</summary>
    public static async Task<BidiSession> BeginAsync(Uri address)
    {
        var session = new BidiSession();
        await session._socket.ConnectAsync(address, CancellationToken.None);
        session._reading = session.ReadAsync();
        await session.SendAsync("session.new", new { capabilities = new { } });
        await session.SendAsync("session.subscribe", new { events = (string[])["log.entryAdded", "network.beforeRequestSent", "network.fetchError"] });
        return session;
    }

    /// <summary>Sends a command and waits for its result; a refusal is an exception with the browser's words.</summary>
    public async Task<JsonElement> SendAsync(string method, object parameters)
    {
        long id = Interlocked.Increment(ref _last);
        var result = new TaskCompletionSource<JsonElement>(TaskCreationOptions.RunContinuationsAsynchronously);
        _waiting[id] = result;
        byte[] bytes = JsonSerializer.SerializeToUtf8Bytes(new { id, method, @params = parameters });
        await _turn.WaitAsync();
        try
        {
            await _socket.SendAsync(bytes, WebSocketMessageType.Text, true, CancellationToken.None);
        }
        finally
        {
            _turn.Release();
        }
        return await result.Task.WaitAsync(Patience);
    }

    public async ValueTask DisposeAsync()
    {
        _socket.Abort();
        await _reading;
        _socket.Dispose();
        _turn.Dispose();
    }

    private async Task ReadAsync()
    {
        using var message = new MemoryStream();
        byte[] buffer = new byte[1 << 16];
        try
        {
            while (true)
            {
                ValueWebSocketReceiveResult part = await _socket.ReceiveAsync(buffer.AsMemory(), CancellationToken.None);
                if (part.MessageType == WebSocketMessageType.Close)
                    break;
                message.Write(buffer, 0, part.Count);
                if (!part.EndOfMessage)
                    continue;
                Take(JsonDocument.Parse(message.ToArray()).RootElement);
                message.SetLength(0);
            }
        }
        catch (Exception end) when (end is WebSocketException or OperationCanceledException)
        {
            // The browser was closed.
        }
        foreach (TaskCompletionSource<JsonElement> result in _waiting.Values)
            result.TrySetException(new InvalidOperationException("The browser has closed its session."));
    }

    private void Take(JsonElement message)
    {
        string? type = message.GetProperty("type").GetString();
        if (type == "event")
            Told?.Invoke(message.GetProperty("method").GetString()!, message.GetProperty("params"));
        else if (message.GetProperty("id") is { ValueKind: JsonValueKind.Number } id && _waiting.TryRemove(id.GetInt64(), out TaskCompletionSource<JsonElement>? result))
        {
            if (type == "success")
                result.SetResult(message.GetProperty("result"));
            else
                result.SetException(new InvalidOperationException($"{message.GetProperty("error")}: {message.GetProperty("message")}"));
        }
    }
}
