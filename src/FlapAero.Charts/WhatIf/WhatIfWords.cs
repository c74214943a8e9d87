namespace FlapAero.Charts;

/// <summary>Words of the what-if page that come from the model's.</summary>
internal static class WhatIfWords
{
    /// <summary>An explanation without the reason's name in tables before it, its first letter large.</summary>
    public static string Sentences(string explanation)
    {
        int end = explanation.IndexOf(": ", StringComparison.Ordinal);
        string words = end > 0 && !explanation[..end].Contains(' ', StringComparison.Ordinal) ? explanation[(end + 2)..] : explanation;
        return words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
    }
}
