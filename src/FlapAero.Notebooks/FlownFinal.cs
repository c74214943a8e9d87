using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// A straight line from short final to the threshold, begun too high or not, and the usual landing after it. Immutable.
/// </summary>
public sealed class FlownFinal
{
    private readonly Configuration _configuration;
    private readonly Air _air;
    private readonly Length _from;

    private FlownFinal(Configuration configuration, Air air, Length from, Length above, Speed fasterBy)
    {
        (_configuration, _air, _from) = (configuration, air, from);
        LandingPilot pilot = configuration.UsualPilot;
        Length onPath = pilot.ThresholdHeight + from * Math.Tan(pilot.PathAngle.Radians);
        Airspeed reference = configuration.ReferenceSpeed(air);
        Airspeed? held = fasterBy.Knots == 0 ? null : reference;
        Airspeed begun = held is null ? reference : Airspeed.FromTrue(reference.True + fasterBy, air);
        Points = configuration.StraightDescent(begun, onPath + above, pilot.ThresholdHeight, from, held: held).Value;
        Landing = Landed(pilot);
    }

    /// <summary>Flies it: at the reference speed where the line is flat enough, with the throttle closed where it is not.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="air">The air.</param>
    /// <param name="from">Where it begins, before the threshold.</param>
    /// <param name="above">How far above the usual path it begins.</param>
    /// <param name="fasterBy">How much true airspeed too much it begins with.</param>
    /// <returns>The final and its landing.</returns>
    public static FlownFinal Of(Configuration configuration, Air air, Length from, Length above, Speed fasterBy = default)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(air);
        return new FlownFinal(configuration, air, from, above, fasterBy);
    }

    /// <summary>The way down to the threshold.</summary>
    public IReadOnlyList<DescentPoint> Points { get; }

    /// <summary>The landing that follows, with power to the round-out.</summary>
    public LandingResult Landing { get; }

    /// <summary>The true airspeed over the threshold.</summary>
    public Speed ThresholdSpeed => Points[^1].Airspeed.True;

    /// <summary>What the threshold inherits: the true airspeed there above the reference speed.</summary>
    public Speed Inherited => ThresholdSpeed - _configuration.ReferenceSpeed(_air).True;

    /// <summary>How much further along the wheels touch than after a final begun on the path.</summary>
    public Length Further => Landing.TouchdownDistance - Of(_configuration, _air, _from, Length.Zero).Landing.TouchdownDistance;

    /// <summary>The landing that follows with the throttle shut over the threshold.</summary>
    /// <returns>The landing.</returns>
    public LandingResult LandedThrottleShut() =>
        Landed(_configuration.UsualPilot.ClosingThrottleAtThreshold() with { PowerCutTime = Duration.Zero });

    /// <summary>Distance past the threshold and energy height above that of the touchdown, both in feet, to the touchdown.</summary>
    internal IEnumerable<(double, double)> EnergyStillToLose()
    {
        Length end = EnergyHeight.Of(Length.Zero, Landing.TouchdownAirspeed);
        double Left(Length store) => Math.Max(0, (store - end).Feet);
        return Points.Select(p => ((p.Distance - _from).Feet, Left(p.EnergyHeight)))
            .Concat(Landing.Trajectory.Where(p => p.Stage <= LandingStage.Settling).Select(p => (p.Distance.Feet, Left(p.EnergyHeight))));
    }

    private LandingResult Landed(LandingPilot pilot)
    {
        LandingSetup landing = LandingSetup.For(_configuration, pilot: pilot, air: _air);
        return FlapAero.Landing.Fly(landing with { Technique = landing.Technique with { ThresholdSpeed = ThresholdSpeed } }).Value;
    }
}
