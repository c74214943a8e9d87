using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace FlapAero.Handouts.InPage;

/// <summary>An assembly as a page needs it: without its publisher's signature, which cannot be packed, and without what no page reads in it.</summary>
internal static class SlimAssembly
{
    /// <summary>Where the optional header holds the place of the signature: behind four other pairs of place and size.</summary>
    private const int SignatureAt32Bit = 128, SignatureAt64Bit = 144;

    /// <summary>plotly.js, which lies beside the pages already, and what F# keeps for its own compiler.</summary>
    private static readonly string[] Unread = ["Plotly.NET.plotly-", "assets/plotly-basic", "FSharpSignature", "FSharpOptimization"];

    /// <summary>The same code and metadata in fewer bytes once it is packed.</summary>
    public static byte[] Of(byte[] assembly)
    {
        using var reader = new PEReader([.. assembly]);
        byte[] slim = [.. assembly];
        Blank(reader, slim);
        return WithoutSignature(reader.PEHeaders, slim);
    }

    /// <summary>Zeros in place: nothing moves, and zeros pack into nothing.</summary>
    private static void Blank(PEReader reader, byte[] assembly)
    {
        if (!reader.HasMetadata || reader.PEHeaders.CorHeader is not { ResourcesDirectory: { Size: > 0 } directory }
            || !reader.PEHeaders.TryGetDirectoryOffset(directory, out int start))
            return;
        MetadataReader metadata = reader.GetMetadataReader();
        foreach (ManifestResource resource in metadata.ManifestResources.Select(metadata.GetManifestResource))
        {
            string name = metadata.GetString(resource.Name);
            if (!resource.Implementation.IsNil || !Unread.Any(start => name.StartsWith(start, StringComparison.Ordinal)))
                continue;
            int at = start + (int)resource.Offset;
            Array.Clear(assembly, at + sizeof(int), BitConverter.ToInt32(assembly, at));
        }
    }

    private static byte[] WithoutSignature(PEHeaders headers, byte[] assembly)
    {
        if (headers.PEHeader is not { CertificateTableDirectory: { Size: > 0 } signature } header
            || signature.RelativeVirtualAddress + signature.Size != assembly.Length)
            return assembly;
        int place = headers.PEHeaderStartOffset + (header.Magic == PEMagic.PE32Plus ? SignatureAt64Bit : SignatureAt32Bit);
        Array.Clear(assembly, place, 2 * sizeof(int));
        return assembly[..signature.RelativeVirtualAddress];
    }
}
