using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FlapAero.Manuals;

/// <summary>A fitted aeroplane as an aeroplane's file: every value with its unit, and with what it was fitted or assumed from.</summary>
internal static class AeroplaneWriter
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(ManualFit fit)
    {
        ManualContent manual = fit.Manual.Content;
        Aeroplane aeroplane = fit.Aeroplane;
        var root = new JsonObject
        {
            ["$schema"] = "aeroplane.schema.json",
            ["name"] = aeroplane.Name,
            ["description"] = aeroplane.Description,
            ["wing"] = WingOf(manual, aeroplane),
            ["zeroLiftDragCoefficient"] = Fitted(fit, Derived.ZeroLiftDrag, aeroplane.FlapsUp.Drag.ZeroLiftDragCoefficient, "1"),
            ["masses"] = new JsonObject
            {
                ["minimum"] = manual.MinimumMass is null
                    ? Value(aeroplane.MinimumMass.Kilograms, "kg", Assumed("68 % of the maximum, " + Typical.Why)) : Value(aeroplane.MinimumMass.Kilograms, "kg", Printed(manual.MinimumMass.Written)),
                ["maximum"] = Value(aeroplane.MaximumMass.Kilograms, "kg", Printed(manual.MaximumMass.Written)),
            },
        };
        if (manual.CrosswindLimit is { } crosswind) root["crosswindLimit"] = Value(crosswind.Value.Value.Knots, "kt", Printed(crosswind.Written));
        root["tailLimitAttitude"] = Value(
            aeroplane.TailLimitAttitude!.Value.Degrees, "deg", manual.TailLimit is { } tail ? Printed(tail.Written) : Assumed(
                Typical.Why + ", and enough for three quarters of the greatest lift: measure it on the apron"));
        root["propeller"] = PropellerOf(fit, manual, aeroplane);
        root["flapSettings"] = new JsonArray([.. aeroplane.FlapSettings.Select((setting, i) => SettingOf(fit, manual, setting, i))]);
        return root.ToJsonString(Readable).ReplaceLineEndings("\n") + "\n";
    }

    private static JsonObject WingOf(ManualContent manual, Aeroplane aeroplane) => new()
    {
        ["span"] = Value(aeroplane.Wing.Span.Meters, "m", Printed(manual.Span.Written)),
        ["area"] = Value(aeroplane.Wing.Area.SquareMeters, "m2", Printed(manual.Area.Written)),
        ["incidence"] = Value(aeroplane.Wing.Incidence.Degrees, "deg", Assumed(Typical.Why)),
        ["heightOnWheels"] = Value(
            aeroplane.Wing.HeightOnWheels.Meters, "m", Assumed(manual.IsHighWing == false ? "a low wing's" : "a high wing's" + (manual.IsHighWing is null ? ", as the manual's file names no position" : ""))),
        ["liftCurveSlope"] = Value(
            aeroplane.FlapsUp.Lift.SlopePerRadian, "1/rad", "estimate: assumed from span and area by Helmbold's form with a section slope of 2π [helmbold]"),
    };

    private static JsonObject PropellerOf(ManualFit fit, ManualContent manual, Aeroplane aeroplane)
    {
        Propeller propeller = aeroplane.Propeller;
        FittedValue pitch = fit.Value(Derived.Pitch);
        return new()
        {
            ["diameter"] = Value(
                propeller.Diameter.Meters, "m", manual.PropellerDiameter is { } d ? Printed(d.Written) : Assumed(Typical.Why + " of this mass")),
            ["maximumSpeed"] = Value(propeller.MaximumSpeed.RevolutionsPerMinute, "rpm", manual.RatedSpeed is { } n ? Printed(n.Written) : Assumed(Typical.Why)),
            ["closedThrottle"] = new JsonObject
            {
                ["torqueAtStandstill"] = Fitted(fit, Derived.ClosedThrottle, aeroplane.Engine.TorqueAtStandstill.NewtonMeters, "N.m"),
                ["freeSpeed"] = Fitted(fit, Derived.FreeSpeed, aeroplane.Engine.FreeSpeed.RevolutionsPerMinute, "rpm"),
            },
            ["fullThrottleTorque"] = Fitted(fit, Derived.FullThrottle, aeroplane.FullThrottle!.TorqueAtSeaLevel.NewtonMeters, "N.m"),
            ["table"] = new JsonObject
            {
                ["origin"] = $"{Note(pitch)}; the invented Trainer H4's propeller with another pitch",
                ["rows"] = new JsonArray([.. propeller.Table.Rows.Select(row => (JsonNode)new JsonObject
                {
                    ["advanceRatio"] = Number(row.AdvanceRatio),
                    ["thrustCoefficient"] = Number(row.ThrustCoefficient),
                    // Rounded up: no propeller gives more power than it takes.
                    ["powerCoefficient"] = Number(row.PowerCoefficient + 1e-7),
                })]),
            },
        };
    }

    private static JsonNode SettingOf(ManualFit fit, ManualContent manual, FlapSetting setting, int index)
    {
        PrintedSetting printed = manual.Settings[index];
        double increment = index == 0 ? 0 : setting.Drag.ZeroLiftDragCoefficient - fit.Aeroplane.FlapsUp.Drag.ZeroLiftDragCoefficient;
        return new JsonObject
        {
            ["name"] = setting.Name,
            ["deflection"] = Value(setting.Deflection.Degrees, "deg", Printed(printed.Deflection.Written)),
            ["zeroLiftAngle"] = Fitted(fit, Derived.ZeroLiftAngle(manual, index), setting.Lift.ZeroLiftAngle.Degrees, "deg"),
            ["maximumLiftCoefficient"] = Fitted(fit, Derived.Lift(manual, index), setting.Lift.MaximumLiftCoefficient, "1"),
            ["stallRounding"] = Value(setting.Lift.StallRounding.Degrees, "deg", Assumed(Typical.Why)),
            ["zeroLiftDragIncrement"] = index == 0
                ? Value(0, "1", "estimate: the clean aeroplane is the datum") : Fitted(fit, Derived.FlapDrag(manual, index), increment, "1"),
            ["oswaldFactor"] = Fitted(fit, Derived.Oswald(manual, index), setting.Drag.OswaldFactor, "1"),
            ["maximumSpeed"] = Value(
                setting.MaximumSpeed.Knots, "kt", printed.MaximumSpeed is { } fastest ? Printed(fastest.Written) : Assumed(Typical.Why)),
            ["airspeedCalibration"] = new JsonObject
            {
                ["unit"] = "kt",
                ["origin"] = printed.Calibration is null
                    ? Assumed("the needle shows calibrated airspeed, as the manual's file has no table")
                    : "published: the manual; beyond its rows assumed from the row at the end",
                ["rows"] = new JsonArray([.. setting.Calibration.Rows.Select(row => (JsonNode)new JsonObject
                {
                    ["indicated"] = Number(row.Indicated.Knots),
                    ["calibrated"] = Number(row.Calibrated.Knots),
                })]),
            },
        };
    }

    private static JsonObject Fitted(ManualFit fit, string name, double value, string unit) => Value(value, unit, Note(fit.Value(name)));

    private static string Note(FittedValue value)
    {
        string how = value.Standing switch
        {
            FitStanding.Fitted => $"fitted from {value.From}",
            FitStanding.WeaklyFitted => $"weakly fitted from {value.From}",
            _ => $"assumed from what is {Plain(value.From)}",
        };
        return string.Create(CultureInfo.InvariantCulture, $"estimate: {how}, standard error {value.StandardError:g2}");
    }

    private static string Plain(string from) => from.StartsWith("typical", StringComparison.Ordinal) ? from : $"given by {from}";

    private static string Assumed(string from) => $"estimate: assumed from {(from.StartsWith("typical", StringComparison.Ordinal) ? "what is " : "")}{from}";

    private static string Printed(string written) => $"published: the manual, {written}";

    private static JsonObject Value(double value, string unit, string origin) =>
        new() { ["value"] = Number(value), ["unit"] = unit, ["origin"] = origin };

    private static JsonNode Number(double value) => JsonValue.Create(decimal.Parse(value.ToString("g7", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture));
}
