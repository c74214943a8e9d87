using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>What lessons ask of a landing again and again, each in one call.</summary>
public static class LessonLandings
{
    /// <summary>The usual landing with no wind on a dry, level runway, seen every half a second.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="air">The air.</param>
    /// <param name="fasterBy">How much too fast it crosses the threshold; on speed where none is given.</param>
    /// <returns>The landing.</returns>
    public static LandingResult Land(this Configuration configuration, Air air, Speed fasterBy = default) =>
        LandingSetup.For(configuration, air: air).FasterBy(fasterBy).Flown();

    /// <summary>The usual landing on a runway, planned with what may be counted of the wind.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="air">The air.</param>
    /// <param name="wind">The wind; of a headwind and a tailwind the rules' shares count.</param>
    /// <returns>The landing.</returns>
    public static LandingResult LandAsPlanned(this Configuration configuration, Runway runway, Air air, Wind wind)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(wind);
        Speed counted = configuration.Aeroplane.Rules.PlannedHeadwind(wind.Headwind(runway.Direction));
        return Landing.Fly(LandingSetup.For(configuration, runway, air: air, headwind: counted)).Value;
    }

    /// <summary>The runway that <see cref="LandAsPlanned"/> needs with the rules' margin on the distance to the stop.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="air">The air.</param>
    /// <param name="wind">The wind.</param>
    /// <returns>The length.</returns>
    public static Length RunwayNeeded(this Configuration configuration, Runway runway, Air air, Wind wind)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        double factor = configuration.Aeroplane.Rules.Margin.Factor;
        return Length.FromFeet(configuration.LandAsPlanned(runway, air, wind).StopDistance.Feet * factor);
    }

    /// <summary>What is left over of a runway: its length less <see cref="RunwayNeeded"/>.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="air">The air.</param>
    /// <param name="wind">The wind.</param>
    /// <returns>The length; negative where the runway is too short.</returns>
    public static Length RunwayLeft(this Configuration configuration, Runway runway, Air air, Wind wind)
    {
        ArgumentNullException.ThrowIfNull(runway);
        return Length.FromFeet((runway.LengthAvailable - configuration.RunwayNeeded(runway, air, wind)).Feet);
    }

    /// <summary>The runways of Quillmere and Brackmere, by the names that a sentence gives to them.</summary>
    public static IReadOnlyDictionary<string, Runway> RunwaysInReach { get; } = new OrderedDictionary<string, Runway>
    {
        ["runway 24"] = Quillmere.Runway24,
        ["runway 06"] = Quillmere.Runway06,
        ["runway 33"] = Quillmere.Runway33,
        ["Brackmere"] = Brackmere.Runway30,
    };

    /// <summary>A day's landing on a runway: the usual pilot, with what the rules add for gusts on top of the reference speed.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="day">The day, for its air and its gusts.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="headwind">The headwind; the day's on that runway where none is given.</param>
    /// <returns>The landing, not yet flown.</returns>
    public static LandingSetup LandingOn(this Configuration configuration, DemoDay day, Runway runway, Speed? headwind = null)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(day);
        LandingPilot pilot = configuration.UsualPilot.Fast(configuration.Aeroplane.Rules.Additive(day.Wind.GustFactor));
        return LandingSetup.For(configuration, runway, pilot, day.Air, headwind ?? day.HeadwindOn(runway));
    }

    /// <summary><see cref="LandingOn"/>, flown.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="day">The day.</param>
    /// <param name="runway">The runway.</param>
    /// <returns>The landing.</returns>
    public static LandingResult Land(this Configuration configuration, DemoDay day, Runway runway) => configuration.LandingOn(day, runway).Flown();

    /// <summary>A touchdown forced on before the float ends, after a threshold crossed ten knots too fast.</summary>
    /// <param name="configuration">The aeroplane as it lands.</param>
    /// <param name="air">The air.</param>
    /// <param name="early">How far above the airspeed at the float's end.</param>
    /// <returns>The touchdown.</returns>
    public static ForcedTouchdown ForcedOn(this Configuration configuration, Air air, Speed early)
    {
        LandingSetup landing = LandingSetup.For(configuration, air: air).FasterBy(Speed.FromKnots(10));
        return Landing.ForceOnEarly(landing, landing.Flown().HoldOffEndAirspeed, early);
    }

    /// <summary>The same landing with another speed over the threshold.</summary>
    /// <param name="landing">The landing.</param>
    /// <param name="change">What is added to the speed.</param>
    /// <returns>The changed landing.</returns>
    public static LandingSetup FasterBy(this LandingSetup landing, Speed change)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing with { Technique = landing.Technique with { ThresholdSpeed = landing.Technique.ThresholdSpeed + change } };
    }

    /// <summary>The same landing with a given speed over the threshold.</summary>
    /// <param name="landing">The landing.</param>
    /// <param name="speed">The true airspeed there.</param>
    /// <returns>The changed landing.</returns>
    public static LandingSetup CrossingAt(this LandingSetup landing, Speed speed)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing with { Technique = landing.Technique with { ThresholdSpeed = speed } };
    }

    /// <summary>The same runway with another braking friction.</summary>
    /// <param name="runway">The runway.</param>
    /// <param name="grip">The braking friction.</param>
    /// <returns>The changed runway.</returns>
    public static Runway WithGrip(this Runway runway, double grip)
    {
        ArgumentNullException.ThrowIfNull(runway);
        return runway with { Surface = RunwaySurface.Of("with that grip", runway.Surface.RollingFriction, grip) };
    }

    /// <summary>The same landing with the nose held off down to a share of the touchdown's speed.</summary>
    /// <param name="landing">The landing.</param>
    /// <param name="share">The share.</param>
    /// <returns>The changed landing.</returns>
    public static LandingSetup NoseUpTo(this LandingSetup landing, double share)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing with { Technique = landing.Technique with { NoseLowerSpeedFraction = share } };
    }

    /// <summary>The same landing, level and calm on another surface.</summary>
    /// <param name="landing">The landing.</param>
    /// <param name="surface">The surface.</param>
    /// <returns>The changed landing.</returns>
    public static LandingSetup OnSurface(this LandingSetup landing, RunwaySurface surface)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing with { Runway = new() { Surface = surface } };
    }

    /// <summary>The same landing without brakes and with the engine stopped.</summary>
    /// <param name="landing">The landing.</param>
    /// <returns>The changed landing.</returns>
    public static LandingSetup WithoutBrakesAndEngine(this LandingSetup landing)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing with
        {
            Technique = landing.Technique with { BrakingShare = 0 },
            Aeroplane = landing.Aeroplane with { IdleThrust = IdleThrust.None },
        };
    }

    /// <summary>The same landing with brakes that use all of the grip.</summary>
    /// <param name="landing">The landing.</param>
    /// <returns>The changed landing.</returns>
    public static LandingSetup WithFullGrip(this LandingSetup landing)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing with { Technique = landing.Technique with { BrakingShare = 1 } };
    }

    /// <summary>The roll of a landing whose nose comes down, and whose brakes come on, at the touchdown.</summary>
    /// <param name="landing">The landing.</param>
    /// <returns>The roll.</returns>
    public static Length RollNoseDown(this LandingSetup landing) =>
        Landing.Fly(landing, new LandingConditions { BrakesFromTouchdown = true }).Value.GroundRoll;

    /// <summary>A landing that may be flown, flown and seen in steps of time.</summary>
    /// <param name="landing">The landing.</param>
    /// <param name="interval">How often it is seen; every half a second where none is given.</param>
    /// <returns>The landing from the threshold to the stop.</returns>
    /// <exception cref="InvalidOperationException">The landing is refused; the message says why.</exception>
    public static LandingResult Flown(this LandingSetup landing, Duration? interval = null) =>
        Landing.Fly(landing, interval: interval ?? Duration.FromSeconds(0.5)).Value;

    /// <summary>The moment at which the round-out begins.</summary>
    /// <param name="landing">The landing.</param>
    /// <returns>The moment.</returns>
    public static LandingPoint RoundOutBegins(this LandingResult landing)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing.Trajectory.First(p => p.Stage == LandingStage.HoldOff);
    }

    /// <summary>The share of the roll that is over before the brakes come on.</summary>
    /// <param name="landing">The landing.</param>
    /// <returns>The share.</returns>
    public static double NoseUpShare(this LandingResult landing)
    {
        ArgumentNullException.ThrowIfNull(landing);
        return landing.Stage(LandingStage.RollNoseHigh).Length / landing.GroundRoll;
    }

    /// <summary>How long a float takes to lose some airspeed with the throttle closed; in a short one, over its second half.</summary>
    /// <param name="landing">The usual pilot's landing.</param>
    /// <param name="lost">The airspeed that is lost.</param>
    /// <returns>The time.</returns>
    public static Duration TimeToLose(this LandingResult landing, Speed lost)
    {
        ArgumentNullException.ThrowIfNull(landing);
        LandingPoint[] off = [.. landing.Trajectory.Where(p => p.Stage == LandingStage.HoldOff)];
        Duration closing = LandingPilot.Usual.PowerCutTime, lasts = off[^1].Time - off[0].Time;
        Duration from = off[0].Time + (closing < lasts / 2 ? closing : lasts / 2);
        LandingPoint first = off.First(p => p.Time >= from);
        return (off[^1].Time - first.Time) * (lost / (first.Airspeed - off[^1].Airspeed));
    }

    /// <summary>A day's headwind on a runway, to a tenth of a knot; a tailwind is negative.</summary>
    /// <param name="day">The day.</param>
    /// <param name="runway">The runway.</param>
    /// <returns>The headwind.</returns>
    public static Speed HeadwindOn(this DemoDay day, Runway runway)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(runway);
        // A zero that is added takes the sign off a negative zero.
        return Speed.FromKnots(Math.Round(day.Wind.Mean.Headwind(runway.Direction).Knots, 1) + 0.0);
    }

    /// <summary>A mass after some hours of flight: it begins at 95 % of the maximum and burns 2 % of it an hour (invented).</summary>
    /// <param name="aeroplane">The aeroplane.</param>
    /// <param name="hours">The hours.</param>
    /// <returns>The mass, no less than the lightest that is flown.</returns>
    public static Mass MassAfter(this Aeroplane aeroplane, double hours)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        double burnt = aeroplane.MaximumMass.Kilograms * (0.95 - 0.02 * hours);
        return Mass.FromKilograms(Math.Max(aeroplane.MinimumMass.Kilograms, burnt));
    }
}
