using System.Reflection;
using System.Runtime.Loader;

namespace FlapAero.Notebooks;

/// <summary>
/// A notebook kernel carries an FSharp.Core of its own, a little older than the one that Plotly.NET asks for, and two
/// copies beside each other do not work. So the question for FSharp.Core is answered with the kernel's copy; the file
/// beside this assembly serves only where the host has none.
/// </summary>
internal static class SharedFSharpCore
{
    private const string Name = "FSharp.Core";

    [ThreadStatic]
    private static bool _isAsking;

    static SharedFSharpCore() => AssemblyLoadContext.Default.Resolving += Resolve;

    /// <summary>Registers the answer; the static constructor does it once.</summary>
    internal static void Use()
    {
    }

    private static Assembly? Resolve(AssemblyLoadContext context, AssemblyName wanted)
    {
        // Asking for the host's copy below comes back here where the host has none.
        if (wanted.Name != Name || _isAsking) return null;
        _isAsking = true;
        try
        {
            return AssemblyLoadContext.Default.Assemblies.FirstOrDefault(a => a.GetName().Name == Name) ?? FromHost(context) ?? FromOwnFolder(context);
        }
        finally
        {
            _isAsking = false;
        }
    }

    private static Assembly? FromHost(AssemblyLoadContext context)
    {
        try
        {
            return context.LoadFromAssemblyName(new AssemblyName(Name));
        }
        catch (FileNotFoundException)
        {
            return null;
        }
    }

    private static Assembly? FromOwnFolder(AssemblyLoadContext context)
    {
        string? folder = Path.GetDirectoryName(typeof(SharedFSharpCore).Assembly.Location);
        string file = Path.Combine(folder ?? "", Name + ".dll");
        return File.Exists(file) ? context.LoadFromAssemblyPath(file) : null;
    }
}
