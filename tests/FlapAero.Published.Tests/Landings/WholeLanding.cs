using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>A landing that was asked for, and what became of it. Distances in metres, speeds in m/s.</summary>
internal sealed class WholeLanding
{
    public WholeLanding(LandingInput input)
    {
        Input = input;
        Outcome = LandingSolver.Solve(input);
    }

    public LandingInput Input { get; }

    public LandingOutcome Outcome { get; }

    public bool Happens => Outcome.Refusal == LandingRefusal.None;

    /// <summary>From 50 ft to the touchdown.</summary>
    public double Air => Checked.TouchdownDistance;

    /// <summary>From the touchdown to the stop.</summary>
    public double Roll => Checked.StopDistance - Checked.TouchdownDistance;

    /// <summary>From 50 ft to the stop.</summary>
    public double Total => Checked.StopDistance;

    public double TouchdownSpeed => Checked.TouchdownSpeed;

    public double Weight => Input.Mass * StandardConstants.Gravity;

    // A distance of a landing that did not happen is no distance.
    private LandingOutcome Checked => Happens ? Outcome : throw new InvalidOperationException(RefusalText.Explain(Outcome));

    /// <summary>The canonical landing of a configuration: <see cref="Technique"/>, standard sea level and calm where not said otherwise.</summary>
    public static WholeLanding Of(Configuration configuration, Air? air = null) => new(Asked(configuration, air ?? FlapAero.Air.StandardSeaLevel));

    /// <summary>The same landing with something changed.</summary>
    public WholeLanding With(Func<LandingInput, LandingInput> change) => new(change(Input));

    /// <summary>The threshold crossed faster or slower.</summary>
    public WholeLanding Faster(Speed by) => With(input => input with { ThresholdSpeed = input.ThresholdSpeed + by.MetersPerSecond });

    /// <summary>A headwind as a share of the threshold speed; a tailwind is negative.</summary>
    public WholeLanding IntoWind(double share) => With(input => input with { Headwind = share * input.ThresholdSpeed });

    private static LandingInput Asked(Configuration configuration, Air air)
    {
        Aeroplane aeroplane = configuration.Aeroplane;
        DragPolar polar = configuration.Flaps.Drag;
        return new LandingInput
        {
            Mass = configuration.Mass.Kilograms,
            WingArea = aeroplane.Wing.Area.SquareMeters,
            Span = aeroplane.Wing.Span.Meters,
            WingHeight = aeroplane.Wing.HeightOnWheels.Meters,
            ZeroLiftDrag = polar.ZeroLiftDragCoefficient,
            Oswald = polar.OswaldFactor,
            MaximumLift = configuration.Flaps.Lift.MaximumLiftCoefficient,
            Density = air.Density.KilogramsPerCubicMeter,
            ThresholdHeight = Technique.ThresholdHeight.Meters,
            ThresholdSpeed = configuration.ReferenceSpeed(air, Technique.SpeedMultiple).True.MetersPerSecond,
            PathAngleDegrees = Technique.PathAngleDegrees,
            FlareTimeConstant = Technique.FlareTimeConstant,
            HoldOffHeight = Technique.HoldOffHeight,
            TouchdownLiftFraction = Technique.TouchdownLiftFraction,
            PowerCutHeight = Technique.PowerCutHeight.Meters,
            PowerCutTime = Technique.PowerCutTime,
            // The engine does not know how the aeroplane is loaded.
            IdleThrust = Technique.IdleThrustOverWeight * aeroplane.MaximumMass.Kilograms * StandardConstants.Gravity,
            NoseHighLift = LiftAt(configuration, Technique.NoseHighAttitude),
            NoseLowerSpeedFraction = Technique.NoseLowerSpeedFraction,
            LevelLift = LiftAt(configuration, Angle.Zero),
            RollingFriction = Technique.RollingFriction,
            BrakingFriction = Technique.BrakingFriction,
        };
    }

    // On the runway the path is level: θ = α − i_w.
    private static double LiftAt(Configuration configuration, Angle attitude) =>
        configuration.Flaps.Lift.LiftCoefficient(attitude + configuration.Aeroplane.Wing.Incidence);
}
