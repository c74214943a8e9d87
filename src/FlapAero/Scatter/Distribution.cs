using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// How one input is spread: a family with its parameters, of a quantity or of a plain number. Immutable. A spread of zero is
/// allowed and is a fixed value.
/// </summary>
public sealed class Distribution
{
    // Less of the parent than this is a request for another distribution.
    private const double LeastKept = 1e-6;

    private readonly Enum? _unit;

    private Distribution(DistributionLaw law, QuantityInfo? kind, Enum? unit)
    {
        Law = law;
        Kind = kind;
        _unit = SpokenUnit = unit;
    }

    /// <summary>The family.</summary>
    public DistributionFamily Family => Law.Family;

    /// <summary>Mean, in the unit of <see cref="Unit"/>: of what is drawn, truncation included.</summary>
    public double Mean => ToUnit(Law.Mean);

    /// <summary>Standard deviation, in the unit of <see cref="Unit"/>: of what is drawn, truncation included.</summary>
    public double StandardDeviation => ToUnit(Law.StandardDeviation);

    /// <summary>No value lies below, in the unit of <see cref="Unit"/>.</summary>
    public double Minimum => ToUnit(Law.Minimum);

    /// <summary>No value lies above, in the unit of <see cref="Unit"/>.</summary>
    public double Maximum => ToUnit(Law.Maximum);

    /// <summary>The unit of the numbers above, as it is written; empty for a plain number.</summary>
    public string Unit => _unit is null ? "" : QuantityText.Abbreviation(_unit);

    /// <summary>The law, in the quantity's base unit: SI, and degrees for angles.</summary>
    internal DistributionLaw Law { get; }

    internal QuantityInfo? Kind { get; }

    /// <summary>The unit in which messages speak of it; none for a plain number.</summary>
    internal Enum? SpokenUnit { get; private init; }

    /// <summary>The same distribution for a value that was given in another unit.</summary>
    internal Distribution SpokenIn(Enum unit) => new(Law, Kind, _unit) { SpokenUnit = unit };

    /// <summary>One value, always.</summary>
    /// <remarks>Formula: none. Range: finite. Source: [common-practice].</remarks>
    /// <param name="value">The value.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">A value that is not finite.</exception>
    /// <example><code>Distribution.Fixed(Speed.FromKnots(65)).Mean // 65.00</code></example>
    public static Distribution Fixed(IQuantity value) => Of(value, [(nameof(value), value)], v => DistributionLaw.Fixed(v[0].Value));

    /// <summary>One number, always.</summary>
    /// <remarks>Formula: none. Range: finite. Source: [common-practice].</remarks>
    /// <param name="value">The number.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">A number that is not finite.</exception>
    /// <example><code>Distribution.Fixed(0.3).Mean // 0.3</code></example>
    public static Distribution Fixed(double value) => new(DistributionLaw.Fixed(Finite(new(nameof(value), value))), null, null);

    /// <summary>Every value between two is as likely.</summary>
    /// <remarks>Formula: mean (a + b)/2, standard deviation (b − a)/√12. Range: a ≤ b. Source: [statistics].</remarks>
    /// <param name="minimum">Least value a.</param>
    /// <param name="maximum">Greatest value b.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">Values of two kinds, not finite, or out of order.</exception>
    /// <example><code>Distribution.Uniform(Length.FromFeet(40), Length.FromFeet(60)).StandardDeviation // 5.77</code></example>
    public static Distribution Uniform(IQuantity minimum, IQuantity maximum) =>
        Of(minimum, [(nameof(minimum), minimum), (nameof(maximum), maximum)], v => UniformLaw(v[0], v[1]));

    /// <summary>Every number between two is as likely.</summary>
    /// <remarks>Formula: mean (a + b)/2, standard deviation (b − a)/√12. Range: a ≤ b. Source: [statistics].</remarks>
    /// <param name="minimum">Least number a.</param>
    /// <param name="maximum">Greatest number b.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">Numbers that are not finite, or out of order.</exception>
    /// <example><code>Distribution.Uniform(0.2, 0.4).Mean // 0.30</code></example>
    public static Distribution Uniform(double minimum, double maximum) =>
        new(UniformLaw(new(nameof(minimum), minimum), new(nameof(maximum), maximum)), null, null);

    /// <summary>The normal distribution.</summary>
    /// <remarks>
    /// Formula: density e^(−½((x − μ)/σ)²)/(σ√(2π)). Range: σ from zero. Most inputs have an edge that no value may pass, and take
    /// the truncated one instead. Source: [statistics].
    /// </remarks>
    /// <param name="mean">Mean μ.</param>
    /// <param name="standardDeviation">Standard deviation σ.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">Values of two kinds, not finite, or a negative deviation.</exception>
    /// <example><code>Distribution.Normal(Speed.FromKnots(5), Speed.FromKnots(2)).StandardDeviation // 2.000</code></example>
    public static Distribution Normal(IQuantity mean, IQuantity standardDeviation) =>
        Of(mean, [(nameof(mean), mean), (nameof(standardDeviation), standardDeviation)], v => NormalLaw(v[0], v[1]));

    /// <summary>The normal distribution of a plain number.</summary>
    /// <remarks>Formula: density e^(−½((x − μ)/σ)²)/(σ√(2π)). Range: σ from zero. Source: [statistics].</remarks>
    /// <param name="mean">Mean μ.</param>
    /// <param name="standardDeviation">Standard deviation σ.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">Numbers that are not finite, or a negative deviation.</exception>
    /// <example><code>Distribution.Normal(0, 0.01).StandardDeviation // 0.010</code></example>
    public static Distribution Normal(double mean, double standardDeviation) =>
        new(NormalLaw(new(nameof(mean), mean), new(nameof(standardDeviation), standardDeviation)), null, null);

    /// <summary>The part of a normal distribution between two values.</summary>
    /// <remarks>
    /// Formula: with α, β the edges in deviations and Z = Φ(β) − Φ(α): mean μ + σ(φ(α) − φ(β))/Z, variance
    /// σ²[1 + (αφ(α) − βφ(β))/Z − ((φ(α) − φ(β))/Z)²]. Range: σ from zero; at least a millionth of the whole normal inside.
    /// Source: [statistics].
    /// </remarks>
    /// <param name="mean">Mean μ of the whole normal, inside or outside the edges.</param>
    /// <param name="standardDeviation">Standard deviation σ of the whole normal.</param>
    /// <param name="minimum">The lower edge.</param>
    /// <param name="maximum">The upper edge.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">
    /// Values of two kinds, not finite, out of order, or edges that leave next to nothing.
    /// </exception>
    /// <example><code>Distribution.TruncatedNormal(Speed.FromKnots(65), Speed.FromKnots(2.5), Speed.FromKnots(60), Speed.FromKnots(70)).StandardDeviation // 2.199</code></example>
    public static Distribution TruncatedNormal(IQuantity mean, IQuantity standardDeviation, IQuantity minimum, IQuantity maximum) =>
        Of(mean, [(nameof(mean), mean), (nameof(standardDeviation), standardDeviation), (nameof(minimum), minimum), (nameof(maximum), maximum)], v => TruncatedLaw(v[0], v[1], v[2], v[3]));

    /// <summary>The part of a plain number's normal distribution between two numbers.</summary>
    /// <remarks>Formula: as for quantities. Range: as for quantities. Source: [statistics].</remarks>
    /// <param name="mean">Mean μ of the whole normal, inside or outside the edges.</param>
    /// <param name="standardDeviation">Standard deviation σ of the whole normal.</param>
    /// <param name="minimum">The lower edge.</param>
    /// <param name="maximum">The upper edge.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">
    /// Numbers that are not finite, out of order, or edges that leave next to nothing.
    /// </exception>
    /// <example><code>Distribution.TruncatedNormal(0, 1, 0, 8).Mean // 0.7979</code></example>
    public static Distribution TruncatedNormal(double mean, double standardDeviation, double minimum, double maximum) =>
        new(
            TruncatedLaw(
                new(nameof(mean), mean), new(nameof(standardDeviation), standardDeviation), new(nameof(minimum), minimum),
                new(nameof(maximum), maximum)),
            null, null);

    /// <summary>Rises in a straight line from the least value to the likeliest, and falls to the greatest.</summary>
    /// <remarks>
    /// Formula: mean (a + c + b)/3, variance (a² + b² + c² − ab − ac − bc)/18. Range: a ≤ c ≤ b. Source: [statistics].
    /// </remarks>
    /// <param name="minimum">Least value a.</param>
    /// <param name="mode">Likeliest value c.</param>
    /// <param name="maximum">Greatest value b.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">Values of two kinds, not finite, or out of order.</exception>
    /// <example><code>Distribution.Triangular(Duration.FromSeconds(1), Duration.FromSeconds(2), Duration.FromSeconds(6)).Mean // 3.000</code></example>
    public static Distribution Triangular(IQuantity minimum, IQuantity mode, IQuantity maximum) =>
        Of(mode, [(nameof(minimum), minimum), (nameof(mode), mode), (nameof(maximum), maximum)], v => TriangularLaw(v[0], v[1], v[2]));

    /// <summary>Rises in a straight line from the least number to the likeliest, and falls to the greatest.</summary>
    /// <remarks>
    /// Formula: mean (a + c + b)/3, variance (a² + b² + c² − ab − ac − bc)/18. Range: a ≤ c ≤ b. Source: [statistics].
    /// </remarks>
    /// <param name="minimum">Least number a.</param>
    /// <param name="mode">Likeliest number c.</param>
    /// <param name="maximum">Greatest number b.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">Numbers that are not finite, or out of order.</exception>
    /// <example><code>Distribution.Triangular(0.2, 0.3, 0.4).StandardDeviation // 0.0408</code></example>
    public static Distribution Triangular(double minimum, double mode, double maximum) =>
        new(TriangularLaw(new(nameof(minimum), minimum), new(nameof(mode), mode), new(nameof(maximum), maximum)), null, null);

    /// <summary>Family and parameters of what is drawn.</summary>
    public override string ToString()
    {
        string spread = $"mean {Require.Number(Mean)}, standard deviation {Require.Number(StandardDeviation)}";
        return $"{Family}, {spread}, {Require.Number(Minimum)} to {Require.Number(Maximum)} {Unit}".TrimEnd();
    }

    private static Distribution Of(IQuantity like, (string Name, IQuantity Value)[] values, Func<Parameter[], DistributionLaw> law)
    {
        foreach ((string name, IQuantity value) in values)
            ArgumentNullException.ThrowIfNull(value, name);
        QuantityInfo kind = like.QuantityInfo;
        if (!LandingVariables.IsKind(kind))
            throw Require.Refused(
                nameof(like), "distribution", like, "a quantity that a landing has as an input", $"No input is a {kind.Name}.");
        foreach ((string name, IQuantity value) in values)
        {
            if (value.QuantityInfo.Name != kind.Name)
                throw RefusedInputException.Of(
                    name, "distribution", Require.Text(value), $"another {kind.Name}", "The parameters of a distribution are of one kind.",
                    value, $"beside {Require.Text(like)}");
        }

        Enum unit = kind.BaseUnitInfo.Value;
        return new(
            law([.. values.Select(value => new Parameter(value.Name, Require.In(value.Value, unit, value.Name, value.Name), value.Value))]),
            kind, like.Unit);
    }

    private static DistributionLaw UniformLaw(Parameter minimum, Parameter maximum)
    {
        Ordered(minimum, maximum);
        return DistributionLaw.Uniform(minimum.Value, maximum.Value);
    }

    private static DistributionLaw NormalLaw(Parameter mean, Parameter standardDeviation) =>
        DistributionLaw.Normal(Finite(mean), Deviation(standardDeviation));

    private static DistributionLaw TruncatedLaw(Parameter mean, Parameter standardDeviation, Parameter minimum, Parameter maximum)
    {
        double middle = Finite(mean), deviation = Deviation(standardDeviation);
        Ordered(minimum, maximum);
        if (deviation == 0 && !(middle >= minimum.Value && middle <= maximum.Value))
            throw mean.Refused($"{minimum.Like(mean)} to {maximum.Like(mean)}", "Without a spread the mean is every value.");
        var law = DistributionLaw.TruncatedNormal(middle, deviation, minimum.Value, maximum.Value);
        return law.Kept >= LeastKept && (deviation == 0 || minimum.Value < maximum.Value)
            ? law
            : throw RefusedInputException.Of(
                minimum.Name, "truncation", $"{minimum.Like(minimum)} to {maximum.Like(minimum)}",
                "a pair of edges with at least a millionth of the normal between them",
                "So far out another distribution says better what is meant.",
                beside: $"with mean {mean.Like(minimum)} and standard deviation {standardDeviation.Like(minimum)}");
    }

    private static DistributionLaw TriangularLaw(Parameter minimum, Parameter mode, Parameter maximum)
    {
        Ordered(minimum, mode);
        Ordered(mode, maximum);
        Ordered(minimum, maximum);
        return DistributionLaw.Triangular(minimum.Value, mode.Value, maximum.Value);
    }

    private static double Deviation(Parameter given) =>
        Finite(given) >= 0 ? given.Value : throw given.Refused("zero or more", "A spread has no sign.");

    private static void Ordered(Parameter low, Parameter high)
    {
        Finite(low);
        Finite(high);
        if (!(low.Value <= high.Value && double.IsFinite(high.Value - low.Value)))
            throw high.Refused($"{low.Like(high)} or more", "Values run upwards, and not further than a number goes.");
    }

    private static double Finite(Parameter given) =>
        double.IsFinite(given.Value) ? given.Value : throw given.Refused("a finite number", "Nothing can be drawn from it.");

    internal double ToUnit(double value) =>
        Kind is null || _unit is null || !double.IsFinite(value)
            ? value
            : (double)UnitConverter.Convert(value, Kind.BaseUnitInfo.Value, _unit);

    /// <summary>A parameter of a distribution in its quantity's base unit, and as it was given where it is a quantity.</summary>
    private readonly record struct Parameter(string Name, double Value, IQuantity? Given = null)
    {
        /// <summary>The parameter in words, in the unit of another.</summary>
        public string Like(Parameter other) => Given is null ? Require.Number(Value) : Require.Text(Given, other.Given);

        public RefusedInputException Refused(string allowed, string why) => RefusedInputException.Of(
            Name, Name == "standardDeviation" ? "standard deviation" : Name, Like(this), allowed, why, (object?)Given ?? Value);
    }
}
