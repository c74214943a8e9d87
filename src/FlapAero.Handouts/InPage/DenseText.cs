namespace FlapAero.Handouts.InPage;

/// <summary>
/// Bytes as text of a script: 15 bits a letter, written as UTF-16 with its mark in front, which every browser believes whatever a
/// server says of the file. It is a fifteenth longer than the bytes; base64 is a third longer. All letters lie in one block without
/// quotes, ends of lines and halves of pairs.
/// </summary>
internal static class DenseText
{
    /// <summary>The letter that stands for zero.</summary>
    public const char Zero = '\u3400';

    private const int Bits = 15;

    /// <summary>A letter that says how many bytes too many the others hold, then the others.</summary>
    public static string Of(ReadOnlySpan<byte> bytes)
    {
        var letters = new List<char>((bytes.Length * 8 / Bits) + 2) { Zero };
        uint held = 0;
        int count = 0;
        foreach (byte one in bytes)
        {
            held = (held << 8) | one;
            count += 8;
            if (count < Bits)
                continue;
            count -= Bits;
            letters.Add((char)(Zero + (held >> count)));
            held &= (1u << count) - 1;
        }
        if (count > 0)
            letters.Add((char)(Zero + (held << (Bits - count))));
        letters[0] = (char)(Zero + ((letters.Count - 1) * Bits / 8) - bytes.Length);
        return new string([.. letters]);
    }
}
