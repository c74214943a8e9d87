using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of how long a battery lasts, and of what waiting for a runway gains.</summary>
public static class BatteryFigures
{
    /// <summary>The time on the battery by the current: of the book, of a new battery and of today's.</summary>
    /// <param name="fresh">The battery when new.</param>
    /// <param name="today">The same today.</param>
    /// <param name="drawn">The current with all switches on.</param>
    /// <returns>The figure.</returns>
    public static Figure MinutesAgainstAmperes(Battery fresh, Battery today, ElectricCurrent drawn)
    {
        ArgumentNullException.ThrowIfNull(fresh);
        ArgumentNullException.ThrowIfNull(today);
        Duration Book(double amperes) => Duration.FromHours(fresh.RatedCharge.AmpereHours / amperes);
        Duration Lasts(Battery battery, double amperes) => battery.Endurance(ElectricCurrent.FromAmperes(amperes));
        IReadOnlyList<double> amperes = Samples.Between(6, 36, 0.5);
        Duration now = today.Endurance(drawn);
        return new Figure("Minutes against amperes", Axis.Of("current", "I", "A"), Axis.Of("time on the battery", "t", "min").Including(0))
            .Line("book", amperes, i => Book(i).Minutes)
            .Line("new, full", amperes, i => Lasts(fresh, i).Minutes)
            .Line("today", amperes, i => Lasts(today, i).Minutes)
            .Mark("all on, book", drawn.Amperes, Book(drawn.Amperes).Minutes).Mark("all on, today", drawn.Amperes, now.Minutes)
            .Caption($"The book's line is the charge divided by the current. To the left, with little switched on, "
                + $"a battery gives more than its book; to the right, less.")
            .Finding($"At {drawn}, the book promises {Book(drawn.Amperes):min 0}, a new battery gives {fresh.Endurance(drawn):min 0}, "
                + $"today's {now:min 0}.");
    }

    /// <summary>The time on the battery as one load after the other is switched off; the reader moves the charge that is left.</summary>
    /// <param name="fresh">The battery when new.</param>
    /// <param name="loads">The loads, in the order in which they are switched off.</param>
    /// <param name="away">How far away the other aerodrome is; the figure marks twice that.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure WhatEachSwitchBuys(Battery fresh, IReadOnlyList<ElectricalLoad> loads, Duration away)
    {
        ArgumentNullException.ThrowIfNull(fresh);
        ArgumentNullException.ThrowIfNull(loads);
        string Step(double off) => off == 0 ? "all on" : loads[(int)off - 1].Name;
        IReadOnlyList<double> steps = Samples.Between(0, 5, 1);
        return new Figure(
                "What each switch buys", Axis.Of("loads switched off", "", ""), Axis.Of("time on the battery", "t", "min").Including(0))
            .Level("twice the way", 2 * away.Minutes)
            .Caption($"Switched off one after the other; the level is twice the way to Brackmere. "
                + $"Each switch buys more than the one before it.")
            .Moving(Axis.Of("share left", "s", "%"), Samples.Between(30, 100, 5), start: 55, (figure, share) =>
            {
                Duration Time(double off) => fresh.Left(share / 100).Endurance(loads.Skip((int)off));
                return figure.MarkedInOrder(steps.Select(off => (Step(off), Time(off).Minutes)), first: 0).Bars("minutes", steps, off => Time(off).Minutes)
                    .Finding($"With {share:0} % left, everything on lasts {Time(0):min 0}; with three loads off, {Time(3):min 0}; "
                        + $"with five, {Time(5):min 0}.");
            });
    }

    /// <summary>How long each runway is, and how long it must be.</summary>
    /// <param name="runways">The runways by their names.</param>
    /// <param name="up">The aeroplane as it lands, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <param name="wind">The wind.</param>
    /// <returns>The figure.</returns>
    public static Figure LengthsThereAndNeeded(IReadOnlyDictionary<string, Runway> runways, Configuration up, Air air, Wind wind)
    {
        ArgumentNullException.ThrowIfNull(runways);
        ArgumentNullException.ThrowIfNull(up);
        Runway[] inOrder = [.. runways.Values];
        double[] numbers = [.. Enumerable.Range(1, inOrder.Length)];
        return new Figure("Lengths there and needed", Axis.Of("runway"), Axis.Of("length", "", "ft").Including(0))
            .Bars("there", numbers, n => inOrder[(int)n - 1].LengthAvailable.Feet)
            .Caption($"Flaps up, now. A bar is the runway, its mark the length that it must have with the margin.")
            .Finding($"{string.Join("; ", runways.Select(r => $"{r.Key}: {LandingWords.Stands(up.RunwayLeft(r.Value, air, wind))}"))}.")
            .MarkedInOrder(runways.Select(r => (r.Key, up.RunwayNeeded(r.Value, air, wind).Feet)));
    }

    /// <summary>What is left over of each runway while the aeroplane burns fuel; the reader moves the wind.</summary>
    /// <param name="runways">The runways by their names.</param>
    /// <param name="aeroplane">The aeroplane, which burns fuel as in <see cref="LessonLandings.MassAfter"/>.</param>
    /// <param name="air">The air.</param>
    /// <param name="wind">The wind, whose direction stays.</param>
    /// <param name="guess">The reader's prediction, how much an hour gains on the first runway in that wind, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure LeftOverWhileOneWaits(
        IReadOnlyDictionary<string, Runway> runways, Aeroplane aeroplane, Air air, Wind wind, Length guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(runways);
        ArgumentNullException.ThrowIfNull(aeroplane);
        ArgumentNullException.ThrowIfNull(wind);
        Length Left(Runway runway, double hours, Wind blowing) => aeroplane.WithFlapsUp(aeroplane.MassAfter(hours)).RunwayLeft(runway, air, blowing);
        return new Figure("Left over, while one waits", Axis.Of("hours of waiting", "", "h"), Axis.Of("left over, margin kept", "", "ft"))
            .Level("just fits", 0)
            .PredictedUp(guess, from: Left(runways.First().Value, 0, wind).Feet, prediction: prediction)
            .Caption($"Above the level the runway is long enough with its margin. The wind is from {wind.From:0}.")
            .Moving(Axis.Of("wind speed", "", "kt"), Samples.Between(0, 24, 2), start: 14, (figure, knots) =>
            {
                var blowing = new Wind(wind.From, Speed.FromKnots(knots));
                foreach ((string name, Runway runway) in runways)
                    figure = figure.Line(name, Samples.Between(0, 4, 0.5), hours => Left(runway, hours, blowing).Feet);
                Words Then(Runway runway, double hours) => LandingWords.Stands(Left(runway, hours, blowing));
                return figure.Finding($"In {blowing.Speed:0} of wind, now: runway 24, {Then(Quillmere.Runway24, 0)}; "
                    + $"runway 33, {Then(Quillmere.Runway33, 0)}; Brackmere, {Then(Brackmere.Runway30, 0)}. "
                    + $"Runway 24 four hours later: {Then(Quillmere.Runway24, 4)}.");
            });
    }
}
