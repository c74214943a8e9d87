namespace FlapAero.AeroplaneFiles;

/// <summary>How many letters two words differ by, for "did you mean".</summary>
internal static class EditDistance
{
    /// <summary>The candidate that a slip of the fingers could have meant; none where all are far.</summary>
    public static string? Nearest(string word, IEnumerable<string> candidates)
    {
        int far = Math.Max(2, word.Length / 3);
        // A word of book length is no slip, and its table would be large.
        if (word.Length > 60) return null;
        return candidates
            .Select(candidate => (candidate, distance: Between(word, candidate)))
            .Where(pair => pair.distance <= far && pair.distance < pair.candidate.Length)
            .OrderBy(pair => pair.distance)
            .Select(pair => pair.candidate)
            .FirstOrDefault();
    }

    /// <summary>Levenshtein's distance, blind to capitals.</summary>
    public static int Between(string first, string second)
    {
        int[] row = [.. Enumerable.Range(0, second.Length + 1)];
        for (int i = 1; i <= first.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= second.Length; j++)
            {
                bool same = char.ToUpperInvariant(first[i - 1]) == char.ToUpperInvariant(second[j - 1]);
                int replaced = diagonal + (same ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
            }
        }

        return row[^1];
    }
}
