using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of what flaps change: lift along the wing, where the stall begins, and what is seen over the nose.</summary>
public static class FlapFigures
{
    private const double FourFifths = 0.8;

    private static readonly IReadOnlyList<double> Stations = Samples.Between(0, 0.99, 0.01);

    /// <summary>Lift per span from the centreline to the tip, flaps up and down; the reader moves the flap.</summary>
    /// <param name="wing">The wing with its flap at an angle in degrees.</param>
    /// <param name="liftCoefficient">The wing's lift coefficient, the same for all.</param>
    /// <param name="start">The angle of the flap that is shown first, in degrees.</param>
    /// <param name="guess">The reader's prediction, the share of its former lift that the wing still carries at four fifths, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure LiftAlongTheWing(
        Func<double, LiftingLine> wing, double liftCoefficient, double start, Ratio guess,
        [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(wing);
        LiftingLine clean = wing(0);
        double PerSpan(LiftingLine line, double station) =>
            line.LoadAt(station, liftCoefficient).CirculationRatio * 2 * line.Planform.AspectRatio / liftCoefficient;
        return new Figure(
                "Lift along the wing", Axis.Of("share of the half span", "2y/b", "").Including(1),
                Axis.Of("lift per span, mean = 1", "", "").Including(0))
            .Line("flaps up", Stations, s => PerSpan(clean, s))
            .PredictedUp(guess, times: PerSpan(clean, FourFifths) / 100, prediction: prediction)
            .Caption($"From the centreline to the tip, at one speed and weight: whatever the flaps do, the mean stays 1.")
            .Moving(Axis.Of("flap deflection", "δ", "°"), Samples.Between(5, 40, 5), start: Math.Max(5, start), (figure, degrees) =>
            {
                LiftingLine flapped = wing(degrees);
                return figure.Line("flaps down", Stations, s => PerSpan(flapped, s)).Mark("four fifths", FourFifths, PerSpan(flapped, FourFifths))
                    .Finding($"With {degrees:0}° of flap the lift per span at the centreline is {PerSpan(flapped, 0):0.00} times the mean "
                        + $"instead of {PerSpan(clean, 0):0.00}; at four fifths of the half span {PerSpan(flapped, FourFifths):0.00} instead of "
                        + $"{PerSpan(clean, FourFifths):0.00}.");
            });
    }

    /// <summary>What each section of a wing carries when the first has all it can; the reader moves the flap.</summary>
    /// <param name="wing">The wing with its flap at an angle in degrees.</param>
    /// <param name="start">The angle of the flap that is shown first, in degrees.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure WhereTheStallBegins(Func<double, LiftingLine> wing, double start)
    {
        ArgumentNullException.ThrowIfNull(wing);
        return new Figure(
                "Where the stall begins", Axis.Of("share of the half span", "2y/b", "").Including(1),
                Axis.Of("section lift coefficient", "c_l", "").Including(0))
            .Caption($"The wing pulled up until the first section has all it can give. "
                + $"Move the flap and see where the two curves touch.")
            .Moving(Axis.Of("flap deflection", "δ", "°"), Samples.Between(0, 40, 5), start, (figure, degrees) =>
            {
                LiftingLine flapped = wing(degrees);
                StallOnset first = flapped.FirstStall();
                SpanwiseLoad At(double station) => flapped.LoadAt(station, first.MaximumLiftCoefficient);
                return figure.Line("the most it can", Stations, s => At(s).SectionMaximum)
                    .Line("what it carries", Stations, s => At(s).SectionLiftCoefficient)
                    .Mark("first stall", first.Section.Station, first.Section.SectionLiftCoefficient)
                    .Finding($"With {degrees:0}° of flap the stall begins at {first.Section.Station:0.00} of the half span, "
                        + $"at a lift coefficient of the wing of {first.MaximumLiftCoefficient:0.00}.");
            });
    }

    /// <summary>The nose's attitude on a path at every speed, flaps up and full.</summary>
    /// <param name="up">The flight at the reference speed, flaps up.</param>
    /// <param name="full">The flight at the reference speed with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="path">The angle of descent of both, positive down.</param>
    /// <param name="guess">The reader's prediction, from the full-flap attitude on, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static Figure TheNoseAtEverySpeed(
        SteadyFlight up, SteadyFlight full, Air air, Angle path, Angle guess,
        [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        ArgumentNullException.ThrowIfNull(air);
        Angle noseUp = up.PitchAttitude, noseFull = full.PitchAttitude;
        double fastest = 1.7 * up.Configuration.StallSpeed(air).Calibrated.Knots;
        double Nose(Configuration c, double knots) => c.OnPath(air.CalibratedKnots(knots), -path).PitchAttitude.Degrees;
        IReadOnlyList<double> Speeds(Configuration c) => Samples.Between(
            c.StallSpeed(air).Calibrated.Knots + 0.1, Math.Min(fastest, c.MaximumSpeed(air).Calibrated.Knots), 0.1);
        Speed habit = up.Configuration.SpeedWithNoseAt(air, path, noseFull);
        return new Figure("The nose at every speed", Axis.Of("airspeed", "V", "kt CAS"), Axis.Of("pitch attitude", "θ", "°"))
            .Line("flaps up", Speeds(up.Configuration), knots => Nose(up.Configuration, knots))
            .Line("full flap", Speeds(full.Configuration), knots => Nose(full.Configuration, knots))
            .Level("full-flap picture", noseFull.Degrees)
            .Mark($"{up.Configuration.Multiple()}, up", up.Airspeed.Calibrated.Knots, noseUp.Degrees)
            .Mark($"{full.Configuration.Multiple()}, full", full.Airspeed.Calibrated.Knots, noseFull.Degrees)
            .PredictedUp(guess, from: noseFull.Degrees, prediction: prediction)
            .Caption($"Down the path of {path:0}, each curve from its stall on. Follow the dashed line to the curve with flaps up.")
            .Finding($"At its reference speed the nose is at {noseUp:+0.0} with flaps up and at {noseFull:+0.0} with full flap. "
                + $"With flaps up it comes to {noseFull:+0.0} at {habit:0} CAS.");
    }

    /// <summary>What the nose hides on a path, flaps up and full; the reader moves how far down the pilot sees.</summary>
    /// <param name="path">The angle of descent, positive down.</param>
    /// <param name="noseUp">The nose's attitude with flaps up.</param>
    /// <param name="noseFull">The nose's attitude with full flap.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure OverTheNose(Angle path, Angle noseUp, Angle noseFull)
    {
        const double Reach = 9000;
        double eye = Length.FromFeet(300).Feet;
        double Slope(double degrees) => Math.Tan(degrees * Math.PI / 180);
        // On the ground, or where the figure ends.
        double End(double below) => Slope(below) * Reach > eye ? eye / Slope(below) : Reach;
        IEnumerable<(double, double)> Sight(double below) => [(0, eye), (End(below), Math.Max(0, eye - End(below) * Slope(below)))];
        string Seen(double below) => below > path.Degrees ? "in sight" : "hidden";
        return new Figure("Over the nose", Axis.Of("distance ahead", "x", "ft"), Axis.Of("height", "h", "ft").Including(0))
            .Line("path", Sight(path.Degrees)).Mark("aiming point", eye / Slope(path.Degrees), 0)
            .Caption($"The height scale is stretched. On the path of {path:0}, at the reference speeds, the eye {Length.FromFeet(eye)} up. "
                + $"The nose hides what lies below a line of sight.")
            .Moving(Axis.Of("seen below the fuselage's level line", "", "°"), Samples.Between(3, 10, 0.5), start: 5, (figure, seen) => figure
                .Line("flaps up", Sight(seen - noseUp.Degrees)).As(Palette.FlapsUp)
                .Line("full flap", Sight(seen - noseFull.Degrees)).As(Palette.FullFlap)
                .Finding($"Seeing {seen:0.0}° below the level line, the aiming point is {Seen(seen - noseUp.Degrees)} with flaps up "
                    + $"and {Seen(seen - noseFull.Degrees)} with full flap."));
    }

    /// <summary>The aeroplane on its path seen from the side, flaps up and with full flap.</summary>
    /// <param name="up">The flight with flaps up.</param>
    /// <param name="full">The flight with full flap.</param>
    /// <returns>The picture.</returns>
    public static Picture TheAeroplaneOnItsPath(SteadyFlight up, SteadyFlight full) =>
        Charts.Pictures.SideView("The aeroplane on its path", ("flaps up", up), ("full flap", full))
            .LookFor("Same path, two angles of attack: the fuselage turns with the wing.");

    /// <summary>The runway over the nose, flaps up and with full flap; the reader moves the speed.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="path">The angle of the path, positive down.</param>
    /// <returns>The picture.</returns>
    public static MovingPicture TheRunwayOverTheNose(Configuration up, Configuration full, Air air, Angle path)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        double start = Math.Round(20 * up.ReferenceMultiple) / 20;
        PilotsView Seat(string name, Configuration c, double times) =>
            PilotsView.OnPath(name, c, c.ReferenceSpeed(air, times), path, before: Length.FromFeet(1000));
        return MovingPicture.Of(
            Axis.Of("speed over the stall", "V/V_S"), Samples.Between(1.1, Math.Max(1.5, start), 0.05), start,
            times => Charts.Pictures.ViewOverTheNose(
                    "The runway over the nose", Quillmere.Runway24, Seat("flaps up", up, times), Seat("full flap", full, times))
                .LookFor("Slow down: the nose rises, and the runway goes under it. Then compare the two."));
    }
}
