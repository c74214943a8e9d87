using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FlapAero.Handouts.InPage;

/// <summary>The published engine as scripts that a page on a disk can load: each file packed, as <see cref="DenseText"/>.</summary>
internal static class EnginePack
{
    private const string ConfigStart = "/*json-start*/";
    private const string ConfigEnd = "/*json-end*/";

    /// <summary>Assemblies that cells may refer to.</summary>
    private static readonly string[] Referred =
    [
        "System.Private.CoreLib", "System.Runtime", "System.Linq", "System.Collections", "System.Console", "netstandard", "System.Memory",
        "System.Text.RegularExpressions", "System.Collections.Immutable", "UnitsNet", "MathNet.Numerics",
        "FlapAero", "FlapAero.Charts", "FlapAero.Notebooks",
    ];

    /// <summary>What no cell needs begins with one of these: the network, databases, other languages, files of other kinds.</summary>
    private static readonly string[] Unneeded =
    [
        "Microsoft.VisualBasic", "System.Net.", "System.Linq.Async", "System.Linq.Parallel",
        "System.Linq.Queryable", "System.Text.Encoding.CodePages", "System.Formats", "System.Web.dll", "System.Windows",
        "System.IO.Pipes", "System.IO.Isolated", "System.IO.FileSystem.", "System.ServiceModel", "System.ServiceProcess", "WindowsBase",
        "System.Threading.Tasks.Dataflow", "System.Configuration",
    ];

    /// <summary>What only cells need: a what-if is live without it. The compiler's and the lessons' own parts, and what those refer to.</summary>
    private static readonly string[] ForCells =
    [
        "FlapAero.Notebooks", "FSharp.Core", "Plotly.NET", "DynamicObj", "Giraffe", "Fable", "Markdig", "Newtonsoft.Json", "Microsoft.DotNet.Interactive",
        "Microsoft.CSharp", "Microsoft.AspNetCore", "netstandard", "System.Private.Xml", "System.Xml", "System.Private.DataContract", "System.Data",
        "System.Security.", "System.Reflection.Metadata", "System.Linq.Expressions", "System.ComponentModel.Annotations",
        "System.Runtime.Serialization", "System.Diagnostics.Process", "System.Diagnostics.FileVersion", "System.Web", "System.Transactions",
        "System.IO.Compression", "Humanizer", "Microsoft.Win32",
    ];

    /// <summary>The engine's scripts by their names, of the folder into which it was published.</summary>
    /// <exception cref="HandoutException">The folder is not what publishing makes.</exception>
    public static IReadOnlyDictionary<string, byte[]> Of(string published, string worker)
    {
        string folder = Path.Combine(published, "wwwroot", "_framework");
        string start = Path.Combine(folder, "dotnet.js");
        if (!File.Exists(start))
            throw new HandoutException($"{published} does not hold the engine: dotnet.js is missing; publish src/FlapAero.Explorer anew.");
        string script = File.ReadAllText(start);
        int from = script.IndexOf(ConfigStart, StringComparison.Ordinal) + ConfigStart.Length, to = script.IndexOf(ConfigEnd, StringComparison.Ordinal);
        JsonObject config = JsonNode.Parse(script[from..to])!.AsObject(), resources = config["resources"]!.AsObject();
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (JsonArray list in resources.Select(r => r.Value).OfType<JsonArray>())
            for (int i = list.Count - 1; i >= 0; i--)
            {
                JsonObject file = list[i]!.AsObject();
                string name = file["name"]!.GetValue<string>(), assembly = file["virtualPath"]?.GetValue<string>() ?? "";
                if (Unneeded.Any(u => assembly.StartsWith(u, StringComparison.Ordinal)) && assembly != "System.Net.Primitives.dll")
                {
                    list.RemoveAt(i);
                    continue;
                }
                // Nothing is fetched, so nothing is compared with what was fetched.
                file.Remove("hash");
                file.Remove("cache");
                byte[] whole = File.ReadAllBytes(Path.Combine(folder, name));
                files[name] = name.EndsWith(".dll", StringComparison.Ordinal) ? SlimAssembly.Of(whole) : whole;
                names[assembly] = name;
            }
        files["dotnet.js"] = Encoding.UTF8.GetBytes(script[..from] + config.ToJsonString() + script[to..]);
        bool IsCompiler(string name) => name.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal);
        bool IsForCells(string name) => ForCells.Any(start => name.StartsWith(start, StringComparison.Ordinal));
        string referred = JsonSerializer.Serialize(Referred.Select(name => names[name + ".dll"]));
        return new Dictionary<string, byte[]>
        {
            ["runtime.js"] = Script(files.Where(f => !IsCompiler(f.Key) && !IsForCells(f.Key)), $"flapaeroEngine.worker = {JsonSerializer.Serialize(worker)};\n"),
            ["cells.js"] = Script(files.Where(f => IsForCells(f.Key)).Append(new("docs.json", DocTexts.ToJson())), $"flapaeroEngine.referred = {referred};\n"),
            ["compiler.js"] = Script(files.Where(f => IsCompiler(f.Key)), ""),
        };
    }

    private static byte[] Script(IEnumerable<KeyValuePair<string, byte[]>> files, string also)
    {
        var script = new StringBuilder("// FlapAero: the engine of the pages beside; what others wrote in it is listed in docs/THIRD-PARTY.md of FlapAero.\n")
            .Append("var flapaeroEngine = window.flapaeroEngine || { packed: {}, referred: [] };\n").Append(also);
        foreach ((string name, byte[] bytes) in files)
            script.Append("flapaeroEngine.packed[").Append(JsonSerializer.Serialize(name)).Append("] = \"").Append(Packed(bytes)).Append("\";\n");
        return [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(script.ToString())];
    }

    private static string Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) gzip.Write(bytes);
        return DenseText.Of(packed.GetBuffer().AsSpan(0, (int)packed.Length));
    }
}
