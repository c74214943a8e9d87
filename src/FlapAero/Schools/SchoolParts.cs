using UnitsNet;

namespace FlapAero;

/// <summary>The paper of a school.</summary>
public enum SchoolPaper
{
    /// <summary>210 mm by 297 mm.</summary>
    A4,

    /// <summary>8.5 in by 11 in.</summary>
    Letter,
}

/// <summary>An aerodrome where a school flies. Immutable.</summary>
public sealed class SchoolAerodrome
{
    internal SchoolAerodrome(string name, string? station, IReadOnlyList<SchoolRunway> runways) =>
        (Name, Station, Runways) = (name, station, runways);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The station whose METAR is its own, if the school names one.</summary>
    public string? Station { get; }

    /// <summary>Its runways, each direction by itself; the first is used where the wind prefers none.</summary>
    public IReadOnlyList<SchoolRunway> Runways { get; }

    /// <summary>The runway of a name, whatever its case; none where there is none.</summary>
    internal SchoolRunway? Find(string name) =>
        Runways.FirstOrDefault(runway => string.Equals(runway.Runway.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The runway with the most headwind; the first where none has more than another.</summary>
    internal SchoolRunway InUse(MetarWind wind) => wind.From is null ? Runways[0] : InUse(wind.For(Angle.Zero));

    internal SchoolRunway InUse(BriefingWind wind) =>
        Runways.MaxBy(runway => Math.Round(wind.Mean.Headwind(runway.Runway.Direction).Knots, 6))!;
}

/// <summary>One direction of a runway. Immutable.</summary>
public sealed class SchoolRunway
{
    internal SchoolRunway(Runway runway, Length? width, Length displaced, CircuitHand hand, IReadOnlyList<SchoolLandmark> landmarks) =>
        (Runway, Width, ThresholdDisplaced, Hand, Landmarks) = (runway, width, displaced, hand, landmarks);

    /// <summary>The runway as a landing takes it: its length is what lies behind the displaced threshold, its direction true.</summary>
    public Runway Runway { get; }

    /// <summary>Its width, if the school gives it.</summary>
    public Length? Width { get; }

    /// <summary>How far the landing threshold lies past the runway's beginning.</summary>
    public Length ThresholdDisplaced { get; }

    /// <summary>To which side the circuit turns.</summary>
    public CircuitHand Hand { get; }

    /// <summary>What can be seen beside it, from the threshold on.</summary>
    public IReadOnlyList<SchoolLandmark> Landmarks { get; }

    /// <summary>The last landmark that still lies within the first third; none where none does.</summary>
    public SchoolLandmark? ForFirstThird => LastWithin(Runway.EndOfFirstThird);

    internal SchoolLandmark? LastWithin(Length end) => Landmarks.LastOrDefault(mark => mark.At <= end);
}

/// <summary>Something beside a runway. Immutable.</summary>
public sealed class SchoolLandmark
{
    internal SchoolLandmark(Length at, string name) => (At, Name) = (at, name);

    /// <summary>How far past the landing threshold.</summary>
    public Length At { get; }

    /// <summary>What it is.</summary>
    public string Name { get; }
}

/// <summary>A day of a school's weather. Immutable.</summary>
public sealed class SchoolDay
{
    internal SchoolDay(string name, Metar? metar, BriefingWind? wind, Temperature? temperature, Pressure? qnh) =>
        (Name, Metar, Wind, Temperature, Qnh) = (name, metar, wind, temperature ?? metar?.Temperature, qnh ?? metar?.Qnh);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The report, where the day is given by one.</summary>
    public Metar? Metar { get; }

    /// <summary>The wind, where the day is given without a report.</summary>
    public BriefingWind? Wind { get; }

    /// <summary>The temperature; none where none is given.</summary>
    public Temperature? Temperature { get; }

    /// <summary>QNH; none where none is given.</summary>
    public Pressure? Qnh { get; }
}

/// <summary>How a school flies the exercise where the model's own default is not its own; what is not given is none. Immutable.</summary>
public sealed record SchoolCircuit
{
    /// <summary>Circuit height above the runway.</summary>
    public Length? Height { get; internal init; }

    /// <summary>Downwind from the centreline.</summary>
    public Length? Spacing { get; internal init; }

    /// <summary>How low over the threshold a student may aim.</summary>
    public Length? LowestThresholdHeight { get; internal init; }

    /// <summary>The school's own limit for the crosswind.</summary>
    public Speed? CrosswindLimit { get; internal init; }
}
