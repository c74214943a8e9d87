using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// How one input is spread: a family with its parameters, of a quantity or of a plain number. Immutable. A spread of zero is
/// allowed and is a fixed value. <see cref="Distribution{T}"/> has its numbers.
/// </summary>
public abstract class Distribution
{
    // Less of the parent than this is a request for another distribution.
    private const double LeastKept = 1e-6;

    private readonly QuantityInfo? _kind;

    private protected Distribution(DistributionLaw law, QuantityInfo? kind, Enum? unit) => (Law, _kind, GivenUnit) = (law, kind, unit);

    /// <summary>The family.</summary>
    public DistributionFamily Family => Law.Family;

    /// <summary>The unit in which it was given, as it is written; empty for a plain number.</summary>
    public string Unit => GivenUnit is null ? "" : QuantityText.Abbreviation(GivenUnit);

    /// <summary>The law, in the quantity's base unit: SI, and degrees for angles.</summary>
    internal DistributionLaw Law { get; }

    /// <summary>The unit in which it was given and messages speak of it; none for a plain number.</summary>
    internal Enum? GivenUnit { get; }

    /// <summary>One value, always.</summary>
    /// <remarks>Formula: none. Range: finite. Source: [common-practice].</remarks>
    /// <typeparam name="T">The kind of value: a quantity that a landing has as an input, or double.</typeparam>
    /// <param name="value">The value.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">A kind that no input is; a value that is not finite.</exception>
    /// <example><code>Distribution.Fixed(Speed.FromKnots(65)).Mean.Knots // 65.00</code></example>
    public static Distribution<T> Fixed<T>(T value)
        where T : struct => Of<T>([(nameof(value), value)], v => DistributionLaw.Fixed(v[0].Value));

    /// <summary>Every value between two is as likely.</summary>
    /// <remarks>Formula: mean (a + b)/2, standard deviation (b − a)/√12. Range: a ≤ b. Source: [statistics].</remarks>
    /// <typeparam name="T">The kind of value: a quantity that a landing has as an input, or double.</typeparam>
    /// <param name="minimum">Least value a.</param>
    /// <param name="maximum">Greatest value b.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">A kind that no input is; values that are not finite, or out of order.</exception>
    /// <example><code>Distribution.Uniform(Length.FromFeet(40), Length.FromFeet(60)).StandardDeviation.Feet // 5.77</code></example>
    public static Distribution<T> Uniform<T>(T minimum, T maximum)
        where T : struct => Of<T>([(nameof(minimum), minimum), (nameof(maximum), maximum)], v => UniformLaw(v[0], v[1]));

    /// <summary>The normal distribution.</summary>
    /// <remarks>
    /// Formula: density e^(−½((x − μ)/σ)²)/(σ√(2π)). Range: σ from zero. Most inputs have an edge that no value may pass, and take
    /// the truncated one instead. Source: [statistics].
    /// </remarks>
    /// <typeparam name="T">The kind of value: a quantity that a landing has as an input, or double.</typeparam>
    /// <param name="mean">Mean μ.</param>
    /// <param name="standardDeviation">Standard deviation σ.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">A kind that no input is; values that are not finite; a negative deviation.</exception>
    /// <example><code>Distribution.Normal(Speed.FromKnots(5), Speed.FromKnots(2)).StandardDeviation.Knots // 2.000</code></example>
    public static Distribution<T> Normal<T>(T mean, T standardDeviation)
        where T : struct => Of<T>([(nameof(mean), mean), (nameof(standardDeviation), standardDeviation)], v => NormalLaw(v[0], v[1]));

    /// <summary>The part of a normal distribution between two values.</summary>
    /// <remarks>
    /// Formula: with α, β the edges in deviations and Z = Φ(β) − Φ(α): mean μ + σ(φ(α) − φ(β))/Z, variance
    /// σ²[1 + (αφ(α) − βφ(β))/Z − ((φ(α) − φ(β))/Z)²]. Range: σ from zero; at least a millionth of the whole normal inside.
    /// Source: [statistics].
    /// </remarks>
    /// <typeparam name="T">The kind of value: a quantity that a landing has as an input, or double.</typeparam>
    /// <param name="mean">Mean μ of the whole normal, inside or outside the edges.</param>
    /// <param name="standardDeviation">Standard deviation σ of the whole normal.</param>
    /// <param name="minimum">The lower edge.</param>
    /// <param name="maximum">The upper edge.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">
    /// A kind that no input is; values that are not finite, out of order, or edges that leave next to nothing.
    /// </exception>
    /// <example><code>Distribution.TruncatedNormal(Speed.FromKnots(65), Speed.FromKnots(2.5), Speed.FromKnots(60), Speed.FromKnots(70)).StandardDeviation.Knots // 2.199</code></example>
    public static Distribution<T> TruncatedNormal<T>(T mean, T standardDeviation, T minimum, T maximum)
        where T : struct => Of<T>(
            [(nameof(mean), mean), (nameof(standardDeviation), standardDeviation), (nameof(minimum), minimum), (nameof(maximum), maximum)],
            v => TruncatedLaw(v[0], v[1], v[2], v[3]));

    /// <summary>Rises in a straight line from the least value to the likeliest, and falls to the greatest.</summary>
    /// <remarks>
    /// Formula: mean (a + c + b)/3, variance (a² + b² + c² − ab − ac − bc)/18. Range: a ≤ c ≤ b. Source: [statistics].
    /// </remarks>
    /// <typeparam name="T">The kind of value: a quantity that a landing has as an input, or double.</typeparam>
    /// <param name="minimum">Least value a.</param>
    /// <param name="mode">Likeliest value c.</param>
    /// <param name="maximum">Greatest value b.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="RefusedInputException">A kind that no input is; values that are not finite, or out of order.</exception>
    /// <example><code>Distribution.Triangular(Duration.FromSeconds(1), Duration.FromSeconds(2), Duration.FromSeconds(6)).Mean.Seconds // 3.000</code></example>
    public static Distribution<T> Triangular<T>(T minimum, T mode, T maximum)
        where T : struct => Of<T>([(nameof(minimum), minimum), (nameof(mode), mode), (nameof(maximum), maximum)],
            v => TriangularLaw(v[0], v[1], v[2]));

    /// <summary>How far a value lies off the mean, in standard deviations.</summary>
    /// <remarks>Formula: (x − μ)/σ. Range: any finite value; a distribution that is not fixed. Source: [statistics].</remarks>
    /// <param name="value">x, a number in the unit of <see cref="Unit"/>, as <see cref="LandingScatter.Draws"/> gives it.</param>
    /// <returns>The standard score.</returns>
    /// <exception cref="RefusedInputException">A value that is not finite; no spread.</exception>
    /// <example><code>Distribution.Normal(Speed.FromKnots(65), Speed.FromKnots(2)).StandardScore(68) // 1.500</code></example>
    public double StandardScore(double value)
    {
        if (Law.IsFixed)
            throw Require.RefusedWhole(nameof(value), "A fixed value has no standard deviation: ask a distribution that varies.");
        Require.Between(value, -1e300, 1e300, "value", "Nothing further away is drawn.");
        return (value - InUnit(Law.Mean)) / InUnit(Law.StandardDeviation);
    }

    /// <summary>Family and parameters of what is drawn.</summary>
    public override string ToString()
    {
        string spread = $"mean {Text(Law.Mean)}, standard deviation {Text(Law.StandardDeviation)}";
        return $"{Family}, {spread}, {Text(Law.Minimum)} to {Text(Law.Maximum)} {Unit}".TrimEnd();

        string Text(double value) => Require.Number(InUnit(value));
    }

    /// <summary>A number of the law in the unit that was given.</summary>
    internal double InUnit(double value) => _kind is null || GivenUnit is null || !double.IsFinite(value)
        ? value
        : (double)UnitConverter.Convert(value, _kind.BaseUnitInfo.Value, GivenUnit);

    private static Distribution<T> Of<T>((string Name, T Value)[] values, Func<Parameter[], DistributionLaw> law)
        where T : struct
    {
        (string first, object like) = (values[0].Name, values[0].Value);
        if (like is double)
            return new(law([.. values.Select(value => new Parameter(value.Name, (double)(object)value.Value))]), null, null);
        if (like is not IQuantity { QuantityInfo: var kind } || !LandingVariables.IsKind(kind))
            throw Require.Refused(
                first, "distribution", $"one of {typeof(T).Name}",
                "one of a quantity that a landing has as an input, or of double, such as 1.0",
                $"No input is a {typeof(T).Name}.");
        Parameter Given(string name, IQuantity value) => new(name, Require.In(value, kind.BaseUnitInfo.Value, name, name), value);
        return new(law([.. values.Select(value => Given(value.Name, (IQuantity)value.Value))]), kind, ((IQuantity)like).Unit);
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

    /// <summary>A parameter of a distribution in its quantity's base unit, and as it was given where it is a quantity.</summary>
    private readonly record struct Parameter(string Name, double Value, IQuantity? Given = null)
    {
        /// <summary>The parameter in words, in the unit of another.</summary>
        public string Like(Parameter other) => Given is null ? Require.Number(Value) : Require.Text(Given, other.Given);

        public RefusedInputException Refused(string allowed, string why) => RefusedInputException.Of(
            Name, Name == "standardDeviation" ? "standard deviation" : Name, Like(this), allowed, why, (object?)Given ?? Value);
    }
}
