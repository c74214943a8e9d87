using FlapAero.AeroplaneFiles;
using FlapAero.Manuals;
using UnitsNet;

namespace FlapAero.Schools;

/// <summary>The rules and the circuit of a school's file. Each value is tried in the model's own type, which holds the ranges.</summary>
internal sealed class RulesReader(FaultList faults)
{
    private const int LongestOrigin = 80;

    private BriefingRules _rules = BriefingRules.Usual;

    public (BriefingRules Rules, SchoolCircuit Circuit) Read(ManualPart root)
    {
        ManualPart? rules = root.Object("rules", SchoolKeys.Rules);
        if (rules?.Object("referenceMultiples", SchoolKeys.Multiples) is { } multiples)
        {
            Take(multiples, "flapsUp", value => _rules with { FlapsUpMultiple = value });
            Take(multiples, "partFlaps", value => _rules with { PartFlapsMultiple = value });
            Take(multiples, "fullFlaps", value => _rules with { FullFlapsMultiple = value });
        }

        Take(rules, "bankLimit", UnitSets.Angles, value => _rules with { BankLimit = value });
        Take(rules, "stableHeight", UnitSets.Lengths, value => _rules with { StabilisedBy = value });
        if (rules?.Object("gusts", SchoolKeys.Gusts) is { } gusts)
        {
            Take(gusts, "share", value => _rules with { GustShare = value });
            Take(gusts, "most", UnitSets.Speeds, value => _rules with { MostForGusts = value });
        }

        Take(rules, "thresholdHeight", UnitSets.Lengths, value => _rules with { ThresholdHeight = value });
        if (Margin(rules) is { } margin) _rules = _rules with { Margin = margin };
        Factors(rules);
        Take(rules, "headwindShare", value => _rules with { HeadwindShare = value });
        Take(rules, "tailwindShare", value => _rules with { TailwindShare = value });
        Take(rules, "minimumCircuitHeight", UnitSets.Lengths, value => _rules with { LeastCircuitHeight = value });
        if (rules?.Object("tolerances", SchoolKeys.Tolerances) is { } tolerances)
        {
            Take(tolerances, "fast", UnitSets.Speeds, value => _rules with { FastBy = value });
            Take(tolerances, "slow", UnitSets.Speeds, value => _rules with { SlowBy = value });
        }

        ManualPart? circuit = root.Object("circuit", SchoolKeys.Circuit);
        TakeSpeed(circuit, "downwind", speed => _rules with { Downwind = speed });
        TakeSpeed(circuit, "descending", speed => _rules with { Descending = speed });
        SchoolCircuit flown = new()
        {
            Height = Tried(circuit, "height", UnitSets.Lengths, value => With(circuitHeight: value)),
            Spacing = Tried(circuit, "spacing", SchoolUnits.Distances, value => With(spacing: value)),
            LowestThresholdHeight = Tried(rules, "lowestThresholdHeight", UnitSets.Lengths, value => With(lowest: value)),
            CrosswindLimit = Tried(rules, "crosswindLimit", UnitSets.Speeds, value => With(crosswind: value)),
        };
        return (_rules, flown);
    }

    /// <summary>A flight of no meaning, in which a value is tried; the school's least height of the circuit is tried with it.</summary>
    private BriefingRequest With(
        Length? circuitHeight = null, Length? spacing = null, Length? lowest = null, Speed? crosswind = null)
    {
        BriefingRequest any = DemoBriefings.Flight;
        return new(
            any.Aeroplane, any.Mass, any.Runway, any.Air, any.Wind, circuitHeight, spacing, crosswindLimit: crosswind,
            lowestThresholdHeight: lowest, rules: circuitHeight is null ? null : _rules);
    }

    private static T? Tried<T>(ManualPart? part, string key, UnitSet<T> units, Func<T, object> probe)
        where T : struct => part?.Value(key, units, probe)?.Value;

    private void Take(ManualPart? part, string key, Func<double, BriefingRules> with)
    {
        if (part?.Number(key, with) is { } value) _rules = with(value);
    }

    private void Take<T>(ManualPart? part, string key, UnitSet<T> units, Func<T, BriefingRules> with)
    {
        if (part?.Value(key, units, value => with(value)) is { } read) _rules = with(read.Value);
    }

    private void TakeSpeed(ManualPart? part, string key, Func<CircuitSpeed, BriefingRules> with)
    {
        if (part?.Value(key, SchoolUnits.CircuitSpeeds, make => make()) is { } read) _rules = with(read.Value());
    }

    private LandingMargin? Margin(ManualPart? rules)
    {
        if (rules?.Object("margin", SchoolKeys.Margin) is not { } part) return null;
        string origin = SchoolText.Line(part, "origin", LongestOrigin, faults) ?? "the school's own rule";
        return part.Number("factor", value => new LandingMargin(value, origin)) is { } factor ? new LandingMargin(factor, origin) : null;
    }

    private void Factors(ManualPart? rules)
    {
        if (rules is null) return;
        Dictionary<RunwaySurface, SurfaceRule> factors = [];
        foreach ((ManualPart part, string place) in rules.List("surfaceFactors", SchoolKeys.SurfaceFactor))
        {
            double? factor = part.Number("factor", value => SurfaceRule.OfSchool(value));
            if (part.Part.Text("surface") is not { } text) continue;
            if (!RunwaySurface.ByName.TryGetValue(text.Value.Trim(), out RunwaySurface? surface))
                part.RefuseWord(text, RunwaySurface.ByName.Keys);
            else if (surface.Better is null)
                faults.Add(text.Line, text.Place, $"{text.Written} is the surface that others are multiplied from", "give the margin for it");
            else if (factor is { } given && !factors.TryAdd(surface, SurfaceRule.OfSchool(given)))
                faults.Add(part.Line, place, $"{text.Written} has a second factor", "give each surface one factor");
        }

        if (factors.Count > 0) _rules = _rules with { SurfaceRules = factors };
    }
}
