using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>One way of landing: without flaps, or with all of them. Immutable.</summary>
public sealed class BriefedCase
{
    private readonly BriefingRules _rules;

    internal BriefedCase(BriefedSpeeds speeds, BriefedCircuit circuit, BriefedLanding landing, BriefingRules rules) =>
        (Speeds, Circuit, Landing, _rules) = (speeds, circuit, landing, rules);

    /// <summary>The speeds of the setting on final.</summary>
    public BriefedSpeeds Speeds { get; }

    /// <summary>The circuit.</summary>
    public BriefedCircuit Circuit { get; }

    /// <summary>The landing.</summary>
    public BriefedLanding Landing { get; }

    /// <summary>Fastest on the needle on final before going around.</summary>
    public Speed FastestOnFinal => Speeds.ApproachIndicated + _rules.FastBy;

    /// <summary>Slowest on the needle on final before going around.</summary>
    public Speed SlowestOnFinal => Speeds.ApproachIndicated - _rules.SlowBy;
}

/// <summary>
/// The same landing with full flaps, to compare with. What of it cannot be has its reason; the flight without flaps does not depend on it.
/// Immutable.
/// </summary>
public sealed class BriefedComparison
{
    internal BriefedComparison(BriefedSpeeds? speeds, BriefedCircuit? circuit, BriefedLanding? landing, IReadOnlyList<string> missing) =>
        (Speeds, Circuit, Landing, Missing) = (speeds, circuit, landing, missing);

    /// <summary>The speeds of the setting on final, if there are some.</summary>
    public BriefedSpeeds? Speeds { get; }

    /// <summary>The circuit, if there is one.</summary>
    public BriefedCircuit? Circuit { get; }

    /// <summary>The landing, if there is one.</summary>
    public BriefedLanding? Landing { get; }

    /// <summary>Why something is missing, a sentence each; empty where nothing is.</summary>
    public IReadOnlyList<string> Missing { get; }
}

/// <summary>
/// The numbers of one flight's landing without flaps, beside the same landing with full flaps. Immutable. A training aid: the approved
/// manual, the local rules and a qualified instructor decide.
/// </summary>
public sealed class Briefing
{
    internal Briefing(BriefingRequest request, IReadOnlyList<BriefedSpeeds> speeds, BriefedCase flapless, BriefedComparison fullFlaps,
        LandingRemedies? remedies)
    {
        Request = request;
        Speeds = speeds;
        Flapless = flapless;
        FullFlaps = fullFlaps;
        Remedies = remedies;
        GoAround = FlapAero.GoAround.From(flapless.Circuit.Final.Flight);
    }

    /// <summary>The flight.</summary>
    public BriefingRequest Request { get; }

    /// <summary>What gusts add to the approach speed: half the gust factor, or as the rules say.</summary>
    public Speed GustAdditive => Request.Rules.Additive(Request.Wind.GustFactor).ToUnit(SpeedUnit.Knot);

    /// <summary>Headwind along the runway in the mean wind; a tailwind is negative.</summary>
    public Speed Headwind => Request.Wind.Mean.Headwind(Request.Runway.Direction);

    /// <summary>Crosswind in the mean wind, positive from the right.</summary>
    public Speed Crosswind => Request.Wind.Mean.Crosswind(Request.Runway.Direction);

    /// <summary>Crosswind in the gusts, positive from the right.</summary>
    public Speed CrosswindInGusts => Request.Wind.Strongest.Crosswind(Request.Runway.Direction);

    /// <summary>The crosswind not to exceed: the lower of the aeroplane's and the instructor's own; none where neither is given.</summary>
    public Speed? CrosswindLimit => (Request.Aeroplane.CrosswindLimit, Request.CrosswindLimit) switch
    {
        ({ } manual, { } own) => manual < own ? manual : own,
        (var manual, var own) => manual ?? own,
    };

    /// <summary>How the crosswind in the gusts stands to its limit, judged in whole knots: the wind rounded up, the limit down.</summary>
    public CrosswindFit CrosswindFit
    {
        get
        {
            // A value that is whole but for the last bits of a double is that whole.
            double across = Math.Ceiling(CrosswindInGusts.Abs().Knots - 1e-6);
            return across == 0 ? CrosswindFit.Within
                : CrosswindLimit is not { } limit ? CrosswindFit.LimitUnknown
                : across > Math.Floor(limit.Knots + 1e-6) ? CrosswindFit.AboveLimit
                : CrosswindFit.Within;
        }
    }

    /// <summary>Headwind that the landing distances are planned with.</summary>
    public Speed PlannedHeadwind => Request.Rules.PlannedHeadwind(Headwind);

    /// <summary>Where the final path meets the runway, past the threshold.</summary>
    public Length AimingPoint => Flapless.Circuit.Circuit.Plan.AimingPoint;

    /// <summary>The speeds of every flap setting that has them, from up to full; the comparison says why one has none.</summary>
    public IReadOnlyList<BriefedSpeeds> Speeds { get; }

    /// <summary>Without flaps.</summary>
    public BriefedCase Flapless { get; }

    /// <summary>With full flaps on final, to compare with.</summary>
    public BriefedComparison FullFlaps { get; }

    /// <summary>What would help where the landing without flaps does not fit; none where it does.</summary>
    public LandingRemedies? Remedies { get; }

    /// <summary>A go-around from final without flaps; it does not happen where the aeroplane's file gives no full throttle.</summary>
    public Outcome<GoAround> GoAround { get; }

    /// <summary>Whether the landing without flaps fits the runway, and the wind across is within its limit: what a sheet may say in large type.</summary>
    public bool Fits => Flapless.Landing.Fit == RunwayFit.Fits && CrosswindFit == CrosswindFit.Within;

    /// <summary>Computes a briefing.</summary>
    /// <remarks>
    /// Formula: V_REF = 1.3 V_S and half the gust factor; legs at 1.6, 1.4 and 1.3 times their own V_S, the circuit solved backwards from
    /// the aiming point; distances of the canonical landing in half the headwind or one and a half of the tailwind, times the margin. Range: what
    /// the aeroplane's file reaches: speeds inside the calibration and below each flap's highest, thrust from idle to full. Source:
    /// [cfr-23] for 1.3, [afh] for the gusts, [cat-pol-a-330] for wind and margin, [canonical-landing] and [common-practice] for the rest.
    /// </remarks>
    /// <param name="request">The flight.</param>
    /// <returns>The briefing, or every reason why there is none.</returns>
    /// <exception cref="ArgumentNullException">No request.</exception>
    /// <example><code>Briefing.For(DemoBriefings.Flight).Value.Flapless.Speeds.Reference.Calibrated.Knots // 68.0</code></example>
    public static Outcome<Briefing, IReadOnlyList<string>> For(BriefingRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return BriefingMaker.Make(request);
    }
}
