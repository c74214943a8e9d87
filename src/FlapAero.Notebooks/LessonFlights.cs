using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>What lessons ask of an aeroplane again and again, each in one call.</summary>
public static class LessonFlights
{
    /// <summary>The aeroplane at its maximum mass, once for each flap setting, from flaps up to full.</summary>
    /// <param name="aeroplane">The aeroplane.</param>
    /// <returns>A configuration for each setting.</returns>
    public static IReadOnlyList<Configuration> AtEachFlapSetting(this Aeroplane aeroplane)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        return [.. aeroplane.FlapSettings.Select(flaps => aeroplane.Configure(flaps))];
    }

    /// <summary>The aeroplane with flaps up.</summary>
    /// <param name="aeroplane">The aeroplane.</param>
    /// <param name="mass">Its mass; the maximum where none is given.</param>
    /// <returns>The configuration.</returns>
    public static Configuration WithFlapsUp(this Aeroplane aeroplane, Mass? mass = null)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        return aeroplane.Configure(aeroplane.FlapsUp, mass);
    }

    /// <summary>A mass between the lightest that the aeroplane is flown at and the heaviest.</summary>
    /// <param name="aeroplane">The aeroplane.</param>
    /// <param name="loading">0 is the lightest, 1 the heaviest.</param>
    /// <returns>The mass.</returns>
    public static Mass MassAt(this Aeroplane aeroplane, double loading)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        return aeroplane.MinimumMass + (aeroplane.MaximumMass - aeroplane.MinimumMass) * loading;
    }

    /// <summary>The aeroplane at its maximum mass with full flap.</summary>
    /// <param name="aeroplane">The aeroplane.</param>
    /// <returns>The configuration; that with flaps up where it has one setting only.</returns>
    public static Configuration WithFullFlap(this Aeroplane aeroplane)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        return aeroplane.Configure(aeroplane.FullFlaps);
    }

    /// <summary>How many degrees are left before the stall.</summary>
    /// <param name="flight">The flight.</param>
    /// <returns>The stalling angle less the angle of attack.</returns>
    public static Angle AngleLeft(this SteadyFlight flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        return flight.Configuration.Flaps.Lift.StallAngle - flight.AngleOfAttack;
    }

    /// <summary>How far below the fuselage's level line the path leads: the angle of attack less the wing's incidence.</summary>
    /// <param name="flight">The flight.</param>
    /// <returns>The angle.</returns>
    public static Angle BelowLevelLine(this SteadyFlight flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        return flight.AngleOfAttack - flight.Configuration.Aeroplane.Wing.Incidence;
    }

    /// <summary>The flight's drag as a share of the weight.</summary>
    /// <param name="flight">The flight; steady, so that lift is the weight's part across the path.</param>
    /// <returns>The share.</returns>
    public static Ratio DragOverWeight(this SteadyFlight flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        return Ratio.FromDecimalFractions(Math.Cos(flight.GlideAngle.Radians) / flight.LiftToDrag);
    }

    /// <summary>The stalling angle measured from the line to the lowered trailing edge, in place of the reference chord.</summary>
    /// <param name="flaps">The flap setting.</param>
    /// <param name="flapPart">The flap's share of the chord.</param>
    /// <returns>The angle in degrees.</returns>
    public static Angle StallAngleFromLoweredEdge(this FlapSetting flaps, double flapPart)
    {
        ArgumentNullException.ThrowIfNull(flaps);
        double down = flaps.Deflection.Radians;
        var turned = Angle.FromRadians(Math.Atan2(flapPart * Math.Sin(down), 1 - flapPart + flapPart * Math.Cos(down)));
        return (flaps.Lift.StallAngle + turned).ToUnit(UnitsNet.Units.AngleUnit.Degree);
    }

    /// <summary>A calibrated airspeed in this air, from the number of its knots.</summary>
    /// <param name="air">The air.</param>
    /// <param name="knots">The knots.</param>
    /// <returns>The airspeed.</returns>
    public static Airspeed CalibratedKnots(this Air air, double knots)
    {
        ArgumentNullException.ThrowIfNull(air);
        return Airspeed.FromCalibrated(Speed.FromKnots(knots), air);
    }

    /// <summary>Angles of bank from the numbers of their degrees.</summary>
    /// <param name="degrees">The degrees.</param>
    /// <returns>The angles, in the same order.</returns>
    public static IReadOnlyList<Angle> Banks(params IReadOnlyList<double> degrees) => [.. degrees.Select(bank => Angle.FromDegrees(bank))];

    /// <summary>The airspeed in the same air that is some calibrated airspeed faster.</summary>
    /// <param name="speed">The airspeed.</param>
    /// <param name="change">What is added; slower where it is negative.</param>
    /// <returns>The changed airspeed.</returns>
    public static Airspeed FasterBy(this Airspeed speed, Speed change)
    {
        ArgumentNullException.ThrowIfNull(speed);
        return Airspeed.FromCalibrated(speed.Calibrated + change, speed.Air);
    }

    /// <summary>The steady flight at the reference speed with a thrust power: thrust is power over true airspeed.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="power">The thrust power.</param>
    /// <param name="air">The air.</param>
    /// <returns>The flight.</returns>
    public static SteadyFlight At(this Configuration configuration, Power power, Air air)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        Airspeed speed = configuration.ReferenceSpeed(air);
        return configuration.Glide(speed, power / speed.True);
    }

    /// <summary>The final that a glide needs to work off an excess of height: it over the difference of the glide's and the usual path's tangents.</summary>
    /// <param name="glide">The glide.</param>
    /// <param name="excess">How much too high.</param>
    /// <returns>The way over the ground in a calm.</returns>
    public static Length FinalNeeded(this SteadyFlight glide, Length excess)
    {
        ArgumentNullException.ThrowIfNull(glide);
        return excess / (Math.Tan(glide.GlideAngle.Radians) - Math.Tan(LandingPilot.Usual.PathAngle.Radians));
    }

    /// <summary>The glide with the throttle closed; without thrust where the aeroplane's file knows no idling balance.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="speed">The airspeed that is held.</param>
    /// <returns>The glide.</returns>
    public static SteadyFlight ThrottleClosed(this Configuration configuration, Airspeed speed)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return configuration.GlideIdling(speed) ?? configuration.Glide(speed);
    }

    /// <summary>The engine speed that holds a path; that of the closed throttle where the path asks for less.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="speed">The airspeed that is held.</param>
    /// <param name="down">The angle of descent, positive down.</param>
    /// <returns>The engine speed.</returns>
    public static RotationalSpeed EngineSpeed(this Configuration configuration, Airspeed speed, Angle down)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return configuration.EngineSpeedOnPath(speed, -down)
            ?? configuration.Aeroplane.Propeller.Idling(speed, configuration.Aeroplane.Engine)!.EngineSpeed;
    }

    /// <summary>The engine speed that holds a path over the ground; that of the path in still air where the throttle closes no further.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="speed">The airspeed that is held.</param>
    /// <param name="down">The angle of descent over the ground, positive down.</param>
    /// <param name="headwind">The headwind.</param>
    /// <returns>The engine speed.</returns>
    public static RotationalSpeed EngineSpeedOverGround(this Configuration configuration, Airspeed speed, Angle down, Speed headwind)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return configuration.EngineSpeedOnPathOverGround(speed, down, headwind) ?? configuration.EngineSpeed(speed, down);
    }

    /// <summary>Knots to draw a curve over: whole ones from the stall to 1.6 times it, no faster than the setting allows.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="air">The air.</param>
    /// <returns>Calibrated airspeeds in knots, rising.</returns>
    public static IReadOnlyList<double> SpeedsFromTheStall(this Configuration configuration, Air air)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        double stall = configuration.StallSpeed(air).Calibrated.Knots;
        return Samples.Between(Math.Ceiling(stall), Math.Min(1.6 * stall, configuration.MaximumSpeed(air).Calibrated.Knots), 1);
    }

    /// <summary>The calibrated airspeed on a path at which the engine turns slowest, to a knot.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="air">The air.</param>
    /// <param name="down">The angle of descent, positive down.</param>
    /// <returns>The airspeed.</returns>
    public static Speed SpeedOfLowestEngineSpeed(this Configuration configuration, Air air, Angle down) =>
        Speed.FromKnots(configuration.SpeedsFromTheStall(air).MinBy(knots =>
            configuration.EngineSpeed(air.CalibratedKnots(knots), down).RevolutionsPerMinute));

    /// <summary>The airspeed on a path at which the nose stands at a wanted attitude, to a tenth of a knot.</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <param name="air">The air.</param>
    /// <param name="down">The angle of descent, positive down.</param>
    /// <param name="nose">The attitude.</param>
    /// <returns>The calibrated airspeed that comes nearest to it.</returns>
    public static Speed SpeedWithNoseAt(this Configuration configuration, Air air, Angle down, Angle nose)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(air);
        double stall = configuration.StallSpeed(air).Calibrated.Knots;
        IReadOnlyList<double> speeds = Samples.Between(
            stall + 0.1, Math.Min(1.7 * stall, configuration.MaximumSpeed(air).Calibrated.Knots), 0.1);
        return Speed.FromKnots(speeds.MinBy(knots =>
            Math.Abs(configuration.OnPath(air.CalibratedKnots(knots), -down).PitchAttitude.Degrees - nose.Degrees)));
    }

    /// <summary>The lesson's aeroplane, or the demo trainer where its file gives no full throttle to go around with.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <returns>An aeroplane that has a full throttle.</returns>
    public static Aeroplane Climbing(this Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson.Aeroplane.FullThrottle is null ? DemoAeroplanes.TrainerH4.FlownBy(lesson.Rules) : lesson.Aeroplane;
    }

    /// <summary>The go-around from idle, at the reference speed.</summary>
    /// <param name="configuration">An aeroplane that has a full throttle, as it flies.</param>
    /// <param name="air">The air.</param>
    /// <returns>The go-around.</returns>
    public static GoAround GoAroundFromIdle(this Configuration configuration, Air air)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return GoAround.From(configuration.ThrottleClosed(configuration.ReferenceSpeed(air))).Value;
    }

    /// <summary>What full throttle makes of a go-around: its rate of climb, or the sink that is left.</summary>
    /// <param name="around">The go-around.</param>
    /// <returns>Words for a sentence.</returns>
    public static Charts.Words ClimbOrSink(this GoAround around)
    {
        ArgumentNullException.ThrowIfNull(around);
        return around.HeightLost is null
            ? (Charts.Words)$"sinks at {-around.RateOfClimb:ft/min 0}, however long you wait" : $"climbs at {around.RateOfClimb:ft/min 0}";
    }
}
