using FlapAero.AeroplaneFiles;
using FlapAero.Manuals;
using FlapAero.Weather;
using UnitsNet;

namespace FlapAero.Schools;

/// <summary>The aerodromes of a school's file.</summary>
internal sealed class AerodromeReader(FaultList faults)
{
    private const int LongestName = 60;

    private static readonly Dictionary<string, CircuitHand> Hands = new(StringComparer.OrdinalIgnoreCase)
    {
        ["left"] = CircuitHand.Left,
        ["right"] = CircuitHand.Right,
    };

    public List<SchoolAerodrome> Read(ManualPart root)
    {
        List<SchoolAerodrome> aerodromes = [];
        foreach ((ManualPart part, string place) in root.List("aerodromes", SchoolKeys.Aerodrome))
        {
            string? name = SchoolText.Line(part, "name", LongestName, faults);
            string? station = Station(part);
            Length elevation = part.Value("elevation", UnitSets.Lengths, value => new Runway { Elevation = value })?.Value ?? Length.Zero;
            List<SchoolRunway> runways = Runways(part, elevation);
            if (name is null || runways.Count == 0) continue;
            if (aerodromes.Any(other => string.Equals(other.Name, name, StringComparison.OrdinalIgnoreCase)))
                faults.Add(part.Line, place, $"a second aerodrome is named {name}", "give each aerodrome a name of its own");
            else
                aerodromes.Add(new(name, station, runways));
        }

        return aerodromes;
    }

    private string? Station(ManualPart part)
    {
        if (part.Part.Text("station") is not { } text) return null;
        string station = text.Value.Trim().ToUpperInvariant();
        if (MetarGroups.Station().IsMatch(station)) return station;
        faults.Add(text.Line, text.Place, $"{text.Written} is no station", "write the four letters with which its METAR begins, such as \"XQAA\"");
        return null;
    }

    private List<SchoolRunway> Runways(ManualPart aerodrome, Length elevation)
    {
        List<SchoolRunway> runways = [];
        foreach ((ManualPart part, string place) in aerodrome.List("runways", SchoolKeys.Runway))
        {
            if (Runway(part, elevation) is not { } runway) continue;
            if (runways.Any(other => string.Equals(other.Runway.Name, runway.Runway.Name, StringComparison.OrdinalIgnoreCase)))
                faults.Add(part.Line, place, $"a second runway is named {runway.Runway.Name}", "give each direction of each runway a name of its own");
            else
                runways.Add(runway);
        }

        return runways;
    }

    private SchoolRunway? Runway(ManualPart part, Length aerodrome)
    {
        string? name = SchoolText.Line(part, "name", 8, faults);
        Angle? heading = part.Value("heading", UnitSets.Angles, value => new Runway { Direction = value })?.Value;
        Printed<Length>? length = part.Value("length", UnitSets.Lengths, value => new Runway { LengthAvailable = value });
        Length? width = part.Value("width", UnitSets.Lengths, Length.FromMeters(3), Length.FromMeters(100), "Runways lie between them.")?.Value;
        Printed<Length>? displaced = part.Value(
            "thresholdDisplaced", UnitSets.Lengths, Length.Zero, FlapAero.Runway.Longest, "It lies on the runway.");
        double slope = part.Value("slope", SchoolUnits.Slopes, value => new Runway { Slope = value })?.Value ?? 0;
        Length elevation = part.Value("elevation", UnitSets.Lengths, value => new Runway { Elevation = value })?.Value ?? aerodrome;
        CircuitHand hand = part.Word("circuit", Hands) ?? CircuitHand.Left;
        RunwaySurface? surface = Surface(part, "surface");
        List<SchoolLandmark> landmarks = Landmarks(part);
        if (name is null || heading is not { } direction || length is null) return null;
        Length available = length.Value - (displaced?.Value ?? Length.Zero);
        if (Refusal.Of(() => new Runway { LengthAvailable = available }) is { } refusal)
        {
            faults.Add(displaced!.At.Line, displaced.At.Place, $"behind the displaced threshold, {refusal.Problem}", refusal.Expected);
            return null;
        }

        return new(
            new Runway
            {
                Name = name,
                Direction = direction,
                LengthAvailable = available,
                Surface = surface ?? RunwaySurface.DryPaved,
                Slope = slope,
                Elevation = elevation,
            },
            width, displaced?.Value ?? Length.Zero, hand, landmarks);
    }

    /// <summary>A surface by one of its short names.</summary>
    private RunwaySurface? Surface(ManualPart part, string key)
    {
        if (part.Part.Text(key) is not { } text) return null;
        if (RunwaySurface.ByName.TryGetValue(text.Value.Trim(), out RunwaySurface? surface)) return surface;
        part.RefuseWord(text, RunwaySurface.ByName.Keys);
        return null;
    }

    private List<SchoolLandmark> Landmarks(ManualPart runway)
    {
        List<SchoolLandmark> landmarks = [];
        foreach ((ManualPart part, _) in runway.List("landmarks", SchoolKeys.Landmark))
        {
            Length? at = part.Value("at", UnitSets.Lengths, Length.Zero, FlapAero.Runway.Longest, "It stands beside the runway, past the threshold.")?.Value;
            string? name = SchoolText.Line(part, "is", LongestName, faults);
            if (at is { } place && name is not null) landmarks.Add(new(place, name));
        }

        return [.. landmarks.OrderBy(mark => mark.At)];
    }
}
