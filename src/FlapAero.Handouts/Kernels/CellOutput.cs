namespace FlapAero.Handouts.Kernels;

/// <summary>One output of a cell: a fragment of HTML, or plain text (a value without HTML, or the console).</summary>
public sealed class CellOutput
{
    /// <summary>Makes an output.</summary>
    /// <param name="text">The HTML or the plain text.</param>
    /// <param name="isHtml">Whether it is HTML.</param>
    public CellOutput(string text, bool isHtml)
    {
        ArgumentNullException.ThrowIfNull(text);
        Text = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        IsHtml = isHtml;
    }

    /// <summary>The HTML or the plain text, with LF line ends.</summary>
    public string Text { get; }

    /// <summary>Whether <see cref="Text"/> is HTML.</summary>
    public bool IsHtml { get; }
}
