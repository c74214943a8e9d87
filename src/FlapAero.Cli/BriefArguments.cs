using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Weather;
using UnitsNet;

namespace FlapAero.Cli;

/// <summary>What stands behind the options of <c>flapaero brief</c>, read with every fault in it before anything is computed.</summary>
internal sealed partial class BriefArguments
{
    private readonly List<string> _faults = [];

    public IReadOnlyList<string> Faults => _faults;

    public Length? Length(string option, string? text) =>
        Quantity(option, text, "a number and m, ft, km or nmi, such as \"900 m\"", Read<Length>(UnitsNet.Length.TryParse));

    public Mass? Mass(string option, string? text) =>
        Quantity(option, text, "a number and kg or lb, such as \"1050 kg\"", Read<Mass>(UnitsNet.Mass.TryParse));

    public Pressure? Pressure(string option, string? text) =>
        Quantity(option, text, "a number and hPa or inHg, such as \"1018 hPa\"", Read<Pressure>(UnitsNet.Pressure.TryParse));

    public Temperature? Temperature(string option, string? text) => Quantity(
        option, text is null ? null : BareDegree().Replace(text, "$1 °$2"), "a number and C or F, such as \"22 C\"",
        Read<Temperature>(UnitsNet.Temperature.TryParse), text);

    /// <summary>A runway's name and direction, from its two digits.</summary>
    public (string Name, Angle Direction)? Runway(string option, string? text)
    {
        if (text is null) return null;
        if (Designator().Match(text.Trim()) is { Success: true } match && int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) is >= 1 and <= 36 and int tens)
            return (text.Trim().ToUpperInvariant(), Angle.FromDegrees(10 * tens));
        _faults.Add($"{option}: {Quoted(text)} names no runway; allowed is 01 to 36, with L, C or R where there are several, such as 24 or 06L.");
        return null;
    }

    /// <summary>A wind as reports write it: direction, mean, gust.</summary>
    public BriefingWind? Wind(string option, string? text)
    {
        if (text is null) return null;
        try
        {
            if (WindReport.Read(text) is { } wind) return wind;
        }
        catch (ArgumentException refused)
        {
            _faults.Add($"{option}: {PlainWords.Of(refused)}");
            return null;
        }

        string why = text.Trim().StartsWith("VRB", StringComparison.OrdinalIgnoreCase)
            ? "a variable wind has no direction; brief the worst one, from behind or across" : WindReport.Allowed;
        _faults.Add($"{option}: {Quoted(text)} is no wind; {why}.");
        return null;
    }

    /// <summary>Rise over run from a share and a direction.</summary>
    public double? Slope(string option, string? text)
    {
        if (text is null || text.Trim().Equals("level", StringComparison.OrdinalIgnoreCase)) return 0;
        if (Gradient().Match(text.Trim()) is { Success: true } match)
        {
            double share = double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) / 100;
            return match.Groups[2].Value.Equals("up", StringComparison.OrdinalIgnoreCase) ? share : -share;
        }

        _faults.Add($"{option}: {Quoted(text)} is no slope; allowed is level, or a share with up or down in the direction of landing, such as \"1.5 % down\".");
        return null;
    }

    public RunwaySurface? Surface(string option, string? text)
    {
        if (text is null) return null;
        if (RunwaySurface.ByName.TryGetValue(text.Trim(), out RunwaySurface? surface)) return surface;
        _faults.Add($"{option}: {Quoted(text)} is no surface known here; allowed is {string.Join(", ", RunwaySurface.ByName.Keys)}.");
        return null;
    }

    /// <summary>A limit for the crosswind.</summary>
    public Speed? Crosswind(string option, string? text) =>
        Quantity(option, text, "a number and kt, m/s, km/h or mph, such as \"12 kt\"", Read<Speed>(Speed.TryParse));

    public LandingMargin? Margin(string option, string? text)
    {
        if (text is null) return LandingMargin.SeventyPercent;
        if (BareNumber().IsMatch(text.Trim()) && Finite(text.Trim()) is { } given)
            return Made(option, () => new LandingMargin(given, "as asked for"));
        _faults.Add($"{option}: {Quoted(text)} is no number; allowed is a factor from 1 to 3, such as 1.43.");
        return null;
    }

    /// <summary>The air from either a pressure altitude or an elevation and QNH.</summary>
    public Air? Air(Length? pressureAltitude, Length? elevation, Pressure? qnh, Temperature? temperature)
    {
        if (temperature is not { } outside) return null;
        if (pressureAltitude is { } altitude)
            return Made("--pressure-altitude, --temperature", () => FlapAero.Air.AtTemperature(altitude, outside));
        return elevation is { } above && qnh is { } setting
            ? Made("--qnh, --temperature", () => FlapAero.Air.AtTemperature(FlapAero.Air.PressureAltitudeOf(above, setting), outside))
            : null;
    }

    public void Refuse(string fault) => _faults.Add(fault);

    /// <summary>A part of the model, or its refusal as a fault of an option.</summary>
    public T? Made<T>(string option, Func<T> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            _faults.Add($"{option}: {PlainWords.Of(refused)}");
            return null;
        }
    }

    private T? Quantity<T>(string option, string? text, string allowed, Func<string, T?> read, string? written = null)
        where T : struct, IQuantity
    {
        if (text is null) return null;
        if (read(text.Trim()) is { } value && double.IsFinite((double)value.Value)) return value;
        _faults.Add($"{option}: {Quoted(written ?? text)} is refused; allowed is {allowed}.");
        return null;
    }

    private delegate bool TryParse<T>(string text, IFormatProvider provider, out T value);

    private static Func<string, T?> Read<T>(TryParse<T> parse)
        where T : struct => text =>
            // The parser of units throws at what is not finite, and at digits of other scripts.
            NumberAndUnit().Match(text) is { Success: true } match && Finite(match.Groups[1].Value) is not null
            && parse(text, CultureInfo.InvariantCulture, out T value) ? value : null;

    private static double? Finite(string digits) =>
        double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;

    private static string Quoted(string text) => $"\"{(text.Length <= 40 ? text : text[..40] + "…").ReplaceLineEndings(" ")}\"";

    [GeneratedRegex(@"^([+-]?[0-9]+(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?)\s*[^\d\s.,]+$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"^[+-]?[0-9]+(?:\.[0-9]+)?$", RegexOptions.CultureInvariant)]
    private static partial Regex BareNumber();

    [GeneratedRegex(@"^([0-9]{2})[LCR]?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Designator();

    [GeneratedRegex(@"^([0-9]+(?:\.[0-9]+)?) ?% ?(up|down)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Gradient();

    [GeneratedRegex(@"^(.*[0-9]) ?([CF])$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex BareDegree();
}
