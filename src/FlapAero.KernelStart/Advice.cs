namespace FlapAero.KernelStart;

/// <summary>What a student may try, by the kind of the error.</summary>
internal static class Advice
{
    public const string Usual =
        "Undo the last change in this cell. If the error stays: menu Kernel, Restart & Run All.";

    public const string SetUp =
        "In the project's folder run \"dotnet run --project src/FlapAero.Cli -- jupyter\", then menu Kernel, Restart & Run All.";

    public const string SetUpOrFeed =
        SetUp + " Without the project's folder: put a NuGet.config beside this notebook that names a folder with FlapAero's packages.";

    public const string Refused = "Change the value that the first line names, then run the cell again.";

    public static string OnCompiler(string? code) => code switch
    {
        "CS0006" => SetUp,
        "CS1061" or "CS0117" => "Check the spelling; capitals count. A dot, then the Tab key, lists what there is.",
        _ => CompilerAdvice.On(code) ?? Usual,
    };

    public static string On(Exception exception) => exception switch
    {
        OldAnswerException => "Mend that cell and run it, then run this one again.",
        NullReferenceException => "A value used here was never set: menu Kernel, Restart & Run All, so that every cell above has run.",
        FileNotFoundException or DirectoryNotFoundException => "Check the file's name and folder; a name counts from the folder of this notebook.",
        _ => Usual,
    };
}
