using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using static System.FormattableString;

namespace FlapAero.Handouts.Exporting;

/// <summary>
/// One lesson as a C# program in one file that needs no notebook kernel: prose is printed, code runs in its order, the value
/// of each cell is shown.
/// </summary>
internal sealed class LessonProgram
{
    /// <summary>What the kernel of a notebook imports by itself.</summary>
    private static readonly string[] KernelUsings =
        ["using System;", "using System.Collections;", "using System.Collections.Generic;", "using System.Linq;", "using System.Text;", "using System.Threading.Tasks;"];

    /// <summary>
    /// A checkout's rules for its own code do not hold for a lesson: a warning must not stop a class. And a program in one
    /// file would be held to what ahead-of-time compilation allows, which lessons need not keep to.
    /// </summary>
    private static readonly string[] Properties =
    [
        "PublishAot=false", "TreatWarningsAsErrors=false", "EnforceCodeStyleInBuild=false", "GenerateDocumentationFile=false",
        "RunAnalyzers=false", "WarningLevel=0", "ImplicitUsings=disable", "Nullable=disable", "LangVersion=latest",
    ];

    private readonly LessonNotebook _notebook;
    private readonly List<(LessonCell Cell, CellCode? Code)> _cells;
    private readonly List<string> _faults = [];

    private LessonProgram(LessonNotebook notebook)
    {
        _notebook = notebook;
        _cells = [.. notebook.Cells.Select(cell => (cell, cell.IsCode ? CellCode.Of(cell.Source) : null))];
    }

    /// <summary>The program, or null where faults were added.</summary>
    /// <param name="notebook">The lesson.</param>
    /// <param name="library">Where the lessons' library comes from.</param>
    /// <param name="faults">Told what a program cannot take over from the notebook.</param>
    public static string? Of(LessonNotebook notebook, LibraryReference library, List<string> faults)
    {
        var program = new LessonProgram(notebook);
        string? text = program.Write(library);
        faults.AddRange(program._faults);
        return text;
    }

    private string? Write(LibraryReference library)
    {
        List<string> packages = Packages();
        HashSet<LessonCell> blocks = Blocks();
        if (_faults.Count > 0)
            return null;
        var lines = new ProgramLines();
        lines.Add($"// {Invariant($"Lesson {_notebook.Number}")}: {_notebook.Title}");
        lines.Add($"// Run it in this folder, with the .NET SDK 10 or later: dotnet run {_notebook.Stem}.cs");
        lines.Add($"// {library.Needs}");
        lines.Add($"// For the instructor: it holds the answers. Made from {_notebook.FileName} by: flapaero export. A change made here is lost at the next export.");
        lines.Add(library.Directive);
        foreach (string package in packages.Distinct(StringComparer.Ordinal))
            lines.Add($"#:package {package}");
        foreach (string property in library.IsProject && packages.Count == 0 ? Properties : [.. Properties, "ManagePackageVersionsCentrally=false"])
            lines.Add($"#:property {property}");
        lines.Add("");
        foreach (string use in KernelUsings.Concat(_cells.SelectMany(c => c.Code?.Usings ?? [])).Append("using FlapAero.Notebooks;")
            .Distinct(StringComparer.Ordinal).OrderBy(use => use.TrimEnd(';'), StringComparer.Ordinal))
            lines.Add(use);
        lines.Add("");
        lines.Add("Terminal.Begin();");
        foreach ((LessonCell cell, CellCode? code) in _cells)
            WriteCell(lines, cell, code, blocks.Contains(cell));
        foreach ((LessonCell cell, CellCode? code) in _cells)
            foreach (string type in code?.Types ?? [])
                lines.AddOf(cell, "\n" + type);
        AddCompilerFaults(lines);
        return _faults.Count > 0 ? null : lines.ToString();
    }

    private void WriteCell(ProgramLines lines, LessonCell cell, CellCode? code, bool isBlock)
    {
        if (code is null)
        {
            string prose = NoteText.Of(_notebook, cell);
            string quotes = new('"', Math.Max(3, LongestRun(prose, '"') + 1));
            string text = Terminal.Prose(prose, Terminal.Columns).Replace("\n", "\n    ", StringComparison.Ordinal);
            lines.AddOf(cell, $"\n// {cell.Title}\nTerminal.Say({quotes}\n    {text}\n    {quotes});");
        }
        else if (code.Statements.Length > 0)
        {
            lines.AddOf(cell, $"\n// {cell.Title}\n{(isBlock ? "{\n" : "")}{code.Statements}{(isBlock ? "\n}" : "")}");
        }
    }

    /// <summary>A lesson's own reference is the library's line; packages from elsewhere come along, anything else does not.</summary>
    private List<string> Packages()
    {
        var packages = new List<string>();
        foreach ((LessonCell cell, CellCode? code) in _cells)
            foreach ((string directive, CellReference? reference) in code?.Directives ?? [])
            {
                if (reference?.Package is { } package)
                {
                    if (package != "FlapAero.Notebooks")
                        packages.Add($"{package}@{reference.Version ?? "*"}");
                }
                else if (cell.Role != CellRole.Setup || reference is null)
                {
                    Fault(cell, $"has the line {directive}, which only a notebook's kernel understands; allowed in a program are #r \"nuget: NAME, VERSION\" and the setup's #r.");
                }
            }
        return packages;
    }

    /// <summary>
    /// A notebook lets cells declare a name anew, a program does not. Cells whose names no later cell uses are put into
    /// braces; where that is not enough the name has to be changed by its author.
    /// </summary>
    private HashSet<LessonCell> Blocks()
    {
        var blocks = new HashSet<LessonCell>();
        var declarations = _cells.Where(c => c.Code is not null)
            .SelectMany(c => c.Code!.Names.Declared.Select(name => (Name: name, c.Cell))).GroupBy(d => d.Name, StringComparer.Ordinal);
        foreach (IGrouping<string, (string Name, LessonCell Cell)> doubled in declarations.Where(group => group.Count() > 1))
        {
            foreach ((string name, LessonCell cell) in doubled)
                if (FirstUse(cell) is not { } use)
                    blocks.Add(cell);
                else
                    Fault(doubled.First().Cell == cell ? doubled.Skip(1).First().Cell : cell,
                        $"declares \"{name}\", which {(doubled.First().Cell == cell ? cell : doubled.First().Cell)} declares too; a notebook allows it, a program only where no later cell uses what the cell declares, "
                        + $"but {use.Cell} uses \"{use.Name}\". Choose another name in one of them.");
        }
        return blocks;
    }

    /// <summary>The first later cell that uses a name which this cell declared last before it.</summary>
    private (LessonCell Cell, string Name)? FirstUse(LessonCell of)
    {
        int at = _cells.FindIndex(c => c.Cell == of);
        foreach (string name in _cells[at].Code!.Names.Declared)
            foreach ((LessonCell cell, CellCode? code) in _cells.Skip(at + 1))
            {
                if (code is null)
                    continue;
                if (code.Names.Declared.Contains(name))
                    break;
                if (code.Names.Used.Contains(name))
                    return (cell, name);
            }
        return null;
    }

    private void AddCompilerFaults(ProgramLines lines)
    {
        foreach ((int line, string words) in ProgramCheck.Faults(lines.ToString()))
        {
            string where = lines.CellAt(line) is { } cell ? $"{_notebook.FileName}, {cell}" : _notebook.FileName;
            _faults.Add($"{where} runs in a notebook but does not compile in a program: {words}");
        }
    }

    private void Fault(LessonCell cell, string words) => _faults.Add($"{_notebook.FileName}, {cell} {words}");

    private static int LongestRun(string text, char of)
    {
        int longest = 0, run = 0;
        foreach (char c in text)
            longest = Math.Max(longest, run = c == of ? run + 1 : 0);
        return longest;
    }
}
