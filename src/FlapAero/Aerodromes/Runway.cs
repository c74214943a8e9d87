using System.Globalization;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// A runway, as a landing, a circuit and a briefing take it: dry, paved and level at sea level where nothing else is said.
/// The day and the pilot are no part of it. Immutable, thread-safe; a value outside its range is refused where it is given.
/// </summary>
public sealed record Runway
{
    private readonly Angle? _direction;
    private readonly Length? _lengthAvailable;

    /// <summary>No runway is longer.</summary>
    internal static Length Longest { get; } = Length.FromMeters(6000);

    /// <summary>What it is called, for example 24.</summary>
    public string Name { get; init => field = Require.Words(value, "name of the runway"); } = "without a name";

    /// <summary>Direction of landing, 0° to 360°, in the wind's north; asking for one that was not given is refused.</summary>
    public Angle Direction
    {
        get => _direction ?? throw NotGiven("direction of landing", nameof(Direction));
        init => _direction = Require.Between(
            value, Angle.Zero, Angle.FromDegrees(360), "runway direction", "Directions run from 0° to 360°.",
            nameof(Direction));
    }

    /// <summary>Landing distance available from the threshold, 100 m to 6 000 m; asking for one not given is refused.</summary>
    public Length LengthAvailable
    {
        get => _lengthAvailable ?? throw NotGiven("landing distance available", nameof(LengthAvailable));
        init => _lengthAvailable = Require.Between(
            value, Length.FromMeters(100), Longest, "landing distance available",
            "No aeroplane of this kind stops on less, and no runway is longer.", nameof(LengthAvailable));
    }

    /// <summary>The surface.</summary>
    public RunwaySurface Surface { get; init => field = Require.Given(value); } = RunwaySurface.DryPaved;

    /// <summary>tan ε, rise over run, positive uphill, −0.2 to 0.2; it acts on the roll only.</summary>
    public double Slope
    {
        get;
        init => field = Require.Between(
            value, -0.2, 0.2, "runway slope", "The steepest runways, in mountains, lie inside it.", nameof(Slope));
    }

    /// <summary>Elevation above mean sea level, −500 m to 5 000 m.</summary>
    public Length Elevation
    {
        get;
        init => field = Require.Between(
            value, Length.FromMeters(-500), Length.FromMeters(5000), "elevation", "Aerodromes lie between them.",
            nameof(Elevation));
    }

    /// <summary>Where the first third of the landing distance available ends, from the threshold.</summary>
    public Length EndOfFirstThird => LengthAvailable / 3;

    /// <summary>Name, surface and slope.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"runway {Name}, {Surface.Name}, slope {100 * Slope:0.0} %");

    private static RefusedInputException NotGiven(string what, string property) => Require.RefusedWhole(
        property, $"This needs the runway's {what}, and the runway was made without: new Runway {{ {property} = … }}.");
}
