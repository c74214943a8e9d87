using FlapAero.Equations;
using MathNet.Numerics;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>How the manual's pilot lands: seconds, a share of C_Lmax, a share of the braking, and each setting's approach speed.</summary>
internal sealed record TrialTechnique(double RoundOut, double TouchdownLift, double Braking, TrialApproach[] Approaches);

/// <summary>An approach speed: calibrated knots at a mass, or a multiple of the stalling speed at any.</summary>
internal sealed record TrialApproach(double Value, Mass? At);

/// <summary>
/// An aeroplane that may be the manual's, and what its manual would print: every number by the laws that everything else in this
/// library flies by. NaN where the aeroplane cannot do it.
/// </summary>
internal sealed class Trial(
    ManualContent manual, Aeroplane aeroplane, IReadOnlyList<PrintedCalibration> calibrations, double stoppedDrag, TrialTechnique technique)
{
    private readonly Dictionary<object, LandingOutcome?> _landings = [];
    private readonly Dictionary<(int, GlidePropeller, double), (double Knots, double Ratio)> _glides = [];

    // Small against the rounding of what they bend: a touchdown speed of 0.2 %, a climb of 2 ft/min.
    private const double ShareCorner = 0.004;
    private const double NewtonCorner = 3;
    private const double Vertical = 1000;

    // A trial's propeller may need more than the engine has: that is a number to learn from, and none is not.
    private readonly Propeller _unlimited = new(aeroplane.Propeller.Diameter, aeroplane.Propeller.Table, 1.6 * aeroplane.Propeller.MaximumSpeed);

    public Aeroplane Aeroplane { get; } = aeroplane;

    public TrialTechnique Technique { get; } = technique;

    public Configuration Configure(int flaps, Printed<Mass>? mass) =>
        Aeroplane.Configure(Aeroplane.FlapSettings[flaps], mass?.Value ?? manual.MaximumMass.Value);

    /// <summary>Calibrated stalling speed, kt.</summary>
    public double StallSpeed(PrintedStall row) =>
        Configure(row.Flaps, row.Mass).StallSpeed(Air.StandardSeaLevel, row.Bank?.Value ?? Angle.Zero).Calibrated.Knots;

    /// <summary>Speed in calibrated knots and ratio of the flattest glide.</summary>
    public (double Knots, double Ratio) BestGlide(PrintedGlide row)
    {
        Configuration configuration = Configure(row.Flaps, row.Mass);
        (int, GlidePropeller, double) key = (row.Flaps, row.Propeller, configuration.Mass.Kilograms);
        if (_glides.TryGetValue(key, out (double, double) known)) return known;
        double slowest = configuration.StallSpeed(Air.StandardSeaLevel).SiTrue;
        double Steepness(double speed) => 1 / GlideRatio(configuration, row.Propeller, speed);
        double speed = Flattest(Steepness, slowest, 2.2 * slowest);
        return _glides[key] = (
            new FlapAero.Airspeed(speed, Air.StandardSeaLevel).Calibrated.Knots, GlideRatio(configuration, row.Propeller, speed));
    }

    /// <summary>Glide ratio at a speed.</summary>
    public double GlideRatio(PrintedGlide row, Speed calibrated) => GlideRatio(
        Configure(row.Flaps, row.Mass), row.Propeller, FlapAero.Airspeed.FromCalibrated(calibrated, Air.StandardSeaLevel).SiTrue);

    /// <summary>Engine speed in level flight, rpm.</summary>
    public double LevelEngineSpeed(PrintedLevelFlight row, Speed calibrated)
    {
        Airspeed airspeed = FlapAero.Airspeed.FromCalibrated(calibrated, row.Day.Air);
        Configuration clean = Configure(0, row.Mass);
        double thrust = GlideLaws.Thrust(
            airspeed.SiDynamicPressure, Area, clean.Flaps.Drag.ZeroLiftDragCoefficient, clean.Flaps.Drag.InducedFactor, clean.Weight.Newtons, pathAngle: 0);
        return _unlimited.EngineSpeedFor(airspeed, Force.FromNewtons(thrust))?.RevolutionsPerMinute ?? double.NaN;
    }

    /// <summary>Rate of climb at full throttle, ft/min: with the whole torque, or at the highest engine speed where that comes first.</summary>
    public double ClimbRate(PrintedClimb row, Speed calibrated)
    {
        Airspeed airspeed = FlapAero.Airspeed.FromCalibrated(calibrated, row.Day.Air);
        double whole = _unlimited.AtFullThrottle(airspeed, Aeroplane.FullThrottle!).Thrust.Newtons;
        double fastest = Aeroplane.Propeller.Running(airspeed, Aeroplane.Propeller.MaximumSpeed).Thrust.Newtons;
        return -Configure(row.Flaps, row.Mass).Glide(airspeed, Force.FromNewtons(Smaller(whole, fastest, NewtonCorner))).SinkRate.FeetPerMinute;
    }

    /// <summary>A landing of the table; none where it cannot happen.</summary>
    public LandingOutcome? Land(PrintedLanding row) => _landings.TryGetValue(row, out LandingOutcome? known)
        ? known : _landings[row] = Fly(Configure(row.Flaps, row.Mass), row.Flaps, row.Surface, row.Day.Air, row.Headwind?.Value ?? Speed.Zero);

    /// <summary>The landing at the maximum mass in a calm at standard sea level, from 50 ft, in metres.</summary>
    public double FromFiftyFeet(int flaps) =>
        Fly(Configure(flaps, null), flaps, RunwaySurface.DryPaved, Air.StandardSeaLevel, Speed.Zero)?.StopDistance ?? double.NaN;

    /// <summary>The setup of a landing as the manual's pilot flies it.</summary>
    public LandingSetup Setup(Configuration configuration, int flaps, RunwaySurface surface, Air air, Speed headwind) => LandingSetup.For(
        configuration, new Runway { Surface = surface }, Pilot(flaps), air, headwind);

    /// <summary>Share of C_Lmax at which the hold-off ends, whether the wing or the tail ends it.</summary>
    public double HeldOffTo(int flaps)
    {
        LiftCurve lift = Aeroplane.FlapSettings[flaps].Lift;
        Angle highest = Aeroplane.TailLimitAttitude!.Value + Aeroplane.Wing.Incidence;
        double tail = highest < lift.StallAngle ? lift.LiftCoefficient(highest) / lift.MaximumLiftCoefficient : 1;
        return Smaller(tail, Technique.TouchdownLift, ShareCorner);
    }

    /// <summary>The smaller of two, the corner between them rounded off: a search by slopes does not find its way out of a corner.</summary>
    private static double Smaller(double first, double second, double corner) =>
        Math.Min(first, second) - corner * Math.Log(1 + Math.Exp(-Math.Abs(first - second) / corner));

    /// <summary>The manual's pilot with a setting; an approach speed keeps its margin over the stall at every mass.</summary>
    public LandingPilot Pilot(int flaps)
    {
        TrialApproach approach = Technique.Approaches[flaps];
        double multiple = approach.At is { } mass
            ? approach.Value / Aeroplane.Configure(Aeroplane.FlapSettings[flaps], mass).StallSpeed(Air.StandardSeaLevel).Calibrated.Knots
            : approach.Value;
        return LandingPilot.Usual with
        {
            SpeedMultiple = Math.Clamp(multiple, 1, 2),
            FlareTimeConstant = Duration.FromSeconds(Technique.RoundOut),
            TouchdownLiftFraction = HeldOffTo(flaps),
            BrakingShare = Technique.Braking,
        };
    }

    private LandingOutcome? Fly(Configuration configuration, int flaps, RunwaySurface surface, Air air, Speed headwind)
    {
        try
        {
            LandingSetup setup = Setup(configuration, flaps, surface, air, headwind);
            LandingOutcome outcome = LandingSolver.Solve(setup.Checked(), voice: setup.Voice);
            return outcome.Refusal == LandingRefusal.None ? outcome : null;
        }
        catch (RefusedInputException)
        {
            return null;
        }
    }

    /// <summary>The speed of the least steep glide; the slowest where it is flattest there. The library's own search may leave its limits.</summary>
    private static double Flattest(Func<double, double> steepness, double slowest, double fastest)
    {
        // Beyond the propeller's table there is no glide, and the library's search stops at what is no number.
        double Steep(double speed) => steepness(speed) is var steep && double.IsFinite(steep) ? steep : Vertical;
        double atSlowest = Steep(slowest);
        if (!(Steep(slowest * 1.001) < atSlowest)) return slowest;
        double Inside(double speed) => speed < slowest ? atSlowest * (1 + slowest - speed) : Steep(speed);
        return Math.Max(slowest, FindMinimum.OfScalarFunctionConstrained(Inside, slowest, fastest, 1e-5, 200));
    }

    private double GlideRatio(Configuration configuration, GlidePropeller propeller, double speed)
    {
        var airspeed = new Airspeed(speed, Air.StandardSeaLevel);
        double pressure = airspeed.SiDynamicPressure;
        double? thrust = propeller switch
        {
            GlidePropeller.Idling => Aeroplane.Propeller.Idling(airspeed, Aeroplane.Engine)?.Thrust.Newtons,
            GlidePropeller.Stopped => -PropellerLaws.StoppedDrag(pressure, Aeroplane.Propeller.Diameter.Meters, stoppedDrag),
            _ => 0,
        };
        if (thrust is not { } along) return double.NaN;
        DragPolar polar = configuration.Flaps.Drag;
        double sine = GlideLaws.SinPathAngle(
            pressure, Area, polar.ZeroLiftDragCoefficient, polar.InducedFactor, configuration.Weight.Newtons, along);
        return sine is < 0 and > -1 ? Math.Sqrt(1 - sine * sine) / -sine : double.NaN;
    }

    private double Area => Aeroplane.Wing.Area.SquareMeters;

    public IReadOnlyList<PrintedCalibration> Calibrations => calibrations;
}
