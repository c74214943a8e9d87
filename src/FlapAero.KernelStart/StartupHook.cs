using System.Globalization;
using FlapAero.KernelStart;

/// <summary>What the runtime calls before the kernel's own first line: the name and the missing namespace are the runtime's rule.</summary>
internal static class StartupHook
{
    private const string Kernel = "Microsoft.DotNet.Interactive.App";

    public static void Initialize()
    {
        // The variable is inherited: a process that the kernel starts is none of our business.
        Environment.SetEnvironmentVariable("DOTNET_STARTUP_HOOKS", null);
        if (Path.GetFileNameWithoutExtension(Environment.GetCommandLineArgs()[0]) != Kernel)
            return;
        ReservedPorts.Hold(Environment.GetCommandLineArgs()[^1]);
        // A number is to read the same on every machine, and so is what the compiler says.
        CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
        HostWatch.Begin();
    }
}
