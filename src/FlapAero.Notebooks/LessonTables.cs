using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Tables that a lesson fills with a list of flights, landings or legs.</summary>
public static class LessonTables
{
    /// <summary>What each glide, throttle closed, needs of final to work off an excess of height.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="excess">How much too high.</param>
    /// <param name="glides">The glides.</param>
    /// <returns>The table.</returns>
    public static Table FinalNeeded(this Lesson lesson, Length excess, params SteadyFlight[] glides)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson.Table($"Throttle closed, speed held, still air: {Charts.Words.Of(excess, null, lesson.Units)} too high", glides,
            ("flaps", f => f.Configuration.Flaps.Name, ""), ("speed, CAS", f => f.Airspeed.Calibrated, ""),
            ("over the stall", f => Ratio.FromDecimalFractions(f.Configuration.StallMargin(f.Airspeed)), "0"),
            ("comes down at", f => f.GlideAngle, "0.0"), ("final needed", f => f.FinalNeeded(excess), ""),
            ("time needed", f => f.FinalNeeded(excess) / f.GroundSpeed(Speed.Zero), "0"));
    }

    /// <summary>The parts of landings crossed on speed, five and ten knots too fast.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="air">The air.</param>
    /// <param name="configurations">The aeroplane in each configuration.</param>
    /// <returns>The table.</returns>
    public static Table WhereTheDistanceGoes(this Lesson lesson, Air air, params Configuration[] configurations)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        var rows = configurations.SelectMany(c => new[] { 0, 5, 10 }.Select(knots => Speed.FromKnots(knots))
            .Select(fast => (c.Flaps.Name, Extra: fast, Landing: c.Land(air, fast))));
        return lesson.Table("Where the distance goes", rows,
            ("flaps", r => r.Name, ""),
            ("too fast", r => r.Extra, "0"),
            ("to the round-out", r => r.Landing.FlareStartDistance, ""),
            ("round-out and float", r => r.Landing.Float, ""),
            ("touchdown at", r => r.Landing.TouchdownDistance, ""),
            ("airspeed there", r => r.Landing.TouchdownAirspeed, ""),
            ("hold-off ended by", r => r.Landing.HoldOffEnd == HoldOffEnd.Tail ? "the tail" : "the lift", ""),
            ("roll", r => r.Landing.GroundRoll, ""));
    }

    /// <summary>The roll by when the nose comes down.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="landings">A landing on each surface; one without brakes is named so.</param>
    /// <returns>The table.</returns>
    public static Table RollWhenTheNoseComesDown(this Lesson lesson, params LandingSetup[] landings)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        string Name(LandingSetup landing) => landing.Technique.BrakingShare == 0
            ? landing.Runway.Surface.Name.Split(" or ")[0] + ", no brakes, engine stopped" : landing.Runway.Surface.Name;
        double lowered = LandingPilot.Usual.NoseLowerSpeedFraction;
        Length Roll(LandingSetup landing, double share) => landing.NoseUpTo(share).Flown(Duration.FromSeconds(0.25)).GroundRoll;
        return lesson.Table("The roll, level and calm, when the nose comes down …", landings,
            ("surface", Name, ""),
            ("at the touchdown", s => s.RollNoseDown(), ""),
            ($"at {100 * lowered:0} % of its speed", s => Roll(s, lowered), ""),
            ("at half of it", s => Roll(s, 0.5), ""));
    }

    /// <summary>Two landings part by part, with full flap and without.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="caption">The caption.</param>
    /// <param name="flapped">The landing with full flap.</param>
    /// <param name="flapless">The landing with flaps up.</param>
    /// <returns>The table.</returns>
    public static Table WithFlapsAndWithout(this Lesson lesson, string caption, LandingResult flapped, LandingResult flapless)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        (string Name, Func<LandingResult, Length> Of)[] parts =
        [
            ("threshold to the round-out", r => r.FlareStartDistance), ("round-out and float", r => r.Float),
            ("roll", r => r.GroundRoll), ("threshold to the stop", r => r.StopDistance),
        ];
        return lesson.Table(caption, parts,
            ("part", r => r.Name, ""),
            ("full flap", r => r.Of(flapped), ""),
            ("flaps up", r => r.Of(flapless), ""),
            ("without flaps", r => Ratio.FromDecimalFractions(r.Of(flapless) / r.Of(flapped) - 1), "+0"));
    }

    /// <summary>Two circuits leg by leg: flaps, speeds, sink and engine speed.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="flapped">The circuit with flaps.</param>
    /// <param name="up">The circuit with flaps up.</param>
    /// <returns>The table.</returns>
    public static Table LegByLeg(this Lesson lesson, Circuit flapped, Circuit up)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(flapped);
        ArgumentNullException.ThrowIfNull(up);
        (string Name, CircuitLeg Flapped, CircuitLeg Up)[] legs =
            [("downwind", flapped.Downwind, up.Downwind), ("base", flapped.Base, up.Base), ("final", flapped.Final, up.Final)];
        return lesson.Table("Leg by leg, no wind", legs,
            ("leg", leg => leg.Name, ""),
            ("flaps", leg => leg.Flapped.Configuration.Flaps.Name, ""),
            ("speed, CAS", leg => leg.Flapped.Airspeed.Calibrated, ""),
            ("sinks at", leg => leg.Flapped.SinkRate, "ft/min 0"),
            ("engine", leg => leg.Flapped.EngineSpeed(), ""),
            ("flaps up: speed, CAS", leg => leg.Up.Airspeed.Calibrated, ""),
            ("flaps up: sinks at", leg => leg.Up.SinkRate, "ft/min 0"),
            ("flaps up: engine", leg => leg.Up.EngineSpeed(), ""));
    }

    /// <summary>What each runway has and what a landing on it takes, with its margin.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="runways">The runways by their names.</param>
    /// <param name="up">The aeroplane as it lands, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <param name="wind">The wind.</param>
    /// <returns>The table.</returns>
    public static Table RunwaysCompared(
        this Lesson lesson, IReadOnlyDictionary<string, Runway> runways, Configuration up, Air air, Wind wind)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(runways);
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(wind);
        var rows = runways.Select(r => (Name: r.Key, Runway: r.Value, Landing: up.LandAsPlanned(r.Value, air, wind)));
        return lesson.Table($"Flaps up, {QuantityText.Of(up.Mass, "lb 0", lesson.Units)}, today's wind", rows,
            ("", r => r.Name, ""),
            ("crosswind", r => Speed.FromKnots(Math.Abs(wind.Crosswind(r.Runway.Direction).Knots)), "0"),
            ("there", r => r.Runway.LengthAvailable, ""),
            ("to the stop", r => r.Landing.StopDistance, ""),
            ("with margin", r => up.RunwayNeeded(r.Runway, air, wind), ""),
            ("left over", r => up.RunwayLeft(r.Runway, air, wind), ""),
            ("wheels touch", r => r.Landing.TouchdownDistance, ""),
            ("first third", r => r.Runway.EndOfFirstThird, ""));
    }

    /// <summary>Go-arounds from idle at maximum mass, flaps up and full flap, in each air.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="aeroplane">An aeroplane that has a full throttle.</param>
    /// <param name="airs">The airs.</param>
    /// <returns>The table.</returns>
    public static Table GoArounds(this Lesson lesson, Aeroplane aeroplane, params Air[] airs)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(aeroplane);
        Configuration[] configurations = [.. aeroplane.FlapSettings.Count > 1 ? [aeroplane.WithFlapsUp(), aeroplane.WithFullFlap()] : new[] { aeroplane.WithFlapsUp() }];
        IEnumerable<GoAround> rows = airs.SelectMany(air => configurations.Select(c => c.GoAroundFromIdle(air)));
        return lesson.Table($"{aeroplane.Name} goes around from idle, maximum weight", rows,
            ("flaps", r => r.Descent.Configuration.Flaps.Name, ""),
            ("density altitude", r => r.Descent.Airspeed.Air.DensityAltitude, "ft 0"),
            ("height lost", r => r.HeightLost is { } lost ? lost : "never climbs", ""),
            ("rate of climb", r => r.RateOfClimb, "ft/min 0"),
            ("gradient", r => Ratio.FromDecimalFractions(Math.Tan(r.Climb.PathAngle.Radians)), "0.0"));
    }

    /// <summary>A forward slip beside full flap: glide without, with the least and the most that a slip adds, and with full flap.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="up">The glide with flaps up.</param>
    /// <param name="full">The glide with full flap.</param>
    /// <param name="sideslip">The angle between the nose and the path.</param>
    /// <returns>The table.</returns>
    public static Table SlipBesideFlap(this Lesson lesson, SteadyFlight up, SteadyFlight full, Angle sideslip)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(full);
        (Angle least, Angle most) = ForwardSlip.Steepens(up, sideslip);
        (string Name, SteadyFlight Flight, Angle Down)[] rows =
        [
            ("flaps up", up, up.GlideAngle), ("flaps up, slip, at least", up, up.GlideAngle + least),
            ("flaps up, slip, at most", up, up.GlideAngle + most), ("full flap", full, full.GlideAngle),
        ];
        return lesson.Table($"Throttle closed, still air; a slip of {QuantityText.Of(sideslip, "0")}", rows,
            ("glide", r => r.Name, ""), ("speed, CAS", r => r.Flight.Airspeed.Calibrated, ""), ("angle", r => r.Down, "0.0"),
            ("sink", r => r.Flight.Airspeed.True * Math.Sin(r.Down.Radians), "ft/min 0"),
            ("stall, CAS", r => r.Flight.Configuration.StallSpeed(r.Flight.Airspeed.Air).Calibrated, ""));
    }

    /// <summary>Many landings of each hand, counted.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="caption">The caption.</param>
    /// <param name="landings">How many landings each hand flies.</param>
    /// <param name="runway">The length of runway 24.</param>
    /// <param name="hands">The hands, one for each flap setting.</param>
    /// <returns>The table.</returns>
    public static Table LandingsCounted(this Lesson lesson, string caption, int landings, Length runway, IEnumerable<GoodHand> hands)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        var rows = hands.Select(hand => (hand.Configuration.Flaps.Name, Flown: hand.Fly(landings)));
        return lesson.Table(caption, rows,
            ("flaps", r => r.Name, ""), ("touch at, mean", r => r.Flown.TouchdownDistance.Mean, ""),
            ("19 of 20 on", r => r.Flown.NineteenOfTwenty(), ""),
            ("in the first third", r => r.Flown.TouchdownInFirstThird(runway).Value, "% 0"),
            ("stop on runway 24", r => r.Flown.StoppedWithin(runway).Value, "% 0"),
            ("no round-out", r => 1 - r.Flown.Landed.Value, "% 0.0"));
    }

    /// <summary>How much of the touchdown's spread comes from each input that a hand does not hold exactly.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="hand">The hand, flaps up.</param>
    /// <param name="shares">The shares of its landings' spread.</param>
    /// <returns>The table.</returns>
    public static Table WhereTheSpreadComesFrom(this Lesson lesson, GoodHand hand, LandingSensitivity shares)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(hand);
        ArgumentNullException.ThrowIfNull(shares);
        IReadOnlyDictionary<LandingVariable, string> names = LessonScatters.InputNames;
        var rows = shares.TouchdownDistance.Where(s => names.ContainsKey(s.Inputs[0])).Select(s => (Input: s.Inputs[0], s.Total));
        return lesson.Table("Where the touchdown's spread comes from, flaps up", rows,
            ("input", r => names[r.Input], ""),
            ("alone, standard deviation", r => hand.Only(r.Input).TouchdownDeviation(), ""),
            ("share of the variance", r => r.Total.Value, "% 0.0"),
            ("at least", r => r.Total.Low, "% 0.0"),
            ("at most", r => r.Total.High, "% 0.0"),
            ("19 of 20 on, were it exact", r => hand.Without(r.Input).Fly(2000).NineteenOfTwenty(), ""));
    }
}
