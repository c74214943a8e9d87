using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of height and speed as one store of energy, and of what takes energy out of it.</summary>
public static class EnergyFigures
{
    private static readonly Angle Path = LandingPilot.Usual.PathAngle;

    /// <summary>Lines along which height and speed hold the same energy, and four aeroplanes on them.</summary>
    /// <param name="speed">The true airspeed that is meant.</param>
    /// <param name="height">The height that is meant.</param>
    /// <param name="excess">How much too high one of the four is; another has as much too much speed.</param>
    /// <returns>The figure.</returns>
    public static Figure LinesOfOneStore(Speed speed, Length height, Length excess)
    {
        Speed worth = EnergyHeight.OfExcessHeight(speed, excess);
        Length meant = EnergyHeight.Of(height, speed), both = EnergyHeight.Of(height + excess, speed + worth);
        double slow = speed.Knots, fast = (speed + worth).Knots, low = height.Feet, high = low + excess.Feet;
        IReadOnlyList<double> knots = Samples.Between(Math.Round(slow) - 8, Math.Round(slow) + 24, 1);
        double Left(Length store, double at) => (store - EnergyHeight.Of(Length.Zero, Speed.FromKnots(at))).Feet;
        IEnumerable<(double, double)> Same(Length store) => knots.Select(k => (k, Left(store, k))).Where(p => p.Item2 >= 0);
        return new Figure("Lines of one store", Axis.Of("airspeed", "V", "kt true"), Axis.Of("height", "h", "ft").Including(0))
            .Line("as meant", Same(meant)).Line("too high, or too fast", Same(meant + excess)).Line("both at once", Same(both))
            .Mark("on the path", slow, low).Mark("too high", slow, high).Mark("too fast", fast, low).Mark("both", fast, high)
            .Caption($"Short final, flaps up. Along a line energy height is the same: "
                + $"the elevator moves the aeroplane along it, never to another.")
            .Finding($"{excess} too high at {speed} lies on one line with {worth} too fast on the path. "
                + $"Both together are {both - meant} of energy height too much.");
    }

    /// <summary>How one excess of energy height goes with the throttle closed: as height, as speed, and with full flap.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="excess">The excess.</param>
    /// <returns>The figure.</returns>
    public static Figure OneExcessThreeWays(Configuration up, Configuration full, Air air, Length excess)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        ArgumentNullException.ThrowIfNull(air);
        Airspeed speed = up.ReferenceSpeed(air);
        Speed worth = EnergyHeight.OfExcessHeight(speed.True, excess);
        Length away = up.ThrottleClosed(speed).FinalNeeded(excess);
        Length flapped = full.ThrottleClosed(full.ReferenceSpeed(air)).FinalNeeded(excess);
        Length over = up.UsualPilot.ThresholdHeight;
        Length OnPath(Length from) => over + from * Math.Tan(Path.Radians);
        IReadOnlyList<DescentPoint> high = up.StraightDescent(speed, OnPath(away) + excess, over, away, held: speed).Value;
        IReadOnlyList<DescentPoint> fast = up.StraightDescent(
            Airspeed.FromTrue(speed.True + worth, air), OnPath(away), over, away, held: speed).Value;
        Length Excess(DescentPoint p) => p.EnergyHeight - EnergyHeight.Of(OnPath(away - p.Distance), speed.True);
        IEnumerable<(double, double)> Excesses(IEnumerable<DescentPoint> down) =>
            down.Select(p => (p.Distance.Feet, Math.Max(0, Excess(p).Feet)));
        int middle = high.Count / 2;
        return new Figure(
                "One excess, three ways", Axis.Of("distance since the throttle was closed", "x", "ft"),
                Axis.Of("energy height too much", "Δh_e", "ft"))
            .Line("too high, up", Excesses(high)).As(Palette.FlapsUp).Line("too fast, up", Excesses(fast))
            .Line("too high, full flap", new[] { (0, excess.Feet), (flapped.Feet, 0.0) }).As(Palette.FullFlap)
            .Caption($"Throttle closed: one holds the speed and comes down to the path, one stays on the path and slows down, "
                + $"one has full flap. The steeper a line, the more drag takes beyond what the path needs.")
            .Finding($"Halfway along the {away} that the high pilot needs, {Excess(high[middle])} of the {excess} are left, and "
                + $"{Excess(fast[middle])} of the fast pilot's. With full flap all of it is gone after {flapped}.");
    }

    /// <summary>The energy height still to lose from short final to the touchdown; the reader moves how much too high it began.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="from">Where short final begins, before the threshold.</param>
    /// <param name="guess">The reader's prediction, how much further along the wheels touch with flaps up, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure WhereItComesOut(
        Configuration up, Configuration full, Air air, Length from, Length guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        FlownFinal Flown(Configuration c, Length above) => FlownFinal.Of(c, air, from, above);
        return new Figure(
                "Where it comes out", Axis.Of("distance past the threshold", "x", "ft"), Axis.Of("energy height still to lose", "h_e", "ft"))
            .Line("as meant, up", Flown(up, Length.Zero).EnergyStillToLose())
            .Line("as meant, full", Flown(full, Length.Zero).EnergyStillToLose())
            .PredictedAcross(guess, from: Flown(up, Length.Zero).Landing.TouchdownDistance.Feet, prediction: prediction)
            .Caption($"From short final, left, to the touchdown, where a line meets zero. Before it the throttle is closed where the line "
                + $"is too steep to hold the speed; past it power holds the speed to the round-out.")
            .Moving(Axis.Of("too high on short final by", "Δh", "ft"), Samples.Between(0, 150, 25), start: 100, (figure, feet) =>
            {
                FlownFinal high = Flown(up, Length.FromFeet(feet)), highFull = Flown(full, Length.FromFeet(feet));
                return figure.Line("too high, up", high.EnergyStillToLose()).Line("too high, full", highFull.EnergyStillToLose())
                    .Reading("the wheels touch, up", $"{high.Landing.TouchdownDistance}")
                    .Reading("the wheels touch, full", $"{highFull.Landing.TouchdownDistance}")
                    .Finding($"Too high by {Length.FromFeet(feet)}, flaps up, the threshold inherits {high.Inherited}, and the wheels touch "
                        + $"{high.Further} further along; with full flap {highFull.Inherited} and {highFull.Further}.");
            });
    }

    /// <summary>The height after the decision to go around with the throttle closed, flaps up and full, on two days.</summary>
    /// <param name="climber">An aeroplane whose file gives its full throttle.</param>
    /// <param name="today">Today's air.</param>
    /// <param name="hot">The air of a hot day at a high aerodrome.</param>
    /// <returns>The figure.</returns>
    public static Figure HeightAfterTheDecision(Aeroplane climber, Air today, Air hot)
    {
        ArgumentNullException.ThrowIfNull(climber);
        IReadOnlyList<double> seconds = Samples.Between(0, 15, 0.5);
        double Height(GoAround around, double time) => around.HeightAfter(Duration.FromSeconds(time)).Feet;
        (Configuration up, Configuration full) = (climber.WithFlapsUp(), climber.WithFullFlap());
        GoAround upToday = up.GoAroundFromIdle(today), fullToday = full.GoAroundFromIdle(today);
        GoAround upHot = up.GoAroundFromIdle(hot), fullHot = full.GoAroundFromIdle(hot);
        double lowest = seconds.MinBy(time => Height(upToday, time));
        return new Figure("Height after the decision", Axis.Of("time since the decision", "t", "s"), Axis.Of("height gained", "", "ft"))
            .Line("flaps up", seconds, time => Height(upToday, time)).As(Palette.FlapsUp)
            .Line("full flap", seconds, time => Height(fullToday, time)).As(Palette.FullFlap)
            .Line("up, hot and high", seconds, time => Height(upHot, time))
            .Line("full, hot and high", seconds, time => Height(fullHot, time))
            .Level("decided here", 0).Mark("lowest, up", lowest, -upToday.HeightLost?.Feet ?? Height(upToday, lowest))
            .Caption($"Throttle closed until {GoAround.Decision} after the decision, then full, and a gentle pull. Maximum weight.")
            .Finding($"Today, flaps up, {upToday.HeightLost ?? Length.Zero} are lost; {Length.FromFeet(Height(upToday, 15)):+0} after 15 s. "
                + $"Full flap {Length.FromFeet(Height(fullToday, 15)):+0}; hot and high {Length.FromFeet(Height(upHot, 15)):+0} "
                + $"and {Length.FromFeet(Height(fullHot, 15)):+0}.");
    }

    /// <summary>Short final from the side, begun on the path and too high.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="asMeant">The final that begins on the path.</param>
    /// <param name="fromHigh">The final that begins too high.</param>
    /// <returns>The picture.</returns>
    public static Picture ShortFinalFromTheSide(Configuration up, FlownFinal asMeant, FlownFinal fromHigh)
    {
        ArgumentNullException.ThrowIfNull(asMeant);
        ArgumentNullException.ThrowIfNull(fromHigh);
        return Charts.Pictures.FinalFromTheSide(
                "Short final, from the side", Path, ("as meant", up, asMeant.Points), ("too high", up, fromHigh.Points))
            .LookFor("Both cross the threshold at one height. What else do they bring there?");
    }
}
