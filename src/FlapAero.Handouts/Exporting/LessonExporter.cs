using System.Globalization;
using System.Reflection;
using System.Text;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Storing;

namespace FlapAero.Handouts.Exporting;

/// <summary>Writes lessons as C# programs, one file each; either all of the wanted ones or none.</summary>
public static class LessonExporter
{
    /// <summary>Exports the wanted lessons.</summary>
    /// <param name="options">Which, for whom, where to.</param>
    /// <returns>The names of the files written, in their order.</returns>
    /// <exception cref="HandoutException">A notebook, a cell or a folder refused; nothing was written. All faults are listed.</exception>
    /// <exception cref="UnknownLessonException">A lesson was asked for that there is not.</exception>
    public static IReadOnlyList<string> Export(ExportOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        string library = Library(options);
        var faults = new List<string>();
        var programs = new List<(string Name, string Text)>();
        foreach (LessonNotebook notebook in LessonChoice.Of(LessonNotebook.ReadFolder(options.NotebooksFolder), options.Lessons))
            if (LessonProgram.Of(notebook, options.Edition, library, faults) is { } text)
                programs.Add((notebook.Stem + ".cs", text));
        if (faults.Count > 0)
            throw new HandoutException(string.Create(CultureInfo.InvariantCulture,
                $"The lessons cannot be programs of their own, and nothing was written ({faults.Count} {(faults.Count == 1 ? "fault" : "faults")}):\n")
                + string.Join('\n', faults.Select(fault => "  " + fault)));
        try
        {
            Directory.CreateDirectory(options.OutputFolder);
            foreach ((string name, string text) in programs)
                WholeFile.Write(Path.Combine(options.OutputFolder, name), Encoding.UTF8.GetBytes(text));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"The folder {options.OutputFolder} cannot be written: {e.Message} Name another with --out.", e);
        }
        return [.. programs.Select(program => program.Name)];
    }

    /// <summary>The path to a project is relative, so that a checkout can be moved with what was exported into it.</summary>
    private static string Library(ExportOptions options)
    {
        if (options.Project is not { } project)
            return $"#:package FlapAero.Notebooks@{Version()}";
        string path = Path.GetRelativePath(options.OutputFolder, project).Replace('\\', '/');
        return Path.IsPathRooted(path)
            ? throw new HandoutException($"The folder {options.OutputFolder} is on another drive than the checkout, so no relative path leads there; name another with --out, or take --packages.")
            : $"#:project {path}";
    }

    /// <summary>The version of the packages that were packed together with this assembly.</summary>
    private static string Version() =>
        typeof(LessonExporter).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
}
