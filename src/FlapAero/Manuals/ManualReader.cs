using FlapAero.AeroplaneFiles;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>From the file's tree to what the manual says, value by value; <see cref="ManualRules"/> looks at how they go together.</summary>
internal static class ManualReader
{
    private static readonly Dictionary<string, bool> Positions =
        new(StringComparer.OrdinalIgnoreCase) { ["high"] = true, ["low"] = false };

    public static ManualContent? Read(JsonItem tree, FaultList faults)
    {
        if (ManualPart.Of(tree, "", ManualKeys.Manual, faults) is not { } root) return null;
        root.Part.Text("$schema");
        Given<string>? name = root.Part.Text("name");
        Given<string>? description = root.Part.Text("description");
        ManualPart? masses = root.Object("masses", ManualKeys.Masses);
        Printed<Mass>? minimum = masses?.Value(
            "minimum", UnitSets.Masses, Mass.FromKilograms(100), Mass.FromKilograms(5700), "Light aeroplanes are flown inside it.");
        Printed<Mass>? maximum = masses?.Value(
            "maximum", UnitSets.Masses, Mass.FromKilograms(200), Mass.FromKilograms(5700), "Light aeroplanes end at 5 700 kg.");
        ManualPart? wing = root.Object("wing", ManualKeys.Wing);
        Printed<Length>? span = wing?.Value(
            "span", UnitSets.Lengths, Length.FromMeters(5), Length.FromMeters(25), "Light aeroplanes lie inside it.");
        Printed<Area>? area = wing?.Value(
            "area", UnitSets.Areas, Area.FromSquareMeters(5), Area.FromSquareMeters(60), "Light aeroplanes lie inside it.");
        bool? isHigh = wing?.Word("position", Positions);
        ManualPart? engine = root.Object("engine", ManualKeys.Engine);
        Printed<Power>? power = engine?.Value(
            "power", ManualUnits.Powers, Power.FromMechanicalHorsepower(20), Power.FromMechanicalHorsepower(1000),
            "Engines of light aeroplanes lie inside it.");
        Printed<RotationalSpeed>? rated = engine?.Value(
            "speed", UnitSets.RotationalSpeeds, RotationalSpeed.FromRevolutionsPerMinute(1500),
            RotationalSpeed.FromRevolutionsPerMinute(6000), "The propeller's highest speed, not a gearbox's other side.");
        Printed<Length>? diameter = engine?.Value(
            "propellerDiameter", UnitSets.Lengths, Length.FromMeters(1), Length.FromMeters(3), "Fixed propellers of light aeroplanes lie inside it.");
        Printed<PrintedAirspeed>? crosswind = root.Value(
            "crosswindLimit", Winds, At(1), At(60), "Manuals of light aeroplanes give between them.");
        Printed<Angle>? tail = root.Value(
            "tailLimitAttitude", UnitSets.Angles, Angle.FromDegrees(3), Angle.FromDegrees(25),
            "Lower is no landing attitude; higher the wing stalls before.");
        IReadOnlyList<PrintedSetting> settings = ManualSettings.Read(root, faults);
        var rows = new ManualRows(root, settings, faults);
        (IReadOnlyList<PrintedStall> stalls, IReadOnlyList<PrintedGlide> glides) = (rows.Stalls(), rows.Glides());
        IReadOnlyList<PrintedApproach> approaches = rows.Approaches();
        IReadOnlyList<PrintedLanding> landings = rows.Landings();
        PrintedFlapsUp? flapsUp = rows.FlapsUp();
        (IReadOnlyList<PrintedLevelFlight> level, IReadOnlyList<PrintedClimb> climbs) = (rows.LevelFlights(), rows.Climbs());
        if (name is null || maximum is null || span is null || area is null || settings.Count == 0) return null;
        return new ManualContent
        {
            Name = name.Value,
            Description = description?.Value ?? "From the numbers of its manual.",
            MinimumMass = minimum,
            MaximumMass = maximum,
            Span = span,
            Area = area,
            IsHighWing = isHigh,
            TailLimit = tail,
            CrosswindLimit = crosswind,
            Power = power,
            RatedSpeed = rated,
            PropellerDiameter = diameter,
            Settings = settings,
            Stalls = stalls,
            Glides = glides,
            Approaches = approaches,
            Landings = landings,
            FlapsUp = flapsUp,
            LevelFlights = level,
            Climbs = climbs,
        };
    }

    /// <summary>A wind has no needle.</summary>
    private static readonly UnitSet<PrintedAirspeed> Winds = new(
        "a wind", [.. UnitSets.Speeds.Names.Select(name => (name, (Func<double, PrintedAirspeed>)(value => new(UnitSets.Speeds.Find(name)!(value), AirspeedKind.True))))]);

    public static PrintedAirspeed At(double knots) => new(Speed.FromKnots(knots), AirspeedKind.Calibrated);
}
