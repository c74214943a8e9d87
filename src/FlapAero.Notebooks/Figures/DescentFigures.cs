using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of drag and of the angle of descent that comes from it.</summary>
public static class DescentFigures
{
    /// <summary>Drag over weight in level flight, in its two parts, at every speed.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure DragInItsParts(Configuration up, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(air);
        DragPolar polar = up.Flaps.Drag;
        Speed reference = up.ReferenceSpeed(air).Calibrated;
        IReadOnlyList<double> speeds = Speeds(up, air, 1.7 * up.StallSpeed(air).Calibrated.Knots);
        double Lift(double knots) => up.RequiredLiftCoefficient(air.CalibratedKnots(knots));
        double NoLift(double knots) => 100 * polar.ZeroLiftDragCoefficient / Lift(knots);
        double Induced(double knots) => 100 * polar.InducedFactor * Lift(knots);
        double Drag(double knots) => NoLift(knots) + Induced(knots);
        return new Figure(
                "Drag in its parts, flaps up", Axis.Of("airspeed", "V", "kt CAS"), Axis.Of("drag", "D/W", "% of weight").Including(0))
            .Line("all drag", speeds, Drag).Line("without lift", speeds, NoLift).Line("for lift", speeds, Induced)
            .Mark("approach", reference.Knots, Drag(reference.Knots))
            .Caption($"Slower, the one part grows; faster, the other. Between them drag has a bottom, and it is flat.")
            .Finding($"At the approach speed, {reference} CAS, drag is {Drag(reference.Knots):0.0} % of the weight. "
                + $"The least there is, at {up.BestGlide(air).Airspeed.Calibrated}, is {100 / up.BestGlide(air).LiftToDrag:0.0} %.");
    }

    /// <summary>The angle of descent with the throttle closed at every speed, flaps up and full, in still air.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure ThrottleClosedAtEverySpeed(Configuration up, Configuration full, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        ArgumentNullException.ThrowIfNull(air);
        Airspeed refUp = up.ReferenceSpeed(air), refFull = full.ReferenceSpeed(air);
        Angle glideUp = up.ThrottleClosed(refUp).GlideAngle, glideFull = full.ThrottleClosed(refFull).GlideAngle;
        double fastest = 1.7 * up.StallSpeed(air).Calibrated.Knots;
        double Down(Configuration c, double knots) => c.ThrottleClosed(air.CalibratedKnots(knots)).GlideAngle.Degrees;
        return new Figure(
                "Throttle closed, at every speed", Axis.Of("airspeed", "V", "kt CAS"), Axis.Of("angle of descent", "γ", "°").Including(0))
            .Line("flaps up", Speeds(up, air, fastest), knots => Down(up, knots))
            .Line("full flap", Speeds(full, air, Math.Min(fastest, full.MaximumSpeed(air).Calibrated.Knots)), knots => Down(full, knots))
            .Level("a three-degree path", 3)
            .Mark("approach, up", refUp.Calibrated.Knots, glideUp.Degrees)
            .Mark("approach, full", refFull.Calibrated.Knots, glideFull.Degrees)
            .Caption($"Still air, the idling propeller included. "
                + $"The gap above the dashed line is what closing the throttle is worth.")
            .Finding($"At its approach speed the aeroplane comes down at {glideUp} with flaps up and at {glideFull} with full flap.");
    }

    /// <summary>Glides over the ground down to the aiming point; the reader moves the wind.</summary>
    /// <param name="up">The glide with flaps up.</param>
    /// <param name="full">The glide with full flap.</param>
    /// <param name="headwind">The headwind that is shown first.</param>
    /// <param name="guess">The reader's prediction, by how much that wind steepens the glide with flaps up, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure LinesDownToTheAimingPoint(
        SteadyFlight up, SteadyFlight full, Speed headwind, Angle guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        IReadOnlyList<double> along = Samples.Between(0, 6000, 500);
        double Height(Angle down, double feet) => feet * Math.Tan(down.Radians);
        // Where the line of the predicted angle would begin; so small a change of an angle goes with the tangent's slope.
        double calm = Height(up.GlideAngle, along[^1]), perDegree = along[^1] * Math.PI / 180 / Math.Pow(Math.Cos(up.GlideAngle.Radians), 2);
        return new Figure("Lines down to the aiming point", Axis.Of("distance to the aiming point", "x", "ft"), Axis.Of("height", "h", "ft"))
            .Line("three degrees", along, feet => Height(Angle.FromDegrees(3), feet))
            .PredictedUp(guess, from: calm, times: perDegree, prediction: prediction)
            .Caption($"Throttle closed all the way, each setting at its approach speed. "
                + $"Above its line, the aeroplane arrives too high.")
            .Moving(Axis.Of("headwind", "w", "kt"), Samples.Between(-10, 24, 2), start: headwind.Knots, (figure, knots) =>
            {
                Speed wind = Speed.FromKnots(knots);
                Angle flat = -up.AngleOverGround(wind), steep = -full.AngleOverGround(wind);
                return figure.Line("flaps up", along, feet => Height(flat, feet)).As(Palette.FlapsUp)
                    .Line("full flap", along, feet => Height(steep, feet)).As(Palette.FullFlap)
                    .Finding($"In a headwind of {wind:0} the closed throttle brings the aeroplane down over the ground "
                        + $"at {flat} with flaps up and at {steep} with full flap.");
            });
    }

    /// <summary>The angle of descent with the throttle closed near the approach speed, flaps up, with a slower and a faster flight.</summary>
    /// <param name="slower">The slower flight.</param>
    /// <param name="approach">The flight at the approach speed.</param>
    /// <param name="faster">The faster flight.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure SlowerAndFaster(SteadyFlight slower, SteadyFlight approach, SteadyFlight faster, Air air)
    {
        ArgumentNullException.ThrowIfNull(slower);
        ArgumentNullException.ThrowIfNull(approach);
        ArgumentNullException.ThrowIfNull(faster);
        ArgumentNullException.ThrowIfNull(air);
        Configuration up = approach.Configuration;
        double Down(double knots) => up.ThrottleClosed(air.CalibratedKnots(knots)).GlideAngle.Degrees;
        double Knots(SteadyFlight flight) => flight.Airspeed.Calibrated.Knots;
        // Room for a prediction of one degree; a larger one stands at the edge.
        Axis angle = Axis.Of("angle of descent", "γ", "°").Including(Math.Ceiling(approach.GlideAngle.Degrees + 1));
        return new Figure("Slower and faster", Axis.Of("airspeed", "V", "kt CAS"), angle)
            .Line("flaps up", Samples.Between(Knots(slower) - 3, Knots(faster) + 3, 1), Down)
            .Mark("slower", Knots(slower), slower.GlideAngle.Degrees).Mark("approach", Knots(approach), approach.GlideAngle.Degrees)
            .Mark("faster", Knots(faster), faster.GlideAngle.Degrees)
            .Caption($"Throttle closed, still air. The scale does not begin at zero.")
            .Finding($"At the approach speed the aeroplane comes down at {approach.GlideAngle:0.0}, slower at {slower.GlideAngle:0.0}, "
                + $"faster at {faster.GlideAngle:0.0}.");
    }

    private static IReadOnlyList<double> Speeds(Configuration c, Air air, double fastest) =>
        Samples.Between(Math.Ceiling(c.StallSpeed(air).Calibrated.Knots), Math.Floor(fastest), 1);
}
