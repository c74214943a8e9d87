namespace FlapAero.Notebooks;

/// <summary>The letters that a choice's options go by, from a.</summary>
internal static class OptionLetters
{
    /// <summary>The letter of an option.</summary>
    public static char Of(int index) => (char)('a' + index);

    /// <summary>The option of a letter; below zero where the text is not one letter from a on.</summary>
    public static int IndexOf(string letter) => letter.Length == 1 ? letter[0] - 'a' : -1;
}
