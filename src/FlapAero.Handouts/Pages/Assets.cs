using System.Reflection;

namespace FlapAero.Handouts.Pages;

/// <summary>Texts that travel inside the assemblies.</summary>
internal static class Assets
{
    private const string PlotlyName = "plotly-2.28.0.min.js";

    public static string Temml => Read(typeof(Assets).Assembly, "assets/third-party/temml/temml.min.js");

    public static string Style => Read(typeof(Assets).Assembly, "assets/page.css");

    public static string BriefingStyle => Read(typeof(Assets).Assembly, "assets/briefing.css");

    /// <summary>Checks answers on a page.</summary>
    public static string Answers => Read(typeof(Assets).Assembly, "assets/answers.js");

    public static string Script => Read(typeof(Assets).Assembly, "assets/page.js");

    /// <summary>The plotly.js that Plotly.NET carries, so that page and library cannot disagree on its version.</summary>
    public static string Plotly
    {
        get
        {
            Assembly assembly = Assembly.Load(new AssemblyName("Plotly.NET"));
            string name = assembly.GetManifestResourceNames().FirstOrDefault(n => n.EndsWith(PlotlyName, StringComparison.Ordinal))
                ?? throw new HandoutException($"Plotly.NET carries no {PlotlyName}; its version is pinned in Directory.Packages.props.");
            return Read(assembly, name);
        }
    }

    private static string Read(Assembly assembly, string name)
    {
        using Stream stream = assembly.GetManifestResourceStream(name)
            ?? throw new HandoutException($"{assembly.GetName().Name} carries no {name}; build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
