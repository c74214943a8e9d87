using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using FlapAero.Charts;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;

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
    /// <param name="schoolFile">The school's file, whose marks pages carry and whose rules the what-if page begins with; none where there is none.</param>
    /// <returns>The names of the lessons' pages.</returns>
    /// <exception cref="HandoutException">There is no student's notebook, the school's file is refused, or the folder cannot be written.</exception>
    public static IReadOnlyList<string> Write(string handouts, string published, Paper paper, string? schoolFile = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(handouts);
        ArgumentException.ThrowIfNullOrEmpty(published);
        string[] notebooks = [.. Directory.GetFiles(handouts, "*.ipynb").Order(StringComparer.Ordinal)];
        if (notebooks.Length == 0)
            throw new HandoutException($"The folder {handouts} holds no student's notebook to run; make the edition \"notebook\" too.");
        SchoolMarks? school = schoolFile is null ? null : SchoolMarks.Read(schoolFile);
        var files = new Dictionary<string, byte[]>(EnginePack.Of(published, Assets.EngineWorker))
        {
            ["figures.js"] = Utf8.GetBytes(FigureScript.Start),
            ["temml.js"] = Utf8.GetBytes(Assets.Temml),
            ["engine.js"] = Utf8.GetBytes(Assets.EngineStart),
            ["names.js"] = Utf8.GetBytes(Assets.EngineNames),
            ["run.js"] = Utf8.GetBytes(Assets.EngineRun),
            ["what-if.js"] = Utf8.GetBytes(Assets.WhatIf),
            [WhatIfPage.FileName] = Utf8.GetBytes(WhatIfPage.Of(paper, school)),
        };
        string[] pages = [.. notebooks.Select(n => Path.GetFileNameWithoutExtension(n) + ".html")];
        foreach ((string notebook, string page) in notebooks.Zip(pages))
            files[page] = Utf8.GetBytes(RunPage.Of(Path.GetFileNameWithoutExtension(notebook), File.ReadAllText(notebook), paper, school));
        files["keep.js"] = Utf8.GetBytes(Keeping(files));
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

    /// <summary>What keeps the folder on a web space: it names every file, and changes where any of them does.</summary>
    private static string Keeping(Dictionary<string, byte[]> files)
    {
        using var all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        string[] names = [.. files.Keys.Order(StringComparer.Ordinal)];
        foreach (string name in names)
        {
            all.AppendData(SHA256.HashData(Utf8.GetBytes(name)));
            all.AppendData(SHA256.HashData(files[name]));
        }
        return Assets.EngineKeep
            .Replace("/*files*/", string.Join(", ", names.Select(name => JsonSerializer.Serialize(name))), StringComparison.Ordinal)
            .Replace("/*version*/", Convert.ToHexStringLower(all.GetHashAndReset())[..16], StringComparison.Ordinal);
    }
}
