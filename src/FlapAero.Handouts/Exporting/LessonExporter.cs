using System.Globalization;
using System.Reflection;
using System.Text;
using FlapAero.Files;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.NotebookForm;

namespace FlapAero.Handouts.Exporting;

/// <summary>Writes lessons as C# programs, one file each; either all of the wanted ones or none.</summary>
public static class LessonExporter
{
    /// <summary>Exports the wanted lessons as the instructor has them, with their answers.</summary>
    /// <param name="options">Which, and where to.</param>
    /// <returns>The names of the files written, in their order.</returns>
    /// <exception cref="HandoutException">A notebook, a cell or a folder refused; nothing was written. All faults are listed.</exception>
    /// <exception cref="UnknownLessonException">A lesson was asked for that there is not.</exception>
    public static IReadOnlyList<string> Export(ExportOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        LibraryReference library = Library(options);
        IReadOnlyList<LessonNotebook> lessons = LessonNotebook.ReadFolder(options.NotebooksFolder);
        var faults = new List<string>();
        var programs = new List<(string Name, string Text)>();
        foreach (LessonNotebook notebook in LessonChoice.Of(lessons, options.Lessons))
            if (LessonProgram.Of(notebook, library, faults) is { } text)
                programs.Add((notebook.Stem + ".cs", text));
        if (faults.Count > 0)
            throw new HandoutException(string.Create(CultureInfo.InvariantCulture,
                $"The lessons cannot be programs of their own, and nothing was written ({faults.Count} {(faults.Count == 1 ? "fault" : "faults")}):\n")
                + string.Join('\n', Listing.Capped(faults).Select(fault => "  " + fault)));
        try
        {
            Directory.CreateDirectory(options.OutputFolder);
            WholeFile.WriteAll([.. programs.Select(program => (Path.Combine(options.OutputFolder, program.Name), Encoding.UTF8.GetBytes(program.Text)))]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"The folder {options.OutputFolder} cannot be written: {e.Message} Name another with --out.", e);
        }
        return [.. programs.Select(program => program.Name)];
    }

    /// <summary>The path to a project is relative, so that a checkout can be moved with what was exported into it.</summary>
    private static LibraryReference Library(ExportOptions options)
    {
        if (options.Project is not { } project)
            return LibraryReference.Package(Version());
        string path = Path.GetRelativePath(options.OutputFolder, project).Replace('\\', '/');
        return Path.IsPathRooted(path)
            ? throw new HandoutException($"The folder {options.OutputFolder} is on another drive than the checkout, so no relative path leads there; name another with --out, or take --packages.")
            : LibraryReference.Project(path);
    }

    /// <summary>The version of the packages that were packed together with this assembly.</summary>
    private static string Version() =>
        typeof(LessonExporter).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
}
