using FlapAero.AeroplaneFiles;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>The flap settings of a manual's file.</summary>
internal static class ManualSettings
{
    public static IReadOnlyList<PrintedSetting> Read(ManualPart root, FaultList faults)
    {
        List<PrintedSetting> settings = [];
        foreach ((ManualPart part, string place) in root.List("flapSettings", ManualKeys.Setting))
        {
            Given<string>? name = part.Part.Text("name");
            Printed<Angle>? deflection = part.Value(
                "deflection", UnitSets.Angles, Angle.Zero, Angle.FromDegrees(60), "Flaps extend downwards.");
            Printed<PrintedAirspeed>? fastest = part.Value(
                "maximumSpeed", ManualUnits.Airspeeds, ManualReader.At(40), ManualReader.At(250), "V_FE, or V_NE with flaps up.");
            CalibrationValues? table = part.Part.Object("airspeedCalibration", ManualKeys.Calibration) is { } rows
                ? SettingReader.ReadCalibration(rows, faults) : null;
            if (name is null || deflection is null) continue;
            Check(settings, name, deflection, fastest, place, faults);
            settings.Add(new(name.Value.Trim(), deflection, fastest, table, name));
        }

        return settings;
    }

    private static void Check(
        List<PrintedSetting> before, Given<string> name, Printed<Angle> deflection, Printed<PrintedAirspeed>? fastest, string place, FaultList faults)
    {
        if (before.Count == 0 && place.EndsWith("[0]", StringComparison.Ordinal) && deflection.Number != 0)
            faults.Add(
                deflection.At.Line, deflection.At.Place, $"{deflection.Written} is not flaps up",
                "the first setting is flaps up, \"0 deg\"; every other is compared with it");
        if (before.Any(other => string.Equals(other.Name, name.Value.Trim(), StringComparison.OrdinalIgnoreCase)))
            faults.Add(name.Line, name.Place, $"{name.Written} is the name of another setting too", "each setting has a name of its own");
        if (before.Count == 0) return;
        PrintedSetting less = before[^1];
        if (deflection.Value <= less.Deflection.Value)
            faults.Add(
                deflection.At.Line, deflection.At.Place, $"{deflection.Written} does not extend further than {less.Deflection.Written} of \"{less.Name}\"",
                "flap settings run from up to full, so the deflection rises");
        if (fastest is not null && less.MaximumSpeed is { } allowed && fastest.Value.Kind == allowed.Value.Kind && fastest.Value.Value > allowed.Value.Value)
            faults.Add(
                fastest.At.Line, fastest.At.Place, $"{fastest.Written} is more than {allowed.Written} of \"{less.Name}\"",
                "extended flaps bear less, so the highest speed does not rise as they extend");
    }
}
