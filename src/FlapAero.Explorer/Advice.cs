namespace FlapAero.Explorer;

/// <summary>What a student may try, by the kind of the error, where the lesson runs in a page.</summary>
internal static class Advice
{
    public const string Usual = "Undo the last change in this cell. If the error stays: Start again, then Run all.";

    public const string Refused = "Change the value that the first line names, then run the cell again.";

    public const string NotSet = "A value used here was never set: press Run all, so that every cell above has run.";

    public static string OnCompiler(string? code) => code switch
    {
        "CS0103" or "CS0246" or "CS0234" =>
            "Run the cells above, the setup first. If the name is still unknown, check its spelling; capitals count.",
        "CS1061" or "CS0117" => "Check the spelling; capitals count.",
        "CS0029" or "CS0266" or "CS1503" or "CS0019" or "CS0030" =>
            "Check the kinds: a quantity is made with its unit, such as Speed.FromKnots(65), and only quantities of one kind are added or compared.",
        "CS1002" or "CS1003" or "CS1026" or "CS1513" or "CS1514" or "CS1525" or "CS1733" =>
            "Look for a bracket without its partner or a missing semicolon. Only the last line of a cell, which shows its value, goes without one.",
        "CS7036" or "CS1501" or "CS1729" => "Check what stands between the brackets: a value is missing or one too many.",
        _ => Usual,
    };
}
