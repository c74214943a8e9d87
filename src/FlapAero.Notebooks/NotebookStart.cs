using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>
/// What the first output of a notebook brings with it, so that figures are drawn without a network: plotly.js packed,
/// the script that draws, and the style of figures; and, where a browser is too old for them, words that say so.
/// </summary>
internal static class NotebookStart
{
    /// <summary>The switch that says that all of this lies beside the page already, as where cells run in a page.</summary>
    private const string IsBeside = "FlapAero.FiguresAreBesideThePage";

    private static readonly Lazy<string> Made = new(Make);

    internal static string Html => AppContext.TryGetSwitch(IsBeside, out bool isBeside) && isBeside ? "" : Made.Value;

    private static string Make() =>
        $"<style>{FigureScript.Style}{Read("notebook.css")}</style><script>\n{FigureScript.Start}\n{Read("start.js")}</script>";

    private static string Read(string name)
    {
        using Stream stream = typeof(NotebookStart).Assembly.GetManifestResourceStream("assets/" + name)
            ?? throw new InvalidOperationException($"FlapAero.Notebooks carries no {name}; build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
