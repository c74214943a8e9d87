using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// The canonical landing: a point mass from the threshold to the stop, in six steps that a pilot would name. Named assumptions: steady
/// wind, the same at every height; ground effect on drag only, and on all of the induced drag; a parabolic polar up to the touchdown
/// lift. The last two make floats a little long. A training aid: the approved manual, local rules and a qualified instructor decide.
/// </summary>
public static class Landing
{
    private static readonly Duration Shortest = Duration.FromMilliseconds(1);
    private static readonly Duration Usual = Duration.FromSeconds(0.1);

    /// <summary>Flies a landing.</summary>
    /// <remarks>
    /// Formula: V̇ = (T − D)/m − g sin γ on the stages' paths, rolls with friction μ(W cos ε − L). Range: any landing that makes sense;
    /// one that cannot happen is reported with its reason, not thrown. The results are within 0.002 % of a tight integration.
    /// Source: [canonical-landing].
    /// </remarks>
    /// <param name="setup">The landing.</param>
    /// <param name="interval">Longest time between points of the trajectory, 1 ms to 1 h; 0.1 s where none is given.</param>
    /// <returns>The report.</returns>
    /// <exception cref="RefusedInputException">An input that makes no sense; the message names it.</exception>
    /// <example><code>Landing.Fly(landing).Result!.StopDistance.Meters // 550.4</code></example>
    public static LandingReport Fly(LandingSetup setup, Duration? interval = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        double seconds = Interval(interval);
        LandingInput input = setup.Checked();
        LandingVoice voice = setup.Voice;
        return new LandingReport(input, LandingSolver.Solve(input, voice: voice), seconds, voice);
    }

    /// <summary>Flies a landing whose pilot puts the wheels on before the wing has done flying.</summary>
    /// <remarks>
    /// Formula: as <see cref="Fly"/> with the hold-off ended at a smaller share of C_Lmax and no settling: the wheels are on where it
    /// ends. Range: a share above zero and below the technique's own. Source: [canonical-landing].
    /// </remarks>
    /// <param name="setup">The landing.</param>
    /// <param name="liftFraction">Share of C_Lmax at which the wheels are put on.</param>
    /// <param name="interval">As in <see cref="Fly"/>.</param>
    /// <returns>The landing, how much of the weight the wing still carries, and what that means.</returns>
    /// <exception cref="RefusedInputException">An input that makes no sense; the message names it.</exception>
    /// <example><code>Landing.ForceOn(landing, 0.6).LiftAvailable // 1.50</code></example>
    public static ForcedTouchdown ForceOn(LandingSetup setup, double liftFraction, Duration? interval = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        double seconds = Interval(interval);
        LandingInput input = setup.Checked();
        if (!(liftFraction > 0 && liftFraction < input.TouchdownLiftFraction))
            throw Require.Refused(
                nameof(liftFraction), "share of C_Lmax at which the wheels are put on", liftFraction,
                $"above 0 and below the technique's own, {Require.Number(input.TouchdownLiftFraction)}",
                "At its own the aeroplane settles by itself.");
        return new ForcedTouchdown(setup, liftFraction, ForcedLanding.Solve(input, liftFraction, voice: setup.Voice), seconds);
    }

    private static double Interval(Duration? interval) =>
        Require.Between(interval ?? Usual, Shortest, Duration.FromHours(1), "interval", "Points of a plot.", nameof(interval)).Seconds;
}
