using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>What is looked for in a manual, each under its name, and the aeroplane that goes with a set of values. Immutable.</summary>
internal sealed class Unknowns
{
    private readonly List<Unknown> _all = [];
    private readonly ManualContent _manual;
    private readonly PrintedCalibration[] _calibrations;
    private readonly int _lift, _oswald, _drag, _pitch, _torque, _closed, _free, _stopped, _zeroLift, _roundOut, _touchdown, _braking;
    private readonly int _gain, _flapDrag, _oswaldLoss, _shift;
    private readonly int[] _liftShares, _dragShares, _approaches;

    public Unknowns(ManualContent manual, PrintedCalibration[] calibrations)
    {
        (_manual, _calibrations) = (manual, calibrations);
        const Parts lift = Parts.Lift;
        _lift = Factor("C_Lmax, flaps up", "", lift, 1.4, 0.2, 0.7, 2.4);
        _drag = Factor("C_D0", "", Parts.Drag, 0.033, 0.3, 0.012, 0.12);
        _oswald = Amount("Oswald factor e, flaps up", "", Parts.Drag, 0.75, 0.08, 0.4, 0.98);
        int full = manual.Settings.Count - 1;
        Angle deflection = manual.Settings[full].Deflection.Value;
        (_gain, _flapDrag, _oswaldLoss, _shift) = (-1, -1, -1, -1);
        (_liftShares, _dragShares) = (new int[manual.Settings.Count], new int[manual.Settings.Count]);
        if (full > 0)
        {
            _gain = Factor("C_Lmax gain of full flaps", "of flaps up's", lift, Typical.LiftGain(deflection), 0.4, 0.001, 1.6);
            _flapDrag = Factor("drag increment of full flaps", "", Parts.FlapDrag, Typical.FlapDrag(deflection), 0.4, 0.0005, 0.25);
            _oswaldLoss = Amount("loss of e by full flaps", "of e", Parts.FlapDrag, Typical.OswaldLoss, 0.03, 0, 0.2);
            for (int i = 1; i < full; i++)
            {
                double share = manual.Settings[i].Deflection.Value / deflection;
                string name = manual.Settings[i].Name;
                _liftShares[i] = Amount($"share of that gain, flaps {name}", "", lift, Typical.LiftShare(share), 0.12, 0, 1, i);
                _dragShares[i] = Amount($"share of that drag, flaps {name}", "", Parts.FlapDrag, Typical.DragShare(share), 0.1, 0, 1, i);
            }
        }

        _pitch = Factor("propeller pitch", "of the typical one's", Parts.Propeller, 1, 0.12, 0.6, 1.6);
        double power = manual.Power is { } p
            ? (double)p.Value.Watts / (2 * Math.PI * (manual.RatedSpeed?.Value ?? Typical.HighestSpeed).RevolutionsPerSecond)
            : Typical.FullThrottle(manual.MaximumMass.Value).NewtonMeters;
        string why = manual.Power is null ? Typical.Why : "the engine's rated power and speed, installed";
        _torque = Factor("full-throttle torque", "N.m", Parts.FullThrottle, power, manual.Power is null ? 0.2 : 0.03, 25, 2900, why);
        _closed = Factor("closed-throttle torque at standstill", "N.m", Parts.ClosedThrottle, 0.23 * power, 0.15, 1, 1900, Typical.Why);
        _free = Factor("free speed with the throttle closed", "rpm", Parts.ClosedThrottle, 900, 0.07, 400, 1400);
        _stopped = Factor("drag area of the stopped propeller", "of its disc", Parts.StoppedPropeller, Typical.StoppedDragOfDisc, 0.2, 0.005, 0.2);
        _zeroLift = Amount("zero-lift angle, flaps up", "deg", Parts.Attitude, -2.4, 0.6, -6, 2);
        if (full > 0) _shift = Amount("shift of the zero-lift angle by full flaps", "deg", Parts.Attitude, -0.22 * deflection.Degrees, 1, -14, 0);
        _roundOut = Factor("time constant of the round-out", "s", Parts.RoundOut, LandingPilot.Usual.FlareTimeConstant.Seconds, 0.3, 0.3, 5);
        _touchdown = Amount("touchdown share of C_Lmax", "", Parts.RoundOut, LandingPilot.Usual.TouchdownLiftFraction, 0.07, 0.45, 0.97);
        _braking = Factor("share of the surface's braking", "", Parts.RoundOut, LandingPilot.Usual.BrakingShare, 0.25, 0.05, 1);
        _approaches = [.. Enumerable.Range(0, manual.Settings.Count).Select(Approach)];
    }

    public IReadOnlyList<Unknown> All => _all;

    /// <summary>The settings of the manual, with the tables that the aeroplane has.</summary>
    public IReadOnlyList<PrintedCalibration> Calibrations => _calibrations;

    /// <summary>
    /// Where a search begins: at what is typical, and at a propeller so fine for its engine that a climb is at the highest engine speed,
    /// which is another branch of the law.
    /// </summary>
    public IReadOnlyList<double[]> Starts()
    {
        double[] typical = new double[_all.Count], fine = new double[_all.Count];
        (fine[_pitch], fine[_torque]) = (-1, 1);
        return _manual.Climbs.Count > 0 ? [typical, fine] : [typical];
    }

    /// <summary>What the manual is flown with at these values.</summary>
    public Trial At(double[] spreads)
    {
        double Value(int unknown) => _all[unknown].Value(spreads[unknown]);
        double aspectRatio = Area.AspectRatio;
        double up = Value(_lift), e = Value(_oswald), drag = Value(_drag);
        int full = _manual.Settings.Count - 1;
        double gain = full > 0 ? Value(_gain) : 0, more = full > 0 ? Value(_flapDrag) : 0;
        double loss = full > 0 ? Value(_oswaldLoss) : 0, shift = full > 0 ? Value(_shift) : 0;
        double slope = Typical.Slope(aspectRatio);
        (double reached, double dragging) = (0, 0);
        var settings = new FlapSetting[full + 1];
        for (int i = 0; i <= full; i++)
        {
            double share = full == 0 ? 0 : _manual.Settings[i].Deflection.Value / _manual.Settings[full].Deflection.Value;
            // Lift and drag do not fall as flaps extend, whatever the rounding of the manual says.
            reached = Math.Max(reached, i == 0 ? 0 : i == full ? 1 : Value(_liftShares[i]));
            dragging = Math.Max(dragging, i == 0 ? 0 : i == full ? 1 : Value(_dragShares[i]));
            double lift = up * (1 + gain * reached);
            var curve = new LiftCurve(
                slope, Angle.FromDegrees(Value(_zeroLift) + shift * share), lift, Angle.FromDegrees(Typical.StallRoundingDegrees));
            var polar = new DragPolar(drag + more * dragging, e * (1 - loss * share), aspectRatio);
            settings[i] = new FlapSetting(
                _manual.Settings[i].Name, _manual.Settings[i].Deflection.Value, curve, polar, _calibrations[i].Table, FastestOf(i));
        }

        Length diameter = _manual.PropellerDiameter?.Value ?? Typical.Diameter(_manual.MaximumMass.Value);
        RotationalSpeed highest = _manual.RatedSpeed?.Value ?? Typical.HighestSpeed;
        var aeroplane = new Aeroplane(
            _manual.Name, _manual.Description, Area, MinimumMass, _manual.MaximumMass.Value,
            new Propeller(diameter, Typical.WithPitch(Value(_pitch)), highest),
            new ClosedThrottleEngine(Torque.FromNewtonMeters(Value(_closed)), RotationalSpeed.FromRevolutionsPerMinute(Value(_free))),
            settings, _manual.CrosswindLimit?.Value.Value, _manual.TailLimit?.Value ?? Typical.TailLimit(settings[0].Lift),
            new FullThrottleEngine(Torque.FromNewtonMeters(Value(_torque))));
        return new Trial(
            _manual, aeroplane, _calibrations, Value(_stopped),
            new(Value(_roundOut), Value(_touchdown), Value(_braking), [.. _approaches.Select((unknown, i) => new TrialApproach(Value(unknown), PrintedApproachOf(i)?.At))]));
    }

    public Wing Area => field ??= new(
        _manual.Span.Value, _manual.Area.Value, Angle.FromDegrees(Typical.IncidenceDegrees),
        _manual.IsHighWing == false ? Length.FromMeters(0.75) : Length.FromMeters(2));

    public Mass MinimumMass => _manual.MinimumMass?.Value ?? 0.68 * _manual.MaximumMass.Value;

    /// <summary>The highest indicated speed of a setting: the manual's, or such a share of the setting before as trainers have.</summary>
    public Speed FastestOf(int setting)
    {
        if (_manual.Settings[setting].MaximumSpeed is { } given)
            return given.Value.Kind == AirspeedKind.Indicated ? given.Value.Value : _calibrations[setting].Table.Indicated(given.Value.Value);
        return setting == 0 ? Speed.FromKnots(180) : 0.8 * FastestOf(setting - 1);
    }

    private int Approach(int setting)
    {
        string name = $"approach speed, flaps {_manual.Settings[setting].Name}";
        if (PrintedApproachOf(setting) is { } given)
        {
            (Speed calibrated, double error) = _calibrations[setting].Of(given.Speed, Air.StandardSeaLevel);
            return Amount(name, "KCAS", Parts.ApproachSpeed, calibrated.Knots, error, calibrated.Knots - 6 * error, calibrated.Knots + 6 * error, setting, "the manual");
        }

        return Amount(name, "of the stalling speed", Parts.ApproachSpeed, 1.3, 0.05, 1.05, 1.9, setting, "the rule: 1.3 V_S");
    }

    /// <summary>The unknown behind an approach with a setting.</summary>
    public int ApproachOf(int setting) => _approaches[setting];

    /// <summary>A setting's approach speed in the manual, and the mass that it is for.</summary>
    private (Printed<PrintedAirspeed> Speed, Mass At)? PrintedApproachOf(int setting)
    {
        Mass heaviest = _manual.MaximumMass.Value;
        if (_manual.Landings.FirstOrDefault(row => row.Flaps == setting && row.ApproachSpeed is not null) is { } landing)
            return (landing.ApproachSpeed!, landing.Mass?.Value ?? heaviest);
        if (_manual.Approaches.FirstOrDefault(row => row.Flaps == setting) is { } approach) return (approach.Speed, approach.Mass?.Value ?? heaviest);
        return setting == 0 && _manual.FlapsUp?.Speed is { } flapless ? (flapless, heaviest) : null;
    }

    private int Factor(string name, string unit, Parts parts, double typical, double share, double low, double high, string why = Typical.Why)
    {
        _all.Add(Unknown.Factor(name, unit, parts, typical, share, low, high, why));
        return _all.Count - 1;
    }

    private int Amount(
        string name, string unit, Parts parts, double typical, double amount, double low, double high, int? flaps = null, string why = Typical.Why)
    {
        _all.Add(Unknown.Amount(name, unit, parts, typical, amount, low, high, why, flaps));
        return _all.Count - 1;
    }
}
