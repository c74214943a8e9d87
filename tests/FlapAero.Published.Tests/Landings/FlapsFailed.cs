namespace FlapAero.Published.Tests.Landings;

/// <summary>The landing without flaps against the landing with them, and what makes the difference.</summary>
/// <param name="aeroplane">The aeroplane, at its maximum mass.</param>
/// <param name="pilot">The pilot; the usual one where none is given.</param>
/// <param name="tail">Whether the tail may end the hold-off.</param>
/// <param name="withoutFlaps">The pilot without flaps; the same where none is given.</param>
internal sealed class FlapsFailed(Aeroplane aeroplane, LandingPilot? pilot = null, bool tail = true, LandingPilot? withoutFlaps = null)
{
    private readonly WholeLanding _full = Land(aeroplane.Configure(aeroplane.FullFlaps), pilot, tail);
    private readonly WholeLanding _up = Land(aeroplane.Configure(aeroplane.FlapsUp), withoutFlaps ?? pilot, tail);

    public static FlapsFailed H4 { get; } = new(DemoAeroplanes.TrainerH4);

    public static FlapsFailed L2 { get; } = new(DemoAeroplanes.TrainerL2);

    public WholeLanding Full => _full;

    public WholeLanding Up => _up;

    /// <summary>Up against full, in per cent.</summary>
    public RuleLandings.Change AgainstFull => RuleLandings.From(_full, _up);

    /// <summary>Up against the setting before full.</summary>
    public RuleLandings.Change AgainstTheSettingBefore =>
        RuleLandings.From(WholeLanding.Of(aeroplane.Configure(aeroplane.FlapSettings[^2])), _up);

    /// <summary>What the square of the speeds alone would make of any distance.</summary>
    public double SquareOfTheSpeeds => 100 * (Math.Pow(_up.Input.ThresholdSpeed / _full.Input.ThresholdSpeed, 2) - 1);

    /// <summary>Flaps that add lift and no drag: the lift of full flaps on the polar of flaps up, against flaps up.</summary>
    public RuleLandings.Change AgainstLiftWithoutDrag => RuleLandings.From(
        _full.With(input => input with { ZeroLiftDrag = _up.Input.ZeroLiftDrag, Oswald = _up.Input.Oswald }), _up);

    /// <summary>Flaps that add drag and no lift: the polar of full flaps on the lift of flaps up, against flaps up.</summary>
    public RuleLandings.Change AgainstDragWithoutLift => RuleLandings.From(
        _up.With(input => input with { ZeroLiftDrag = _full.Input.ZeroLiftDrag, Oswald = _full.Input.Oswald }), _up);

    private static WholeLanding Land(Configuration configuration, LandingPilot? pilot, bool tail)
    {
        WholeLanding landing = WholeLanding.Of(configuration, pilot: pilot);
        double fraction = (pilot ?? LandingPilot.Usual).TouchdownLiftFraction;
        return tail ? landing : landing.With(input => input with
        {
            TouchdownLiftFraction = fraction,
            NoseHighLift = fraction * input.MaximumLift,
        });
    }
}
