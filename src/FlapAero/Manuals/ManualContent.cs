using FlapAero.AeroplaneFiles;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>Which airspeed a manual's number is.</summary>
internal enum AirspeedKind
{
    Indicated,
    Calibrated,
    True,
}

/// <summary>How the propeller was in a manual's glide.</summary>
internal enum GlidePropeller
{
    Idling,
    Stopped,
    None,
}

/// <summary>An airspeed as a manual prints it. Immutable.</summary>
internal sealed record PrintedAirspeed(Speed Value, AirspeedKind Kind) : IComparable<PrintedAirspeed>
{
    public int CompareTo(PrintedAirspeed? other) => Value.CompareTo(other?.Value ?? Speed.Zero);
}

/// <summary>A value as a manual prints it. Immutable.</summary>
/// <param name="Value">The value, with its unit.</param>
/// <param name="Number">The number before the unit.</param>
/// <param name="Decimals">How many decimals it has.</param>
/// <param name="Unit">The unit as written.</param>
/// <param name="At">Where it stands, and how it is written.</param>
internal sealed record Printed<T>(T Value, double Number, int Decimals, string Unit, Given<double> At)
{
    public string Written => At.Written;
}

internal sealed record PrintedSetting(
    string Name, Printed<Angle> Deflection, Printed<PrintedAirspeed>? MaximumSpeed, CalibrationValues? Calibration, Given<string> At);

internal sealed record PrintedStall(int Flaps, Printed<Mass>? Mass, Printed<Angle>? Bank, Printed<PrintedAirspeed> Speed);

internal sealed record PrintedGlide(
    bool IsBest, int Flaps, GlidePropeller Propeller, Printed<Mass>? Mass, Printed<PrintedAirspeed>? Speed, Printed<double>? Ratio);

internal sealed record PrintedApproach(int Flaps, Printed<Mass>? Mass, Printed<PrintedAirspeed> Speed);

internal sealed record PrintedDay(Printed<Length>? PressureAltitude, Printed<Temperature>? Temperature)
{
    public Air Air => Temperature is { } outside
        ? FlapAero.Air.AtTemperature(PressureAltitude?.Value ?? Length.Zero, outside.Value)
        : FlapAero.Air.Standard(PressureAltitude?.Value ?? Length.Zero);
}

internal sealed record PrintedLanding(
    int Flaps, Printed<Mass>? Mass, Printed<PrintedAirspeed>? ApproachSpeed, PrintedDay Day, Printed<Speed>? Headwind,
    RunwaySurface Surface, Printed<Length>? GroundRoll, Printed<Length>? FromFiftyFeet, int Line);

internal sealed record PrintedLevelFlight(
    PrintedDay Day, Printed<Mass>? Mass, Printed<RotationalSpeed> EngineSpeed, Printed<PrintedAirspeed> Speed);

internal sealed record PrintedClimb(
    PrintedDay Day, int Flaps, Printed<Mass>? Mass, Printed<PrintedAirspeed> Speed, Printed<Speed> Rate);

internal sealed record PrintedFlapsUp(Printed<double>? DistanceFactor, Printed<PrintedAirspeed>? Speed);

/// <summary>All that a manual's file says. Immutable.</summary>
internal sealed record ManualContent
{
    public required string Name { get; init; }

    public required string Description { get; init; }

    public required Printed<Mass> MaximumMass { get; init; }

    public Printed<Mass>? MinimumMass { get; init; }

    public required Printed<Area> Area { get; init; }

    public required Printed<Length> Span { get; init; }

    public bool? IsHighWing { get; init; }

    public Printed<Angle>? TailLimit { get; init; }

    public Printed<PrintedAirspeed>? CrosswindLimit { get; init; }

    public Printed<Power>? Power { get; init; }

    public Printed<RotationalSpeed>? RatedSpeed { get; init; }

    public Printed<Length>? PropellerDiameter { get; init; }

    public required IReadOnlyList<PrintedSetting> Settings { get; init; }

    public required IReadOnlyList<PrintedStall> Stalls { get; init; }

    public required IReadOnlyList<PrintedGlide> Glides { get; init; }

    public required IReadOnlyList<PrintedApproach> Approaches { get; init; }

    public required IReadOnlyList<PrintedLanding> Landings { get; init; }

    public PrintedFlapsUp? FlapsUp { get; init; }

    public required IReadOnlyList<PrintedLevelFlight> LevelFlights { get; init; }

    public required IReadOnlyList<PrintedClimb> Climbs { get; init; }
}
