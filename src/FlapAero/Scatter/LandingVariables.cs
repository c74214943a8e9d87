using System.Collections.Frozen;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>What kind of value each input takes, and how messages call it.</summary>
internal static class LandingVariables
{
    private static readonly InputKind PlainNumbers = new InputKind<double>(null);

    private static readonly FrozenDictionary<LandingVariable, InputKind> Kinds = new Dictionary<LandingVariable, InputKind>
    {
        [LandingVariable.Mass] = new InputKind<Mass>(Mass.Info),
        [LandingVariable.WingArea] = new InputKind<Area>(Area.Info),
        [LandingVariable.Span] = new InputKind<Length>(Length.Info),
        [LandingVariable.WingHeight] = new InputKind<Length>(Length.Info),
        [LandingVariable.Density] = new InputKind<Density>(Density.Info),
        [LandingVariable.Headwind] = new InputKind<Speed>(Speed.Info),
        [LandingVariable.ThresholdHeight] = new InputKind<Length>(Length.Info),
        [LandingVariable.ThresholdSpeed] = new InputKind<Speed>(Speed.Info),
        [LandingVariable.PathAngle] = new InputKind<Angle>(Angle.Info),
        [LandingVariable.FlareTimeConstant] = new InputKind<Duration>(Duration.Info),
        [LandingVariable.HoldOffHeight] = new InputKind<Length>(Length.Info),
        [LandingVariable.PowerCutHeight] = new InputKind<Length>(Length.Info),
        [LandingVariable.PowerCutTime] = new InputKind<Duration>(Duration.Info),
        [LandingVariable.IdleThrust] = new InputKind<Force>(Force.Info),
        [LandingVariable.GustChange] = new InputKind<Speed>(Speed.Info),
        [LandingVariable.GustStart] = new InputKind<Duration>(Duration.Info),
        [LandingVariable.GustLength] = new InputKind<Duration>(Duration.Info),
    }.ToFrozenDictionary();

    public static IReadOnlyList<LandingVariable> All { get; } = Enum.GetValues<LandingVariable>();

    /// <summary>What a landing need not say: no gust blows, and the idle thrust is the same at every airspeed.</summary>
    public static LandingSpread LeftOut => LandingColumn.All.Where(column => column.LeftOut is not null).Aggregate(
        new LandingSpread(), (spread, column) => spread.With(
            column.Variable, Distributed(column.Variable, DistributionLaw.Fixed(column.LeftOut!.Value))));

    /// <summary>The quantity of an input; none for a plain number.</summary>
    public static QuantityInfo? Kind(LandingVariable variable) => Kinds.GetValueOrDefault(variable, PlainNumbers).Quantity;

    /// <summary>An input's distribution by its law in SI and degrees; messages speak of it in the unit it was given in.</summary>
    public static Distribution Distributed(LandingVariable variable, DistributionLaw law, Enum? unit = null) =>
        Kinds.GetValueOrDefault(variable, PlainNumbers).Distributed(law, unit);

    /// <summary>An input's value, from SI and degrees, in another unit. Never an exception: a number too large comes out infinite.</summary>
    public static double InUnit(LandingVariable variable, double value, Enum unit) =>
        Kind(variable) is { } kind ? value * (double)UnitConverter.Convert(1, kind.BaseUnitInfo.Value, unit) : value;

    /// <summary>Whether any input is such a quantity.</summary>
    public static bool IsKind(QuantityInfo kind) => Kinds.Values.Any(known => known.Quantity!.Name == kind.Name);

    /// <summary>The input in the words of its name: "threshold speed".</summary>
    public static string Words(LandingVariable variable) =>
        string.Concat(variable.ToString().Select((letter, i) =>
            char.IsUpper(letter) ? (i == 0 ? "" : " ") + char.ToLowerInvariant(letter) : letter.ToString()));

    /// <summary>What kind of value an input takes.</summary>
    private abstract class InputKind(QuantityInfo? quantity)
    {
        public QuantityInfo? Quantity => quantity;

        public abstract Distribution Distributed(DistributionLaw law, Enum? unit);
    }

    private sealed class InputKind<T>(QuantityInfo? quantity) : InputKind(quantity)
        where T : struct
    {
        public override Distribution<T> Distributed(DistributionLaw law, Enum? unit) =>
            new(law, Quantity, unit ?? Quantity?.BaseUnitInfo.Value);
    }
}
