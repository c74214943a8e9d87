using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace FlapAero.Handouts.Exporting;

/// <summary>
/// Compiles a program against the assemblies of this process before it is written: what a notebook allows and a program
/// does not is then said of the cell, and not by a build somewhere else.
/// </summary>
internal static class ProgramCheck
{
    private static readonly Lazy<IReadOnlyList<MetadataReference>> References = new(() =>
    [
        .. ((string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Where(File.Exists).Select(path => MetadataReference.CreateFromFile(path)),
    ]);

    /// <summary>The errors, each with its line in the program, from 1.</summary>
    public static IEnumerable<(int Line, string Words)> Faults(string program) => Compiled(program).GetDiagnostics()
        .Where(found => found.Severity == DiagnosticSeverity.Error)
        .Select(found => (found.Location.GetLineSpan().StartLinePosition.Line + 1, found.GetMessage(CultureInfo.InvariantCulture)));

    /// <summary>The program as a build would compile it.</summary>
    public static CSharpCompilation Compiled(string program)
    {
        // The lines that only the build reads; as comments they keep the others' numbers.
        string text = program.Replace("\n#:", "\n//", StringComparison.Ordinal);
        var options = new CSharpCompilationOptions(OutputKind.ConsoleApplication);
        SyntaxTree tree = CSharpSyntaxTree.ParseText(text, new CSharpParseOptions(LanguageVersion.Latest));
        return CSharpCompilation.Create("lesson", [tree], References.Value, options);
    }
}
