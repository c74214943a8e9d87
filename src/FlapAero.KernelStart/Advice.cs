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
        "CS0103" or "CS0246" or "CS0234" =>
            "Run the cells above, the setup first. If the name is still unknown, check its spelling; capitals count.",
        "CS1061" or "CS0117" => "Check the spelling; capitals count. A dot, then the Tab key, lists what there is.",
        "CS0029" or "CS0266" or "CS1503" or "CS0019" or "CS0030" =>
            "Check the kinds: a quantity is made with its unit, such as Speed.FromKnots(65), and only quantities of one kind are added or compared.",
        "CS1002" or "CS1003" or "CS1026" or "CS1513" or "CS1514" or "CS1525" or "CS1733" =>
            "Look for a bracket without its partner or a missing semicolon. Only the last line of a cell, which shows its value, goes without one.",
        "CS7036" or "CS1501" or "CS1729" => "Check what stands between the brackets: a value is missing or one too many.",
        _ => Usual,
    };

    public static string On(Exception exception) => exception switch
    {
        OldAnswerException => "Mend that cell and run it, then run this one again.",
        NullReferenceException => "A value used here was never set: menu Kernel, Restart & Run All, so that every cell above has run.",
        FileNotFoundException or DirectoryNotFoundException => "Check the file's name and folder; a name counts from the folder of this notebook.",
        _ => Usual,
    };
}
