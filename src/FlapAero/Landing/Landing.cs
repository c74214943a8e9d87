using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// A landing: a point mass from the threshold to the stop, in six steps that a pilot would name. Named assumptions: ground effect on drag
/// only, and on all of the induced drag; a parabolic polar up to the touchdown lift. The last two make floats a little long. The pilot
/// holds the path and adds no power for a gust. A training aid: the approved manual, local rules and a qualified instructor decide.
/// </summary>
public static class Landing
{
    private static readonly Duration Shortest = Duration.FromMilliseconds(1);
    private static readonly Duration Usual = Duration.FromSeconds(0.1);

    /// <summary>Flies a landing.</summary>
    /// <remarks>
    /// Formula: V̇ = (T − D)/m − g sin γ + ẇ cos γ, ẇ = (dw/dh) ḣ + ∂w/∂t, on the stages' paths; rolls with friction μ(W cos ε − L). The
    /// approach's thrust balances the shear at the threshold too. Range: any landing that makes sense; one that cannot happen is reported
    /// with its reason, not thrown. The results are within 0.002 % of a tight integration. Source: [canonical-landing],
    /// [landing-conditions].
    /// </remarks>
    /// <param name="setup">The landing.</param>
    /// <param name="conditions">What it meets beyond a steady wind; nothing where none are given.</param>
    /// <param name="interval">Longest time between points of the trajectory, 1 ms to 1 h; 0.1 s where none is given.</param>
    /// <returns>The landing, or why it cannot happen.</returns>
    /// <exception cref="RefusedInputException">
    /// An input that makes no sense, the message names it; a wind profile over a threshold height that it does not reach.
    /// </exception>
    /// <example><code>Landing.Fly(landing).Value.StopDistance.Meters // 550.4</code></example>
    public static Outcome<LandingResult, LandingRefusal> Fly(
        LandingSetup setup, LandingConditions? conditions = null, Duration? interval = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        double seconds = Interval(interval);
        (LandingInput input, LandingManner manner) = (conditions ?? LandingConditions.Canonical).Apply(setup);
        LandingVoice voice = setup.Voice;
        return Report(setup, input, manner, LandingSolver.Solve(input, voice: voice, manner: manner), seconds);
    }

    /// <summary>Flies many landings, on all cores.</summary>
    /// <remarks>Formula: as <see cref="Fly"/>, and the same numbers whatever the cores. Range: any number. Source: [canonical-landing].</remarks>
    /// <param name="setups">The landings.</param>
    /// <param name="conditions">What each of them meets beyond a steady wind, in their order; nothing where none are given.</param>
    /// <param name="interval">As in <see cref="Fly"/>.</param>
    /// <returns>What became of each, in their order.</returns>
    /// <exception cref="RefusedInputException">
    /// An input that makes no sense, of several the first; conditions for more or for fewer landings than there are.
    /// </exception>
    /// <example><code>Landing.FlyMany([landing, landing])[1].Value.StopDistance.Meters // 550.4</code></example>
    public static IReadOnlyList<Outcome<LandingResult, LandingRefusal>> FlyMany(
        IReadOnlyList<LandingSetup> setups, IReadOnlyList<LandingConditions>? conditions = null, Duration? interval = null)
    {
        ArgumentNullException.ThrowIfNull(setups);
        double seconds = Interval(interval);
        if (conditions is not null && conditions.Count != setups.Count)
            throw Require.Refused(
                nameof(conditions), "number of conditions", conditions.Count, $"{setups.Count}, one for each landing",
                "Each landing meets its own.");
        LandingConditions Met(int i) => conditions is null ? LandingConditions.Canonical : Require.Given(conditions[i], nameof(conditions));
        (LandingInput Input, LandingManner Manner)[] flights =
            [.. setups.Select((setup, i) => Met(i).Apply(Require.Given(setup, nameof(setups))))];
        var outcomes = new LandingOutcome[flights.Length];
        LandingSolver.SolveInParallel(
            [.. flights.Select(flight => flight.Input)], outcomes,
            Array.TrueForAll(flights, flight => flight.Manner == default) ? null : [.. flights.Select(flight => flight.Manner)]);
        return [.. setups.Select((setup, i) => Report(setup, flights[i].Input, flights[i].Manner, outcomes[i], seconds))];
    }

    /// <summary>Flies a landing whose pilot puts the wheels on before the wing has done flying.</summary>
    /// <remarks>
    /// Formula: as <see cref="Fly"/> with the hold-off ended at a smaller share of C_Lmax and no settling: the wheels are on where it
    /// ends. Range: a share above zero and below that of the normal touchdown. Source: [canonical-landing].
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
        LandingInput normal = setup.Checked();
        if (!(liftFraction > 0 && liftFraction < normal.TouchdownLiftFraction))
            throw Require.Refused(
                nameof(liftFraction), "share of C_Lmax at which the wheels are put on", liftFraction,
                $"above 0 and below that of the normal touchdown, {Require.Number(normal.TouchdownLiftFraction)}",
                "There the aeroplane settles by itself.");
        LandingInput forced = normal with { TouchdownLiftFraction = liftFraction };
        LandingManner manner = new(PutsWheelsOn: true);
        LandingOutcome outcome = LandingSolver.Solve(forced, voice: setup.Voice, manner: manner);
        return new(setup, normal, Report(setup, forced, manner, outcome, seconds), outcome);
    }

    /// <summary>The same where the wheels are put on so much above the airspeed at the float's end; the wing carries the weight at both.</summary>
    internal static ForcedTouchdown ForceOnEarly(LandingSetup setup, Speed floatEnds, Speed early)
    {
        double heldOff = setup.Aeroplane.NoseHighLiftCoefficient / setup.Aeroplane.MaximumLiftCoefficient;
        return ForceOn(setup, heldOff * Math.Pow(floatEnds / (floatEnds + early), 2));
    }

    private static Outcome<LandingResult, LandingRefusal> Report(
        LandingSetup setup, in LandingInput input, LandingManner manner, in LandingOutcome outcome, double interval) =>
        outcome.Refusal == LandingRefusal.None
            ? new(new LandingResult(new(input, manner, outcome, interval, !manner.PutsWheelsOn && setup.TailEndsHoldOff)))
            : new(outcome.Refusal, $"{RefusalText.Explain(outcome, setup.Voice)} {outcome.Refusal.Advice()}");

    private static double Interval(Duration? interval) =>
        Require.Between(interval ?? Usual, Shortest, Duration.FromHours(1), "interval", "Points of a plot.", nameof(interval)).Seconds;
}
