namespace FlapAero.Published.Tests;

/// <summary>One row of data/published, as printed.</summary>
internal sealed record PublishedRow(
    string File,
    string Id,
    string Quantity,
    string Conditions,
    string Value,
    string Unit,
    string Source,
    string Standing,
    string Tolerance,
    string Model,
    string Remark)
{
    /// <summary>The values, each with what it takes to agree with it.</summary>
    public IReadOnlyList<PrintedNumber> Numbers => Printed(Value, Tolerance);

    /// <summary>What the library gives where it disagrees with the source, rounded like a printed value; empty where it agrees.</summary>
    public IReadOnlyList<PrintedNumber> ModelNumbers => Model.Length == 0 ? [] : Printed(Model, "");

    public double Single => Numbers.Single().Value;

    public override string ToString() => $"{Id} {Source}";

    private static PrintedNumber[] Printed(string values, string tolerances)
    {
        string[] texts = Parts(values);
        string[] allowances = tolerances.Length == 0 ? [] : Parts(tolerances);
        if (allowances.Length > 1 && allowances.Length != texts.Length)
            throw new FormatException($"'{tolerances}' has not as many tolerances as '{values}' has values.");
        return [.. texts.Select((text, index) => new PrintedNumber(text, allowances.Length switch
        {
            0 => "",
            1 => allowances[0],
            _ => allowances[index],
        }))];
    }

    private static string[] Parts(string text) => text.Split(';', StringSplitOptions.TrimEntries);
}
