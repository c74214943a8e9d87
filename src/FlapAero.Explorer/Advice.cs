using FlapAero.KernelStart;

namespace FlapAero.Explorer;

/// <summary>What a student may try, by the kind of the error, where the lesson runs in a page.</summary>
internal static class Advice
{
    public const string Usual = "Undo the last change in this cell. If the error stays: Start again, then Run all.";

    public const string Refused = "Change the value that the first line names, then run the cell again.";

    public const string NotSet = "A value used here was never set: press Run all, so that every cell above has run.";

    public static string OnCompiler(string? code) => code switch
    {
        "CS1061" or "CS0117" => "Check the spelling; capitals count.",
        _ => CompilerAdvice.On(code) ?? Usual,
    };
}
