using UnitsNet;

namespace FlapAero.AeroplaneFiles;

/// <summary>From the file's tree to the model's parts.</summary>
internal static class AeroplaneReader
{
    /// <summary>The aeroplane; none where a fault stands in its way.</summary>
    public static Aeroplane? Read(JsonItem tree, FaultList faults)
    {
        if (ObjectPart.Of(tree, "", FileKeys.Aeroplane, faults) is not { } root) return null;
        root.Text("$schema");
        Given<string>? name = root.Text("name");
        Given<string>? description = root.Text("description");
        WingValues? wing = root.Object("wing", FileKeys.Wing) is { } part ? ReadWing(part, faults) : null;
        Given<double>? zeroLiftDrag = root.Quantity(
            "zeroLiftDragCoefficient", UnitSets.Coefficients, value => StandIn.Drag(zeroLiftDragCoefficient: value));
        Masses? masses = root.Object("masses", FileKeys.Masses) is { } given ? ReadMasses(given, faults) : null;
        Given<Speed>? crosswind = root.Quantity(
            "crosswindLimit", UnitSets.Speeds, value => StandIn.Aeroplane(crosswindLimit: value));
        Given<Angle>? tailLimit = root.Quantity(
            "tailLimitAttitude", UnitSets.Angles, value => StandIn.Aeroplane(tailLimitAttitude: value));
        PropellerValues? propeller = root.Object("propeller", FileKeys.Propeller) is { } turning ? PropellerReader.Read(turning, faults) : null;
        SettingValues[] settings =
        [
            .. (root.List("flapSettings", 1, "flap settings from up to full") ?? [])
                .Select((entry, index) => SettingReader.Read(entry.Item, entry.Place, index, faults))
                .OfType<SettingValues>(),
        ];
        RulesAcrossSettings.Check(settings, faults);
        masses = RulesOfKind.Check(settings, wing, masses, faults);
        foreach (SettingValues setting in settings)
            RulesInOneSetting.Check(setting, wing, zeroLiftDrag, masses, faults);
        // With a fault the parts are not all there, or would only repeat it.
        return faults.IsEmpty ? Build(name!, description!, wing!, zeroLiftDrag!, masses!, (crosswind, tailLimit), propeller!, settings, root.Line, faults) : null;
    }

    private static WingValues ReadWing(ObjectPart part, FaultList faults)
    {
        Given<Length>? span = part.Quantity("span", UnitSets.Lengths, value => StandIn.Wing(span: value));
        Given<Area>? area = part.Quantity("area", UnitSets.Areas, value => StandIn.Wing(area: value));
        Given<Angle>? incidence = part.Quantity("incidence", UnitSets.Angles, value => StandIn.Wing(incidence: value));
        Given<Length>? height = part.Quantity("heightOnWheels", UnitSets.Lengths, value => StandIn.Wing(heightOnWheels: value));
        Given<double>? slope = part.Quantity(
            "liftCurveSlope", UnitSets.Slopes, value => StandIn.Lift(slopePerRadian: value), "slopePerRadian");

        Wing? wing = null;
        if (span is not null && area is not null)
        {
            Wing Make() => StandIn.Wing(span.Value, area.Value, incidence?.Value, height?.Value);
            // Each value is in its own range by now: what is left to refuse is the two together.
            if (Refusal.Of(Make) is { } refusal)
                faults.Add(span.Line, span.Place, $"with an area of {area.Written}, {refusal.Problem}", refusal.Expected);
            else
                wing = Make();
        }

        return new WingValues(wing, slope);
    }

    private static Masses ReadMasses(ObjectPart part, FaultList faults)
    {
        Given<Mass>? minimum = part.Quantity(
            "minimum", UnitSets.Masses, value => StandIn.Aeroplane(minimumMass: value), "minimumMass");
        Given<Mass>? maximum = part.Quantity(
            "maximum", UnitSets.Masses, value => StandIn.Aeroplane(maximumMass: value), "maximumMass");
        if (minimum is null || maximum is null) return new Masses(minimum, maximum);
        if (maximum.Value > minimum.Value) return new Masses(minimum, maximum);
        faults.Add(
            maximum.Line, maximum.Place, $"{maximum.Written} is not more than the minimum, {minimum.Written}",
            "an aeroplane is flown from its minimum to its maximum mass");
        return new Masses(null, null);
    }

    private static Aeroplane? Build(
        Given<string> name, Given<string> description, WingValues wing, Given<double> zeroLiftDrag, Masses masses,
        (Given<Speed>? Crosswind, Given<Angle>? Tail) limits, PropellerValues propeller, SettingValues[] settings, int line, FaultList faults)
    {
        Aeroplane Make() => new(
            name.Value, description.Value, wing.Wing!, masses.Minimum!.Value, masses.Maximum!.Value, propeller.Propeller, propeller.Engine,
            settings.Select(setting => setting.Build(wing.Wing!, wing.Slope!.Value, zeroLiftDrag.Value)), limits.Crosswind?.Value,
            limits.Tail?.Value, propeller.FullThrottle);
        if (Refusal.Of(Make) is not { } refusal) return Make();
        faults.Add(line, "", refusal.Problem, refusal.Expected);
        return null;
    }
}

/// <summary>What the file says of the wing: none where it could not be read.</summary>
internal sealed record WingValues(Wing? Wing, Given<double>? Slope);

/// <summary>What the file says of the masses: none where it could not be read.</summary>
internal sealed record Masses(Given<Mass>? Minimum, Given<Mass>? Maximum);
