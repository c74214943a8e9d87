using System.Text;
using FlapAero.Files;

namespace FlapAero.Cli;

/// <summary>The one place where words for a person leave the command: see <see cref="PlainText"/>.</summary>
internal sealed class PlainWriter(TextWriter inner) : TextWriter
{
    /// <summary>Where the words go.</summary>
    public TextWriter Inner => inner;

    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => inner.Write(PlainText.Of(value.ToString()));

    public override void Write(string? value) => inner.Write(PlainText.Of(value ?? ""));

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    public override void WriteLine() => inner.WriteLine();

    public override void WriteLine(string? value) => inner.WriteLine(PlainText.Of(value ?? ""));

    public override Task WriteAsync(string? value) => inner.WriteAsync(PlainText.Of(value ?? ""));

    public override Task WriteLineAsync() => inner.WriteLineAsync();

    public override Task WriteLineAsync(string? value) => inner.WriteLineAsync(PlainText.Of(value ?? ""));

    public override void Flush() => inner.Flush();

    public override Task FlushAsync() => inner.FlushAsync();
}
