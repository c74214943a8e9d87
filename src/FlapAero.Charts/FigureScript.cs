using System.Reflection;

namespace FlapAero.Charts;

/// <summary>What a browser needs to draw the figures of a page or of a notebook, without any network.</summary>
public static class FigureScript
{
    private const string PlotlyName = "plotly-2.28.0.min.js";

    /// <summary>The plotly.js that Plotly.NET carries, so that script and library cannot disagree on its version.</summary>
    /// <exception cref="InvalidOperationException">Plotly.NET carries another version.</exception>
    public static string Plotly
    {
        get
        {
            Assembly assembly = Assembly.Load(new AssemblyName("Plotly.NET"));
            string name = assembly.GetManifestResourceNames().FirstOrDefault(n => n.EndsWith(PlotlyName, StringComparison.Ordinal))
                ?? throw new InvalidOperationException($"Plotly.NET carries no {PlotlyName}; its version is pinned in Directory.Packages.props.");
            return Read(assembly, name);
        }
    }

    /// <summary>
    /// The script that declares the function <c>drawFigures(plotly)</c>: it draws all figures of the document, and
    /// from then on those that are pushed on <c>window.flapaeroFigures</c>.
    /// </summary>
    public static string Figures => Read(typeof(FigureScript).Assembly, "assets/figures.js");

    /// <summary>The style of figures and their controls.</summary>
    public static string Style => Read(typeof(FigureScript).Assembly, "assets/figures.css");

    private static string Read(Assembly assembly, string name)
    {
        using Stream stream = assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{assembly.GetName().Name} carries no {name}; build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
