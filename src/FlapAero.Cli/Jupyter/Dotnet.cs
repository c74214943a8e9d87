using System.Runtime.InteropServices;

namespace FlapAero.Cli.Jupyter;

/// <summary>The dotnet program that runs this process: Jupyter may be started from a desktop that knows no PATH of ours.</summary>
internal static class Dotnet
{
    public static string Path { get; } = Find();

    private static string Find()
    {
        // <root>/shared/Microsoft.NETCore.App/<version>/
        string root = System.IO.Path.GetFullPath(System.IO.Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", ".."));
        string program = System.IO.Path.Combine(root, OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet");
        return File.Exists(program) ? program : "dotnet";
    }
}
