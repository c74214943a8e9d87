namespace FlapAero.KernelStart;

/// <summary>What a student may try on an error of the compiler, wherever a lesson's cells run; the engine of the pages has this file too.</summary>
internal static class CompilerAdvice
{
    /// <summary>The advice for an error's code; null where there is none of its own.</summary>
    public static string? On(string? code) => code switch
    {
        "CS0103" or "CS0246" or "CS0234" =>
            "Run the cells above, the setup first. If the name is still unknown, check its spelling; capitals count.",
        "CS0029" or "CS0266" or "CS1503" or "CS0019" or "CS0030" =>
            "Check the kinds: a quantity is made with its unit, such as Speed.FromKnots(65), and only quantities of one kind are added or compared.",
        "CS1002" or "CS1003" or "CS1026" or "CS1513" or "CS1514" or "CS1525" or "CS1733" =>
            "Look for a bracket without its partner or a missing semicolon. Only the last line of a cell, which shows its value, goes without one.",
        "CS7036" or "CS1501" or "CS1729" => "Check what stands between the brackets: a value is missing or one too many.",
        _ => null,
    };
}
