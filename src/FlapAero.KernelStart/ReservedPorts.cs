using System.Net;
using System.Net.Sockets;
using System.Text.Json;

namespace FlapAero.KernelStart;

/// <summary>
/// Jupyter finds free ports, lets go of them and tells them to the kernel, which opens them seconds later. Meanwhile any
/// kernel that starts beside it may be given one of them, and this one dies. So they are held from the first moment.
/// </summary>
internal static class ReservedPorts
{
    private static readonly string[] Names = ["shell_port", "iopub_port", "stdin_port", "control_port", "hb_port"];

    /// <summary>They live as long as the process: a socket that is collected lets go of its port.</summary>
    private static readonly List<Socket> Held = [];

    /// <summary>Holds the ports of a connection file, as far as they are free.</summary>
    public static void Hold(string connectionFile)
    {
        // Two sockets of .NET may be bound to one port as long as only one of them listens: elsewhere than in Linux that is not so.
        if (!OperatingSystem.IsLinux())
            return;
        try
        {
            using JsonDocument connection = JsonDocument.Parse(File.ReadAllBytes(connectionFile));
            if (connection.RootElement.GetProperty("transport").GetString() != "tcp" || !IPAddress.TryParse(connection.RootElement.GetProperty("ip").GetString(), out IPAddress? address))
                return;
            foreach (string name in Names)
                Hold(new IPEndPoint(address, connection.RootElement.GetProperty(name).GetInt32()));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            // The kernel itself reads the file next, and says better what is wrong with it.
        }
    }

    private static void Hold(IPEndPoint port)
    {
        var socket = new Socket(port.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
        try
        {
            socket.Bind(port);
            Held.Add(socket);
        }
        catch (SocketException)
        {
            socket.Dispose();
        }
    }
}
