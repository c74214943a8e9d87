namespace FlapAero.Charts;

/// <summary>
/// What one reads off a figure to answer its question, in words: where two lines meet, where one is lowest, where the
/// wheels touch. Immutable.
/// </summary>
/// <param name="Name">What is read off, for example <c>flaps up and full flap meet</c>.</param>
/// <param name="Value">Where, with units, for example <c>53.8°, 70.1 kt CAS</c>.</param>
public sealed record Reading(string Name, string Value)
{
    /// <summary>The reading in plain text.</summary>
    /// <returns>For example <c>flaps up and full flap meet: 53.8°, 70.1 kt CAS</c>.</returns>
    public override string ToString() => $"{LabelText.Plain(Name)}: {LabelText.Plain(Value)}";
}
