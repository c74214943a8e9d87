using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of many landings: where the wheels touch, what moves the touchdown, and what a few landings can say.</summary>
public static class ScatterFigures
{
    private const double Bin = 100;

    /// <summary>The shares of many landings that touch on each stretch; the reader moves how well the speed is held.</summary>
    /// <param name="up">The hand with flaps up.</param>
    /// <param name="full">The same hand with full flap.</param>
    /// <param name="runway">The runway's length.</param>
    /// <param name="guess">The reader's prediction, the stretch that holds nineteen of twenty touchdowns with flaps up: where that would end, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure WhereTheWheelsTouch(
        GoodHand up, GoodHand full, Length runway, Length guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        LandingScatterResult Thousand(GoodHand hand, double knots) => hand.WithSpeedWithin(Speed.FromKnots(knots)).Fly(1000);
        var held = Enumerable.Range(1, 8).ToDictionary(knots => (double)knots, knots => (Up: Thousand(up, knots), Full: Thousand(full, knots)));
        List<SampledDistance> all = [.. held.Values.SelectMany(h => new[] { h.Up.TouchdownDistance, h.Full.TouchdownDistance })];
        // The middles of the stretches.
        IReadOnlyList<double> bins = Samples.Between(
            Bin * Math.Floor(all.Min(d => d.Minimum.Feet) / Bin) + Bin / 2, all.Max(d => d.Maximum.Feet) + Bin / 2, Bin);
        double[] Percent(LandingScatterResult r)
        {
            double[] at = r.TouchdownsInFeet();
            return [.. bins.Select(middle => 100.0 * at.Count(x => Math.Abs(x - middle) < Bin / 2) / r.Count)];
        }
        IEnumerable<(double, double)> Outline(LandingScatterResult r) => bins.Zip(Percent(r))
            .SelectMany(bin => new[] { (bin.First - Bin / 2, bin.Second), (bin.First + Bin / 2, bin.Second) });
        Length third = runway / 3;
        double highest = held.Values.Max(h => Math.Max(Percent(h.Up).Max(), Percent(h.Full).Max()));
        return new Figure(
                "Where the wheels touch", Axis.Of("distance from the threshold", "x", "ft").Including(0), Axis.Of("share of the landings", "", "%"))
            .Line("first third ends", [(third.Feet, 0), (third.Feet, highest)])
            .PredictedAcross(guess, from: held[5].Up.TouchdownDistance.Quantile(0.025).Feet, prediction: prediction)
            .Caption($"A thousand landings with each flap setting, counted in steps of {Length.FromFeet(Bin)}. "
                + $"Move the tolerance on the speed at the threshold; all else stays.")
            .Moving(Axis.Of("speed held within ±", "", "kt"), held.Keys, start: 5, (figure, knots) =>
            {
                (LandingScatterResult manyUp, LandingScatterResult manyFull) = held[knots];
                Length stretchUp = manyUp.NineteenOfTwenty(), stretchFull = manyFull.NineteenOfTwenty();
                return figure.Bars("flaps up", bins, Percent(manyUp)).As(Palette.FlapsUp)
                    .Line("full flap", Outline(manyFull)).As(Palette.FullFlap)
                    .Reading("nineteen of twenty touch, up", $"on {stretchUp}").Reading("nineteen of twenty touch, full", $"on {stretchFull}")
                    .Finding($"Speed within ±{Speed.FromKnots(knots):0}: flaps up, nineteen of twenty touchdowns lie on {stretchUp}, "
                        + $"with full flap on {stretchFull}. Within the first third of runway 24 touch "
                        + $"{manyUp.TouchdownInFirstThird(runway).Value:% 0} and {manyFull.TouchdownInFirstThird(runway).Value:% 0}; "
                        + $"{1 - manyUp.Landed.Value:% 0.0} and {1 - manyFull.Landed.Value:% 0.0} have no round-out.");
            });
    }

    /// <summary>How the touchdown moves when one input alone varies through its spread.</summary>
    /// <param name="hand">The hand.</param>
    /// <returns>The figure.</returns>
    public static Figure WhatMovesTheTouchdown(GoodHand hand)
    {
        ArgumentNullException.ThrowIfNull(hand);
        Length planned = Landing.Fly(hand.Meant).Value.TouchdownDistance;
        Length Deviation(LandingVariable input) => hand.Only(input).TouchdownDeviation();
        IEnumerable<(double, double)> Fan(LandingVariable input)
        {
            LandingScatterResult touched = hand.Only(input).Fly(200);
            return hand.Only(input).Landings().Draws(input, 200)
                .Select((value, i) => (Off: hand.Spread[input]!.StandardScore(value), At: touched.Touchdown(i)))
                .Where(p => p.At is not null).OrderBy(p => p.Off).Select(p => (p.Off, (p.At!.Value - planned).Feet));
        }
        return new Figure(
                "What moves the touchdown", Axis.Of("off its middle, in standard deviations"), Axis.Of("touchdown later than meant", "", "ft"))
            .Line("speed", Fan(LandingVariable.ThresholdSpeed))
            .Line("height", Fan(LandingVariable.ThresholdHeight))
            .Line("throttle", Fan(LandingVariable.PowerCutHeight))
            .Line("end of hold-off", Fan(LandingVariable.TouchdownLiftFraction))
            .Line("round-out", Fan(LandingVariable.FlareTimeConstant))
            .Caption($"Flaps up. Each input alone runs through its own spread, the others as meant. The steeper the line, the more it matters.")
            .Finding($"Through their spreads the speed moves the touchdown by a standard deviation of "
                + $"{Deviation(LandingVariable.ThresholdSpeed)}, the sharpness of the round-out by "
                + $"{Deviation(LandingVariable.FlareTimeConstant)}.");
    }

    /// <summary>The stretch of runway that holds nineteen of twenty touchdowns, were one thing the same in every landing.</summary>
    /// <param name="nothing">The landings in which all varies.</param>
    /// <param name="speed">Those with the same speed at every threshold.</param>
    /// <param name="height">Those with the same height at every threshold.</param>
    /// <param name="roundOut">Those with every round-out alike.</param>
    /// <returns>The figure.</returns>
    public static Figure StretchWereItAlike(LandingScatterResult nothing, LandingScatterResult speed, LandingScatterResult height, LandingScatterResult roundOut)
    {
        (string Alike, Length Stretch)[] each =
        [
            ("nothing", nothing.NineteenOfTwenty()), ("speed", speed.NineteenOfTwenty()),
            ("height", height.NineteenOfTwenty()), ("round-out", roundOut.NineteenOfTwenty()),
        ];
        double[] numbers = [.. Enumerable.Range(1, each.Length)];
        return new Figure("The stretch, were it alike", Axis.Of("what is alike in every landing"), Axis.Of("stretch", "", "ft").Including(0))
            .Bars("stretch", numbers, n => each[(int)n - 1].Stretch.Feet)
            .Caption($"Flaps up. The lower a bar, the more is gained where that alone is the same in every landing.")
            .Finding($"{string.Join("; ", each.Select(one => $"{one.Alike}: {one.Stretch}"))}.")
            .MarkedInOrder(each.Select(one => (one.Alike, one.Stretch.Feet)));
    }

    /// <summary>Between which shares the true one lies, by how many landings are counted.</summary>
    /// <param name="soFar">The share that stopped, after ten landings, twenty, and so on to four hundred.</param>
    /// <param name="truth">The share of two thousand.</param>
    /// <returns>The figure.</returns>
    public static Figure WhatTheLandingsSoFarCanSay(IReadOnlyList<Share> soFar, Share truth)
    {
        ArgumentNullException.ThrowIfNull(soFar);
        ArgumentNullException.ThrowIfNull(truth);
        IReadOnlyList<double> counts = Samples.Between(10, 10 * soFar.Count, 10);
        Share Of(double n) => soFar[(int)n / 10 - 1];
        return new Figure(
                "What the landings so far can say", Axis.Of("landings counted", "n"),
                Axis.Of("share that stops on runway 24", "", "%").Including(0).Including(100))
            .Line("so far", counts, n => 100 * Of(n).Value)
            .Line("at most", counts, n => 100 * Of(n).Interval().High)
            .Line("at least", counts, n => 100 * Of(n).Interval().Low)
            .Level("two thousand", 100 * truth.Value)
            .Caption($"One pilot's book, flaps up. Between the outer lines the true share lies with 95 % confidence.")
            .Finding($"After ten landings the share lies between {soFar[0].Interval().Low:% 0} and {soFar[0].Interval().High:% 0}, "
                + $"after four hundred between {soFar[^1].Interval().Low:% 0} and {soFar[^1].Interval().High:% 0}.");
    }
}
