namespace FlapAero.Notebooks.Seals;

/// <summary>The options of a choice, each with its verdict closed under its own letter.</summary>
/// <param name="What">What was asked.</param>
/// <param name="Salt">The salt, in hexadecimal.</param>
/// <param name="Rounds">The rounds of the slow hash.</param>
/// <param name="Verdicts">A verdict a letter: its <see cref="Mark"/>, then the words.</param>
internal sealed record ChoiceSeal(string What, string Salt, int Rounds, IReadOnlyList<string> Verdicts)
{
    public static ChoiceSeal Of(string what, string question, IReadOnlyList<(Standing Standing, string Because)> options)
    {
        string salt = SlowHash.SaltOf($"{what}\n{question}");
        // As long as the longest: a length would tell one option from another.
        int length = options.Max(option => Bytes(option.Because));
        return new ChoiceSeal(what, salt, SlowHash.Rounds, [.. options.Select((option, i) =>
            Hash(i, salt, SlowHash.Rounds).Close(Mark(option.Standing) + option.Because + new string(' ', length - Bytes(option.Because))))]);
    }

    public static ChoiceSeal Parse(string text) => SealText.Parse<ChoiceSeal>(text, s => s is { What: not null, Salt: not null, Verdicts.Count: > 0, Rounds: > 0 });

    public CheckResult Verdict(string choice)
    {
        string letter = choice.Trim().TrimEnd('.', ')').ToLowerInvariant();
        if (letter.Length == 0) return new CheckResult(CheckOutcome.Open, $"{What}: not answered yet.");
        int at = OptionLetters.IndexOf(letter);
        if (at < 0 || at >= Verdicts.Count)
            return new CheckResult(CheckOutcome.Wrong, $"{What}: \"{choice.Trim()}\" is none of the options: write a letter from a to {OptionLetters.Of(Verdicts.Count - 1)}.");
        string verdict = Hash(at, Salt, Rounds).Open(Verdicts[at]);
        string because = verdict[1..].Trim();
        // The page's own script says the same words.
        if (verdict[0] == Mark(Standing.Right)) return new CheckResult(CheckOutcome.Passed, $"{What}: {letter} is right. {because}");
        return verdict[0] == Mark(Standing.Safe)
            ? new CheckResult(CheckOutcome.Passed, $"{What}: {letter} is safe and accepted; it is more than the rule asks. {because}")
            : new CheckResult(CheckOutcome.Wrong, $"{What}: {letter} is not right. {because}");
    }

    private static char Mark(Standing standing) => standing switch
    {
        Standing.Right => '+',
        Standing.Safe => '=',
        _ => '-',
    };

    private static int Bytes(string text) => System.Text.Encoding.UTF8.GetByteCount(text);

    private static SlowHash Hash(int index, string salt, int rounds) => new($"option:{OptionLetters.Of(index)}", salt, rounds);
}
