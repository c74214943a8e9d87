namespace FlapAero;

/// <summary>
/// What the library refuses to take, each part of the refusal a field of its own: which quantity, its value in the caller's unit,
/// what is allowed, and why. The message is made of them here and nowhere else. Immutable.
/// </summary>
public sealed class RefusedInputException : ArgumentOutOfRangeException
{
    private readonly string? _argument;

    private RefusedInputException(string? argument, string why, object? value, Exception? cause)
        : base(null, cause) => (_argument, Why, ActualValue) = (argument, why, value);

    /// <summary>The quantity in words, for example <c>approach speed</c>; empty where no single value is at fault.</summary>
    public string Quantity { get; private init; } = "";

    /// <summary>Its value in the unit of whoever gave it, for example <c>40 kt</c>; empty where no single value is at fault.</summary>
    public string Given { get; private init; } = "";

    /// <summary>What is allowed, in the same unit; empty where no single value is at fault.</summary>
    public string Allowed { get; private init; } = "";

    /// <summary>Why it is not: a whole sentence, and all there is to say where no single value is at fault.</summary>
    public string Why { get; }

    /// <summary>What the value is refused with or beside, for example <c>with headwind 3</c>; mostly empty.</summary>
    public string Beside { get; private init; } = "";

    /// <summary>Which of many it is about, for example <c>Landing 5</c>; mostly empty.</summary>
    public string Place { get; private init; } = "";

    /// <summary>The argument's name in code, where it has one.</summary>
    public override string? ParamName => _argument;

    /// <summary>The value itself, a quantity or a number, where there is one.</summary>
    public override object? ActualValue { get; }

    /// <summary>The refusal in words: what, which value, what is allowed, why.</summary>
    public override string Message =>
        (Place.Length == 0 ? "" : Place + ": ") + (IsOfOneValue ? $"{Quantity}: {Verdict}; {Permission}" : Why);

    /// <summary>Whether one value is at fault, and not how several go together.</summary>
    internal bool IsOfOneValue => Quantity.Length > 0;

    internal string Verdict => $"{Given} is refused{(Beside.Length == 0 ? "" : " " + Beside)}";

    internal string Permission => $"allowed is {Allowed}. {Why}";

    /// <summary>A refusal of one value.</summary>
    internal static RefusedInputException Of(
        string? argument, string quantity, string given, string allowed, string why, object? value = null, string beside = "",
        string place = "") =>
        new(argument, why, value, null) { Quantity = quantity, Given = given, Allowed = allowed, Beside = beside, Place = place };

    /// <summary>The same refusal with one more sentence of why.</summary>
    internal RefusedInputException Because(string more) =>
        Of(ParamName, Quantity, Given, Allowed, $"{Why} {more}", ActualValue, Beside, Place);

    /// <summary>A refusal of several values together, or of what is no value, in a sentence.</summary>
    internal static RefusedInputException OfWhole(string? argument, string why, Exception? cause = null, string place = "") =>
        new(argument, why, null, cause) { Place = place };
}
