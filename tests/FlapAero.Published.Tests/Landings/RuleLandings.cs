using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>The demo aeroplanes' landings, one after another as the handbook's rules change them, in per cent of the canonical one.</summary>
internal sealed class RuleLandings
{
    // What the handbook's rule adds: a tenth.
    private const double Tenth = 0.1;

    private readonly Func<Mass, Configuration> _configure;

    private RuleLandings(string name, Aeroplane aeroplane, FlapSetting flaps)
    {
        Name = name;
        _configure = mass => aeroplane.Configure(flaps, mass);
        Configuration = aeroplane.Configure(flaps);
        Canonical = WholeLanding.Of(Configuration);
    }

    public static RuleLandings H4Full { get; } = new("H4, full flaps", DemoAeroplanes.TrainerH4, DemoAeroplanes.TrainerH4.FullFlaps);

    public static RuleLandings H4Up { get; } = new("H4, flaps up", DemoAeroplanes.TrainerH4, DemoAeroplanes.TrainerH4.FlapsUp);

    public static RuleLandings L2Full { get; } = new("L2, full flaps", DemoAeroplanes.TrainerL2, DemoAeroplanes.TrainerL2.FullFlaps);

    public static RuleLandings L2Up { get; } = new("L2, flaps up", DemoAeroplanes.TrainerL2, DemoAeroplanes.TrainerL2.FlapsUp);

    public static IReadOnlyList<RuleLandings> All { get; } = [H4Full, H4Up, L2Full, L2Up];

    public static RuleLandings Named(string name) => All.Single(landings => landings.Name == name);

    public string Name { get; }

    public Configuration Configuration { get; }

    public WholeLanding Canonical { get; }

    public Change TenPercentFaster =>
        From(Canonical, Canonical.With(input => input with { ThresholdSpeed = (1 + Tenth) * input.ThresholdSpeed }));

    public Change Headwind => From(Canonical, Canonical.IntoWind(Tenth));

    public Change Tailwind => From(Canonical, Canonical.IntoWind(-Tenth));

    /// <summary>To the maximum mass, from a mass that it exceeds by a tenth.</summary>
    public Change TenPercentHeavier => From(WholeLanding.Of(_configure(Configuration.Aeroplane.MaximumMass / (1 + Tenth))), Canonical);

    /// <summary>The same mass difference with a propeller that neither brakes nor pulls.</summary>
    public Change TenPercentHeavierWithoutIdleThrust => From(
        Idle(WholeLanding.Of(_configure(Configuration.Aeroplane.MaximumMass / (1 + Tenth)))), Idle(Canonical));

    /// <summary>The same mass difference at the heavier aeroplane's airspeed.</summary>
    public Change TenPercentHeavierAtTheSameSpeed => From(
        WholeLanding.Of(_configure(Configuration.Aeroplane.MaximumMass / (1 + Tenth)))
            .With(input => input with { ThresholdSpeed = Canonical.Input.ThresholdSpeed }),
        Canonical);

    public Change HigherBy(Length densityAltitude) =>
        From(Canonical, WholeLanding.Of(Configuration, FlapAero.Air.Standard(densityAltitude)));

    public Change HigherWithoutIdleThrust(Length densityAltitude) =>
        From(Idle(Canonical), Idle(WholeLanding.Of(Configuration, FlapAero.Air.Standard(densityAltitude))));

    /// <summary>Wind of a tenth of the touchdown speed, as the rule has it, instead of the threshold's.</summary>
    public Change HeadwindOfTheTouchdown =>
        From(Canonical, Canonical.IntoWind(Tenth * Canonical.TouchdownSpeed / Canonical.Input.ThresholdSpeed));

    /// <summary>What becomes of the air distance, the roll and their sum, in per cent.</summary>
    public static Change From(WholeLanding before, WholeLanding after) =>
        new(Percent(before.Air, after.Air), Percent(before.Roll, after.Roll), Percent(before.Total, after.Total));

    public override string ToString() => Name;

    private static WholeLanding Idle(WholeLanding landing) =>
        landing.With(input => input with { IdleThrust = 0, IdleThrustSlope = 0, IdleThrustCurvature = 0 });

    private static double Percent(double before, double after) => 100 * (after / before - 1);

    /// <summary>Per cent.</summary>
    internal readonly record struct Change(double Air, double Roll, double Total);
}
