using System.Reflection;

namespace FlapAero.Handouts.Pages;

/// <summary>Texts that travel inside the assemblies.</summary>
internal static class Assets
{
    public static string Temml => Read(typeof(Assets).Assembly, "assets/third-party/temml/temml.min.js");

    public static string Style => Read(typeof(Assets).Assembly, "assets/page.css");

    /// <summary>The pages' own type face, inside the style sheet: a page fetches nothing.</summary>
    public static string Typeface { get; } = string.Concat(new[] { (File: "Regular", Weight: 400), (File: "Bold", Weight: 700) }.Select(face =>
        $"@font-face {{ font-family: Inter; font-weight: {face.Weight}; src: url(data:font/woff2;base64,{Convert.ToBase64String(Bytes($"assets/third-party/inter/{face.File}.woff2"))}) format('woff2'); }}\n"));

    public static string BriefingStyle => Read(typeof(Assets).Assembly, "assets/briefing.css");

    /// <summary>Checks answers on a page.</summary>
    public static string Answers => Read(typeof(Assets).Assembly, "assets/answers.js");

    /// <summary>Compares predictions with what the model gives.</summary>
    public static string Predictions => Read(typeof(Assets).Assembly, "assets/predictions.js");

    /// <summary>Shows what a cell puts out with another number.</summary>
    public static string Values => Read(typeof(Assets).Assembly, "assets/values.js");

    /// <summary>Keeps what is typed on this device.</summary>
    public static string Kept => Read(typeof(Assets).Assembly, "assets/kept.js");

    /// <summary>Shows the instructor's page one idea at a time.</summary>
    public static string Projector => Read(typeof(Assets).Assembly, "assets/present.js");

    public static string ProjectorStyle => Read(typeof(Assets).Assembly, "assets/present.css");

    /// <summary>Makes a page fit for paper, in the browser that prints it.</summary>
    public static string Print => Read(typeof(Assets).Assembly, "assets/print.js");

    /// <summary>Runs a lesson's cells, in a worker of the page beside the engine.</summary>
    public static string EngineWorker => Read(typeof(Assets).Assembly, "assets/engine/worker.js");

    /// <summary>Starts the engine and asks it, for the pages beside it.</summary>
    public static string EngineStart => Read(typeof(Assets).Assembly, "assets/engine/engine.js");

    /// <summary>The names that can stand in a cell, while it is written.</summary>
    public static string EngineNames => Read(typeof(Assets).Assembly, "assets/engine/names.js");

    /// <summary>The page in which a lesson's cells run.</summary>
    public static string EngineRun => Read(typeof(Assets).Assembly, "assets/engine/run.js");

    /// <summary>Keeps the folder of the engine on a web space, for pages without a network.</summary>
    public static string EngineKeep => Read(typeof(Assets).Assembly, "assets/engine/keep.js");

    /// <summary>The what-if page.</summary>
    public static string WhatIf => Read(typeof(Assets).Assembly, "assets/engine/what-if.js");

    public static string WhatIfStyle => Read(typeof(Assets).Assembly, "assets/engine/what-if.css");

    /// <summary>Loads a page anew when it has been made anew; in pages of a watch alone.</summary>
    public static string Watch => Read(typeof(Assets).Assembly, "assets/watch.js");

    public static string Script => Read(typeof(Assets).Assembly, "assets/page.js");

    private static string Read(Assembly assembly, string name)
    {
        using var reader = new StreamReader(Open(assembly, name));
        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    private static byte[] Bytes(string name)
    {
        using Stream stream = Open(typeof(Assets).Assembly, name);
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static Stream Open(Assembly assembly, string name) => assembly.GetManifestResourceStream(name)
        ?? throw new HandoutException($"{assembly.GetName().Name} carries no {name}; build it again.");
}
