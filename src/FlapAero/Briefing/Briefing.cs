using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>One way of landing: without flaps, or with all of them. Immutable.</summary>
public sealed class BriefedCase
{
    internal BriefedCase(BriefedSpeeds speeds, BriefedCircuit circuit, BriefedLanding landing) =>
        (Speeds, Circuit, Landing) = (speeds, circuit, landing);

    /// <summary>The speeds of the setting on final.</summary>
    public BriefedSpeeds Speeds { get; }

    /// <summary>The circuit.</summary>
    public BriefedCircuit Circuit { get; }

    /// <summary>The landing.</summary>
    public BriefedLanding Landing { get; }

    /// <summary>Fastest on the needle on final before going around.</summary>
    public Speed FastestOnFinal => Speeds.ApproachIndicated + BriefingTechnique.FastBy;

    /// <summary>Slowest on the needle on final before going around.</summary>
    public Speed SlowestOnFinal => Speeds.ApproachIndicated - BriefingTechnique.SlowBy;
}

/// <summary>
/// The numbers of one flight's landing without flaps, beside the same landing with full flaps. Immutable. A training aid: the approved
/// manual, the local rules and a qualified instructor decide.
/// </summary>
public sealed class Briefing
{
    internal Briefing(BriefingRequest request, IReadOnlyList<BriefedSpeeds> speeds, BriefedCase flapless, BriefedCase fullFlaps)
    {
        Request = request;
        Speeds = speeds;
        Flapless = flapless;
        FullFlaps = fullFlaps;
    }

    /// <summary>The flight.</summary>
    public BriefingRequest Request { get; }

    /// <summary>What gusts add to the approach speed: half the gust factor.</summary>
    public Speed GustAdditive => Gust.Additive(Request.Wind.GustFactor).ToUnit(SpeedUnit.Knot);

    /// <summary>Headwind along the runway in the mean wind; a tailwind is negative.</summary>
    public Speed Headwind => Request.Wind.Mean.Headwind(Request.Runway.Direction);

    /// <summary>Crosswind in the mean wind, positive from the right.</summary>
    public Speed Crosswind => Request.Wind.Mean.Crosswind(Request.Runway.Direction);

    /// <summary>Crosswind in the gusts, positive from the right.</summary>
    public Speed CrosswindInGusts => Request.Wind.Strongest.Crosswind(Request.Runway.Direction);

    /// <summary>Headwind that the landing distances are planned with.</summary>
    public Speed PlannedHeadwind => LandingMargin.PlannedHeadwind(Headwind);

    /// <summary>Where the final path meets the runway, past the threshold.</summary>
    public Length AimingPoint => Flapless.Circuit.Circuit.Plan.AimingPoint;

    /// <summary>The speeds of every flap setting, from up to full.</summary>
    public IReadOnlyList<BriefedSpeeds> Speeds { get; }

    /// <summary>Without flaps.</summary>
    public BriefedCase Flapless { get; }

    /// <summary>With full flaps on final.</summary>
    public BriefedCase FullFlaps { get; }

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
    /// <example><code>Briefing.For(DemoBriefings.Flight).Made.Flapless.Speeds.Reference.Calibrated.Knots // 68.0</code></example>
    public static BriefingOutcome For(BriefingRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return BriefingMaker.Make(request);
    }
}
