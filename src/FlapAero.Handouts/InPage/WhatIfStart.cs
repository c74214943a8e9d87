using FlapAero.Charts;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts.InPage;

/// <summary>Where the controls of the what-if page begin: where no school says otherwise, at the fields' own values. Immutable.</summary>
internal sealed class WhatIfStart
{
    private readonly Dictionary<string, double> _values = WhatIfField.All.ToDictionary(field => field.Key, field => field.Usual);
    private readonly List<string> _beyond = [];

    private WhatIfStart(School? school)
    {
        if (school is null)
            return;
        BriefingRules rules = school.Rules;
        Begin("multipleUp", rules.FlapsUpMultiple);
        Begin("multiplePart", rules.PartFlapsMultiple);
        Begin("multipleFull", rules.FullFlapsMultiple);
        Begin("gustShare", 100 * rules.GustShare);
        if (rules.MostForGusts is { } most) Begin("gustMost", most.Knots);
        Begin("margin", Math.Round(rules.Margin.Factor, 2));
        Begin("height", rules.ThresholdHeight.Feet);
        IsSi = school.Units == DisplayUnits.SI;
        string place = "";
        if (school.Aerodromes.FirstOrDefault() is { } aerodrome)
        {
            SchoolRunway first = aerodrome.Runways[0];
            Begin("length", (first.Runway.LengthAvailable + first.ThresholdDisplaced).Meters);
            Begin("displaced", first.ThresholdDisplaced.Meters);
            Begin("slope", 100 * first.Runway.Slope);
            Begin("altitude", first.Runway.Elevation.Feet);
            Surface = KeyOf(first.Runway.Surface);
            place = $", on runway {first.Runway.Name} of {aerodrome.Name}";
        }

        Words = $"The controls begin by the rules of {school.Name}{place}."
            + (_beyond.Count == 0 ? "" : $" This page does not take all of the school's values: {string.Join("; ", _beyond)}.");
    }

    /// <summary>What the page says of it; empty where there is nothing to be said.</summary>
    public string Words { get; } = "";

    /// <summary>The name of the surface.</summary>
    public string Surface { get; } = "paved";

    /// <summary>Whether numbers are shown in SI units at first.</summary>
    public bool IsSi { get; }

    /// <summary>Where a field begins.</summary>
    public double this[WhatIfField field] => _values[field.Key];

    /// <summary>As a school has it, or as nobody does.</summary>
    public static WhatIfStart Of(SchoolMarks? school) => new(school?.School);

    /// <summary>A surface's name in a setting.</summary>
    public static string KeyOf(RunwaySurface surface) => RunwaySurface.ByName.First(named => named.Value == surface).Key;

    private void Begin(string key, double value)
    {
        WhatIfField field = WhatIfField.Of(key);
        value = Math.Round(value, 4);
        double taken = Math.Clamp(value, field.Least, field.Most);
        if (taken != value) _beyond.Add($"{field.Label} is {field.Say(value)} there, and begins at {field.Say(taken)} here");
        _values[key] = taken;
    }
}
