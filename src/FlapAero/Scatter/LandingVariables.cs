using System.Collections.Frozen;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>What kind of value each input takes, and how messages call it.</summary>
internal static class LandingVariables
{
    private static readonly FrozenDictionary<LandingVariable, QuantityInfo> Kinds = new Dictionary<LandingVariable, QuantityInfo>
    {
        [LandingVariable.Mass] = Mass.Info,
        [LandingVariable.WingArea] = Area.Info,
        [LandingVariable.Span] = Length.Info,
        [LandingVariable.WingHeight] = Length.Info,
        [LandingVariable.Density] = Density.Info,
        [LandingVariable.Headwind] = Speed.Info,
        [LandingVariable.ThresholdHeight] = Length.Info,
        [LandingVariable.ThresholdSpeed] = Speed.Info,
        [LandingVariable.PathAngle] = Angle.Info,
        [LandingVariable.FlareTimeConstant] = Duration.Info,
        [LandingVariable.HoldOffHeight] = Length.Info,
        [LandingVariable.PowerCutHeight] = Length.Info,
        [LandingVariable.PowerCutTime] = Duration.Info,
        [LandingVariable.IdleThrust] = Force.Info,
        [LandingVariable.GustChange] = Speed.Info,
        [LandingVariable.GustStart] = Duration.Info,
        [LandingVariable.GustLength] = Duration.Info,
    }.ToFrozenDictionary();

    public static IReadOnlyList<LandingVariable> All { get; } = Enum.GetValues<LandingVariable>();

    /// <summary>What a landing need not say: no gust blows, and the idle thrust is the same at every airspeed.</summary>
    public static IEnumerable<KeyValuePair<LandingVariable, Distribution>> LeftOut =>
        LandingColumn.All.Where(column => column.LeftOut is not null)
            .Select(column => KeyValuePair.Create(column.Variable, Fixed(column.Variable, column.LeftOut!.Value)));

    /// <summary>The quantity of an input; none for a plain number.</summary>
    public static QuantityInfo? Kind(LandingVariable variable) => Kinds.GetValueOrDefault(variable);

    /// <summary>An input that is always the same, in SI units and degrees; messages about it speak in the unit it was given in.</summary>
    public static Distribution Fixed(LandingVariable variable, double value, Enum? spoken = null) =>
        Kind(variable) is { } kind
            ? Distribution.Fixed(Quantity.From(value, kind.BaseUnitInfo.Value)).SpokenIn(spoken ?? kind.BaseUnitInfo.Value)
            : Distribution.Fixed(value);

    /// <summary>An input's value, from SI and degrees, in another unit. Never an exception: a number too large comes out infinite.</summary>
    public static double InUnit(LandingVariable variable, double value, Enum unit) =>
        Kind(variable) is { } kind ? value * (double)UnitConverter.Convert(1, kind.BaseUnitInfo.Value, unit) : value;

    /// <summary>Whether any input is such a quantity.</summary>
    public static bool IsKind(QuantityInfo kind) => Kinds.Values.Any(known => known.Name == kind.Name);

    /// <summary>The input in the words of its name: "threshold speed".</summary>
    public static string Words(LandingVariable variable) =>
        string.Concat(variable.ToString().Select((letter, i) =>
            char.IsUpper(letter) ? (i == 0 ? "" : " ") + char.ToLowerInvariant(letter) : letter.ToString()));
}
