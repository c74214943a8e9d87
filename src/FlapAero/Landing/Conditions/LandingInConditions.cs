using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// The landing of <see cref="Landing"/> in conditions of its own: idle thrust by airspeed, wind that changes with height and time, brakes
/// from the touchdown, a surface by name. Named assumptions besides the canonical: the wind changes along the runway only, no vertical
/// gust; the pilot trims at the threshold for the shear there, does not add power later, and holds the sink rate. A training aid: the
/// approved manual, local rules and a qualified instructor decide.
/// </summary>
public static class LandingInConditions
{
    private static readonly Length HighestWing = Length.FromMeters(500);

    /// <summary>Flies a landing in conditions.</summary>
    /// <remarks>
    /// Formula: V̇ = (T − D)/m − g sin γ + ẇ cos γ, V γ̇ = (L − W cos γ)/m − ẇ sin γ, ẇ = (dw/dh) ḣ + ∂w/∂t, w at the wing; on the
    /// ground the same along the runway. Range: any landing that makes sense; one that cannot happen is reported with its reason, not
    /// thrown; with a wind profile, wings to 500 m above the surface. Source: [landing-conditions].
    /// </remarks>
    /// <param name="setup">The landing.</param>
    /// <param name="conditions">What differs from the canonical landing.</param>
    /// <param name="interval">Longest time between points of the trajectory, 1 ms to 1 h; 0.1 s where none is given.</param>
    /// <returns>The report.</returns>
    /// <exception cref="RefusedInputException">
    /// An input that makes no sense, or a table of idle thrust that the landing leaves; the message names it.
    /// </exception>
    /// <example><code>LandingInConditions.Fly(landing, LandingConditions.Canonical).Result!.StopDistance.Meters // 550.4</code></example>
    public static LandingInConditionsReport Fly(LandingSetup setup, LandingConditions conditions, Duration? interval = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(conditions);
        double seconds = Require.Between(
            interval ?? Duration.FromSeconds(0.1), Duration.FromMilliseconds(1), Duration.FromHours(1), "interval", "Points of a plot.", nameof(interval)).Seconds;
        // What the conditions replace does not count, and must not refuse the landing.
        LandingRunway runway = setup.Runway;
        LandingInput input = (setup with
        {
            Runway = runway with
            {
                Headwind = conditions.Wind is null ? runway.Headwind : Speed.Zero,
                RollingFriction = conditions.Surface?.RollingFriction ?? runway.RollingFriction,
                BrakingFriction = conditions.Surface?.BrakingFriction ?? runway.BrakingFriction,
            },
        }).Checked();
        WindField wind = Field(input, conditions);
        if (conditions.Wind is not null)
        {
            Length wing = setup.Technique.ThresholdHeight + setup.Aeroplane.WingHeight;
            Require.Between(wing, Length.FromMillimeters(1), HighestWing, "height of the wing over the threshold", "The profiles describe the air next to the ground.", nameof(setup));
            input = input with { Headwind = wind.Mean(wing.Meters) };
        }

        if (conditions.IdleThrust is { } curve && !(input.ThresholdSpeed < curve.SiFastest))
            throw Require.Refused(
                nameof(conditions), "idle thrust: fastest row of the table", curve.Fastest,
                $"above the threshold speed, {Require.Text(setup.Technique.ThresholdSpeed, curve.Fastest)}", "Beyond it nothing is known of the idling engine.");
        (LandingOutcome outcome, IReadOnlyList<ConditionsState> states) = ConditionsSolver.Solve(
            input, wind, conditions.IdleThrust is { } idle ? idle.SiAt : null, conditions.IdleThrust?.SiFastest ?? double.PositiveInfinity,
            conditions.BrakesFromTouchdown, seconds, voice: setup.Voice);
        return new LandingInConditionsReport(outcome, states, setup.Voice);
    }

    private static WindField Field(in LandingInput input, LandingConditions conditions)
    {
        Func<double, double>? profile =
            conditions.Wind is { } wind ? height => wind.At(Length.FromMeters(height)).MetersPerSecond : null;
        return conditions.Gust is { } gust
            ? new(profile, input.Headwind, gust.Change.MetersPerSecond, gust.Start.Seconds, gust.Length.Seconds)
            : new(profile, input.Headwind, 0, 0, 1);
    }
}
