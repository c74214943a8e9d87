using System.Collections.ObjectModel;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// What became of the landings of a scatter. Distances are along the runway from the threshold, of the landings that happened;
/// shares are of all landings, those that cannot happen included. Immutable, safe for any thread.
/// </summary>
public sealed class LandingScatterResult
{
    private readonly LandingOutcome[] _outcomes;
    private readonly SampledDistance? _touchdown;
    private readonly SampledDistance? _stop;

    internal LandingScatterResult(LandingOutcome[] outcomes, long seed)
    {
        _outcomes = outcomes;
        Seed = seed;
        Span<int> reasons = stackalloc int[Enum.GetValues<LandingRefusal>().Length];
        foreach (ref readonly LandingOutcome outcome in outcomes.AsSpan())
            reasons[(int)outcome.Refusal]++;
        int landed = reasons[(int)LandingRefusal.None];
        Landed = new Share(landed, Count);
        var refusals = new SortedDictionary<LandingRefusal, Share>();
        for (int reason = 1; reason < reasons.Length; reason++)
        {
            if (reasons[reason] > 0)
                refusals.Add((LandingRefusal)reason, new Share(reasons[reason], Count));
        }

        Refusals = new ReadOnlyDictionary<LandingRefusal, Share>(refusals);
        if (landed == 0)
            return;
        var touchdown = new double[landed];
        var stop = new double[landed];
        int next = 0;
        foreach (ref readonly LandingOutcome outcome in outcomes.AsSpan())
        {
            if (!Happened(outcome))
                continue;
            (touchdown[next], stop[next]) = (outcome.TouchdownDistance, outcome.StopDistance);
            next++;
        }

        _touchdown = new SampledDistance(touchdown);
        _stop = new SampledDistance(stop);
    }

    /// <summary>How many landings were drawn.</summary>
    public int Count => _outcomes.Length;

    /// <summary>The seed that they were drawn with.</summary>
    public long Seed { get; }

    /// <summary>Share of the landings that happened.</summary>
    public Share Landed { get; }

    /// <summary>Share of the landings that cannot happen, by reason; reasons that did not occur are not in it.</summary>
    public IReadOnlyDictionary<LandingRefusal, Share> Refusals { get; }

    /// <summary>Where the wheels touched, from the threshold.</summary>
    /// <exception cref="InvalidOperationException">No landing happened.</exception>
    public SampledDistance TouchdownDistance => _touchdown ?? throw NoneHappened();

    /// <summary>Where the aeroplane stopped, from the threshold.</summary>
    /// <exception cref="InvalidOperationException">No landing happened.</exception>
    public SampledDistance StopDistance => _stop ?? throw NoneHappened();

    /// <summary>Share of all landings that touched down within the first third of the landing distance available and came to a stop, there or beyond its end.</summary>
    /// <remarks>
    /// Formula: x_td ≤ LDA/3, counted from the threshold; a landing that cannot happen does not count, nor does one that touches
    /// down and never stops. Range: any length above zero. Source: [common-practice].
    /// </remarks>
    /// <param name="landingDistanceAvailable">LDA, from the threshold.</param>
    /// <returns>The share.</returns>
    /// <exception cref="RefusedInputException">A length that is not above zero.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).TouchdownInFirstThird(Length.FromMeters(1400)).Value // 0.57</code></example>
    public Share TouchdownInFirstThird(Length landingDistanceAvailable)
    {
        double third = Meters(landingDistanceAvailable) / 3;
        return new(_outcomes.Count(outcome => Happened(outcome) && outcome.TouchdownDistance <= third), Count);
    }

    /// <summary>Share of all landings that stopped within the landing distance available.</summary>
    /// <remarks>
    /// Formula: x_stop ≤ LDA, counted from the threshold. Range: any length above zero. Source: [common-practice].
    /// </remarks>
    /// <param name="landingDistanceAvailable">LDA, from the threshold.</param>
    /// <returns>The share.</returns>
    /// <exception cref="RefusedInputException">A length that is not above zero.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).StoppedWithin(Length.FromMeters(750)).Value // 0.6</code></example>
    public Share StoppedWithin(Length landingDistanceAvailable)
    {
        double available = Meters(landingDistanceAvailable);
        return new(_outcomes.Count(outcome => Happened(outcome) && outcome.StopDistance <= available), Count);
    }

    /// <summary>Why a landing cannot happen, <see cref="LandingRefusal.None"/> where it did.</summary>
    /// <remarks>Formula: none. Range: 0 to <see cref="Count"/> − 1. Source: [canonical-landing].</remarks>
    /// <param name="landing">Its number, from 0.</param>
    /// <returns>The reason.</returns>
    /// <exception cref="RefusedInputException">No such landing.</exception>
    /// <example><code>(double)DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).Refusal(0) // 0</code></example>
    public LandingRefusal Refusal(int landing) => Outcome(landing).Refusal;

    /// <summary>Where the wheels touched in one landing.</summary>
    /// <remarks>Formula: none. Range: 0 to <see cref="Count"/> − 1. Source: [canonical-landing].</remarks>
    /// <param name="landing">Its number, from 0.</param>
    /// <returns>The distance from the threshold; none for a landing that cannot happen.</returns>
    /// <exception cref="RefusedInputException">No such landing.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).Touchdown(0)!.Value.Meters // 486</code></example>
    public Length? Touchdown(int landing) => Happened(Outcome(landing)) ? Length.FromMeters(Outcome(landing).TouchdownDistance) : null;

    /// <summary>Where the aeroplane stopped in one landing.</summary>
    /// <remarks>Formula: none. Range: 0 to <see cref="Count"/> − 1. Source: [canonical-landing].</remarks>
    /// <param name="landing">Its number, from 0.</param>
    /// <returns>The distance from the threshold; none for a landing that cannot happen.</returns>
    /// <exception cref="RefusedInputException">No such landing.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Fly(1000).Stop(0)!.Value.Meters // 732</code></example>
    public Length? Stop(int landing) => Happened(Outcome(landing)) ? Length.FromMeters(Outcome(landing).StopDistance) : null;

    private ref readonly LandingOutcome Outcome(int landing)
    {
        Require.Between(landing, 0, Count - 1, "landing", "They are counted from 0.");
        return ref _outcomes[landing];
    }

    private static bool Happened(in LandingOutcome outcome) => outcome.Refusal == LandingRefusal.None;

    private static double Meters(Length available) =>
        Require.Positive(available, "landing distance available", "A runway has a length.").Meters;

    private InvalidOperationException NoneHappened() =>
        new($"None of the {Count} landings can happen, so that there is no distance: {string.Join(", ", Refusals.Select(refusal => $"{refusal.Key.Reason()} {refusal.Value.Hits}"))}.");
}
