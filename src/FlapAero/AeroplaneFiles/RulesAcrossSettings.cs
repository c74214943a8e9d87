namespace FlapAero.AeroplaneFiles;

/// <summary>What must hold from one flap setting to the next, from up to full.</summary>
internal static class RulesAcrossSettings
{
    public static void Check(IReadOnlyList<SettingValues> settings, FaultList faults)
    {
        if (settings.FirstOrDefault() is { Index: 0 } first) CheckUp(first, faults);
        CheckNames(settings, faults);
        Steps(
            settings, setting => IsUpExtended(setting) ? null : setting.Deflection, (less, more) => more > less, "does not extend further than",
            "flap settings run from up to full, so the deflection rises", faults);
        // Between settings out of order every other comparison would only say the same again.
        Step[] steps = [.. Pairs(settings).Where(step => InOrder(step.Less, step.More))];
        Steps(
            steps, setting => setting.MaximumLiftCoefficient, (less, more) => more >= less, "is less than",
            "flaps add lift, so it does not fall as they extend", faults);
        Steps(
            steps, setting => setting.ZeroLiftAngle, (less, more) => more <= less, "is more than",
            "flaps add camber, so the zero-lift angle does not rise as they extend", faults);
        Steps(
            steps, setting => IsUpDragging(setting) ? null : setting.ZeroLiftDragIncrement, (less, more) => more >= less || more < 0, "is less than",
            "flaps add drag, so the increment does not fall as they extend", faults);
        Steps(
            steps, setting => setting.MaximumSpeed, (less, more) => more <= less, "is more than",
            "extended flaps bear less, so the highest speed does not rise as they extend", faults);
    }

    private static void CheckUp(SettingValues up, FaultList faults)
    {
        if (IsUpExtended(up) && up.Deflection is { } deflection)
            faults.Add(
                deflection.Line, deflection.Place, $"{deflection.Written} is not flaps up",
                "the first setting is flaps up, 0 deg; every other is compared with it");
        if (IsUpDragging(up) && up.ZeroLiftDragIncrement is { } increment)
            faults.Add(
                increment.Line, increment.Place, $"{increment.Written} is not 0",
                "flaps up add no drag: what the clean aeroplane has stands in zeroLiftDragCoefficient");
    }

    // A first setting that is not up is one fault; what the next compares with it is none.
    private static bool IsUpExtended(SettingValues setting) => setting is { Index: 0, Deflection.Value.Value: not 0 };

    private static bool IsUpDragging(SettingValues setting) => setting is { Index: 0, ZeroLiftDragIncrement.Value: > 0 };

    private static void CheckNames(IReadOnlyList<SettingValues> settings, FaultList faults)
    {
        var taken = new Dictionary<string, SettingValues>(StringComparer.OrdinalIgnoreCase);
        foreach (SettingValues setting in settings)
        {
            if (setting.Name is not { } name || taken.TryAdd(name.Value.Trim(), setting)) continue;
            int other = taken[name.Value.Trim()].Index;
            faults.Add(
                name.Line, name.Place, FormattableString.Invariant($"{name.Written} is the name of flapSettings[{other}] too"),
                "each setting has a name of its own");
        }
    }

    private static bool InOrder(SettingValues less, SettingValues more) =>
        less.Deflection is null || more.Deflection is null || more.Deflection.Value > less.Deflection.Value;

    private static IEnumerable<Step> Pairs(IReadOnlyList<SettingValues> settings) =>
        settings.Zip(settings.Skip(1), (less, more) => new Step(less, more));

    private static void Steps<T>(
        IReadOnlyList<SettingValues> settings, Func<SettingValues, Given<T>?> pick, Func<T, T, bool> holds, string relation,
        string why, FaultList faults) =>
        Steps([.. Pairs(settings)], pick, holds, relation, why, faults);

    private static void Steps<T>(
        IReadOnlyList<Step> steps, Func<SettingValues, Given<T>?> pick, Func<T, T, bool> holds, string relation, string why,
        FaultList faults)
    {
        foreach ((SettingValues less, SettingValues more) in steps)
        {
            if (pick(less) is not { } before || pick(more) is not { } after || holds(before.Value, after.Value)) continue;
            faults.Add(after.Line, after.Place, $"{after.Written} {relation} {before.Written} of {less.Label}", why);
        }
    }

    private sealed record Step(SettingValues Less, SettingValues More);
}
