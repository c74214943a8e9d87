using UnitsNet;

namespace FlapAero;

/// <summary>
/// An aeroplane as the model knows it: a wing, the masses it flies at, a fixed-pitch propeller with its engine, and its flap
/// settings from up to full. Immutable. Read from a file by <see cref="AeroplaneFile"/>.
/// </summary>
public sealed class Aeroplane
{
    /// <summary>An aeroplane.</summary>
    /// <param name="name">Its name; the demo aeroplanes' are invented.</param>
    /// <param name="description">One line about it.</param>
    /// <param name="wing">The wing.</param>
    /// <param name="minimumMass">Lightest that it is flown.</param>
    /// <param name="maximumMass">Heaviest that it is flown.</param>
    /// <param name="propeller">The propeller.</param>
    /// <param name="engine">Its engine with the throttle closed; free, it turns slower than the propeller may.</param>
    /// <param name="flapSettings">At least one, from up to full: deflections rise, C_Lmax does not fall.</param>
    /// <param name="crosswindLimit">The manual's crosswind, demonstrated or limiting, 1 kt to 60 kt; none where it gives none.</param>
    /// <param name="tailLimitAttitude">
    /// The highest pitch attitude on the wheels that keeps the tail clear with a margin, 3° to 25°; none where it is not known.
    /// </param>
    /// <param name="fullThrottle">The engine at full throttle; none where the file gives none.</param>
    /// <exception cref="RefusedInputException">
    /// No name, no flap setting, or settings out of order; masses that make no light aeroplane, or an engine that idles too fast.
    /// </exception>
    public Aeroplane(
        string name, string description, Wing wing, Mass minimumMass, Mass maximumMass, Propeller propeller,
        ClosedThrottleEngine engine, IEnumerable<FlapSetting> flapSettings, Speed? crosswindLimit = null,
        Angle? tailLimitAttitude = null, FullThrottleEngine? fullThrottle = null)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(description);
        ArgumentNullException.ThrowIfNull(wing);
        ArgumentNullException.ThrowIfNull(propeller);
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(flapSettings);
        Require.Words(name, "name of the aeroplane");
        Name = name;
        Description = description;
        Wing = wing;
        MaximumMass = Require.Between(
            maximumMass, Mass.FromKilograms(200), Mass.FromKilograms(5700), "maximum mass", "Light aeroplanes end at 5 700 kg.");
        MinimumMass = Require.Between(
            minimumMass, Mass.FromKilograms(100), maximumMass, "minimum mass", "It lies below the maximum.");
        Propeller = propeller;
        Engine = engine;
        FullThrottle = fullThrottle;
        if (engine.FreeSpeed >= propeller.MaximumSpeed)
            throw Require.Refused(
                nameof(engine), "idle speed without a propeller", engine.FreeSpeed,
                $"less than the highest engine speed, {Require.Text(propeller.MaximumSpeed)}",
                "With the throttle closed an engine turns slower than it may.");
        CrosswindLimit = crosswindLimit is { } limit ? Require.CrosswindLimit(limit, nameof(crosswindLimit)) : null;
        TailLimitAttitude = tailLimitAttitude is { } attitude
            ? Require.Between(
                attitude, Angle.FromDegrees(3), Angle.FromDegrees(25), "tail-limit attitude",
                "Lower is no landing attitude; higher the wing stalls before.", nameof(tailLimitAttitude))
            : null;
        FlapSettings = [.. flapSettings];
        if (FlapSettings.Count == 0)
            throw Require.RefusedWhole(nameof(flapSettings), "An aeroplane needs at least one flap setting: flaps up.");
        foreach ((FlapSetting less, FlapSetting more) in FlapSettings.Zip(FlapSettings.Skip(1)))
        {
            if (more.Deflection <= less.Deflection)
                throw Require.RefusedWhole(
                    nameof(flapSettings), $"Flap settings run from up to full: {more.Name} does not extend further than {less.Name}.");
            if (more.Lift.MaximumLiftCoefficient < less.Lift.MaximumLiftCoefficient)
                throw Require.RefusedWhole(
                    nameof(flapSettings), $"Flaps add lift: C_Lmax falls from {less.Name} to {more.Name}.");
        }

        if (FlapSettings.Any(setting => setting.Drag.AspectRatio != wing.AspectRatio))
            throw Require.RefusedWhole(
                nameof(flapSettings),
                "Every polar is the same wing's: their aspect ratios must be the wing's.");
    }

    private Aeroplane(Aeroplane same, BriefingRules rules)
    {
        (Name, Description, Wing, MinimumMass, MaximumMass) = (same.Name, same.Description, same.Wing, same.MinimumMass, same.MaximumMass);
        (Propeller, Engine, FullThrottle) = (same.Propeller, same.Engine, same.FullThrottle);
        (CrosswindLimit, TailLimitAttitude, FlapSettings, Rules) = (same.CrosswindLimit, same.TailLimitAttitude, same.FlapSettings, rules);
    }

    /// <summary>The aeroplane's name.</summary>
    public string Name { get; }

    /// <summary>One line about it.</summary>
    public string Description { get; }

    /// <summary>The wing.</summary>
    public Wing Wing { get; }

    /// <summary>Lightest that it is flown.</summary>
    public Mass MinimumMass { get; }

    /// <summary>Heaviest that it is flown.</summary>
    public Mass MaximumMass { get; }

    /// <summary>The fixed-pitch propeller.</summary>
    public Propeller Propeller { get; }

    /// <summary>The propeller's engine with its throttle closed.</summary>
    public ClosedThrottleEngine Engine { get; }

    /// <summary>The engine with its throttle wide open; none where the file gives none.</summary>
    public FullThrottleEngine? FullThrottle { get; }

    /// <summary>The manual's crosswind, demonstrated or limiting; none where the manual or the file gives none.</summary>
    public Speed? CrosswindLimit { get; }

    /// <summary>The highest pitch attitude on the wheels that keeps the tail clear with a margin; none where it is not known.</summary>
    public Angle? TailLimitAttitude { get; }

    /// <summary>The rules by which it is flown; <see cref="BriefingRules.Usual"/> unless <see cref="FlownBy"/> gave others.</summary>
    public BriefingRules Rules { get; } = BriefingRules.Usual;

    /// <summary>Flap settings, from up to full.</summary>
    public IReadOnlyList<FlapSetting> FlapSettings { get; }

    /// <summary>The first setting.</summary>
    public FlapSetting FlapsUp => FlapSettings[0];

    /// <summary>The last setting, the landing flap.</summary>
    public FlapSetting FullFlaps => FlapSettings[^1];

    /// <summary>This aeroplane with one flap setting at one mass.</summary>
    /// <param name="flaps">One of <see cref="FlapSettings"/>.</param>
    /// <param name="mass">Between the minimum and maximum mass; the maximum where none is given.</param>
    /// <returns>The configuration.</returns>
    /// <exception cref="RefusedInputException">
    /// A setting of another aeroplane; a mass at which this aeroplane is not flown.
    /// </exception>
    public Configuration Configure(FlapSetting flaps, Mass? mass = null)
    {
        ArgumentNullException.ThrowIfNull(flaps);
        return new(this, flaps, mass ?? MaximumMass);
    }

    /// <summary>The same aeroplane, flown by a school's rules: its reference speeds and its usual pilot follow them.</summary>
    /// <param name="rules">The rules.</param>
    /// <returns>The aeroplane; its flap settings are the same ones.</returns>
    /// <exception cref="ArgumentNullException">No rules.</exception>
    public Aeroplane FlownBy(BriefingRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return rules == Rules ? this : new(this, rules);
    }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
