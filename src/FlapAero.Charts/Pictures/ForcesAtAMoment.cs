using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Charts;

/// <summary>The four forces on an aeroplane at one moment, with its path and attitude. Immutable.</summary>
public sealed record ForcesAtAMoment
{
    private ForcesAtAMoment(
        string name, Configuration configuration, Angle path, Angle attitude, Force lift, Force drag, Force thrust)
    {
        (Name, Configuration, PathAngle, PitchAttitude) = (name, configuration, path, attitude);
        (Lift, Drag, Thrust) = (In(lift), In(drag), In(thrust));
    }

    /// <summary>The moment's name.</summary>
    public string Name { get; }

    /// <summary>What flies.</summary>
    public Configuration Configuration { get; }

    /// <summary>Flight-path angle γ through the air, positive up.</summary>
    public Angle PathAngle { get; }

    /// <summary>Pitch attitude θ.</summary>
    public Angle PitchAttitude { get; }

    /// <summary>L, across the path.</summary>
    public Force Lift { get; }

    /// <summary>D, against the path.</summary>
    public Force Drag { get; }

    /// <summary>T, along the path; negative where the propeller brakes.</summary>
    public Force Thrust { get; }

    /// <summary>W, straight down.</summary>
    public Force Weight => In(Configuration.Weight);

    /// <summary>The forces in steady flight.</summary>
    /// <param name="name">The moment's name.</param>
    /// <param name="flight">The flight.</param>
    /// <returns>The forces; those along the path and across it are in balance.</returns>
    public static ForcesAtAMoment Of(string name, SteadyFlight flight)
    {
        Require.Words(name, "name of the moment");
        ArgumentNullException.ThrowIfNull(flight);
        Force lift = flight.Configuration.Weight * Math.Cos(flight.PathAngle.Radians);
        return new ForcesAtAMoment(
            name.Trim(), flight.Configuration, flight.PathAngle, flight.PitchAttitude, lift,
            lift / flight.LiftToDrag, flight.Thrust);
    }

    /// <summary>The forces at a moment of a landing.</summary>
    /// <param name="name">The moment's name.</param>
    /// <param name="configuration">What was landed.</param>
    /// <param name="air">The air that it was landed in.</param>
    /// <param name="moment">A moment in the air of its trajectory.</param>
    /// <returns>The forces.</returns>
    /// <exception cref="RefusedInputException">The moment is on the ground, or its lift is not the
    /// configuration's.</exception>
    public static ForcesAtAMoment Of(string name, Configuration configuration, Air air, LandingPoint moment)
    {
        Require.Words(name, "name of the moment");
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(moment);
        if (moment.Stage > LandingStage.Settling)
            throw Require.RefusedWhole(
                nameof(moment), $"{name}: the moment is on the ground; the forces are drawn in the air.");
        (Angle path, Angle attitude) = AttitudeAt(configuration, moment);
        double pressure = Airspeed.FromTrue(moment.Airspeed, air).SiDynamicPressure;
        var lift =
            Force.FromNewtons(moment.LiftCoefficient * pressure * configuration.Aeroplane.Wing.Area.SquareMeters);
        return new ForcesAtAMoment(name.Trim(), configuration, path, attitude, lift, moment.Drag, moment.Thrust);
    }

    /// <summary>
    /// Path and attitude in a landing: γ from sink and speed, θ = γ + α − i_w with the α of the lift.
    /// </summary>
    internal static (Angle Path, Angle Attitude) AttitudeAt(Configuration configuration, LandingPoint moment)
    {
        Angle path = Angle.FromRadians(-Math.Asin(moment.SinkRate / moment.Airspeed)).ToUnit(AngleUnit.Degree);
        Angle attack = configuration.Flaps.Lift.AngleOfAttack(moment.LiftCoefficient);
        return (path, (path + attack - configuration.Aeroplane.Wing.Incidence).ToUnit(AngleUnit.Degree));
    }

    private static Force In(Force force) => force.ToUnit(ForceUnit.PoundForce);
}
