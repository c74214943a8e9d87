using System.Text.Json;
using UnitsNet;

namespace FlapAero.Charts;

/// <summary>Two configurations of one aeroplane on one day and one runway, in the units of <see cref="WhatIfField"/>. Immutable.</summary>
internal sealed class WhatIfSetting
{
    private readonly Dictionary<string, double> _values;

    private WhatIfSetting(Aeroplane aeroplane, IReadOnlyList<int> flaps, Dictionary<string, double> values) =>
        (Aeroplane, Flaps, _values) = (aeroplane, flaps, values);

    /// <summary>The aeroplane.</summary>
    public Aeroplane Aeroplane { get; }

    /// <summary>The places of both flap settings among the aeroplane's.</summary>
    public IReadOnlyList<int> Flaps { get; }

    /// <summary>The surface.</summary>
    public required RunwaySurface Surface { get; init; }

    /// <summary>Whether the throttle begins to close with the round-out, whatever the height is.</summary>
    public required bool CutsWithRoundOut { get; init; }

    /// <summary>The units of what is said.</summary>
    public required DisplayUnits Units { get; init; }

    /// <summary>A number by its key.</summary>
    public double this[string key] => _values[key];

    /// <summary>Reads a setting; what is not in it is the usual value.</summary>
    /// <param name="json">A JSON object, as the page sends it.</param>
    /// <param name="aeroplaneOf">The aeroplane of a name; null where there is none.</param>
    /// <param name="faults">All that is wrong with it, by the field's key.</param>
    /// <returns>The setting, or nothing where there is a fault.</returns>
    public static WhatIfSetting? Read(string json, Func<string, Aeroplane?> aeroplaneOf, List<WhatIfFault> faults)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            return Read(document.RootElement, aeroplaneOf, faults);
        }
        catch (JsonException)
        {
            faults.Add(new("", "The setting is no JSON object."));
            return null;
        }
    }

    private static WhatIfSetting? Read(JsonElement root, Func<string, Aeroplane?> aeroplaneOf, List<WhatIfFault> faults)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            faults.Add(new("", "The setting is no JSON object."));
            return null;
        }
        string Text(string key, string usual) =>
            root.TryGetProperty(key, out JsonElement found) && found.ValueKind == JsonValueKind.String ? found.GetString()! : usual;
        string name = Text("aeroplane", DemoAeroplanes.TrainerH4.Name), surface = Text("surface", "paved");
        Aeroplane? aeroplane = aeroplaneOf(name);
        if (aeroplane is null) faults.Add(new("aeroplane", $"There is no aeroplane “{name}” on this page; drop its file, or choose another."));
        var values = new Dictionary<string, double>();
        foreach (WhatIfField field in WhatIfField.All)
        {
            double value = !root.TryGetProperty(field.Key, out JsonElement given) ? UsualOf(field, aeroplane)
                : given.ValueKind == JsonValueKind.Number ? given.GetDouble() : double.NaN;
            if (!field.Takes(value))
                faults.Add(new(field.Key, $"{field.Label}: {(double.IsFinite(value) ? field.Say(value) : "no number")}. Allowed is {field.Say(field.Least)} to {field.Say(field.Most)}."));
            values[field.Key] = value;
        }
        if (!RunwaySurface.ByName.TryGetValue(surface, out RunwaySurface? ground))
            faults.Add(new("surface", $"There is no surface “{surface}”."));
        var flaps = new int[2];
        foreach ((string key, int place) in (ReadOnlySpan<(string, int)>)[("first", 0), ("second", 1)])
        {
            int most = (aeroplane?.FlapSettings.Count ?? 1) - 1;
            flaps[place] = !root.TryGetProperty(key, out JsonElement given) ? place * most
                : given.ValueKind == JsonValueKind.Number && given.TryGetInt32(out int at) ? at : -1;
            if (aeroplane is not null && (flaps[place] < 0 || flaps[place] > most))
                faults.Add(new(key, $"{aeroplane.Name} has {most + 1} flap settings; choose one of them."));
        }
        return faults.Count > 0 ? null : new(aeroplane!, flaps, values)
        {
            Surface = ground!,
            CutsWithRoundOut = !root.TryGetProperty("cutsWithRoundOut", out JsonElement with) || with.ValueKind != JsonValueKind.False,
            Units = Text("units", "aviation") == "si" ? DisplayUnits.SI : DisplayUnits.Aviation,
        };
    }

    /// <summary>A mass that nobody gave is the aeroplane's highest.</summary>
    private static double UsualOf(WhatIfField field, Aeroplane? aeroplane) =>
        field.Key == "mass" && aeroplane is not null ? aeroplane.MaximumMass.Kilograms : field.Usual;

    /// <summary>The same with one number changed: for what would help.</summary>
    public WhatIfSetting With(string key, double value) =>
        new(Aeroplane, Flaps, new(_values) { [key] = value }) { Surface = Surface, CutsWithRoundOut = CutsWithRoundOut && key != "cut", Units = Units };

    /// <summary>The day's air.</summary>
    public Air Air => Air.AtTemperature(Length.FromFeet(this["altitude"]), Temperature.FromDegreesCelsius(this["temperature"]));

    /// <summary>The wind along the runway.</summary>
    public Speed Headwind => Speed.FromKnots(this["along"]);

    /// <summary>The wind across it, positive from the right.</summary>
    public Speed Crosswind => Speed.FromKnots(this["across"]);

    /// <summary>The reference speed over the stalling speed with a flap setting.</summary>
    public double Multiple(FlapSetting flaps) =>
        this[flaps == Aeroplane.FlapsUp ? "multipleUp" : flaps == Aeroplane.FullFlaps ? "multipleFull" : "multiplePart"];

    /// <summary>The path.</summary>
    public Angle Path => Angle.FromDegrees(this["path"]);

    /// <summary>Wheels over the threshold.</summary>
    public Length Height => Length.FromFeet(this["height"]);

    /// <summary>From the threshold to the end.</summary>
    public Length Available => Length.FromMeters(this["length"] - this["displaced"]);

    /// <summary>The runway from its threshold on.</summary>
    public Runway Runway => new()
    {
        Name = "09",
        Direction = Angle.FromDegrees(90),
        LengthAvailable = Available,
        Surface = Surface,
        Slope = this["slope"] / 100,
    };

    private BriefingRules Rules => BriefingRules.Usual with { GustShare = this["gustShare"] / 100, MostForGusts = Speed.FromKnots(this["gustMost"]) };

    /// <summary>The pilot.</summary>
    public LandingPilot Pilot => LandingPilot.Usual with
    {
        ThresholdHeight = Height,
        PathAngle = Path,
        SpeedAdditive = Rules.Additive(Speed.FromKnots(this["gust"])) + Speed.FromKnots(this["speed"]),
        FlareTimeConstant = Duration.FromSeconds(this["round"]),
        PowerCutHeight = CutsWithRoundOut ? null : Length.FromFeet(this["cut"]),
        BrakingShare = this["braking"] / 100,
    };

    /// <summary>The configuration of one side.</summary>
    public Configuration Configuration(int side) =>
        Aeroplane.Configure(Aeroplane.FlapSettings[Flaps[side]], Mass.FromKilograms(this["mass"]));

    /// <summary>The landing of one side.</summary>
    public LandingSetup Landing(int side) => LandingSetup.For(
        Configuration(side), Runway, Pilot with { SpeedMultiple = Multiple(Aeroplane.FlapSettings[Flaps[side]]) }, Air, Headwind);
}

/// <summary>What is wrong with a setting, and where.</summary>
/// <param name="Field">The field's key; empty for the whole.</param>
/// <param name="Text">The fault in words.</param>
internal sealed record WhatIfFault(string Field, string Text);
