using FlapAero.Equations;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>What a habit is worth, or costs, in one of the demo aeroplanes' landings. Metres, and shares as fractions.</summary>
internal sealed class Practice(RuleLandings landings)
{
    /// <summary>f: the wheels are put on at this share of C_Lmax instead of being held off.</summary>
    public const double ForcedOnFraction = 0.65;

    /// <summary>Below this share of the touchdown speed the handbook sees no more use in the drag.</summary>
    public const double LimitOfDrag = 0.65;

    /// <summary>To this share of the touchdown speed a roll without brakes is followed.</summary>
    public const double Unbraked = 0.5;

    // A share of the touchdown speed has to lie below one.
    private const double AtOnce = 0.999;

    private static readonly Speed Excess = Speed.FromKnots(10);
    private static readonly Length Tolerance = Length.FromFeet(400);

    private WholeLanding Canonical => landings.Canonical;

    /// <summary>Ten knots too fast at the threshold.</summary>
    public WholeLanding TenKnotsFast => Canonical.Faster(Excess);

    public WholeLanding FiveKnotsSlow => Canonical.Faster(-Speed.FromKnots(5));

    /// <summary>Knots too fast at the threshold that put the touchdown 400 ft further on.</summary>
    public double KnotsForTheTolerance => Brent.FindRoot(
        knots => Canonical.Faster(Speed.FromKnots(knots)).Air - Canonical.Air - Tolerance.Meters, 0, 20, 1e-9);

    /// <summary>The shortest runway of which the touchdown is in the first third.</summary>
    public double RunwayOfThreeTimesTheAir => 3 * Canonical.Air;

    /// <summary>The throttle closing across the threshold instead of in the round-out.</summary>
    public WholeLanding ThrottleClosedFromTheThreshold => Canonical.ThrottleClosedFromTheThreshold();

    public WholeLanding FiveKnotsSlowThrottleClosed => FiveKnotsSlow.ThrottleClosedFromTheThreshold();

    /// <summary>A lower threshold: everything after it is the same.</summary>
    public WholeLanding ThirtyFeetOverTheThreshold => Canonical.With(input => input with { ThresholdHeight = Length.FromFeet(30).Meters });

    /// <summary>The nose comes down at a share of the touchdown speed; without brakes the wheels roll on.</summary>
    public WholeLanding NoseLowered(double share, bool brakes) => Canonical.With(input => input with
    {
        NoseLowerSpeedFraction = share,
        BrakingFriction = brakes ? input.BrakingFriction : input.RollingFriction,
    });

    public WholeLanding NoseLoweredAtOnce(bool brakes) => NoseLowered(AtOnce, brakes);

    /// <summary>Metres that holding the nose off saves where the brakes stay off, down to half the touchdown speed.</summary>
    public double NoseHighSavesWithoutBrakes =>
        UnbrakedDistance(AtOnce) - UnbrakedDistance(LandingPilot.Usual.NoseLowerSpeedFraction);

    /// <summary>
    /// From the touchdown speed to half of it without brakes, the nose down from a share of it on. Not to the stop: the idling propeller
    /// pulls almost as much as the wheels' rolling holds, and one of the trainers never stops.
    /// </summary>
    public double UnbrakedDistance(double share)
    {
        double touchdown = Canonical.TouchdownSpeed, lowered = share * touchdown;
        return RollForces.Distance(touchdown, lowered, speed => RollForces.NoseHigh(Canonical, speed))
            + RollForces.Distance(
                lowered, Unbraked * touchdown, speed => RollForces.Level(Canonical, speed, Canonical.Input.RollingFriction));
    }

    /// <summary>Metres that it costs on a dry runway where the brakes would have been on at once.</summary>
    public double NoseHighCostsWithBrakes => Canonical.Roll - NoseLoweredAtOnce(brakes: true).Roll;

    /// <summary>Ten knots too fast at the threshold and put on early.</summary>
    public WholeLanding ForcedOn => TenKnotsFast.With(input => input with { TouchdownLiftFraction = ForcedOnFraction });

    /// <summary>A touchdown ten per cent faster, from a threshold speed ten per cent higher: the handbook's landing speed.</summary>
    public WholeLanding TenPercentFasterTouchdown => Canonical.With(input => input with
    {
        ThresholdSpeed = 1.1 * input.ThresholdSpeed,
        TouchdownLiftFraction = input.TouchdownLiftFraction / 1.21,
    });

    /// <summary>Share of the weight that the wing carries when the nose comes down at the touchdown speed.</summary>
    public static double LiftWithTheNoseDown(WholeLanding landing) =>
        AirspeedLaws.DynamicPressure(landing.Input.Density, landing.TouchdownSpeed)
        * landing.Input.WingArea * landing.Input.LevelLift / landing.Weight;

    /// <summary>Share of the roll's energy that drag takes.</summary>
    public double DragShareOfTheStop =>
        DragShare(1, LandingPilot.Usual.NoseLowerSpeedFraction) + DragShare(LandingPilot.Usual.NoseLowerSpeedFraction, 0);

    /// <summary>Drag's share of what holds back, nose held off, at a share of the touchdown speed: no pull of the propeller in it.</summary>
    public double DragShareOfTheSlowing(double share)
    {
        RollForces forces = RollForces.NoseHigh(Canonical, share * Canonical.TouchdownSpeed);
        return forces.Drag / (forces.Drag + forces.Friction + Math.Max(0, forces.Propeller));
    }

    /// <summary>The slowing in g, nose held off, at a share of the touchdown speed.</summary>
    public double SlowingNoseHigh(double share) => RollForces.NoseHigh(Canonical, share * Canonical.TouchdownSpeed).All;

    /// <summary>The slowing in g, nose down and braking.</summary>
    public double SlowingBraked(double share) =>
        RollForces.Level(Canonical, share * Canonical.TouchdownSpeed, Canonical.Input.BrakingFriction).All;

    /// <summary>The braking friction at which nose up and nose down slow alike, at a share of the touchdown speed.</summary>
    public double FrictionThatDragIsWorth(double share)
    {
        double speed = share * Canonical.TouchdownSpeed;
        double withoutFriction = RollForces.Level(Canonical, speed, 0).All;
        double perFriction = RollForces.Level(Canonical, speed, 1).Friction;
        return (RollForces.NoseHigh(Canonical, speed).All - withoutFriction) / perFriction;
    }

    // Of the energy of the whole roll.
    private double DragShare(double fast, double slow)
    {
        double touchdown = Canonical.TouchdownSpeed;
        return (fast * fast - slow * slow)
            * RollForces.DragShare(fast * touchdown, slow * touchdown, speed => RollForces.Canonical(Canonical, speed));
    }
}
