using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of the approach speed: where the stall is, what bank and weight do to it, and what the needle hides.</summary>
public static class ApproachFigures
{
    private static readonly IReadOnlyList<double> Banks = Samples.Between(0, 65, 1);

    /// <summary>The lift coefficient that each speed needs, and the most that two flap settings have.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure LiftNeededLiftThereIs(Configuration up, Configuration full, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        Speed stallUp = up.StallSpeed(air).Calibrated, stallFull = full.StallSpeed(air).Calibrated;
        double most = up.Flaps.Lift.MaximumLiftCoefficient, mostFull = full.Flaps.Lift.MaximumLiftCoefficient;
        IReadOnlyList<double> speeds = Samples.Between(Math.Floor(stallFull.Knots) - 1, 1.5 * stallUp.Knots, 1);
        double Needed(double knots) => up.RequiredLiftCoefficient(air.CalibratedKnots(knots));
        double Reference(Configuration c) => c.ReferenceSpeed(air).Calibrated.Knots;
        return new Figure("Lift needed, lift there is", Axis.Of("airspeed", "V", "kt CAS"), Axis.Of("lift coefficient", "C_L", ""))
            .Line("needed", speeds, Needed)
            .Level("most, flaps up", most).Level("most, full flap", mostFull)
            .Mark("stall, up", stallUp.Knots, most).Mark("stall, full", stallFull.Knots, mostFull)
            .Mark($"{up.Multiple()}, up", Reference(up), Needed(Reference(up))).Mark($"{full.Multiple()}, full", Reference(full), Needed(Reference(full)))
            .Caption($"Slower flight needs a greater lift coefficient. Where the curve meets the ceiling, the wing stalls.")
            .Finding($"The lift coefficient needed rises as speed falls. It meets the flaps-up ceiling at {stallUp} CAS "
                + $"and the full-flap ceiling at {stallFull} CAS.");
    }

    /// <summary>The stalling speed of two flap settings in level turns, against their reference speeds.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="full">The same with full flap.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure StallingSpeedInALevelTurn(Configuration up, Configuration full, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(full);
        ArgumentNullException.ThrowIfNull(air);
        Angle stallingBank = up.StallingBank(up.ReferenceSpeed(air))!.Value, fullBank = full.StallingBank(full.ReferenceSpeed(air))!.Value;
        bool isAlike = up.Multiple() == full.Multiple();
        Words own = isAlike ? (Words)$"{up.Multiple()} times its stall wings level, at the same bank" : $"its reference speed, at its own bank";
        Words met = isAlike ? (Words)$"Both settings meet their reference speed at {stallingBank:0}"
            : $"Flaps up the reference speed is met at {stallingBank:0}, with full flap at {fullBank:0}";
        return new Figure("Stalling speed in a level turn", Axis.Of("angle of bank", "φ", "°"), Axis.Of("stalling speed", "V_S", "kt CAS"))
            .Line("flaps up", Banks, bank => Stall(up, air, bank))
            .Line("full flap", Banks, bank => Stall(full, air, bank))
            .Level($"{up.Multiple()}, up", up.ReferenceSpeed(air).Calibrated.Knots)
            .Level($"{full.Multiple()}, full", full.ReferenceSpeed(air).Calibrated.Knots)
            .Caption($"Bank raises the stalling speed with the square root of the load factor. "
                + $"Each curve meets its own dashed line, {own}.")
            .Finding($"Flaps up the stall rises from {up.StallSpeed(air).Calibrated} wings level to {Stall(up, air, 60):0.0} kt at 60° of bank. "
                + $"{met}.");
    }

    /// <summary>The stalling speed in the same turns at less weight; the reader moves the weight.</summary>
    /// <param name="up">The aeroplane at its maximum weight, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure TheSameTurnLighter(Configuration up, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(air);
        Airspeed approach = up.ReferenceSpeed(air);
        return new Figure("The same turn, lighter", Axis.Of("angle of bank", "φ", "°"), Axis.Of("stalling speed", "V_S", "kt CAS"))
            .Line("maximum weight", Banks, bank => Stall(up, air, bank))
            .Level("speed kept", approach.Calibrated.Knots)
            .Caption($"Flaps up. Lighter, the whole curve sinks. At its own reference speed the aeroplane stalls at the same bank; "
                + $"only speed that it does not need buys more.")
            .Moving(Axis.Of("weight", "W", "% of maximum"), Samples.Between(76, 100, 1), start: 85, (figure, share) =>
            {
                Configuration light = up.Aeroplane.Configure(up.Flaps, up.Aeroplane.MaximumMass * (share / 100));
                Speed reference = light.ReferenceSpeed(air).Calibrated;
                Angle own = light.StallingBank(light.ReferenceSpeed(air))!.Value, kept = light.StallingBank(approach)!.Value;
                return figure.Line("this weight", Banks, bank => Stall(light, air, bank))
                    .Mark($"own {up.Multiple()}", own.Degrees, reference.Knots).Mark("kept", kept.Degrees, approach.Calibrated.Knots)
                    .Finding($"At {light.Mass} the reference speed is {reference}: the wing stalls at {own:0} of bank. "
                        + $"Held at {approach.Calibrated}, it stalls at {kept:0}.");
            });
    }

    /// <summary>Indicated against calibrated airspeed, and what the multiple of the needle's stall really is.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <returns>The figure.</returns>
    public static Figure WhatTheNeedleHides(Configuration up, Air air)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(air);
        Speed stall = up.StallSpeed(air).Calibrated, needleStall = up.Indicated(up.StallSpeed(air)), ruled = needleStall * up.ReferenceMultiple;
        Speed meant = up.AtIndicated(ruled, air).Calibrated;
        var rows = up.Flaps.Calibration.Rows.Where(row => row.Indicated.Knots < 90).ToList();
        // A table of few rows reaches past the figure in one step.
        if (up.Flaps.Calibration.Rows[^1].Indicated.Knots >= 90)
            rows.Add((Speed.FromKnots(90), up.Flaps.Calibration.Calibrated(Speed.FromKnots(90))));
        List<double> needle = [.. rows.Select(row => row.Indicated.Knots)];
        return new Figure("What the needle hides, flaps up", Axis.Of("indicated airspeed", "", "kt"), Axis.Of("calibrated airspeed", "", "kt"))
            .Line("this aeroplane", needle, rows.Select(row => row.Calibrated.Knots))
            .Line("no error", needle, needle)
            .Mark("stall", needleStall.Knots, stall.Knots)
            .Mark($"{up.Multiple()} × the needle", ruled.Knots, meant.Knots)
            .Caption($"Nose high, pitot tube and static port sit askew in the airflow, and the needle reads low.")
            .Finding($"At the stall, {stall} calibrated, the needle shows {needleStall}. "
                + $"Multiplying that by {up.Multiple()} gives {ruled} on the needle, {meant} calibrated.");
    }

    /// <summary>The margin over the stall that a lull leaves in a turn, with and without what the rules add for gusts, in a turn at their steepest bank.</summary>
    /// <param name="up">The aeroplane, flaps up.</param>
    /// <param name="air">The air.</param>
    /// <param name="factor">The gust factor.</param>
    /// <returns>The figure.</returns>
    public static Figure MarginLeftInALull(Configuration up, Air air, Speed factor)
    {
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(air);
        Airspeed approach = up.ReferenceSpeed(air);
        BriefingRules rules = up.Aeroplane.Rules;
        Airspeed withGust = Airspeed.FromCalibrated(approach.Calibrated + rules.Additive(factor), air);
        string share = SchoolWords.ShareOfThe(rules), bank = QuantityText.Of(rules.BankLimit, "0");
        double turn = LoadFactor.InTurn(rules.BankLimit);
        double Margin(Airspeed speed, double lull) => 100 * up.StallMargin(speed, turn, Speed.FromKnots(lull));
        return new Figure("Margin left in a lull", Axis.Of("lull", "ΔV", "kt"), Axis.Of($"margin over the stall, {bank} bank", "", "%"))
            .Line($"{share} gust factor added", Samples.Between(0, 15, 1), lull => Margin(withGust, lull))
            .Line("nothing added", Samples.Between(0, 15, 1), lull => Margin(approach, lull))
            .Mark("lull of the gust factor", factor.Knots, Margin(approach, factor.Knots))
            .Caption($"A lull takes airspeed away faster than the aeroplane can regain it.")
            .Finding($"In a lull of {factor:kt 0}, flaps up at {bank} of bank, {Margin(approach, factor.Knots):0} % is left with nothing added "
                + $"and {Margin(withGust, factor.Knots):0} % with {share} gust factor added.");
    }

    private static double Stall(Configuration c, Air air, double bank) => c.StallSpeed(air, Angle.FromDegrees(bank)).Calibrated.Knots;
}
