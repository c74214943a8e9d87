using System.Text;
using FlapAero.Charts;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;

namespace FlapAero.Handouts.InPage;

/// <summary>The folder <c>engine</c> beside the handouts: a page for each student's notebook there in which its cells run, and what runs them.</summary>
public static class EngineFolder
{
    /// <summary>Its name.</summary>
    public const string Name = "engine";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Makes the folder, or makes it anew.</summary>
    /// <param name="handouts">The folder of the handouts, with the students' notebooks.</param>
    /// <param name="published">The folder into which the engine was published.</param>
    /// <param name="paper">The paper that pages ask for.</param>
    /// <returns>The names of the lessons' pages.</returns>
    /// <exception cref="HandoutException">There is no student's notebook, or the folder cannot be written.</exception>
    public static IReadOnlyList<string> Write(string handouts, string published, Paper paper)
    {
        ArgumentException.ThrowIfNullOrEmpty(handouts);
        ArgumentException.ThrowIfNullOrEmpty(published);
        string[] notebooks = [.. Directory.GetFiles(handouts, "*.ipynb").Order(StringComparer.Ordinal)];
        if (notebooks.Length == 0)
            throw new HandoutException($"The folder {handouts} holds no student's notebook to run; make the edition \"notebook\" too.");
        var files = new Dictionary<string, byte[]>(EnginePack.Of(published, Assets.EngineWorker))
        {
            ["figures.js"] = Utf8.GetBytes(FigureScript.Start),
            ["temml.js"] = Utf8.GetBytes(Assets.Temml),
            ["engine.js"] = Utf8.GetBytes(Assets.EngineStart),
            ["names.js"] = Utf8.GetBytes(Assets.EngineNames),
            ["run.js"] = Utf8.GetBytes(Assets.EngineRun),
            ["what-if.js"] = Utf8.GetBytes(Assets.WhatIf),
            [WhatIfPage.FileName] = Utf8.GetBytes(WhatIfPage.Of(paper)),
        };
        string[] pages = [.. notebooks.Select(n => Path.GetFileNameWithoutExtension(n) + ".html")];
        foreach ((string notebook, string page) in notebooks.Zip(pages))
            files[page] = Utf8.GetBytes(RunPage.Of(Path.GetFileNameWithoutExtension(notebook), File.ReadAllText(notebook), paper));
        try
        {
            string folder = Path.Combine(handouts, Name);
            Directory.CreateDirectory(folder);
            foreach ((string name, byte[] bytes) in files)
                File.WriteAllBytes(Path.Combine(folder, name), bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"The folder {Name} in {handouts} cannot be written: {e.Message}", e);
        }
        return pages;
    }
}
