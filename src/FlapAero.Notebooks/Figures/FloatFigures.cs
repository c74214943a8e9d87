using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of the round-out and the float: where the wheels touch, how speed goes, and what the ground does.</summary>
public static class FloatFigures
{
    /// <summary>The height of the wheels from the round-out to the touch; the reader moves how much too fast it began.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <param name="guess">The reader's prediction, from the touchdown on speed, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure FromTheRoundOutToTheWheels(
        Configuration up, Configuration full, Air air, Length guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        Length touchUp = up.Land(air).TouchdownDistance, touchFull = full.Land(air).TouchdownDistance;
        IEnumerable<(double, double)> Path(LandingResult r) => Float(r).Select(p => (p.Distance.Feet, p.Height.Feet));
        return new Figure(
                "From the round-out to the wheels", Axis.Of("distance from the threshold", "x", "ft"), Axis.Of("height of the wheels", "h", "ft"))
            .Mark("on speed", touchFull.Feet, 0).Mark("on speed", touchUp.Feet, 0)
            .PredictedAcross(guess, from: touchUp.Feet, prediction: prediction)
            .Caption($"The height scale is stretched. Extra speed hardly moves the round-out; it moves the touchdown.")
            .Moving(Axis.Of("too fast by", "ΔV", "kt"), Samples.Between(0, 12, 1), start: 5, (figure, knots) =>
            {
                Speed fast = Speed.FromKnots(knots);
                LandingResult flownUp = up.Land(air, fast), flownFull = full.Land(air, fast);
                return figure.Line("full flap", Path(flownFull)).As(Palette.FullFlap).Line("flaps up", Path(flownUp)).As(Palette.FlapsUp)
                    .Reading("the wheels touch, up", $"{flownUp.TouchdownDistance}")
                    .Reading("the wheels touch, full", $"{flownFull.TouchdownDistance}")
                    .Finding($"Too fast by {fast:0}, the wheels touch {flownUp.TouchdownDistance - touchUp} later with flaps up, "
                        + $"{flownUp.TouchdownDistance} from the threshold; with full flap {flownFull.TouchdownDistance - touchFull} later.");
            });
    }

    /// <summary>The airspeed that is still to lose while the wheels are held off, flaps up and full.</summary>
    /// <param name="up">The landing with flaps up, ten knots too fast.</param>
    /// <param name="full">The same with full flap.</param>
    /// <returns>The figure.</returns>
    public static Figure HowTheSpeedGoes(LandingResult up, LandingResult full)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        Speed ten = Speed.FromKnots(10);
        IEnumerable<(double, double)> Speeds(LandingResult r) => r.Trajectory.Where(p => p.Stage == LandingStage.HoldOff)
            .Select(p => ((p.Time - r.Stage(LandingStage.HoldOff).Start).Seconds, Math.Max(0, (p.Airspeed - r.HoldOffEndAirspeed).Knots)));
        return new Figure("How the speed goes", Axis.Of("time since the round-out began", "t", "s"), Axis.Of("airspeed still to lose", "", "kt"))
            .Line("flaps up", Speeds(up))
            .Line("full flap", Speeds(full))
            .Caption($"Both crossed the threshold {ten:0} too fast. The throttle closes over the first {LandingPilot.Usual.PowerCutTime:0}; "
                + $"zero is where the hold-off ends.")
            .Finding($"With the throttle closed, flaps up, {ten:0} take {up.TimeToLose(ten)} to go; round-out and float last "
                + $"{up.Stage(LandingStage.HoldOff).Lasts}. With full flap it is {full.TimeToLose(ten)} and "
                + $"{full.Stage(LandingStage.HoldOff).Lasts}.");
    }

    /// <summary>The share of the induced drag that the ground takes off, by the height of the wheels.</summary>
    /// <param name="wing">The wing.</param>
    /// <param name="roundOut">The height of the wheels where the round-out begins.</param>
    /// <returns>The figure.</returns>
    public static Figure WhatTheGroundTakes(Wing wing, Length roundOut)
    {
        ArgumentNullException.ThrowIfNull(wing);
        double Taken(double wheels) =>
            100 * (1 - GroundEffect.InducedDragFactor(Length.FromFeet(wheels) + wing.HeightOnWheels, wing.Span));
        double flare = roundOut.Feet;
        return new Figure(
                "What the ground takes off the induced drag", Axis.Of("height of the wheels", "h", "ft"),
                Axis.Of("taken off the induced drag", "1 − k_g", "%"))
            .Line("this wing", Samples.Between(0, 50, 0.5), Taken)
            .Mark("wheels on the runway", 0, Taken(0))
            .Mark("round-out begins", flare, Taken(flare))
            .Caption($"A fit to Prandtl's theory. What counts is the height of the wing against its span: "
                + $"{wing.HeightOnWheels / wing.Span:0.00} of it with the wheels on the runway.")
            .Finding($"With the wheels on the runway the ground takes {Taken(0):0} % of the induced drag, "
                + $"where the round-out begins {Taken(flare):0} %, at the threshold hardly any.");
    }

    /// <summary>The airspeed along one float as it is, and with all of the induced drag.</summary>
    /// <param name="asItIs">The landing.</param>
    /// <param name="noGround">The same far from the ground.</param>
    /// <returns>The figure.</returns>
    public static Figure TheSameFloatWithoutTheGround(LandingResult asItIs, LandingResult noGround)
    {
        ArgumentNullException.ThrowIfNull(asItIs);
        ArgumentNullException.ThrowIfNull(noGround);
        IEnumerable<(double, double)> Along(LandingResult r) =>
            Float(r).Select(p => ((p.Distance - r.FlareStartDistance).Feet, p.Airspeed.Knots));
        return new Figure(
                "The same float without the ground", Axis.Of("distance since the round-out began", "", "ft"), Axis.Of("airspeed", "V", "kt true"))
            .Line("as it is", Along(asItIs)).Line("no ground effect", Along(noGround))
            .Mark("touch", asItIs.Float.Feet, asItIs.TouchdownAirspeed.Knots)
            .Mark("touch", noGround.Float.Feet, noGround.TouchdownAirspeed.Knots)
            .Caption($"Flaps up, on speed. Nearly the same beginning and end; less drag between.")
            .Finding($"Round-out and float take {asItIs.Float} as it is, and {noGround.Float} with all of the induced drag: "
                + $"{Ratio.FromPercent(100 * (1 - noGround.Float / asItIs.Float)):0} of it is the ground's.");
    }

    /// <summary>The share of the weight that the wing still carries when it is forced on, nose up and level.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure WhatTheWingStillCarries(Configuration up, Configuration full, Air air)
    {
        IReadOnlyList<double> early = Samples.Between(1, 10, 0.5);
        double NoseUp(Configuration c, double knots) => 100 * c.ForcedOn(air, Speed.FromKnots(knots)).WeightCarried;
        double Level(Configuration c, double knots) => 100 * c.ForcedOn(air, Speed.FromKnots(knots)).WeightCarriedNoseDown;
        return new Figure(
                "What the wing still carries", Axis.Of("forced on, above the end of the float", "", "kt"), Axis.Of("share of the weight", "L/W", "%"))
            .Line("full flap, nose up", early, k => NoseUp(full, k)).As(Palette.FullFlap)
            .Line("full flap, level", early, k => Level(full, k))
            .Line("flaps up, nose up", early, k => NoseUp(up, k)).As(Palette.FlapsUp)
            .Line("flaps up, level", early, k => Level(up, k)).Level("all of the weight", 100)
            .Caption($"Just after the touch, in the attitude of a touchdown that is held off, and level. "
                + $"The model's aeroplane stays down; a real one need not.")
            .Finding($"Forced on {Speed.FromKnots(8):0} early, full flap, the wing carries {Level(full, 8):0} % of the weight level and "
                + $"{NoseUp(full, 8):0} % nose up; flaps up, {Level(up, 8):0} and {NoseUp(up, 8):0} %.");
    }

    private static IEnumerable<LandingPoint> Float(LandingResult r) => r.Trajectory
        .Where(p => p.Stage is LandingStage.HoldOff or LandingStage.Settling).DistinctBy(p => Math.Round(p.Distance.Feet));

    /// <summary>The runway over the nose, flaps up and with full flap; the reader moves down the usual path to the threshold.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <returns>The picture.</returns>
    public static MovingPicture DownToTheThreshold(Configuration up, Configuration full, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        PilotsView Seat(string name, Configuration c, double feet) =>
            PilotsView.OnPath(name, c, c.ReferenceSpeed(air), LandingPilot.Usual.PathAngle, before: Length.FromFeet(feet));
        return MovingPicture.Of(
            Axis.Of("before the threshold", "", "ft"), Samples.Between(0, 1500, 100), start: 500,
            feet => Charts.Pictures.ViewOverTheNose(
                    "Down to the threshold", Quillmere.Runway24, Seat("flaps up", up, feet), Seat("full flap", full, feet))
                .LookFor($"The ring stays where it is; what lies nearer goes under the nose. Where would you look?"));
    }
}
