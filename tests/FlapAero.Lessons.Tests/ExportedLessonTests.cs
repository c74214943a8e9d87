using FlapAero.Charts;
using FlapAero.Handouts;
using FlapAero.Handouts.Exporting;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using FlapAero.Tests;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Emit;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace FlapAero.Lessons.Tests;

/// <summary>A lesson exported and run as a program says what the same lesson says in the kernel, to the last number.</summary>
[Trait("Speed", "slow")]
public sealed class ExportedLessonTests : IDisposable
{
    /// <summary>Whatever of ours, and of quantities, a cell may end in.</summary>
    private static readonly IReadOnlyList<Type> Shown =
        [.. typeof(Figure).Assembly.GetExportedTypes().Concat(typeof(Lesson).Assembly.GetExportedTypes()).Where(type => type is { IsClass: true, ContainsGenericParameters: false } and not { IsAbstract: true, IsSealed: true }), typeof(IQuantity)];

    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-apps-").FullName;

    public static TheoryData<string> Lessons => [.. LessonCopies.All.Select(lesson => lesson.Slug)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory, MemberData(nameof(Lessons))]
    public async Task Program_InstructorsCopyUnderACommaCulture_SaysWhatTheKernelSays(string slug) =>
        await SaysWhatTheKernelSaysAsync(slug, Compiled(Assert.Single(Export(slug))));

    /// <summary>The lines that only a build reads are the same in all: one lesson is enough for them.</summary>
    [Fact]
    public async Task Program_BuiltAndRunByTheSdk_SaysWhatTheKernelSays() =>
        await SaysWhatTheKernelSaysAsync(LessonCopies.All[0].Slug, "run", Assert.Single(Export(LessonCopies.All[0].Slug)));

    [Fact]
    public void Export_AllLessons_CompileAsPrograms() =>
        Assert.Equal(LessonCopies.All.Select(lesson => lesson.Stem + ".cs"), Export());

    [Fact]
    public void Export_UnknownLesson_SaysWhichThereAreAndWritesNothing()
    {
        Assert.Throws<UnknownLessonException>(() => Export("flare"));
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void Export_FolderIsAFile_SaysItCannotBeWritten()
    {
        File.WriteAllText(Path.Combine(_folder, "file"), "");
        var options = new ExportOptions(RepositoryRoot.Path("notebooks"), Path.Combine(_folder, "file"), [], project: null);

        Assert.Contains("cannot be written", Assert.Throws<HandoutException>(() => LessonExporter.Export(options)).Message, StringComparison.Ordinal);
    }

    private IReadOnlyList<string> Export(params string[] lessons) => LessonExporter.Export(
        new ExportOptions(RepositoryRoot.Path("notebooks"), _folder, lessons, RepositoryRoot.Path("src/FlapAero.Notebooks/FlapAero.Notebooks.csproj")));

    /// <summary>Compiled as it was before it was exported, to be started beside the assemblies of this process: a build of each takes seconds.</summary>
    private string[] Compiled(string program)
    {
        string assembly = Path.Combine(_folder, "lesson.dll");
        EmitResult emitted = ProgramCheck.Compiled(File.ReadAllText(Path.Combine(_folder, program))).Emit(assembly);
        Assert.True(emitted.Success, string.Join('\n', emitted.Diagnostics));
        string here = Path.ChangeExtension(typeof(ExportedLessonTests).Assembly.Location, null);
        return ["exec", "--depsfile", here + ".deps.json", "--runtimeconfig", here + ".runtimeconfig.json", assembly];
    }

    private async Task SaysWhatTheKernelSaysAsync(string slug, params string[] call)
    {
        (int code, string output, string error) = await Command.RunAsync(_folder, "dotnet", call, new Dictionary<string, string> { ["LC_ALL"] = "de_DE.UTF-8" });

        Assert.True(code == 0, output + error);
        Assert.Equal("", error);
        string said = Plain(output);
        int at = 0;
        foreach (string text in await KernelTextsAsync(LessonCopies.Named(slug)))
        {
            int found = said.IndexOf(Plain(text), at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"The program does not say, or not in its place: {text}");
            at = found + Plain(text).Length;
        }
        Assert.True(at > 0);
    }

    /// <summary>What each code cell but the setup says in the kernel where plain text is asked for.</summary>
    private static async Task<IReadOnlyList<string>> KernelTextsAsync(LessonNotebook lesson)
    {
        var texts = new List<string>();
        using var kernel = new InteractiveKernel();
        try
        {
            foreach (LessonCell cell in lesson.Cells.Where(cell => cell.IsCode))
            {
                CellResult result = await kernel.RunAsync(cell.Source, TestContext.Current.CancellationToken);
                Assert.Null(result.Failure);
                if (cell.Role != CellRole.Setup)
                    texts.AddRange(result.Outputs.Select(output => output.Text));
                // A lesson that begins sets HTML first.
                Prefer(PlainTextFormatter.MimeType);
            }
        }
        finally
        {
            // For the whole process: other tests want pages.
            Prefer(HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
            Formatters.KeepKeysApart();
        }
        Assert.DoesNotContain(texts, text => text.StartsWith('<'));
        return texts;
    }

    private static void Prefer(params string[] mimeTypes)
    {
        foreach (Type type in Shown)
            Formatter.SetPreferredMimeTypesFor(type, mimeTypes);
    }

    /// <summary>A terminal has lines of its own, in a quotation each with its mark; the words and numbers are what must agree.</summary>
    private static string Plain(string text) =>
        string.Join(' ', text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries).Where(word => word != ">"));
}
