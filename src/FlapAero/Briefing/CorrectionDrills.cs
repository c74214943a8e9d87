using FlapAero.Equations;
using MathNet.Numerics.Integration;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// What goes wrong between the gate and the wheels, in the numbers of one flight without flaps: too fast, too slow, too high, too low, a
/// balloon, a bounce, drift; and the go-around that ends each. A drill that has no number says why. Immutable. A training aid: the approved
/// manual and a qualified instructor decide.
/// </summary>
public sealed class CorrectionDrills
{
    // The integrands bend little over ten knots: four points would do.
    private const int QuadraturePoints = 8;

    private readonly Configuration _up;
    private readonly Airspeed _approach;
    private readonly Speed _headwind;
    private readonly Angle _path;
    private readonly BriefedLanding _landing;

    private CorrectionDrills(Briefing briefing)
    {
        Briefing = briefing;
        BriefedSpeeds speeds = briefing.Flapless.Speeds;
        (_up, _approach, _headwind) = (speeds.Configuration, speeds.Approach, briefing.Headwind);
        (_landing, _path) = (briefing.Flapless.Landing, briefing.Flapless.Landing.Setup.Technique.PathAngle);
        TooFast = Tried(Fast);
        TooSlow = Tried(Slow);
        TooHigh = Tried(High);
        TooLow = Tried(Low);
        Balloon = Tried(Ballooned);
        Bounce = Tried(Bounced);
        Drift = Tried(Drifted);
        GoArounds = [.. Cases()];
    }

    /// <summary>How much too high or too low the drills are: an error that is seen from the seat, and that there is still final for.</summary>
    public static Length HeightError { get; } = Length.FromFeet(50);

    /// <summary>Height of the balloon: about that of a door's upper edge, invented.</summary>
    public static Length BalloonHeight { get; } = Length.FromFeet(10);

    /// <summary>β of the slip: what rudder and aileron of a trainer hold, invented.</summary>
    public static Angle Sideslip { get; } = Angle.FromDegrees(15);

    /// <summary>A hot day on a high aerodrome, invented: 6 000 ft and 30 °C.</summary>
    public static Air HotAndHigh { get; } = Air.AtTemperature(Length.FromFeet(6000), Temperature.FromDegreesCelsius(30));

    /// <summary>The flight.</summary>
    public Briefing Briefing { get; }

    /// <summary>Too fast by <see cref="BriefingRules.FastBy"/>.</summary>
    public Outcome<TooFastDrill> TooFast { get; }

    /// <summary>Too slow by <see cref="BriefingRules.SlowBy"/>.</summary>
    public Outcome<TooSlowDrill> TooSlow { get; }

    /// <summary>Too high by <see cref="HeightError"/>.</summary>
    public Outcome<TooHighDrill> TooHigh { get; }

    /// <summary>Too low by <see cref="HeightError"/>.</summary>
    public Outcome<TooLowDrill> TooLow { get; }

    /// <summary>A balloon of <see cref="BalloonHeight"/>.</summary>
    public Outcome<BalloonDrill> Balloon { get; }

    /// <summary>A touchdown forced on <see cref="BriefingRules.FastBy"/> above the speed at the float's end, after a threshold crossed as much too fast.</summary>
    public Outcome<BounceDrill> Bounce { get; }

    /// <summary>Drift in the day's wind across.</summary>
    public Outcome<DriftDrill> Drift { get; }

    /// <summary>The go-around from idle: flaps up and full flap today, then both at the maximum mass in <see cref="HotAndHigh"/>.</summary>
    public IReadOnlyList<GoAroundCase> GoArounds { get; }

    /// <summary>The drills of a briefed flight.</summary>
    /// <remarks>
    /// Formula: energy heights as <see cref="EnergyHeight"/>; time t = ∫ m dV/(T_needed − T) and final ∫ V_g dt on the path, T_needed = D + W sin γ;
    /// height Δh takes Δh/(tan γ_g − tan γ_p) of final; a balloon rises in 2√(h/((n − 1)g)) and falls at √(2(n − 1)g h), n that of
    /// <see cref="GoAround.PullUpLoadFactor"/>; floats and forced touchdowns are the landing's. On final the mean wind counts whole, on the runway as
    /// planned with. Range: any briefed flight. Source: [anderson-itf], [canonical-landing], [side-force] for the slip.
    /// </remarks>
    /// <param name="briefing">The flight.</param>
    /// <returns>The drills.</returns>
    /// <exception cref="ArgumentNullException">No briefing.</exception>
    /// <example><code>CorrectionDrills.For(Briefing.For(DemoBriefings.Flight).Value).TooFast.Value.WorthInHeight.Feet // 70.6</code></example>
    public static CorrectionDrills For(Briefing briefing)
    {
        ArgumentNullException.ThrowIfNull(briefing);
        return new(briefing);
    }

    private BriefingRules Rules => Briefing.Request.Rules;

    private TooFastDrill Fast()
    {
        Airspeed fast = By(Rules.FastBy);
        double Slows(double speed) => -Gains(speed, Idle) is > 0 and var slows
            ? slows : throw new NotToday("With the throttle closed it does not slow down on the path.");
        Duration time = Lasts(_approach, fast, Slows);
        double Ground(double speed) => OnPath(AtTrue(speed)).GroundSpeed(_headwind).MetersPerSecond;
        double metres = GaussLegendreRule.Integrate(v => Ground(v) / Slows(v), _approach.SiTrue, fast.SiTrue, QuadraturePoints);
        LandingResult landing = Landed(Over(fast));
        Speed? most = null;
        for (int knots = 0; knots <= Rules.FastBy.Knots && InFirstThird(Landed(Over(By(Speed.FromKnots(knots))))); knots++)
            most = Speed.FromKnots(knots);
        return new(
            EnergyHeight.OfExcessSpeed(_approach.True, fast.True - _approach.True), Length.FromMeters(metres), time, landing,
            landing.TouchdownDistance - _landing.Result.TouchdownDistance, most);
    }

    private TooSlowDrill Slow()
    {
        Airspeed slow = By(-Rules.SlowBy);
        RotationalSpeed engine = _up.EngineSpeedOnPathOverGround(slow, _path, _headwind)
            ?? throw new NotToday("The propeller gives no thrust that holds the path at that speed.");
        Force Full(Airspeed at) => _up.ClimbAtFullThrottle(at)!.Thrust;
        bool gains = _up.Aeroplane.FullThrottle is not null && Gains(slow.SiTrue, Full) > 0 && Gains(_approach.SiTrue, Full) > 0;
        Duration? time = gains ? Lasts(slow, _approach, speed => Gains(speed, Full)) : null;
        return new(
            _up.StallMargin(slow), _up.StallMargin(slow, lull: Briefing.Request.Wind.GustFactor), engine, time,
            -EnergyHeight.OfExcessSpeed(_approach.True, slow.True - _approach.True));
    }

    private TooHighDrill High()
    {
        SteadyFlight glide = _up.Glide(_approach, Idle(_approach));
        double beyond = Math.Tan(-glide.AngleOverGround(_headwind).Radians) - Math.Tan(_path.Radians);
        if (!(beyond > 0)) throw new NotToday("The closed throttle comes down no steeper than the path: go around.");
        Length final = HeightError / beyond;
        LandingSetup higher = _landing.Setup with { Technique = _landing.Setup.Technique with { ThresholdHeight = _landing.ThresholdHeight + HeightError } };
        return new(
            final, final / glide.GroundSpeed(_headwind), (Rules.StabilisedBy - _landing.ThresholdHeight) / Math.Tan(_path.Radians) * beyond,
            Landed(higher).TouchdownDistance - _landing.Result.TouchdownDistance, ForwardSlip.Steepens(glide, Sideslip));
    }

    private TooLowDrill Low()
    {
        Length away = HeightError / Math.Tan(_path.Radians);
        SteadyFlight level = _up.OnPath(_approach, Angle.Zero);
        RotationalSpeed engine = _up.EngineSpeedOnPath(_approach, Angle.Zero)
            ?? throw new NotToday("The propeller does not hold level flight at the briefed speed.");
        Speed paid = -EnergyHeight.OfExcessHeight(_approach.True, -HeightError);
        return new(away, away / level.GroundSpeed(_headwind), engine, paid, _up.StallMargin(_approach, lull: paid));
    }

    private BalloonDrill Ballooned()
    {
        double pull = (GoAround.PullUpLoadFactor - 1) * StandardConstants.Gravity, height = BalloonHeight.Meters;
        Airspeed start = Airspeed.FromTrue(_landing.Result.FlareStartAirspeed, _approach.Air);
        double slows = (_up.OnPath(start, Angle.Zero).Thrust - Idle(start)).Newtons / _up.Mass.Kilograms;
        double top = (start.True + EnergyHeight.OfExcessHeight(start.True, -BalloonHeight)).MetersPerSecond - slows * 2 * Math.Sqrt(height / pull);
        Airspeed there = Airspeed.FromTrue(Speed.FromMetersPerSecond(top), _approach.Air);
        double stall = _up.StallSpeed(_approach.Air).SiTrue;
        return new(
            start.True - there.True, _up.StallMargin(there), Duration.FromSeconds(Math.Max(0, (top - stall) / slows)),
            Speed.FromMetersPerSecond(Math.Sqrt(2 * pull * height)), _landing.Result.TouchdownSink);
    }

    private BounceDrill Bounced()
    {
        LandingSetup fast = Over(By(Rules.FastBy));
        ForcedTouchdown forced = FlapAero.Landing.ForceOnEarly(fast, Landed(fast).HoldOffEndAirspeed, Rules.FastBy);
        if (!forced.Outcome.Happened) throw new NotToday(forced.Explanation);
        double excess = Math.Max(0, forced.LiftAvailable - 1) * StandardConstants.Gravity;
        return new(forced.WeightCarriedNoseDown, forced.LiftAvailable, Length.FromMeters(0.5 * excess));
    }

    private DriftDrill Drifted()
    {
        Speed across = Briefing.CrosswindInGusts;
        double forward = _approach.SiTrue * Math.Cos(OnPath(_approach).PathAngle.Radians);
        double crab = TrackLaws.Crab(across.MetersPerSecond, forward)
            ?? throw new NotToday("The wind across is faster than the aeroplane.");
        LandingResult landing = _landing.Result;
        return new(
            across, Angle.FromRadians(crab).ToUnit(AngleUnit.Degree),
            landing.Stage(LandingStage.HoldOff).Lasts + landing.Stage(LandingStage.Settling).Lasts, Length.FromMeters(Math.Abs(landing.DriftInFloat(across).Meters)));
    }

    private IEnumerable<GoAroundCase> Cases()
    {
        Aeroplane aeroplane = Briefing.Request.Aeroplane;
        BriefedSpeeds[] today = [Briefing.Flapless.Speeds, .. Briefing.FullFlaps.Speeds is { } full ? [full] : Array.Empty<BriefedSpeeds>()];
        foreach (BriefedSpeeds speeds in today) yield return FromIdle(speeds.Configuration, speeds.Approach);
        foreach (FlapSetting flaps in today.Select(speeds => speeds.Configuration.Flaps))
        {
            Configuration heavy = aeroplane.Configure(flaps);
            yield return FromIdle(heavy, heavy.ReferenceSpeed(HotAndHigh, Rules.MultipleOf(aeroplane, flaps)));
        }
    }

    private GoAroundCase FromIdle(Configuration configuration, Airspeed at) => new(configuration, at, Tried(() =>
    {
        Force idle = configuration.IdleThrust(at) ?? throw new NotToday(NoIdle);
        Outcome<GoAround> goAround = GoAround.From(configuration.Glide(at, idle));
        return goAround.Happened ? goAround.Value : throw new NotToday(goAround.Explanation);
    }));

    private string NoIdle => $"The propeller of {Briefing.Request.Aeroplane.Name} does not idle steadily at that speed.";

    private Force Idle(Airspeed at) => _up.IdleThrust(at) ?? throw new NotToday(NoIdle);

    private SteadyFlight OnPath(Airspeed at) => _up.OnPathOverGround(at, _path, _headwind);

    private Airspeed By(Speed change) => Airspeed.FromCalibrated(_approach.Calibrated + change, _approach.Air);

    private Airspeed AtTrue(double speed) => Airspeed.FromTrue(Speed.FromMetersPerSecond(speed), _approach.Air);

    /// <summary>(T − T_needed)/m on the path: at idle below zero, at full throttle above.</summary>
    private double Gains(double speed, Func<Airspeed, Force> thrust)
    {
        Airspeed at = AtTrue(speed);
        return (thrust(at) - OnPath(at).Thrust).Newtons / _up.Mass.Kilograms;
    }

    private static Duration Lasts(Airspeed from, Airspeed to, Func<double, double> rate) =>
        Duration.FromSeconds(GaussLegendreRule.Integrate(v => 1 / rate(v), from.SiTrue, to.SiTrue, QuadraturePoints));

    private LandingSetup Over(Airspeed at) => _landing.Setup with { Technique = _landing.Setup.Technique with { ThresholdSpeed = at.True } };

    private static LandingResult Landed(LandingSetup setup)
    {
        Outcome<LandingResult, LandingRefusal> landing = FlapAero.Landing.Fly(setup);
        return landing.Happened ? landing.Value : throw new NotToday(landing.Explanation);
    }

    private bool InFirstThird(LandingResult landing) =>
        BriefedLanding.RoundedUp(landing.TouchdownDistance) <= BriefedLanding.RoundedDown(Briefing.Request.Runway.EndOfFirstThird);

    private static Outcome<T> Tried<T>(Func<T> drill)
        where T : class
    {
        try
        {
            return new(drill());
        }
        catch (NotToday why)
        {
            return new(why.Message);
        }
        catch (ArgumentException refused)
        {
            return new(PlainWords.Of(refused));
        }
    }

    /// <summary>Why a drill has no number on this day.</summary>
    private sealed class NotToday(string why) : Exception(why);
}
