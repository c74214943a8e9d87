using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of what instruments show: a speed in two units, and the rate of descent on a path.</summary>
public static class NeedleFigures
{
    /// <summary>What one number means under a needle in knots and under one in miles an hour.</summary>
    /// <param name="meant">The speed that was meant.</param>
    /// <param name="stall">The stalling speed with flaps up.</param>
    /// <returns>The figure.</returns>
    public static Figure OneNumberOnTwoNeedles(Speed meant, Speed stall)
    {
        Speed flown = Speed.FromMilesPerHour(meant.Knots);
        IReadOnlyList<double> numbers = Samples.Between(Math.Floor(0.85 * stall.Knots), Math.Ceiling(1.2 * meant.Knots), 1);
        return new Figure("One number on two needles", Axis.Of("number under the needle"), Axis.Of("airspeed", "V", "kt CAS"))
            .Line("marked in knots", numbers, number => Speed.FromKnots(number).Knots)
            .Line("marked in miles an hour", numbers, number => Speed.FromMilesPerHour(number).Knots)
            .Level("stall, flaps up", stall.Knots)
            .Mark("meant", meant.Knots, meant.Knots).Mark("flown", meant.Knots, flown.Knots)
            .Caption($"Needles without error. Go up from one number to both lines, then look how far down the stall is.")
            .Finding($"Under the number {meant.Knots:0.0} the needle in knots means {meant}, the one in miles an hour {flown}. "
                + $"The stall, flaps up, is at {stall}.");
    }

    /// <summary>The rate of descent on a path, exact and by five times the ground speed; the reader moves the path.</summary>
    /// <param name="ground">The ground speed that is marked.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure DownThePath(Speed ground)
    {
        IReadOnlyList<double> speeds = Samples.Between(40, 120, 5);
        Speed rule = Speed.FromFeetPerMinute(5 * ground.Knots);
        return new Figure("Down the path", Axis.Of("ground speed", "V_g", "kt"), Axis.Of("rate of descent", "", "ft/min"))
            .Line("five times", speeds, knots => 5 * knots).Caption($"The rule stands still. Move the path, and see where the two part.")
            .Moving(Axis.Of("path", "γ", "°"), Samples.Between(2, 4, 0.25), start: 3, (figure, degrees) => figure
                .Line("exact", speeds, knots => Exact(knots, degrees))
                .Mark("flaps up", ground.Knots, Exact(ground.Knots, degrees))
                .Finding($"On a path of {Angle.FromDegrees(degrees):0.00} at {ground} over the ground the exact rate of descent is "
                    + $"{Speed.FromFeetPerMinute(Exact(ground.Knots, degrees)):ft/min 0}; five times gives {rule:ft/min 0}."));
    }

    /// <summary>How far the rule of five times lies from the exact rate of descent on three degrees, at every ground speed.</summary>
    /// <param name="ground">The ground speed that is marked.</param>
    /// <returns>The figure.</returns>
    public static Figure HowFarOff(Speed ground)
    {
        IReadOnlyList<double> speeds = Samples.Between(40, 120, 5);
        double off = Off(ground.Knots);
        return new Figure("How far off", Axis.Of("ground speed", "V_g", "kt"), Axis.Of("five times, against exact", "", "%").Including(-10).Including(10))
            .Line("five times", speeds, Off).Line("exact", speeds, _ => 0).Mark("flaps up", ground.Knots, off)
            .Caption($"On a path of three degrees, from a slow aeroplane to a fast one.")
            .Finding($"On three degrees five times the ground speed is off by {Ratio.FromPercent(off):0.0}, at {ground} and at every other speed.");
    }

    private static double Off(double knots) => 100 * (5 * knots / Exact(knots, 3) - 1);

    private static double Exact(double knots, double degrees) =>
        Speed.FromKnots(knots).FeetPerMinute * Math.Tan(Angle.FromDegrees(degrees).Radians);
}
