using System.Net;
using System.Net.NetworkInformation;

namespace FlapAero.Jupyter.Tests;

/// <summary>What would tell a reader of a saved notebook whose machine it came from.</summary>
internal static class Machine
{
    public static void AssertNotIn(string text, params string[] folders)
    {
        IEnumerable<string> addresses = NetworkInterface.GetAllNetworkInterfaces()
            .SelectMany(network => network.GetIPProperties().UnicastAddresses)
            .Select(unicast => new IPAddress(unicast.Address.GetAddressBytes()).ToString())
            .Where(address => address.Length > 4);
        string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + Path.DirectorySeparatorChar;
        foreach (string trace in (string[])[.. addresses, .. folders, home, Path.GetTempPath(), .. Environment.MachineName.Length > 5 ? (string[])[Environment.MachineName] : [], "probeAddresses"])
            Assert.False(text.Contains(trace, StringComparison.OrdinalIgnoreCase), $"the saved notebook tells of this machine: {trace}");
    }
}
