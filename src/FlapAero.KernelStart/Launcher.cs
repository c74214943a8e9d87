using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;

namespace FlapAero.KernelStart;

/// <summary>
/// What Jupyter starts: looks whether the kernel's program is still there, and runs it in this process, which Jupyter may
/// interrupt and kill. It lies in the entry's own folder, while the program lies in a cache that anybody may clear.
/// </summary>
internal static class Launcher
{
    /// <summary>Runs the program that the first argument names with the arguments after it.</summary>
    private static int Main(string[] arguments)
    {
        if (arguments.Length < 2 || !File.Exists(arguments[0]))
        {
            Console.Error.WriteLine(
                "The kernel's program is not where it was set up, as after \"dotnet nuget locals all --clear\": in the project's folder run "
                + "\"dotnet run --project src/FlapAero.Cli -- jupyter\" again, then restart the kernel.");
            return 1;
        }
        ReservedPorts.Hold(arguments[^1]);
        // A number is to read the same on every machine, and so is what the compiler says.
        CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
        HostWatch.Begin();
        return Run(arguments[0], arguments[1..]);
    }

    /// <summary>Runs a program as the runtime would, with its own folder and its own assemblies.</summary>
    private static int Run(string program, string[] arguments)
    {
        string folder = Path.GetDirectoryName(program) + Path.DirectorySeparatorChar;
        AppContext.SetData("APP_CONTEXT_BASE_DIRECTORY", folder);
        AppContext.SetData("APP_CONTEXT_DEPS_FILES", Path.ChangeExtension(program, ".deps.json"));
        // The compiler of cells finds by this list what a cell refers to by name alone.
        AppContext.SetData("TRUSTED_PLATFORM_ASSEMBLIES", string.Join(Path.PathSeparator,
            [(string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "", .. Directory.EnumerateFiles(folder, "*.dll")]));
        var resolver = new AssemblyDependencyResolver(program);
        AssemblyLoadContext.Default.Resolving += (context, name) =>
            resolver.ResolveAssemblyToPath(name) is { } path ? context.LoadFromAssemblyPath(path) : null;
        AssemblyLoadContext.Default.ResolvingUnmanagedDll += (_, name) =>
            resolver.ResolveUnmanagedDllToPath(name) is { } path ? System.Runtime.InteropServices.NativeLibrary.Load(path) : IntPtr.Zero;
        Assembly assembly = AssemblyLoadContext.Default.LoadFromAssemblyPath(program);
        Assembly.SetEntryAssembly(assembly);
        return assembly.EntryPoint!.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [arguments], null) is int code ? code : 0;
    }
}
