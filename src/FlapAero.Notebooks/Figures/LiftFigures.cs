using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of lift: against the angle of attack, under load, and what is left before the stall.</summary>
public static class LiftFigures
{
    /// <summary>Lift against angle of attack, from no lift to past the stall.</summary>
    /// <param name="curve">The wing's lift with flaps up.</param>
    /// <returns>The figure.</returns>
    public static Figure LiftAgainstAngleOfAttack(LiftCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return new Figure("Lift against angle of attack", Axis.Of("angle of attack", "α", "°"), Axis.Of("lift coefficient", "C_L", ""))
            .Line("flaps up", Angles(curve), degrees => Lift(curve, degrees))
            .Mark("stall", curve.StallAngle.Degrees, curve.MaximumLiftCoefficient)
            .Caption($"Flaps up. Lift grows along a straight line, bends, and peaks at {curve.StallAngle}.")
            .Finding($"The lift coefficient is zero at {curve.ZeroLiftAngle}, rises in a straight line, and peaks at "
                + $"{curve.MaximumLiftCoefficient:0.00} at an angle of attack of {curve.StallAngle}. Past that it falls.");
    }

    /// <summary>How many times its weight a wing carries at each angle of attack; the reader moves the airspeed.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <param name="guess">The reader's prediction of the stalling angle, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure WhatOneSpeedCanCarry(
        Configuration up, Air air, Angle guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(air);
        LiftCurve curve = up.Flaps.Lift;
        double stall = up.StallSpeed(air).Calibrated.Knots, slowest = Math.Ceiling(stall);
        double Needed(double knots) => up.RequiredLiftCoefficient(air.CalibratedKnots(knots));
        double Carried(double degrees, double knots) => Lift(curve, degrees) / Needed(knots);
        return new Figure("What one speed can carry", Axis.Of("angle of attack", "α", "°"), Axis.Of("lift over weight", "n", ""))
            .Line("at the stalling speed", Angles(curve), degrees => Carried(degrees, stall)).Level("the weight", 1)
            .PredictedAcross(guess, prediction: prediction)
            .Caption($"Flaps up, maximum weight. Faster air multiplies the whole curve; see in which direction its peak moves.")
            .Moving(Axis.Of("airspeed", "V", "kt CAS"), Samples.Between(slowest, 1.7 * stall, 2), slowest + 16, (figure, knots) =>
            {
                Angle flying = curve.AngleOfAttack(Needed(knots));
                double most = Carried(curve.StallAngle.Degrees, knots);
                return figure.Line("at this speed", Angles(curve), degrees => Carried(degrees, knots))
                    .Mark("level flight", flying.Degrees, 1).Mark("stall", curve.StallAngle.Degrees, most)
                    .Finding($"At {Speed.FromKnots(knots)} CAS the wing carries the weight at {flying}. "
                        + $"It stalls at {curve.StallAngle}, carrying {most:0.00} times the weight.");
            });
    }

    /// <summary>The stalling speed under load at two weights, with level turns marked by their bank.</summary>
    /// <param name="up">The aeroplane at its maximum weight, flaps up.</param>
    /// <param name="light">The same at its lightest.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure StallingSpeedUnderLoad(Configuration up, Configuration light, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(light);
        ArgumentNullException.ThrowIfNull(air);
        double Stall(Configuration c, double n) => c.StallSpeed(air, n).Calibrated.Knots;
        double Turn(double bank) => LoadFactor.InTurn(Angle.FromDegrees(bank));
        IReadOnlyList<double> loads = Samples.Between(0.25, 3, 0.05);
        return new Figure("Stalling speed under load", Axis.Of("load factor", "n", ""), Axis.Of("stalling speed", "V_S", "kt CAS"))
            .Line("maximum weight", loads, n => Stall(up, n))
            .Line("lightest", loads, n => Stall(light, n))
            .Mark("wings level", 1, Stall(up, 1)).Mark("30°", Turn(30), Stall(up, Turn(30)))
            .Mark("45°", Turn(45), Stall(up, Turn(45))).Mark("60°", Turn(60), Stall(up, Turn(60)))
            .Caption($"Flaps up. Marked by their bank: level turns. A pull or a push gets anywhere on the curves without any bank.")
            .Finding($"At maximum weight the wing stalls at {up.StallSpeed(air).Calibrated} with wings level, at "
                + $"{up.StallSpeed(air, 2).Calibrated} at twice the load, and at {up.StallSpeed(air, 0.5).Calibrated} at half of it. "
                + $"At its lightest, wings level, it stalls at {light.StallSpeed(air).Calibrated}.");
    }

    /// <summary>Two flap settings at one speed: the angle that each flies at, and the one where it stalls.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="same">The airspeed of both.</param>
    /// <returns>The figure.</returns>
    public static Figure DegreesLeftAtOneSpeed(Configuration up, Configuration full, Airspeed same)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        LiftCurve curve = up.Flaps.Lift, flapped = full.Flaps.Lift;
        double needed = up.RequiredLiftCoefficient(same), neededFull = full.RequiredLiftCoefficient(same);
        Angle flyingUp = curve.AngleOfAttack(needed), flyingFull = flapped.AngleOfAttack(neededFull);
        return new Figure("Degrees left at one speed", Axis.Of("angle of attack", "α", "°"), LiftAxis(flapped))
            .Line("flaps up", Angles(curve), degrees => Lift(curve, degrees))
            .Line("full flap", Angles(flapped), degrees => Lift(flapped, degrees)).Level("needed", needed)
            .Mark("flying, full", flyingFull.Degrees, neededFull)
            .Mark("stall, full", flapped.StallAngle.Degrees, flapped.MaximumLiftCoefficient)
            .Mark("flying, up", flyingUp.Degrees, needed)
            .Mark("stall, up", curve.StallAngle.Degrees, curve.MaximumLiftCoefficient)
            .Caption($"Both at {same.Calibrated} CAS, angles from the reference chord. "
                + $"Count along the dashed line, then on to each peak.")
            .Finding($"At {same.Calibrated} CAS the wing flies at {flyingUp} with flaps up, {curve.StallAngle - flyingUp} below its "
                + $"stalling angle, and at {flyingFull} with full flap, {flapped.StallAngle - flyingFull} below it.");
    }

    /// <summary>Lift at the reference speeds of two flap settings, and how far each is from its peak.</summary>
    /// <param name="up">The flight on the path, flaps up.</param>
    /// <param name="full">The flight on the same path, full flap.</param>
    /// <returns>The figure.</returns>
    public static Figure LiftAtTheReferenceSpeeds(SteadyFlight up, SteadyFlight full)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        LiftCurve curve = up.Configuration.Flaps.Lift, flapped = full.Configuration.Flaps.Lift;
        return new Figure("Lift at the reference speeds", Axis.Of("angle of attack", "α", "°"), LiftAxis(flapped))
            .Line("flaps up", Angles(curve), degrees => Lift(curve, degrees))
            .Line("full flap", Angles(flapped), degrees => Lift(flapped, degrees))
            .Mark($"{up.Configuration.Multiple()}, up", up.AngleOfAttack.Degrees, up.LiftCoefficient)
            .Mark("stall, up", curve.StallAngle.Degrees, curve.MaximumLiftCoefficient)
            .Mark($"{full.Configuration.Multiple()}, full", full.AngleOfAttack.Degrees, full.LiftCoefficient)
            .Mark("stall, full", flapped.StallAngle.Degrees, flapped.MaximumLiftCoefficient)
            .Caption($"Angles from the reference chord. Each curve with its reference speed: count the degrees from there to the peak.")
            .Finding($"Flaps up, the wing flies at {up.AngleOfAttack} with a lift coefficient of {up.LiftCoefficient:0.00} and stalls at "
                + $"{curve.StallAngle} with {curve.MaximumLiftCoefficient:0.00}. With full flap it flies at {full.AngleOfAttack} with "
                + $"{full.LiftCoefficient:0.00} and stalls at {flapped.StallAngle} with {flapped.MaximumLiftCoefficient:0.00}.");
    }

    /// <summary>From zero, with room for a name above the highest peak.</summary>
    private static Axis LiftAxis(LiftCurve highest) =>
        Axis.Of("lift coefficient", "C_L", "").Including(0).Including(1.1 * highest.MaximumLiftCoefficient);

    private static IReadOnlyList<double> Angles(LiftCurve curve) => Samples.Between(
        Math.Ceiling(curve.ZeroLiftAngle.Degrees), Math.Floor((curve.StallAngle + curve.StallRounding).Degrees), 0.25);

    private static double Lift(LiftCurve curve, double degrees) => curve.LiftCoefficient(Angle.FromDegrees(degrees));
}
