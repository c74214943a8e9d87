using FlapAero.AeroplaneFiles;
using FlapAero.Manuals;
using FlapAero.Weather;
using UnitsNet;

namespace FlapAero.Schools;

/// <summary>The weather of a school's file.</summary>
internal sealed class DayReader(FaultList faults)
{
    private const int LongestName = 60;

    public List<SchoolDay> Read(ManualPart root)
    {
        List<SchoolDay> days = [];
        foreach ((ManualPart part, string place) in root.List("weather", SchoolKeys.Day))
        {
            string? name = SchoolText.Line(part, "name", LongestName, faults);
            Metar? metar = Report(part);
            BriefingWind? wind = Wind(part);
            Temperature? temperature = part.Value(
                "temperature", ManualUnits.Temperatures, value => Air.AtTemperature(Length.Zero, value))?.Value;
            Pressure? qnh = part.Value("qnh", SchoolUnits.Pressures, value => Air.PressureAltitudeOf(Length.Zero, value))?.Value;
            if (metar is not null && (wind is not null || temperature is not null || qnh is not null))
                faults.Add(part.Line, place, "a METAR and values beside it are given", "give the METAR alone, or wind, temperature and qnh");
            if (name is null) continue;
            if (days.Any(other => string.Equals(other.Name, name, StringComparison.OrdinalIgnoreCase)))
                faults.Add(part.Line, place, $"a second day is named {name}", "give each day a name of its own");
            else
                days.Add(new(name, metar, wind, temperature, qnh));
        }

        return days;
    }

    private Metar? Report(ManualPart part)
    {
        if (part.Part.Text("metar") is not { } text) return null;
        Outcome<Metar> metar = Metar.Decode(text.Value);
        if (metar.Happened) return metar.Value;
        faults.Add(text.Line, text.Place, metar.Explanation, "write the report as the airfield gives it, such as \"XQAA 291450Z 24012KT 9999 18/09 Q1013\"");
        return null;
    }

    private BriefingWind? Wind(ManualPart part)
    {
        if (part.Part.Text("wind") is not { } text) return null;
        BriefingWind? wind = null;
        Refusal? refusal = Refusal.Of(() => (object?)(wind = WindReport.Read(text.Value)) ?? "");
        if (refusal is not null) faults.Add(text.Line, text.Place, refusal.Problem, refusal.Expected);
        else if (wind is null) faults.Add(text.Line, text.Place, $"{text.Written} is no wind", WindReport.Allowed);
        return wind;
    }
}
