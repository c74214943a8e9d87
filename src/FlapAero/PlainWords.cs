using System.Reflection;

namespace FlapAero;

/// <summary>What an exception says to a reader who has never seen the runtime. Also compiled into assemblies that stand alone.</summary>
internal static class PlainWords
{
    /// <summary>The exception that says what happened, inside those that only say that something did.</summary>
    public static Exception Innermost(Exception exception)
    {
        while (exception is TargetInvocationException or AggregateException or TypeInitializationException
            && exception.InnerException is { } inner)
            exception = inner;
        return exception;
    }

    /// <summary>
    /// The message without the runtime's own name for the argument. What the library refuses itself never has that name in its message.
    /// </summary>
    public static string Of(Exception exception) =>
        exception is ArgumentException { ParamName: { Length: > 0 } name }
            ? exception.Message.Replace($" (Parameter '{name}')", "", StringComparison.Ordinal)
            : exception.Message;
}
