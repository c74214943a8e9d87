using UnitsNet;

namespace FlapAero.Notebooks.Seals;

/// <summary>
/// An expected number that cannot be read. The line of numbers is cut into pieces a little wider than twice the
/// tolerance,
/// from zero on, whatever the answer: what is right touches two of them. Under the hash of each of the two stands
/// from where
/// to where it is right, so that a guess in one of them is judged to the last digit, and any other opens nothing. A
/// known mistake is kept in the same way, with its words.
/// </summary>
/// <param name="What">What was asked.</param>
/// <param name="Quantity">The kind of quantity, by UnitsNet's name.</param>
/// <param name="Unit">The unit that the answer wants, by UnitsNet's name.</param>
/// <param name="Tolerance">How far off is still right, in that unit; see <see cref="CoarseTolerance"/>.</param>
/// <param name="Decimals">The decimals that the tolerance and an answer are written with.</param>
/// <param name="Salt">The salt, in hexadecimal.</param>
/// <param name="Rounds">The rounds of the slow hash.</param>
/// <param name="Right">The two pieces that what is right touches, in the order of their tags.</param>
/// <param name="Known">The known mistakes, two pieces each.</param>
/// <param name="Units">The units that an answer may come in; the first is the wanted one.</param>
internal sealed record NumberSeal(
    string What, string Quantity, string Unit, double Tolerance, int Decimals, string Salt, int Rounds,
    IReadOnlyList<NumberSeal.Piece> Right, IReadOnlyList<IReadOnlyList<NumberSeal.Piece>> Known, IReadOnlyList<UnitSpelling> Units) : IExpectation
{
    private const string RightName = "right";

    /// <summary>A hair wider than the tolerance, so that an answer at its very edge is within it.</summary>
    private const double Hair = 1e-9;

    /// <summary>A piece is wider than what is right by more than rounding, so that two are always enough.</summary>
    private const double Slack = 1e-6;

    /// <summary>
    /// The room for a number in a piece's words: as long as the longest, for a length would tell its digits.
    /// </summary>
    private const int NumberLength = 24;

    private static readonly System.Globalization.CultureInfo Invariant = System.Globalization.CultureInfo.InvariantCulture;

    /// <summary>A piece: its tag and, under its key, the two ends of what is meant and the words.</summary>
    internal sealed record Piece(string Tag, string Words);

    /// <summary>Seals a check.</summary>
    public static NumberSeal Of(string what, string question, IQuantity expected, IQuantity tolerance, IReadOnlyList<Mistake> mistakes)
    {
        Enum unit = tolerance.Unit;
        double margin = tolerance.As(unit);
        string salt = SlowHash.SaltOf($"{what}\n{question}\n{unit}");
        Piece[] Closed(string name, double value, string words) => PiecesOf(name, value, margin, words, salt);
        return new NumberSeal(what, tolerance.QuantityInfo.Name, unit.ToString(), margin, Diagnosis.CountDecimals(margin), salt, SlowHash.Rounds,
            Closed(RightName, expected.As(unit), ""),
            [.. mistakes.Select((mistake, i) => Closed(NameOf(i), mistake.Value.As(unit), mistake.Words))], UnitSpelling.All(tolerance));
    }

    public static NumberSeal Parse(string text) => SealText.Parse<NumberSeal>(text, s => s is { What: not null, Salt: not null, Right.Count: > 0, Known: not null, Units.Count: > 0, Tolerance: > 0, Rounds: > 0 });

    /// <summary>The wanted unit.</summary>
    public Enum WantedUnit()
    {
        QuantityInfo info = UnitsNet.Quantity.Infos.First(i => i.Name == Quantity);
        return info.UnitInfos.First(u => u.Value.ToString() == Unit).Value;
    }

    /// <inheritdoc/>
    public bool IsRight(double value) => Found(RightName, Right, value) is not null;

    /// <inheritdoc/>
    public string? MistakeIn(double value) =>
        Known.Select((pieces, i) => Found(NameOf(i), pieces, value)).FirstOrDefault(words => words is not null);

    /// <summary>A seal does not know on which side of the answer a guess lies.</summary>
    public string Distance(double value) => IsRight(value - 2 * Tolerance) || IsRight(value + 2 * Tolerance)
        ? "is close, but not close enough: look for a value that was rounded early"
        : "is not right: work it again";

    private static string NameOf(int mistake) => mistake.ToString(Invariant);

    private static Piece[] PiecesOf(string name, double value, double tolerance, string words, string salt)
    {
        double low = value - tolerance * (1 + Hair), high = value + tolerance * (1 + Hair);
        string text = low.ToString("R", Invariant).PadRight(NumberLength) + high.ToString("R", Invariant).PadRight(NumberLength) + words;
        double first = PieceOf(low, tolerance);
        return [.. new[] { first, first + 1 }.Select(piece => new SlowHash(Guess(name, piece), salt, SlowHash.Rounds))
            .Select(hash => new Piece(hash.Tag, hash.Close(text))).OrderBy(piece => piece.Tag, StringComparer.Ordinal)];
    }

    /// <summary>The words of the piece that a value lies in, where it lies between the ends too; else null.</summary>
    private string? Found(string name, IReadOnlyList<Piece> pieces, double value)
    {
        var hash = new SlowHash(Guess(name, PieceOf(value, Tolerance)), Salt, Rounds);
        if (pieces.FirstOrDefault(piece => piece.Tag == hash.Tag) is not { } found)
            return null;
        string text = hash.Open(found.Words);
        return value >= double.Parse(text[..NumberLength], Invariant) && value <= double.Parse(text[NumberLength..(2 * NumberLength)], Invariant)
            ? text[(2 * NumberLength)..] : null;
    }

    private static double PieceOf(double value, double tolerance) => Math.Floor(value / (2 * tolerance * (1 + Slack)));

    /// <summary>
    /// The text that is hashed: of the answer or of one of the mistakes, and the number of the piece.
    /// </summary>
    private static string Guess(string name, double piece) =>
        // Plus zero: a minus zero would be written with its sign.
        $"{name}:{(piece + 0.0).ToString("F0", Invariant)}";
}
