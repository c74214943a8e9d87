namespace FlapAero.Handouts.Exporting;

/// <summary>From where a program takes the lessons' library.</summary>
/// <param name="Directive">The line that the build reads.</param>
/// <param name="Needs">What the program needs for it, as its reader is told.</param>
/// <param name="IsProject">Whether it is built from its sources.</param>
internal sealed record LibraryReference(string Directive, string Needs, bool IsProject)
{
    public static LibraryReference Project(string path) => new(
        $"#:project {path}",
        "It builds the lessons' library from the checkout that it was exported to. To run it elsewhere, export it with --packages.", true);

    public static LibraryReference Package(string version) => new(
        $"#:package FlapAero.Notebooks@{version}",
        $"It takes the package FlapAero.Notebooks {version}: beside this file must stand a NuGet.config that names the folder with FlapAero's packages (dotnet nuget add source FOLDER names it for all folders).", false);
}
