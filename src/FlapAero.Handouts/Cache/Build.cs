using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace FlapAero.Handouts.Cache;

/// <summary>Which code runs: what another build computed may not be what this one would.</summary>
internal static class Build
{
    private static readonly Lazy<string> OfThis = new(() => IdOf(AppContext.BaseDirectory));

    /// <summary>A hash over the ids that the compiler gave to every assembly of this command, and the runtime's version.</summary>
    public static string Id => OfThis.Value;

    internal static string IdOf(string folder)
    {
        ContentKey key = new ContentKey("build").With(Environment.Version.ToString());
        foreach (string path in Directory.GetFiles(folder, "*.dll").Order(StringComparer.Ordinal))
            if (ModuleId(path) is { } id)
                key.With(Path.GetFileName(path)).With(id.ToString());
        return key.ToString();
    }

    private static Guid? ModuleId(string path)
    {
        using var image = new PEReader(File.OpenRead(path));
        if (!image.HasMetadata)
            return null;
        MetadataReader metadata = image.GetMetadataReader();
        return metadata.GetGuid(metadata.GetModuleDefinition().Mvid);
    }
}
