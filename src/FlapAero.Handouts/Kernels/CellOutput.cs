using AngleSharp.Dom;
using FlapAero.Handouts.Pages;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Kernels;

/// <summary>One output of a cell: a fragment of HTML, or plain text (a value without HTML, or the console).</summary>
public sealed class CellOutput
{
    /// <summary>Makes an output.</summary>
    /// <param name="text">The HTML or the plain text.</param>
    /// <param name="isHtml">Whether it is HTML.</param>
    public CellOutput(string text, bool isHtml)
        : this(text, isHtml, null)
    {
    }

    /// <param name="text">What everybody may see.</param>
    /// <param name="isHtml">Whether it is HTML.</param>
    /// <param name="kept">What students do not get, of a check or a problem.</param>
    internal CellOutput(string text, bool isHtml, KeyOutput? kept)
    {
        ArgumentNullException.ThrowIfNull(text);
        Text = Lines(text);
        IsHtml = isHtml;
        Kept = kept is null ? null : kept with { Html = Lines(kept.Html) };
    }

    /// <summary>The HTML or the plain text that everybody may see, with LF line ends; empty of a check.</summary>
    public string Text { get; }

    /// <summary>Whether <see cref="Text"/> is HTML.</summary>
    public bool IsHtml { get; }

    /// <summary>The same as an instructor's notebook shows it: with a check's verdict, with a problem's answer and solution.</summary>
    public string ForInstructor => Kept is { } kept && IsHtml ? kept.Html : Text;

    /// <summary>What everybody may see, read once; not to be changed.</summary>
    internal IElement Read => field ??= Fragment.Read(Text, IsHtml);

    /// <summary>What an instructor's notebook shows, read once; not to be changed.</summary>
    internal IElement ReadForInstructor => Kept is null ? Read : field ??= Fragment.Read(ForInstructor, IsHtml);

    /// <summary>What students do not get; null where the output keeps nothing back.</summary>
    internal KeyOutput? Kept { get; }

    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal);
}
