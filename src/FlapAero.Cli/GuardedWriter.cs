using System.Text;
using FlapAero.Files;

namespace FlapAero.Cli;

/// <summary>The standard output cannot be written to: closed by the caller, or a full disk behind it.</summary>
internal sealed class ClosedOutputException(string message, Exception cause) : Exception(message, cause);

/// <summary>
/// The one place where words for a person leave the command: see <see cref="PlainText"/>. A stream's own failure is told from that of a
/// file; what cannot be said on the error stream is lost, for there is nowhere else to say it.
/// </summary>
internal sealed class GuardedWriter : TextWriter
{
    private readonly TextWriter _inner;
    private readonly bool _isError;

    private GuardedWriter(TextWriter inner, bool isError)
    {
        (_inner, _isError) = (inner, isError);
        CoreNewLine = inner.NewLine.ToCharArray();
    }

    public override Encoding Encoding => _inner.Encoding;

    public static GuardedWriter Output(TextWriter inner) => new(inner, isError: false);

    public static GuardedWriter Error(TextWriter inner) => new(inner, isError: true);

    /// <summary>Whether what is written there reaches the process's own standard output.</summary>
    public static bool IsConsole(TextWriter writer) =>
        writer == Console.Out || (writer is GuardedWriter guarded && guarded._inner == Console.Out);

    public override void Write(char value) => Write(value.ToString());

    public override void Write(string? value) => Try(() => _inner.Write(PlainText.Of(value ?? "")));

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    // One call, so that lines of several threads do not run into each other.
    public override void WriteLine(string? value) => Write(value + NewLine);

    public override void Flush() => Try(_inner.Flush);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            if (!_isError) throw new ClosedOutputException(e.Message, e);
        }
    }
}
