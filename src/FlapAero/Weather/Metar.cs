using System.Globalization;
using System.Text.RegularExpressions;
using FlapAero.Files;
using FlapAero.Weather;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// What a landing needs of a METAR or SPECI: wind, temperature, pressure. Visibility, weather and cloud are read over, and so are the
/// trend and the remarks. Immutable, thread-safe.
/// </summary>
public sealed class Metar
{
    private const int Longest = 500;

    /// <summary>Variable and faster than this it comes from anywhere with a strength that matters.</summary>
    private static readonly Speed LightVariable = Speed.FromKnots(6);

    private readonly List<string> _faults = [];

    private Metar(string station) => Station = station;

    /// <summary>The code of the station.</summary>
    public string Station { get; }

    /// <summary>The wind, or why it cannot be used.</summary>
    public Outcome<MetarWind> Wind { get; private set; } = new("the METAR has no wind group");

    /// <summary>The temperature; none where it is missing.</summary>
    public Temperature? Temperature { get; private set; }

    /// <summary>QNH; none where it is missing.</summary>
    public Pressure? Qnh { get; private set; }

    /// <summary>Decodes a report.</summary>
    /// <remarks>
    /// Formula: none; knots, metres a second and kilometres an hour, hectopascals and hundredths of an inch of mercury. A missing wind, temperature
    /// or pressure is missing in the result; a text that is no single report is refused. Range: 850 hPa to 1 100 hPa, −60 °C to 60 °C, a
    /// variable wind to 6 kt. Source: [wmo-fm-15].
    /// </remarks>
    /// <param name="text">The report, with or without the word METAR.</param>
    /// <returns>The report, or why it is none.</returns>
    /// <exception cref="ArgumentNullException">No text.</exception>
    /// <example><code>Metar.Decode("METAR XQAA 291450Z 24012G22KT CAVOK 18/09 Q1013").Value.Qnh.Value.Hectopascals // 1013.0</code></example>
    public static Outcome<Metar> Decode(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string given = text.Trim().ToUpperInvariant();
        if (given.Length == 0) return new("the METAR is empty");
        if (given.Length > Longest) return new("the text is longer than 500 characters, which no METAR is; give one report");
        if (given.FirstOrDefault(c => !(char.IsAsciiLetterOrDigit(c) || c is '/' or '+' or '-' or '=' || char.IsWhiteSpace(c))) is var odd and not '\0'
            && !given.Contains("RMK", StringComparison.Ordinal))
            return new($"the character {PlainText.Quoted(odd.ToString())} stands in no METAR");
        string[] reports = given.Split('=', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (reports.Length != 1) return new("several reports stand here, or none; give one");
        Queue<string> groups = new(reports[0].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (groups.Count(group => group is "METAR" or "SPECI") > 1) return new("several reports stand here; give one");
        if (groups.TryPeek(out string? first) && first is "METAR" or "SPECI") groups.Dequeue();
        Pass(groups, "COR");
        if (!groups.TryDequeue(out string? station) || !MetarGroups.Station().IsMatch(station))
            return new($"{Said(station)} is no station; a METAR begins with the station's four letters and the time, such as XQAA 291450Z");
        if (!groups.TryDequeue(out string? time) || !MetarGroups.Time().IsMatch(time))
            return new($"{Said(time)} is no time; after the station stand day, hour and minute, such as 291450Z");
        if (Pass(groups, "NIL")) return new("the METAR is NIL: the station gives no report");
        Pass(groups, "AUTO");
        Pass(groups, "COR");
        Metar metar = new(station);
        metar.Read(groups);
        return metar._faults.Count == 0 ? new(metar) : new Outcome<Metar>(string.Join("; ", metar._faults));
    }

    /// <summary>The station.</summary>
    public override string ToString() => $"METAR of {Station}";

    private void Read(Queue<string> groups)
    {
        (bool hasWind, bool hasTemperature) = (false, false);
        while (groups.TryDequeue(out string? group))
        {
            if (group is "NOSIG" or "BECMG" or "TEMPO" or "RMK") return;
            if (MetarGroups.Wind().Match(group) is { Success: true } wind)
            {
                if (hasWind) _faults.Add($"{Said(group)} is a second wind");
                else ReadWind(wind, group, groups);
                hasWind = true;
            }
            else if (MetarGroups.Temperature().Match(group) is { Success: true } air)
            {
                if (hasTemperature) _faults.Add($"{Said(group)} is a second temperature");
                else ReadTemperature(air.Groups["air"].Value);
                hasTemperature = true;
            }
            else if (MetarGroups.Pressure().Match(group) is { Success: true } pressure)
            {
                ReadPressure(pressure, group);
            }
            else if (!MetarGroups.IsPassedOver(group))
            {
                _faults.Add($"{Said(group)} is no group of a METAR");
                if (_faults.Count > 3) return;
            }
        }
    }

    private void ReadWind(Match match, string group, Queue<string> groups)
    {
        (string from, string mean, string gust) = (match.Groups["from"].Value, match.Groups["mean"].Value, match.Groups["gust"].Value);
        Match? varies = groups.TryPeek(out string? next) && MetarGroups.Variation().Match(next) is { Success: true } between ? between : null;
        if (varies is not null) groups.Dequeue();
        if (from == "///" || mean == "//")
        {
            Wind = new($"the station measured no wind ({group})");
            return;
        }

        if (mean[0] == 'P' || gust is ['P', ..])
        {
            Wind = new($"the wind is stronger than the code can say ({group}), and nobody lands in it");
            return;
        }

        Speed In(string digits) => match.Groups["unit"].Value switch
        {
            "MPS" => Speed.FromMetersPerSecond(Whole(digits)),
            "KMH" => Speed.FromKilometersPerHour(Whole(digits)),
            _ => Speed.FromKnots(Whole(digits)),
        };
        Speed steady = In(mean);
        Speed? gusts = gust.Length is 0 || gust == "//" ? null : In(gust);
        if (from == "VRB" && (steady > LightVariable || gusts > LightVariable))
        {
            Wind = new($"the wind is variable and not light ({group}): it may come from behind or across with all its strength; give the worst with --wind, or wait");
            return;
        }

        if (from != "VRB" && (Whole(from) > 360 || (Whole(from) == 0 && Whole(mean) > 0)))
        {
            _faults.Add($"{Said(group)} has a direction that there is not; directions run from 010 to 360, and 00000KT is calm");
            return;
        }

        if (varies is not null && (Direction(varies, "first").Degrees > 360 || Direction(varies, "second").Degrees > 360))
        {
            _faults.Add($"{Said(varies.Value)} has a direction that there is not; directions run from 010 to 360");
            return;
        }

        var wind = new MetarWind(from == "VRB" ? null : Angle.FromDegrees(Whole(from)), steady, gusts)
        {
            VariesFrom = varies is null ? null : Direction(varies, "first"),
            VariesTo = varies is null ? null : Direction(varies, "second"),
        };
        try
        {
            wind.For(Angle.Zero);
            Wind = new(wind);
        }
        catch (RefusedInputException refused)
        {
            Wind = new($"{group}: {PlainWords.Of(refused)}");
        }
    }

    private void ReadTemperature(string air)
    {
        if (air == "//") return;
        double degrees = air[0] == 'M' ? -Whole(air[1..]) : Whole(air);
        if (Math.Abs(degrees) > 60) _faults.Add($"{Said(air)} is no temperature; allowed is M60 to 60");
        else Temperature = UnitsNet.Temperature.FromDegreesCelsius(degrees);
    }

    private void ReadPressure(Match match, string group)
    {
        string digits = match.Groups["value"].Value;
        if (digits == "////") return;
        Pressure qnh = match.Groups["kind"].Value == "Q"
            ? Pressure.FromHectopascals(Whole(digits)) : Pressure.FromInchesOfMercury(Whole(digits) / 100);
        if (qnh.Hectopascals is < 850 or > 1100)
            _faults.Add($"{Said(group)} is no pressure at sea level; allowed is Q0850 to Q1100, or A2510 to A3248");
        else if (Qnh is { } other && Math.Abs(other.Hectopascals - qnh.Hectopascals) > 2)
            _faults.Add($"{Said(group)} is a second pressure, and not the first one in another unit");
        else
            Qnh ??= qnh;
    }

    private static Angle Direction(Match varies, string group) => Angle.FromDegrees(Whole(varies.Groups[group].Value));

    private static bool Pass(Queue<string> groups, string word)
    {
        if (!groups.TryPeek(out string? next) || next != word) return false;
        groups.Dequeue();
        return true;
    }

    private static double Whole(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private static string Said(string? group) => group is null ? "nothing" : PlainText.Quoted(group);
}
