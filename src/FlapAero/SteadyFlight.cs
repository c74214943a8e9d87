using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>Straight flight at constant speed, thrust and path angle. Immutable.</summary>
public sealed class SteadyFlight
{
    private readonly double _pathAngle;

    internal SteadyFlight(
        Configuration configuration, Airspeed airspeed, double pathAngle, double thrust, double lift, double drag,
        bool limitedByStall = false, bool limitedByMaximumSpeed = false)
    {
        Configuration = configuration;
        Airspeed = airspeed;
        _pathAngle = pathAngle;
        Thrust = Force.FromNewtons(thrust);
        LiftCoefficient = lift;
        DragCoefficient = drag;
        LimitedByStall = limitedByStall;
        LimitedByMaximumSpeed = limitedByMaximumSpeed;
    }

    /// <summary>What flies.</summary>
    public Configuration Configuration { get; }

    /// <summary>How fast, and in which air.</summary>
    public Airspeed Airspeed { get; }

    /// <summary>Flight-path angle γ through the air, positive up.</summary>
    public Angle PathAngle => Degrees(_pathAngle);

    /// <summary>The glide angle −γ, positive down.</summary>
    public Angle GlideAngle => Degrees(-_pathAngle);

    /// <summary>Rate of descent −V sin γ, positive down.</summary>
    public Speed SinkRate =>
        Speed.FromMetersPerSecond(-Airspeed.SiTrue * Math.Sin(_pathAngle)).ToUnit(SpeedUnit.FootPerMinute);

    /// <summary>Thrust along the path.</summary>
    public Force Thrust { get; }

    /// <summary>Thrust power T V.</summary>
    public Power ThrustPower => Power.FromWatts(Thrust.Newtons * Airspeed.SiTrue);

    /// <summary>C_L.</summary>
    public double LiftCoefficient { get; }

    /// <summary>C_D.</summary>
    public double DragCoefficient { get; }

    /// <summary>L/D.</summary>
    public double LiftToDrag => LiftCoefficient / DragCoefficient;

    /// <summary>Angle of attack α of the reference chord.</summary>
    public Angle AngleOfAttack => Configuration.Flaps.Lift.AngleOfAttack(LiftCoefficient);

    /// <summary>Pitch attitude θ = γ + α − i_w of the fuselage's level line, positive nose up.</summary>
    public Angle PitchAttitude => Degrees(LiftLaws.PitchAttitude(
        _pathAngle, AngleOfAttack.Radians, Configuration.Aeroplane.Wing.Incidence.Radians));

    /// <summary>An optimum was sought and lies below the stalling speed: this is the flight at the stall.</summary>
    public bool LimitedByStall { get; }

    /// <summary>An optimum was sought and lies above the flap setting's maximum speed: this is the flight at that speed.</summary>
    public bool LimitedByMaximumSpeed { get; }

    /// <summary>Angle of the path over the ground in a steady wind.</summary>
    /// <remarks>Formula: tan γ_g = V sin γ/(V cos γ − w). Range: wind to 100 kt, ground speed above zero. Source: [anderson-itf].</remarks>
    /// <param name="headwind">w; a tailwind is negative.</param>
    /// <returns>γ_g, positive up.</returns>
    /// <exception cref="RefusedInputException">The wind is as fast as the aeroplane.</exception>
    /// <example><code>flapsUp.Glide(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel)).AngleOverGround(Speed.FromKnots(20)).Degrees // -7.2</code></example>
    public Angle AngleOverGround(Speed headwind)
    {
        GroundSpeed(headwind);
        return Degrees(WindLaws.AngleOverGround(Airspeed.SiTrue, _pathAngle, headwind.MetersPerSecond));
    }

    /// <summary>Speed over the ground in a steady wind.</summary>
    /// <remarks>Formula: V cos γ − w. Range: wind to 100 kt, ground speed above zero. Source: [anderson-itf].</remarks>
    /// <param name="headwind">w; a tailwind is negative.</param>
    /// <returns>Ground speed.</returns>
    /// <exception cref="RefusedInputException">The wind is as fast as the aeroplane.</exception>
    /// <example><code>flapsUp.Glide(Airspeed.FromCalibrated(Speed.FromKnots(70), Air.StandardSeaLevel)).GroundSpeed(Speed.FromKnots(20)).Knots // 49.7</code></example>
    public Speed GroundSpeed(Speed headwind)
    {
        double ground = WindLaws.GroundSpeed(Airspeed.SiTrue, _pathAngle, Require.Headwind(headwind));
        if (!(ground > 0))
            throw Require.Refused(
                nameof(headwind), "headwind", headwind, $"less than the airspeed, {Require.Text(Airspeed.True, headwind)}",
                "The aeroplane would make no way over the ground.");
        return Speed.FromMetersPerSecond(ground).ToUnit(SpeedUnit.Knot);
    }

    private static Angle Degrees(double radians) => Angle.FromRadians(radians).ToUnit(AngleUnit.Degree);
}
