namespace FlapAero;

/// <summary>
/// An exception's message without the runtime's own name for the argument, which a reader has never seen. Also compiled into
/// assemblies that stand alone. What the library refuses itself never has that name in its message.
/// </summary>
internal static class PlainWords
{
    public static string Of(Exception exception) =>
        exception is ArgumentException { ParamName: { Length: > 0 } name }
            ? exception.Message.Replace($" (Parameter '{name}')", "", StringComparison.Ordinal)
            : exception.Message;
}
