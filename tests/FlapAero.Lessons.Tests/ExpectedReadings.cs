namespace FlapAero.Lessons.Tests;

/// <summary>What a reading must say.</summary>
/// <param name="Figure">The figure's title as a page names it.</param>
/// <param name="Reading">How the reading's name begins.</param>
/// <param name="Column">Of a figure that moves: 0 for its first value, 1 for the one it starts with where that is another.</param>
/// <param name="Numbers">What the lesson computes by another way, as C#; not a number where any will do.</param>
internal sealed record ExpectedReading(string Figure, string Reading, int Column, string Numbers);

/// <summary>At least one reading of every figure of every lesson.</summary>
internal static class ExpectedReadings
{
    public static IReadOnlyList<ExpectedReading> Of(string slug) => slug switch
    {
        "start-here" =>
        [
            new("one-number-on-two-needles", "marked in miles an hour meets stall", 0,
                "up.StallSpeed(air).Calibrated.MilesPerHour"),
            new("how-far-off", "five times", 0,
                "40, 100 * (5 * 60 * 0.3048 / 1852 / Math.Tan(3 * Math.PI / 180) - 1), 120, 100 * (5 * 60 * 0.3048 / 1852 / Math.Tan(3 * Math.PI / 180) - 1)"),
            new("down-the-path", "exact", 1,
                "40, 40 * 1852 / 0.3048 / 60 * Math.Tan(3 * Math.PI / 180), 120, 120 * 1852 / 0.3048 / 60 * Math.Tan(3 * Math.PI / 180)"),
        ],
        "lift-and-where-it-ends" =>
        [
            new("lift-against-angle-of-attack", "highest of flaps up", 0,
                "curve.MaximumLiftCoefficient, curve.StallAngle.Degrees"),
            new("what-one-speed-can-carry", "at this speed meets the weight", 1,
                "curve.AngleOfAttack(curve.MaximumLiftCoefficient * Math.Pow(stall.Knots / (Math.Ceiling(stall.Knots) + 16), 2)).Degrees"),
            new("stalling-speed-under-load", "maximum weight", 0,
                "0.25, 0.5 * stall.Knots, 3, Math.Sqrt(3) * stall.Knots"),
            new("degrees-left-at-one-speed", "flaps up meets needed", 0,
                "curve.AngleOfAttack(curve.MaximumLiftCoefficient / 1.44).Degrees"),
        ],
        "what-flaps-change" =>
        [
            new("lift-at-the-reference-speeds", "highest of full flap", 0,
                "full.Flaps.Lift.MaximumLiftCoefficient, full.Flaps.Lift.StallAngle.Degrees"),
            new("lift-along-the-wing", "flaps up and flaps down meet", 0,
                "new Func<double>(() => { var (a, b) = (wing.With(5), wing.With(0)); return Enumerable.Range(1, 98).Select(i => i / 100.0).First(s => a.LoadAt(s, same).CirculationRatio < b.LoadAt(s, same).CirculationRatio); })()"),
            new("where-the-stall-begins", "first stall", 1,
                "flapped, double.NaN"),
            new("the-nose-at-every-speed", "flaps up meets full-flap picture", 0,
                "habit.Knots"),
            new("over-the-nose", "flaps up", 1,
                "0, 300, 300 / Math.Tan((5 - noseUp.Degrees) * Math.PI / 180), 0"),
        ],
        "drag-and-the-angle-of-descent" =>
        [
            new("drag-in-its-parts-flaps-up", "without lift and for lift meet", 0,
                "up.StallSpeed(air).Calibrated.Knots * Math.Sqrt(up.Flaps.Lift.MaximumLiftCoefficient / Math.Sqrt(up.Flaps.Drag.ZeroLiftDragCoefficient / up.Flaps.Drag.InducedFactor)), 50 / up.BestGlide(air).LiftToDrag"),
            new("drag-in-its-parts-flaps-up", "lowest of all drag", 0,
                "100 / up.BestGlide(air).LiftToDrag, up.BestGlide(air).Airspeed.Calibrated.Knots"),
            new("throttle-closed-at-every-speed", "lowest of flaps up", 0,
                "Samples.Between(56, 84, 0.1).Min(knots => up.GlideIdling(Airspeed.FromCalibrated(Speed.FromKnots(knots), air))!.GlideAngle.Degrees)"),
            new("slower-and-faster", "faster", 0,
                "refUp.Calibrated.Knots * 8 / 7, up.GlideIdling(Airspeed.FromCalibrated(refUp.Calibrated * 8 / 7, air))!.GlideAngle.Degrees"),
            new("lines-down-to-the-aiming-point", "flaps up", 1,
                "0, 0, 6000, 6000 * Math.Sin(glideUp.GlideAngle.Radians) * refUp.True.Knots / (Math.Cos(glideUp.GlideAngle.Radians) * refUp.True.Knots - headwind.Knots)"),
        ],
        "approach-speed" =>
        [
            new("lift-needed-lift-there-is", "needed meets most, full flap", 0,
                "full.StallSpeed(air).Calibrated.Knots"),
            new("stalling-speed-in-a-level-turn", "flaps up meets 1.3, up", 0,
                "Math.Acos(1 / 1.69) * 180 / Math.PI"),
            new("stalling-speed-in-a-level-turn", "full flap meets 1.3, full", 0,
                "Math.Acos(1 / 1.69) * 180 / Math.PI"),
            new("the-same-turn-lighter", "this weight meets speed kept", 1,
                "Math.Acos(0.85 / 1.69) * 180 / Math.PI"),
            new("what-the-needle-hides-flaps-up", "stall", 0,
                "up.Indicated(up.StallSpeed(air)).Knots, up.StallSpeed(air).Calibrated.Knots"),
            new("margin-left-in-a-lull", "nothing added is zero", 0,
                "approach.True.Knots - up.StallSpeed(air, Angle.FromDegrees(30)).True.Knots"),
        ],
        "power-on-the-approach" =>
        [
            new("thrust-that-the-path-takes", "lowest of flaps up", 0,
                "Samples.Between(60, 84, 0.1).Min(knots => up.OnPath(Airspeed.FromCalibrated(Speed.FromKnots(knots), air), -path).Thrust.PoundsForce)"),
            new("what-the-throttle-can-still-take-away", "closed, up", 0,
                "up.GlideIdling(up.ReferenceSpeed(air))!.GlideAngle.Degrees"),
            new("two-drags-flaps-up", "zero-lift and induced meet", 0,
                "up.MinimumDragSpeed(air)!.Calibrated.Knots"),
            new("engine-speed-for-the-path", "1.3", 1,
                "upSpeed.Calibrated.Knots, upTurns.RevolutionsPerMinute"),
        ],
        "energy-on-final" =>
        [
            new("lines-of-one-store", "too fast", 0,
                "Math.Sqrt(Math.Pow(upSpeed.True.MetersPerSecond, 2) + 2 * 9.80665 * 30.48) / 0.514444"),
            new("height-after-the-decision", "lowest, up", 0,
                "double.NaN, -climber.WithFlapsUp().GoAroundFromIdle(air).HeightLost!.Value.Feet"),
            new("one-excess-three-ways", "too high, up", 0,
                "0, 100, ours.FinalNeeded(hundred).Feet, 0"),
            new("where-it-comes-out", "the wheels touch, up", 1,
                "asMeant.Landing.TouchdownDistance.Feet + fromHigh.Further.Feet"),
        ],
        "round-out-and-float" =>
        [
            new("from-the-round-out-to-the-wheels", "the wheels touch, up", 1,
                "onSpeedUp.TouchdownDistance.Feet + laterUp.Feet"),
            new("how-the-speed-goes", "flaps up", 0,
                "0, double.NaN, fastUp.Stage(LandingStage.HoldOff).Lasts.Seconds, 0"),
            new("what-the-ground-takes-off-the-induced-drag", "round-out begins", 0,
                "onSpeedUp.FlareHeight.Feet"),
            new("the-same-float-without-the-ground", "no ground effect", 0,
                "0, double.NaN, noGround.Float.Feet"),
            new("what-the-wing-still-carries", "full flap, level", 0,
                "1, double.NaN, 10, 100 * full.ForcedOn(air, ten).WeightCarriedNoseDown"),
        ],
        "the-landing-roll" =>
        [
            new("where-the-energy-goes", "nose down", 1,
                "double.NaN, 100 * 0.85 * 0.85"),
            new("along-runway-24", "stop", 0,
                "(still with { Headwind = Speed.FromKnots(-10) }).Flown().StopDistance.Feet, 0"),
            new("a-week-on-runway-24", "highest of stop", 0,
                "week.Max(day => day.StopDistance.Feet)"),
        ],
        "the-circuit-without-flaps" =>
        [
            new("heights-along-the-track", "flaps up, as always", 0,
                "0, 1000, flown.Legs.Skip(1).Sum(leg => leg.Distance.NauticalMiles), 0"),
            new("the-circuit-to-scale", "base", 1,
                "-wider.TurnToBase.Begin.X.NauticalMiles"),
            new("the-turn-to-final-from-above", "bank it takes", 1,
                "-today.TurnToFinal.Begin.X.Feet, 1.2 * today.RoomForTheTurn().Feet, double.NaN, 0"),
            new("what-each-second-takes", "up, wind meets 45", 0,
                "untilFortyFive.Seconds"),
        ],
        "when-the-flaps-stay-up" =>
        [
            new("minutes-against-amperes", "book and new, full meet", 0,
                "fresh.RatedCurrent.Amperes, fresh.RatedTime.Minutes"),
            new("what-each-switch-buys", "highest of minutes", 1,
                "fresh.Left(0.55).Endurance(loads.Skip(5)).Minutes, 5"),
            new("lengths-there-and-needed", "runway 33", 0, "3, up.LandAsPlanned(Quillmere.Runway33, day.Air, wind).StopDistance.Feet / 0.7"),
            new("left-over-while-one-waits", "runway 24", 1,
                "0, up.RunwayLeft(Quillmere.Runway24, day.Air, new Wind(wind.From, Speed.FromKnots(14))).Feet"),
        ],
        "how-much-landings-vary" =>
        [
            new("where-the-wheels-touch", "nineteen of twenty touch, up", 1,
                "hand.Fly(1000).NineteenOfTwenty().Feet"),
            new("the-stretch-were-it-alike", "nothing", 0,
                "1, upMany.TouchdownDistance.Quantile(0.975).Feet - upMany.TouchdownDistance.Quantile(0.025).Feet"),
            new("what-moves-the-touchdown", "speed is zero", 0,
                "0"),
            new("what-the-landings-so-far-can-say", "at least", 0,
                "10, 100 * soFar[0].Interval().Low, 400, 100 * soFar[^1].Interval().Low"),
            new("what-the-landings-so-far-can-say", "two thousand", 0,
                "100 * upMany.StoppedWithin(runway).Value"),
        ],
        _ => throw new ArgumentOutOfRangeException(nameof(slug), slug, "no reading of this lesson's figures is expected yet"),
    };
}
