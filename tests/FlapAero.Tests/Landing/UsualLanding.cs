using UnitsNet;

namespace FlapAero.Tests;

/// <summary>An invented trainer, full flaps, landed as usual.</summary>
internal static class UsualLanding
{
    public static LandingSetup Setup { get; } = new()
    {
        Aeroplane = new()
        {
            Mass = Mass.FromKilograms(1050),
            WingArea = Area.FromSquareMeters(16),
            Span = Length.FromMeters(11),
            WingHeight = Length.FromMeters(2),
            ZeroLiftDragCoefficient = 0.075,
            Oswald = 0.72,
            MaximumLiftCoefficient = 2,
            NoseHighLiftCoefficient = 1.2,
            LevelLiftCoefficient = 0.5,
            IdleThrust = Force.FromNewtons(-50),
        },
        Technique = new()
        {
            ThresholdHeight = Length.FromFeet(50),
            ThresholdSpeed = Speed.FromKnots(62),
            PathAngle = Angle.FromDegrees(4),
            FlareTimeConstant = Duration.FromSeconds(2),
            HoldOffHeight = Length.FromMeters(0.4),
            TouchdownLiftFraction = 0.85,
            PowerCutHeight = Length.FromMeters(8),
            PowerCutTime = Duration.FromSeconds(2),
            NoseLowerSpeedFraction = 0.7,
            BrakingShare = 1,
        },
        Runway = new() { Surface = RunwaySurface.Of("invented", 0.03, 0.3) },
        Headwind = Speed.FromKnots(5),
    };
}
