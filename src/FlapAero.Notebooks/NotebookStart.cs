using System.IO.Compression;
using System.Text;
using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>
/// What the first output of a notebook brings with it, so that figures are drawn without a network: plotly.js packed,
/// the script that draws, and the style of figures.
/// </summary>
internal static class NotebookStart
{
    private static readonly Lazy<string> Made = new(Make);

    internal static string Html => Made.Value;

    private static string Make() =>
        $"<style>{FigureScript.Style}{Read("notebook.css")}</style><script>\n{FigureScript.PlotlyNotice}(() => {{\n{InScript(FigureScript.Figures)}{InScript(Read("start.js"))}start(\"{Packed(FigureScript.Plotly)}\");\n}})();</script>";

    private static string Packed(string script)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) gzip.Write(Encoding.UTF8.GetBytes(script));
        return Convert.ToBase64String(packed.GetBuffer(), 0, (int)packed.Length);
    }

    private static string InScript(string script) => HtmlText.InScript(script);

    private static string Read(string name)
    {
        using Stream stream = typeof(NotebookStart).Assembly.GetManifestResourceStream("assets/" + name)
            ?? throw new InvalidOperationException($"FlapAero.Notebooks carries no {name}; build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
