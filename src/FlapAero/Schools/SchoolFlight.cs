using System.Globalization;
using UnitsNet;

namespace FlapAero.Schools;

/// <summary>
/// A flight's runway and weather from what its school says, a METAR or a named day, and what the caller names. Every fault is told; how each
/// choice was made is noted for the sheet. Lives as long as one choice.
/// </summary>
internal sealed class SchoolFlight(School? school, Action<string> refuse)
{
    private readonly List<(string Term, string Fact)> _notes = [];

    public SchoolAerodrome? Aerodrome { get; private set; }

    public SchoolRunway? Runway { get; private set; }

    /// <summary>The wind, for the runway's direction; none where none is given or it cannot be used.</summary>
    public BriefingWind? Wind { get; private set; }

    public Temperature? Temperature { get; private set; }

    public Pressure? Qnh { get; private set; }

    public IReadOnlyList<(string Term, string Fact)> Notes => _notes;

    /// <summary>Chooses; what the caller gives itself is not taken from anywhere else.</summary>
    /// <param name="aerodrome">The aerodrome's name; the METAR's, or the school's first, where none is named.</param>
    /// <param name="runway">The runway's name; the one with the most headwind where none is named.</param>
    /// <param name="day">A day of the school's weather; none where a METAR or the caller gives the weather.</param>
    /// <param name="report">A METAR; none where a day or the caller gives the weather.</param>
    /// <param name="own">The caller's own wind, which goes before any other.</param>
    /// <param name="needsRunway">Whether the runway is to come from the school.</param>
    public void Choose(string? aerodrome, string? runway, string? day, string? report, BriefingWind? own, bool needsRunway)
    {
        Metar? metar = report is null ? null : Decoded(report);
        SchoolDay? named = day is null ? null : Day(day);
        metar ??= named?.Metar;
        (Temperature, Qnh) = (metar?.Temperature ?? named?.Temperature, metar?.Qnh ?? named?.Qnh);
        if (needsRunway) ChooseAerodrome(aerodrome, metar);
        MetarWind? reported = own is null ? Reported(metar) : null;
        BriefingWind? given = own ?? (report is null ? named?.Wind : null);
        if (needsRunway && Aerodrome is not null) ChooseRunway(runway, reported, given);
        Wind = given;
        if (given is null && reported is not null && Runway is { } on) Wind = For(reported, on.Runway.Direction);
        if (metar is not null && reported is not null)
        {
            _notes.Add(("Weather", $"METAR of {metar.Station}{(Runway is { } r ? Varies(reported, r.Runway) : "")}"));
            if (Aerodrome is { Station: { } station } at && station != metar.Station)
                _notes.Add(("Note", $"{at.Name} has the METAR of {station}, not of {metar.Station}: is it the right one?"));
        }

        Describe();
    }

    /// <summary>The METAR's wind on a runway that is not the school's.</summary>
    public void TakeWind(string report, Angle direction, bool needsWind)
    {
        if (Decoded(report) is not { } metar) return;
        (Temperature, Qnh) = (metar.Temperature, metar.Qnh);
        if (!needsWind || Reported(metar) is not { } wind) return;
        Wind = For(wind, direction);
        _notes.Add(("Weather", $"METAR of {metar.Station}"));
    }

    private Metar? Decoded(string report)
    {
        Outcome<Metar> outcome = Metar.Decode(report);
        if (outcome.Happened) return outcome.Value;
        refuse($"--metar: {outcome.Explanation}.");
        return null;
    }

    private MetarWind? Reported(Metar? metar)
    {
        if (metar is null) return null;
        if (metar.Wind.Happened) return metar.Wind.Value;
        refuse($"--metar: {metar.Wind.Explanation}; --wind can give one.");
        return null;
    }

    private SchoolDay? Day(string name)
    {
        SchoolDay? day = school?.Days.FirstOrDefault(day => string.Equals(day.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
        if (day is null)
            refuse($"--day: {Quoted(name)} is no day of the school's weather; {Choice(school?.Days.Select(day => day.Name))}.");
        else
            _notes.Add(("Day", day.Name));
        return day;
    }

    private void ChooseAerodrome(string? name, Metar? metar)
    {
        IReadOnlyList<SchoolAerodrome> all = school?.Aerodromes ?? [];
        if (name is null)
        {
            Aerodrome = all.FirstOrDefault(aerodrome => metar is not null && aerodrome.Station == metar.Station) ?? (all.Count > 0 ? all[0] : null);
            return;
        }

        Aerodrome = all.FirstOrDefault(aerodrome => string.Equals(aerodrome.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
        if (Aerodrome is null) refuse($"--aerodrome: {Quoted(name)} is none of the school's; {Choice(all.Select(aerodrome => aerodrome.Name))}.");
    }

    private void ChooseRunway(string? name, MetarWind? reported, BriefingWind? given)
    {
        SchoolAerodrome at = Aerodrome!;
        if (name is not null)
        {
            Runway = at.Find(name);
            if (Runway is null)
                refuse($"--runway: {Quoted(name)} is no runway of {at.Name}; {Choice(at.Runways.Select(runway => runway.Runway.Name))}.");
            return;
        }

        bool hasDirection = given is { Mean.Speed.Knots: > 0 } || reported is { From: not null, Mean.Knots: > 0 };
        Runway = given is not null ? at.InUse(given) : reported is not null ? at.InUse(reported) : at.Runways[0];
        if (at.Runways.Count > 1)
            _notes.Add(("Runway in use", hasDirection
                ? $"{Runway.Runway.Name} is proposed: it has the most headwind. What the aerodrome says counts."
                : $"{Runway.Runway.Name} is proposed: the school names it first, and the wind prefers none. What the aerodrome says counts."));
    }

    private BriefingWind For(MetarWind reported, Angle direction)
    {
        if (reported.From is null) _notes.Add(("Wind", "It is variable and light; it is counted straight from behind."));
        return reported.For(direction);
    }

    /// <summary>What the wind is at the ends of its variation: the worst along and the worst across.</summary>
    private static string Varies(MetarWind wind, Runway runway)
    {
        if (wind.VariesFrom is not { } first || wind.VariesTo is not { } second) return "";
        Speed speed = wind.Gust ?? wind.Mean;
        double sweep = (second.Degrees - first.Degrees + 360) % 360;
        Wind[] winds = [.. Enumerable.Range(0, (int)sweep + 1).Select(step => new Wind(Angle.FromDegrees((first.Degrees + step) % 360), speed))];
        double tail = winds.Max(w => -w.Headwind(runway.Direction).Knots), across = winds.Max(w => Math.Abs(w.Crosswind(runway.Direction).Knots));
        string behind = tail > 0.5 ? string.Create(CultureInfo.InvariantCulture, $"a tailwind of {Math.Ceiling(tail - 1e-6)} kt and ") : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"; the wind varies from {first.Degrees:000}° to {second.Degrees:000}°, at its worst with {behind}{Math.Ceiling(across - 1e-6)} kt across");
    }

    private void Describe()
    {
        if (Aerodrome is { } at) _notes.Insert(0, ("Aerodrome", at.Name));
        if (Runway is not { } runway) return;
        string width = runway.Width is { } wide ? string.Create(CultureInfo.InvariantCulture, $"{wide.Meters:0} m wide. ") : "";
        string displaced = runway.ThresholdDisplaced > Length.Zero
            ? string.Create(CultureInfo.InvariantCulture, $"The threshold is displaced by {runway.ThresholdDisplaced.Meters:0} m; lengths count from it.") : "";
        if (width.Length + displaced.Length > 0) _notes.Add(("Runway", (width + displaced).Trim()));
    }

    private static string Choice(IEnumerable<string>? names) =>
        names?.ToArray() is { Length: > 0 } known ? $"allowed is {string.Join(", ", known)}" : "the school's file has none";

    private static string Quoted(string text) => Files.PlainText.Quoted(text);
}
