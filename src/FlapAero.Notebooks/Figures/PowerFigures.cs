using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of the power that a path takes, and of what the closed throttle can still take away.</summary>
public static class PowerFigures
{
    /// <summary>The thrust that a path takes at every speed, flaps up and full.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="path">The angle of descent, positive down.</param>
    /// <returns>The figure.</returns>
    public static Figure ThrustThatThePathTakes(Configuration up, Configuration full, Air air, Angle path)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        ArgumentNullException.ThrowIfNull(air);
        Airspeed upSpeed = up.ReferenceSpeed(air), fullSpeed = full.ReferenceSpeed(air);
        Force upThrust = up.OnPath(upSpeed, -path).Thrust, fullThrust = full.OnPath(fullSpeed, -path).Thrust;
        double Thrust(Configuration c, double knots) => c.OnPath(air.CalibratedKnots(knots), -path).Thrust.PoundsForce;
        return new Figure("Thrust that the path takes", Axis.Of("airspeed", "V", "kt CAS"), Axis.Of("thrust", "T", "lbf").Including(0))
            .Line("flaps up", up.SpeedsFromTheStall(air), knots => Thrust(up, knots))
            .Line("full flap", full.SpeedsFromTheStall(air), knots => Thrust(full, knots))
            .Mark($"{up.Multiple()}, up", upSpeed.Calibrated.Knots, upThrust.PoundsForce)
            .Mark($"{full.Multiple()}, full", fullSpeed.Calibrated.Knots, fullThrust.PoundsForce)
            .Caption($"Down a path of {path:0}, each curve from its stall on. The marks are the reference speeds.")
            .Finding($"At the reference speeds the path takes {upThrust:lbf 0} of thrust with flaps up and {fullThrust:lbf 0} with full flap.");
    }

    /// <summary>The engine speed that each angle of descent takes, to where the throttle is closed.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="path">The angle of descent of the lesson, positive down.</param>
    /// <param name="guess">The reader's prediction, counted down from full flap, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static Figure WhatTheThrottleCanStillTakeAway(
        Configuration up, Configuration full, Air air, Angle path, RotationalSpeed guess,
        [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        ArgumentNullException.ThrowIfNull(air);
        Angle Closed(Configuration c) => c.ThrottleClosed(c.ReferenceSpeed(air)).GlideAngle;
        RotationalSpeed Turns(Configuration c, Angle down) => c.EngineSpeed(c.ReferenceSpeed(air), down);
        double OnAngle(Configuration c, double down) => Turns(c, Angle.FromDegrees(down)).RevolutionsPerMinute;
        IReadOnlyList<double> Angles(Configuration c) => Samples.Between(0, Closed(c).Degrees, 0.1);
        return new Figure(
                "What the throttle can still take away", Axis.Of("angle of descent", "γ", "°"), Axis.Of("engine speed", "N", "rpm"))
            .Line("flaps up", Angles(up), down => OnAngle(up, down))
            .Line("full flap", Angles(full), down => OnAngle(full, down))
            .Mark("closed, up", Closed(up).Degrees, OnAngle(up, Closed(up).Degrees))
            .Mark("closed, full", Closed(full).Degrees, OnAngle(full, Closed(full).Degrees))
            .PredictedUp(guess, from: Turns(full, path).RevolutionsPerMinute, times: -1, prediction: prediction)
            .Caption($"At the reference speeds. Each curve ends where the throttle is closed.")
            .Finding($"The throttle is closed at a descent of {Closed(up)} with flaps up, of {Closed(full)} with full flap. "
                + $"Down {path:0} they take {Turns(up, path)} and {Turns(full, path)}.");
    }

    /// <summary>Drag in level flight and its two parts, and the thrust that a path takes, in pounds of force.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <param name="path">The angle of descent, positive down.</param>
    /// <param name="guess">The reader's prediction, the share of the thrust that the slower flight takes, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static Figure TwoDrags(
        Configuration up, Air air, Angle path, Ratio guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(air);
        IReadOnlyList<double> speeds = up.SpeedsFromTheStall(air);
        Speed bottom = (up.MinimumDragSpeed(air) ?? up.StallSpeed(air)).Calibrated;
        Speed slow = up.ReferenceSpeed(air, 1.1).Calibrated, reference = up.ReferenceSpeed(air).Calibrated;
        SteadyFlight Level(double knots) => up.OnPath(air.CalibratedKnots(knots), Angle.Zero);
        double Drag(double knots) => Level(knots).Thrust.PoundsForce;
        double Thrust(double knots) => up.OnPath(air.CalibratedKnots(knots), -path).Thrust.PoundsForce;
        double ZeroLift(double knots) => Drag(knots) * up.Flaps.Drag.ZeroLiftDragCoefficient / Level(knots).DragCoefficient;
        return new Figure("Two drags, flaps up", Axis.Of("airspeed", "V", "kt CAS"), Axis.Of("force", "", "lbf").Including(0))
            .Line("together", speeds, Drag)
            .Line("zero-lift", speeds, ZeroLift)
            .Line("induced", speeds, knots => Drag(knots) - ZeroLift(knots))
            .Line("thrust on the path", speeds, Thrust)
            .Mark("1.1", slow.Knots, Thrust(slow.Knots)).Mark(up.Multiple(), reference.Knots, Thrust(reference.Knots))
            .PredictedUp(guess, times: Thrust(reference.Knots) / 100, prediction: prediction)
            .Caption($"Level flight. Zero-lift drag grows with speed, induced drag, the price of lift, shrinks; their sum is least where "
                + $"the two are equal. Down a path the thrust is this sum less the weight's part.")
            .Finding($"Drag is least, {Force.FromPoundsForce(Drag(bottom.Knots)):lbf 0}, at {bottom} CAS. "
                + $"The reference speed is {reference}; down the path it takes {Force.FromPoundsForce(Thrust(reference.Knots)):lbf 0} of thrust, "
                + $"1.1 times the stall {Force.FromPoundsForce(Thrust(slow.Knots)):lbf 0}.");
    }

    /// <summary>The engine speed that a path takes at every speed; the reader moves the angle.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="path">The angle of descent from which the prediction counts, positive down.</param>
    /// <param name="guess">The reader's prediction, counted from the reference speed's, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure EngineSpeedForThePath(
        Configuration up, Configuration full, Air air, Angle path, RotationalSpeed guess,
        [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        ArgumentNullException.ThrowIfNull(air);
        Airspeed upSpeed = up.ReferenceSpeed(air);
        double reference = upSpeed.Calibrated.Knots;
        IReadOnlyList<double> speeds = up.SpeedsFromTheStall(air), fullSpeeds = full.SpeedsFromTheStall(air);
        return new Figure("Engine speed for the path", Axis.Of("airspeed", "V", "kt CAS"), Axis.Of("engine speed", "N", "rpm"))
            .PredictedUp(guess, from: up.EngineSpeed(upSpeed, path).RevolutionsPerMinute, prediction: prediction)
            .Caption($"Each curve from its stall on; the marks are on the curve with flaps up. "
                + $"Move the angle: the curves sink, their bottoms hardly shift.")
            .Moving(Axis.Of("angle of descent", "γ", "°"), Samples.Between(0, 4.5, 0.5), start: 3, (figure, down) =>
            {
                double Turns(Configuration c, double knots) =>
                    c.EngineSpeed(air.CalibratedKnots(knots), Angle.FromDegrees(down)).RevolutionsPerMinute;
                double lowest = speeds.MinBy(knots => Turns(up, knots));
                return figure.Line("flaps up", speeds, knots => Turns(up, knots)).Line("full flap", fullSpeeds, knots => Turns(full, knots))
                    .Mark(up.Multiple(), reference, Turns(up, reference)).Mark("lowest", lowest, Turns(up, lowest))
                    .Finding($"Down {down:0.0}°, flaps up, the engine speed is lowest at {Speed.FromKnots(lowest):0}, {Turns(up, lowest):0} rpm, "
                        + $"against {Turns(up, reference):0} rpm at the reference speed.");
            });
    }
}
