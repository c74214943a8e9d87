using UnitsNet;

namespace FlapAero.Notebooks.Seals;

/// <summary>
/// An expected number that cannot be read. The line of numbers is cut into pieces of twice the tolerance, one of which is
/// exactly what is right; a guess is right if the hash of its piece is the stored one. A known mistake is cut in the
/// same way and holds its words under its own piece.
/// </summary>
/// <param name="What">What was asked.</param>
/// <param name="Quantity">The kind of quantity, by UnitsNet's name.</param>
/// <param name="Unit">The unit that the answer wants, by UnitsNet's name.</param>
/// <param name="Tolerance">How far off is still right, in that unit.</param>
/// <param name="Decimals">The decimals that the tolerance and an answer are written with.</param>
/// <param name="Salt">The salt, in hexadecimal.</param>
/// <param name="Rounds">The rounds of the slow hash.</param>
/// <param name="Cut">Where the pieces begin, as a share of one.</param>
/// <param name="Right">The tag of the right piece.</param>
/// <param name="Known">The known mistakes.</param>
/// <param name="Units">The units that an answer may come in; the first is the wanted one.</param>
internal sealed record NumberSeal(
    string What, string Quantity, string Unit, double Tolerance, int Decimals, string Salt, int Rounds, double Cut, string Right,
    IReadOnlyList<NumberSeal.Mistaken> Known, IReadOnlyList<UnitSpelling> Units) : IExpectation
{
    /// <summary>A hair wider than the tolerance, so that an answer at its very edge is within it.</summary>
    private const double Hair = 1e-9;

    /// <summary>A known mistake: where its pieces begin, its tag, and its words under its key.</summary>
    internal sealed record Mistaken(double Cut, string Tag, string Words);

    /// <summary>Seals a check.</summary>
    public static NumberSeal Of(string what, string question, IQuantity expected, IQuantity tolerance, IReadOnlyList<Mistake> mistakes)
    {
        Enum unit = tolerance.Unit;
        double right = expected.As(unit), margin = tolerance.As(unit);
        string salt = SlowHash.SaltOf($"{what}\n{question}\n{unit}");
        var known = new List<Mistaken>();
        foreach (Mistake mistake in mistakes)
        {
            double value = mistake.Value.As(unit), cut = CutOf(value, margin);
            var hash = new SlowHash(Guess(known.Count, value, cut, margin), salt, SlowHash.Rounds);
            known.Add(new Mistaken(cut, hash.Tag, hash.Close(mistake.Words)));
        }
        double begin = CutOf(right, margin);
        return new NumberSeal(what, tolerance.QuantityInfo.Name, unit.ToString(), margin, Diagnosis.CountDecimals(margin), salt, SlowHash.Rounds, begin,
            new SlowHash(Guess(null, right, begin, margin), salt, SlowHash.Rounds).Tag, known, UnitSpelling.All(tolerance));
    }

    public static NumberSeal Parse(string text) => SealText.Parse<NumberSeal>(text, s => s is { What: not null, Salt: not null, Right: not null, Known: not null, Units.Count: > 0, Tolerance: > 0, Rounds: > 0 });

    /// <summary>The wanted unit.</summary>
    public Enum WantedUnit()
    {
        QuantityInfo info = UnitsNet.Quantity.Infos.First(i => i.Name == Quantity);
        return info.UnitInfos.First(u => u.Value.ToString() == Unit).Value;
    }

    /// <inheritdoc/>
    public bool IsRight(double value) => new SlowHash(Guess(null, value, Cut, Tolerance), Salt, Rounds).Tag == Right;

    /// <inheritdoc/>
    public string? MistakeIn(double value)
    {
        for (int i = 0; i < Known.Count; i++)
        {
            var hash = new SlowHash(Guess(i, value, Known[i].Cut, Tolerance), Salt, Rounds);
            if (hash.Tag == Known[i].Tag) return hash.Open(Known[i].Words);
        }
        return null;
    }

    /// <summary>A seal does not know on which side of the answer a guess lies.</summary>
    public string Distance(double value) => "is not right: work it again";

    private static double CutOf(double value, double tolerance)
    {
        double pieces = (value - tolerance * (1 + Hair)) / WidthOf(tolerance);
        return pieces - Math.Floor(pieces);
    }

    private static double WidthOf(double tolerance) => 2 * tolerance * (1 + Hair);

    /// <summary>The text that is hashed: of the answer or of one of the mistakes, and the number of the piece.</summary>
    private static string Guess(int? mistake, double value, double cut, double tolerance)
    {
        // Plus zero: a minus zero would be written with its sign.
        double piece = Math.Floor(value / WidthOf(tolerance) - cut) + 0.0;
        return $"{(mistake is { } i ? i.ToString(System.Globalization.CultureInfo.InvariantCulture) : "right")}:{piece.ToString("F0", System.Globalization.CultureInfo.InvariantCulture)}";
    }
}
