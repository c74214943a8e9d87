using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace FlapAero.Weather;

/// <summary>A wind as people write it after a report: direction, mean, gust.</summary>
internal static partial class WindReport
{
    public const string Allowed =
        "allowed is calm, or direction, speed and gust in knots such as 210/12, 210/12G20 or 21012G20KT (MPS for metres per second)";

    /// <summary>The wind; none where the text is no such report. A wind that nobody lands in is refused by the model.</summary>
    public static BriefingWind? Read(string text)
    {
        string given = text.Trim().ToUpperInvariant();
        if (given is "CALM") return new(new Wind(Angle.Zero, Speed.Zero));
        if (Report().Match(given) is not { Success: true } match) return null;
        Speed Of(string group) => match.Groups["unit"].Value == "MPS"
            ? Speed.FromMetersPerSecond(Whole(match.Groups[group])) : Speed.FromKnots(Whole(match.Groups[group]));
        return new BriefingWind(
            new Wind(Angle.FromDegrees(Whole(match.Groups["from"])), Of("mean")), match.Groups["gust"].Success ? Of("gust") : null);
    }

    private static double Whole(Group digits) => int.Parse(digits.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<from>[0-9]{3})/?(?<mean>[0-9]{1,3})(G(?<gust>[0-9]{1,3}))?(?<unit>KT|MPS)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Report();
}
