using System.Buffers.Binary;
using System.Text.Json;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Kernels;

/// <summary>What the command and a kernel's process say to each other: JSON, its length in four bytes before it.</summary>
/// <remarks>Both ends are the same build, which the first message proves, so the form may change with any of them.</remarks>
internal static class KernelMessages
{
    /// <summary>Says who is there: the build, by the id the compiler gave to it.</summary>
    public sealed record Hello(Guid Build, int CellOutput = 0);

    /// <summary>Asks for a cell to be run; without code, for a fresh kernel that expects cells.</summary>
    public sealed record Request(string? Code, IReadOnlyList<string> Expected);

    /// <summary>What a cell put out; empty after a request for a fresh kernel.</summary>
    public sealed record Reply(IReadOnlyList<Output> Outputs, string? Failure);

    /// <summary>One output, and beside it what students do not get of it.</summary>
    public sealed record Output(string Text, bool IsHtml, KeyOutput? Kept)
    {
        public static Output Of(CellOutput output) => new(output.Text, output.IsHtml, output.Kept);

        public CellOutput ToCellOutput() => new(Text, IsHtml, Kept);
    }

    public static Guid Build { get; } = typeof(KernelMessages).Module.ModuleVersionId;

    public static async Task WriteAsync<T>(Stream stream, T message, CancellationToken cancellationToken)
    {
        byte[] json = JsonSerializer.SerializeToUtf8Bytes(message);
        byte[] length = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, json.Length);
        await stream.WriteAsync(length, cancellationToken).ConfigureAwait(false);
        await stream.WriteAsync(json, cancellationToken).ConfigureAwait(false);
        await stream.FlushAsync(cancellationToken).ConfigureAwait(false);
    }

    /// <summary>The next message.</summary>
    /// <exception cref="EndOfStreamException">The other end is gone.</exception>
    /// <exception cref="InvalidDataException">What came is no message.</exception>
    public static async Task<T> ReadAsync<T>(Stream stream, int longest, CancellationToken cancellationToken)
    {
        byte[] length = new byte[4];
        await stream.ReadExactlyAsync(length, cancellationToken).ConfigureAwait(false);
        int bytes = BinaryPrimitives.ReadInt32LittleEndian(length);
        if (bytes <= 0 || bytes > longest)
            throw new InvalidDataException("not a message");
        byte[] json = new byte[bytes];
        await stream.ReadExactlyAsync(json, cancellationToken).ConfigureAwait(false);
        try
        {
            return JsonSerializer.Deserialize<T>(json) ?? throw new InvalidDataException("not a message");
        }
        catch (JsonException e)
        {
            throw new InvalidDataException("not a message", e);
        }
    }
}
