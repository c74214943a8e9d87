using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Runtime.Loader;
using FlapAero.Charts;
using FlapAero.Handouts.InPage;

namespace FlapAero.Handouts.Tests.InPage;

/// <summary>What makes the engine's files small loses nothing that a page reads.</summary>
public sealed class EngineTextTests
{
    [Fact]
    public void DenseText_AnyBytes_ComesBackAsTheWorkerReadsIt()
    {
        var random = new Random(3);
        for (int length = 0; length < 200; length++)
        {
            byte[] bytes = new byte[length];
            random.NextBytes(bytes);

            string text = DenseText.Of(bytes);

            Assert.Equal(bytes, Read(text));
            Assert.All(text, letter => Assert.InRange(letter, '\u3400', '\uB3FF'));
            Assert.True(text.Length <= (length * 8 + 14) / 15 + 1);
        }
    }

    [Fact]
    public void SlimAssembly_WithPlotlyInIt_StaysAnAssemblyWithoutTheScript()
    {
        byte[] whole = File.ReadAllBytes(typeof(FigureScript).Assembly.Location);

        byte[] slim = SlimAssembly.Of(whole);

        var loaded = new AssemblyLoadContext(nameof(EngineTextTests), isCollectible: true);
        using Stream before = typeof(FigureScript).Assembly.GetManifestResourceStream("assets/plotly-basic.min.js")!;
        using Stream after = loaded.LoadFromStream(new MemoryStream(slim)).GetManifestResourceStream("assets/plotly-basic.min.js")!;
        using Stream style = loaded.Assemblies.Single().GetManifestResourceStream("assets/figures.css")!;
        Assert.Equal(before.Length, after.Length);
        Assert.True(before.Length > 900_000);
        Assert.All(Enumerable.Range(0, 1000), _ => Assert.Equal(0, after.ReadByte()));
        Assert.NotEqual(0, style.ReadByte());
        loaded.Unload();
    }

    [Fact]
    public void SlimAssembly_ThatIsSigned_LosesTheSignatureAndKeepsItsTypes()
    {
        byte[] whole = File.ReadAllBytes(typeof(FigureScript).Assembly.Location);
        byte[] signed = Signed(whole, 9000);

        byte[] slim = SlimAssembly.Of(signed);

        Assert.Equal(whole.Length, slim.Length);
        using var reader = new PEReader([.. slim]);
        Assert.Equal(0, reader.PEHeaders.PEHeader!.CertificateTableDirectory.Size);
        Assert.NotEmpty(reader.GetMetadataReader().TypeDefinitions);
    }

    /// <summary>As the publisher of a package signs: bytes at the end, and their place in the header.</summary>
    private static byte[] Signed(byte[] assembly, int size)
    {
        using var reader = new PEReader([.. assembly]);
        int place = reader.PEHeaders.PEHeaderStartOffset + (reader.PEHeaders.PEHeader!.Magic == PEMagic.PE32Plus ? 144 : 128);
        byte[] signed = [.. assembly, .. new byte[size]];
        BitConverter.TryWriteBytes(signed.AsSpan(place), assembly.Length);
        BitConverter.TryWriteBytes(signed.AsSpan(place + 4), size);
        return signed;
    }

    /// <summary>The worker's own way, written again.</summary>
    private static byte[] Read(string text)
    {
        byte[] bytes = new byte[(text.Length - 1) * 15 / 8 - (text[0] - DenseText.Zero)];
        int held = 0, count = 0, at = 0;
        foreach (char letter in text.AsSpan(1))
        {
            held = held << 15 | (letter - DenseText.Zero);
            for (count += 15; count >= 8 && at < bytes.Length; at++) bytes[at] = (byte)(held >> (count -= 8));
            held &= (1 << count) - 1;
        }

        return bytes;
    }
}
