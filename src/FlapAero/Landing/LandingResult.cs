using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// A landing that came to its stop. Distances over the ground from the threshold, times from there. Immutable; its moments are worked out
/// when they are first asked for.
/// </summary>
public sealed class LandingResult
{
    private readonly LandingOutcome _outcome;
    private readonly Lazy<IReadOnlyList<LandingPoint>> _trajectory;
    private readonly Lazy<IReadOnlyList<RollEnergyPoint>> _rollEnergy;

    internal LandingResult(FlownLanding flown)
    {
        _outcome = flown.Outcome;
        HoldOffEnd = flown.TailEndsHoldOff ? HoldOffEnd.Tail : HoldOffEnd.Lift;
        Stages =
        [
            new(LandingStage.Approach, 0, _outcome.FlareStartTime, 0, _outcome.FlareStartDistance),
            new(LandingStage.HoldOff, _outcome.FlareStartTime, _outcome.HoldOffEndTime, _outcome.FlareStartDistance, _outcome.HoldOffEndDistance),
            new(LandingStage.Settling, _outcome.HoldOffEndTime, _outcome.TouchdownTime, _outcome.HoldOffEndDistance, _outcome.TouchdownDistance),
            new(LandingStage.RollNoseHigh, _outcome.TouchdownTime, _outcome.NoseLowerTime, _outcome.TouchdownDistance, _outcome.NoseLowerDistance),
            new(LandingStage.RollBraking, _outcome.NoseLowerTime, _outcome.StopTime, _outcome.NoseLowerDistance, _outcome.StopDistance),
        ];
        Lazy<List<TrajectoryState>> states = new(flown.Sample);
        _trajectory = new(() => [.. states.Value.Select(state => new LandingPoint(state))]);
        _rollEnergy = new(() => [.. RollWork.Along(flown.Input, states.Value).Select(work => new RollEnergyPoint(work))]);
    }

    /// <summary>T_a, the thrust that holds sink rate and airspeed at the threshold, the wind's shear there included.</summary>
    public Force ApproachThrust => Force.FromNewtons(_outcome.ApproachThrust);

    /// <summary>h_f, wheel height at which the round-out begins.</summary>
    public Length FlareHeight => Length.FromMeters(_outcome.FlareHeight);

    /// <summary>Where the round-out begins.</summary>
    public Length FlareStartDistance => Length.FromMeters(_outcome.FlareStartDistance);

    /// <summary>True airspeed there.</summary>
    public Speed FlareStartAirspeed => Speed.FromMetersPerSecond(_outcome.FlareStartSpeed);

    /// <summary>Where the wing has reached the touchdown lift: the hold-off ends.</summary>
    public Length HoldOffEndDistance => Length.FromMeters(_outcome.HoldOffEndDistance);

    /// <summary>True airspeed there.</summary>
    public Speed HoldOffEndAirspeed => Speed.FromMetersPerSecond(_outcome.HoldOffEndSpeed);

    /// <summary>Wheel height there: how far the aeroplane drops.</summary>
    public Length HoldOffEndHeight => Length.FromMeters(_outcome.HoldOffEndHeight);

    /// <summary>Where the wheels touch.</summary>
    public Length TouchdownDistance => Length.FromMeters(_outcome.TouchdownDistance);

    /// <summary>When the wheels touch.</summary>
    public Duration TouchdownTime => Duration.FromSeconds(_outcome.TouchdownTime);

    /// <summary>V_td, true airspeed along the path.</summary>
    public Speed TouchdownAirspeed => Speed.FromMetersPerSecond(_outcome.TouchdownSpeed);

    /// <summary>Sink rate at the touchdown, positive down.</summary>
    public Speed TouchdownSink => Speed.FromMetersPerSecond(_outcome.TouchdownSink);

    /// <summary>Where the nose comes down; at the touchdown with brakes from there.</summary>
    public Length NoseLowerDistance => Length.FromMeters(_outcome.NoseLowerDistance);

    /// <summary>Where the aeroplane stands.</summary>
    public Length StopDistance => Length.FromMeters(_outcome.StopDistance);

    /// <summary>When it stands.</summary>
    public Duration StopTime => Duration.FromSeconds(_outcome.StopTime);

    /// <summary>From the round-out's beginning to the touchdown.</summary>
    public Length Float => Length.FromMeters(_outcome.TouchdownDistance - _outcome.FlareStartDistance);

    /// <summary>From the touchdown to the stop.</summary>
    public Length GroundRoll => Length.FromMeters(_outcome.StopDistance - _outcome.TouchdownDistance);

    /// <summary>The crab angle that holds the centreline at the touchdown.</summary>
    /// <remarks>Formula: sin β = w_c/V_td. Range: crosswinds below the touchdown's airspeed. Source: [phak].</remarks>
    /// <param name="crosswind">w_c, from either side.</param>
    /// <returns>β.</returns>
    /// <exception cref="RefusedInputException">A crosswind as fast as the aeroplane.</exception>
    /// <example><code>Landing.Fly(landing).Value.CrabAtTouchdown(Speed.FromKnots(10)).Degrees // 12.7</code></example>
    public Angle CrabAtTouchdown(Speed crosswind)
    {
        double across = Require.Headwind(crosswind, "crosswind");
        return TrackLaws.Crab(across, _outcome.TouchdownSpeed) is { } crab
            ? Angle.FromRadians(crab).ToUnit(UnitsNet.Units.AngleUnit.Degree)
            : throw Require.Refused(
                nameof(crosswind), "crosswind", crosswind, $"less than the airspeed at the touchdown, {Require.Text(TouchdownAirspeed, crosswind)}",
                "No crab holds the centreline in more.");
    }

    /// <summary>How far the wind carries an aeroplane sideways that is pointed down the runway where the round-out begins, its wings level.</summary>
    /// <remarks>
    /// Formula: ∫ w_c dt over round-out, float and settling, the wind the same at every height. Range: to 100 kt. Source: [landing-conditions]. A real
    /// aeroplane takes a moment to drift with the air: it is the most, and why the wing is lowered into the wind.
    /// </remarks>
    /// <param name="crosswind">w_c.</param>
    /// <returns>The drift, with the crosswind's sign.</returns>
    /// <exception cref="RefusedInputException">A wind that nobody lands in.</exception>
    /// <example><code>Landing.Fly(landing).Value.DriftInFloat(Speed.FromKnots(10)).Meters // 39.4</code></example>
    public Length DriftInFloat(Speed crosswind) =>
        Length.FromMeters(Require.Headwind(crosswind, "crosswind") * (_outcome.TouchdownTime - _outcome.FlareStartTime));

    /// <summary>What ended the hold-off.</summary>
    public HoldOffEnd HoldOffEnd { get; }

    /// <summary>The stages in their order.</summary>
    public IReadOnlyList<LandingStageResult> Stages { get; }

    /// <summary>One stage by its name.</summary>
    /// <remarks>Formula: none. Range: every stage. Source: [canonical-landing].</remarks>
    /// <param name="stage">Which.</param>
    /// <returns>How long it lasted and how far it went.</returns>
    /// <exception cref="RefusedInputException">A value that is no stage.</exception>
    /// <example><code>Landing.Fly(landing).Value.Stage(LandingStage.RollBraking).Length.Meters // 33.0</code></example>
    public LandingStageResult Stage(LandingStage stage) =>
        Stages.FirstOrDefault(one => one.Stage == stage)
        ?? throw Require.Refused(
            nameof(stage), "stage", (int)stage, string.Join(", ", Stages.Select(one => one.Stage)), "A landing has no others.");

    /// <summary>The landing moment by moment, both ends of each stage included.</summary>
    public IReadOnlyList<LandingPoint> Trajectory => _trajectory.Value;

    /// <summary>Where the energy of motion goes on the roll, at the trajectory's moments from the touchdown to the stop.</summary>
    public IReadOnlyList<RollEnergyPoint> RollEnergy => _rollEnergy.Value;
}
