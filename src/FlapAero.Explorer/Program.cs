using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

[assembly: SupportedOSPlatform("browser")]

namespace FlapAero.Explorer;

/// <summary>The door between the worker's script and the cells.</summary>
internal static partial class Program
{
    private static readonly CellSession Session = Begun();

    private static void Main()
    {
        // What is to be called comes from the script.
    }

    /// <summary>Takes the bytes of an assembly that cells may refer to.</summary>
    [JSExport]
    internal static void Refer(byte[] assembly) => Session.Refer(assembly);

    /// <summary>Runs a cell.</summary>
    [JSExport]
    internal static async Task<string> Run(string code) => (await Session.RunAsync(code)).ToJson();

    /// <summary>Takes what the library's doc comments say: a text for each name, as JSON.</summary>
    [JSExport]
    internal static void Learn(byte[] docs) => Session.Names.Learn(docs);

    /// <summary>The names that can stand at a place of a cell.</summary>
    [JSExport]
    internal static string Names(string code, int place) => Session.Names.At(code, place);

    /// <summary>What one of the names that were told last means.</summary>
    [JSExport]
    internal static string Meaning(string name) => Session.Names.Meaning(name);

    private static CellSession Begun()
    {
        // The page has the figures' script; the pack blanks plotly.js in the assemblies.
        AppContext.SetSwitch("FlapAero.FiguresAreBesideThePage", true);
        return new CellSession();
    }
}
