using FlapAero.Charts;

namespace FlapAero.Notebooks;

/// <summary>One option of a choice, with the reason for its being right or wrong. Immutable.</summary>
public sealed class Option
{
    /// <summary>An option that is right or wrong as the numbers drawn have it.</summary>
    /// <param name="isRight">Whether it is the right one.</param>
    /// <param name="text">What it says.</param>
    /// <param name="because">Why it is right, or why it is not.</param>
    /// <exception cref="RefusedInputException">A text is missing.</exception>
    public Option(bool isRight, Words text, Words because)
        : this(isRight, isSafe: false, text, because)
    {
    }

    private Option(bool isRight, bool isSafe, Words text, Words because)
    {
        Require.Words(text?.ToString()!, "text of the option", nameof(text));
        Require.Words(because?.ToString()!, "reason of the option", nameof(because));
        (IsRight, IsSafe, Text, Because) = (isRight, isSafe, text!, because!);
    }

    /// <summary>The right option.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="because">Why it is right.</param>
    /// <returns>The option.</returns>
    public static Option Right(Words text, Words because) => new(true, text, because);

    /// <summary>A wrong option.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="because">Why it is not right: the error that leads to it.</param>
    /// <returns>The option.</returns>
    public static Option Wrong(Words text, Words because) => new(false, text, because);

    /// <summary>
    /// An option that is safe whatever the numbers, such as to go around: it is the right one or, where the rule asks for less,
    /// accepted besides the right one. It is never called wrong.
    /// </summary>
    /// <param name="isRight">Whether it is the right one.</param>
    /// <param name="text">What it says.</param>
    /// <param name="because">Why it is right, or why it is more than the rule asks.</param>
    /// <returns>The option.</returns>
    public static Option Safe(bool isRight, Words text, Words because) => new(isRight, isSafe: true, text, because);

    /// <summary>Whether it is the right one.</summary>
    public bool IsRight { get; }

    /// <summary>Whether it is accepted although another option is the right one.</summary>
    public bool IsSafe { get; }

    internal Standing Standing => IsRight ? Standing.Right : IsSafe ? Standing.Safe : Standing.Wrong;

    /// <summary>The same option in the lesson's units.</summary>
    internal Option In(DisplayUnits units) => new(IsRight, IsSafe, Text.In(units), Because.In(units));

    /// <summary>What it says.</summary>
    public Words Text { get; }

    /// <summary>Why it is right, or why it is not.</summary>
    public Words Because { get; }
}
