using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of the landing roll: where its energy goes, what the wind does to it, and a week of it.</summary>
public static class RollFigures
{
    private static readonly Duration Often = Duration.FromSeconds(0.4);

    /// <summary>The shares of the touchdown's energy along the roll; the reader moves how long the nose is held off.</summary>
    /// <param name="still">The landing, in a calm.</param>
    /// <param name="guess">The reader's prediction, the share of the roll before the brakes, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure WhereTheEnergyGoes(
        LandingSetup still, Ratio guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(still);
        IEnumerable<(double, double)> Share(LandingResult r, Func<RollEnergyPoint, double> of) =>
            r.RollEnergy.Select(p => (Math.Round(p.SinceTouchdown.Feet), 100 * of(p)));
        return new Figure(
                "Where the energy goes", Axis.Of("distance since the touchdown", "", "ft"),
                Axis.Of("share of the energy at the touchdown", "", "%").Including(0))
            .PredictedAcross(guess, times: still.Flown().GroundRoll.Feet / 100, prediction: prediction)
            .Caption($"Runway 24, flaps up, no wind. Until the mark the nose is up and no brake is used.")
            .Moving(Axis.Of("nose held off down to", "", "% of touchdown speed"), Samples.Between(50, 95, 5), start: 85, (figure, share) =>
            {
                LandingResult r = still.NoseUpTo(share / 100).Flown(Often);
                RollEnergyPoint end = r.RollEnergy[^1];
                return figure.Line("still there", Share(r, p => p.Left)).Line("wheels and brakes", Share(r, p => p.Wheels))
                    .Line("drag", Share(r, p => p.Drag)).Line("propeller", Share(r, p => p.Propeller))
                    .Mark("nose down", r.Stage(LandingStage.RollNoseHigh).Length.Feet, 100 * share * share / 1e4)
                    .Finding($"Nose held off down to {share:0} %: {r.NoseUpShare():% 0} of a roll of {r.GroundRoll} is over before the brakes "
                        + $"come on. Wheels and brakes take {end.Wheels:% 0} of the energy, drag {end.Drag:% 0}, "
                        + $"the idling propeller the rest.");
            });
    }

    /// <summary>The ground speed from the threshold to the stop; the reader moves the wind.</summary>
    /// <param name="still">The landing, in a calm.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="guess">The reader's prediction, how much longer ten knots from behind make the roll: marked where the aeroplane would stop.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure AlongTheRunway(
        LandingSetup still, Runway runway, Ratio guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(still);
        ArgumentNullException.ThrowIfNull(runway);
        // So flat a path is as good as level.
        IEnumerable<(double, double)> Along(LandingResult r, double ahead) =>
            r.Trajectory.Select(p => (Math.Round(p.Distance.Feet), Math.Max(0, p.Airspeed.Knots - ahead)));
        LandingResult calm = still.Flown(), behind = (still with { Headwind = Speed.FromKnots(-10) }).Flown();
        double[] upright = [0, still.Technique.ThresholdSpeed.Knots + 15];
        double end = runway.LengthAvailable.Feet, third = runway.EndOfFirstThird.Feet;
        return new Figure("Along runway 24", Axis.Of("distance from the threshold", "x", "ft"), Axis.Of("speed over the ground", "", "kt"))
            .Line("calm", Along(still.Flown(Often), 0)).Line("runway ends", [end, end], upright).Line("first third", [third, third], upright)
            .PredictedAcross(
                guess, from: (behind.TouchdownDistance + calm.GroundRoll).Feet, times: calm.GroundRoll.Feet / 100, prediction: prediction)
            .Caption($"Flaps up, Friday's air, from the threshold to the stop. The bend marks the brakes. Move the wind.")
            .Moving(Axis.Of("headwind, minus from behind", "w", "kt"), Samples.Between(-10, 20, 2), start: -10, (figure, ahead) =>
            {
                LandingResult r = (still with { Headwind = Speed.FromKnots(ahead) }).Flown(Often);
                return figure.Line("in this wind", Along(r, ahead))
                    .Mark("touch", r.TouchdownDistance.Feet, r.TouchdownAirspeed.Knots - ahead).Mark("stop", r.StopDistance.Feet, 0)
                    .Finding($"{LandingWords.Blows(ahead)}: the wheels touch {r.TouchdownDistance} from the threshold, and the aeroplane stops "
                        + $"{r.StopDistance} from it, {LandingWords.Spare(runway.LengthAvailable - r.StopDistance)}.");
            });
    }

    /// <summary>Where each day of a week's landing touches and stops.</summary>
    /// <param name="week">The landings, from Monday on.</param>
    /// <param name="runway">The runway of all of them.</param>
    /// <param name="otherEnd">Friday's landing from the other end.</param>
    /// <returns>The figure.</returns>
    public static Figure AWeekOnRunway24(IReadOnlyList<LandingResult> week, Runway runway, LandingResult otherEnd)
    {
        ArgumentNullException.ThrowIfNull(week);
        ArgumentNullException.ThrowIfNull(runway);
        ArgumentNullException.ThrowIfNull(otherEnd);
        double[] numbers = [.. Enumerable.Range(1, week.Count)];
        LandingResult friday = week[4];
        // Room for names above the bars.
        Axis distance = Axis.Of("distance from the threshold", "x", "ft").Including(0).Including(1.25 * friday.StopDistance.Feet);
        return new Figure("A week on runway 24", Axis.Of("day, Monday is 1"), distance)
            .Bars("stop", numbers, week.Select(r => r.StopDistance.Feet))
            .Line(
                "touchdown", numbers.SelectMany(day => new[] { day - 0.5, day + 0.5 }),
                week.SelectMany(r => new[] { r.TouchdownDistance.Feet, r.TouchdownDistance.Feet }))
            .Mark("Friday", 5, friday.StopDistance.Feet).Mark("Friday, on 06", 5, otherEnd.StopDistance.Feet)
            .Level("runway ends", runway.LengthAvailable.Feet).Level("first third", runway.EndOfFirstThird.Feet)
            .Caption($"Flaps up, maximum weight, each day's own air and wind. Wednesday is gusty and flown faster.")
            .Finding($"Of {week.Count} days the aeroplane stops before the end of runway 24 on "
                + $"{week.Count(r => r.StopDistance <= runway.LengthAvailable)}, and touches in its first third on "
                + $"{week.Count(r => r.TouchdownDistance <= runway.EndOfFirstThird)}. On Friday it stops "
                + $"{LandingWords.Spare(runway.LengthAvailable - friday.StopDistance)}; from the other end, on 06, it takes "
                + $"{friday.StopDistance - otherEnd.StopDistance} less.");
    }
}
