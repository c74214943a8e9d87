using CsCheck;
using UnitsNet;

namespace FlapAero.Tests.Aerodromes;

public sealed class RunwayTests
{
    [Fact]
    public void Runway_NothingSaid_IsDryPavedLevelAtSeaLevel()
    {
        Runway runway = new();
        Assert.Same(RunwaySurface.DryPaved, runway.Surface);
        Assert.Equal((0, 0), (runway.Slope, runway.Elevation.Meters));
    }

    [Fact]
    public void Runway_DirectionOrLengthNotGiven_IsRefusedWhereItIsNeeded()
    {
        BriefingRequest demo = DemoBriefings.Flight;
        Refused("direction of landing", () => Circuit.Backwards(DemoCircuits.FlapsUp.With(runway: new())));
        Refused("direction of landing", () => Request(new() { LengthAvailable = Length.FromMeters(900) }));
        Refused("landing distance available", () => Request(new() { Direction = Angle.Zero }));
        Refused("landing distance available", () => new Runway().EndOfFirstThird);

        BriefingRequest Request(Runway runway) => new(demo.Aeroplane, demo.Mass, runway, demo.Air, demo.Wind);

        static void Refused(string what, Func<object> use) => Assert.StartsWith(
            $"This needs the runway's {what}", Assert.Throws<RefusedInputException>(use).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FinalPath_AnyHeightAndAngle_LeadsToThePointAndBack() =>
        Gen.Select(Gen.Double[5.1, 59.9], Gen.Double[1, 15]).Sample((metres, degrees) =>
        {
            Angle path = Angle.FromDegrees(degrees);
            Length point = FinalPath.AimingPoint(Length.FromMeters(metres), path);
            Assert.Equal(metres / Math.Tan(degrees * Math.PI / 180), point.Meters, 1e-9);
            Assert.Equal(metres, FinalPath.ThresholdHeight(point, path).Meters, 1e-9);
        });

    [Theory, InlineData(4.9), InlineData(60.1)]
    public void ThresholdHeight_OutsideItsRange_IsRefusedByCircuitBriefingAndPath(double metres)
    {
        Length over = Length.FromMeters(metres);
        Func<object>[] uses =
        [
            () => DemoCircuits.FlapsUp.With(thresholdHeight: over), () => FinalPath.AimingPoint(over, Angle.FromDegrees(3)),
            () => FinalPath.ThresholdHeight(over / Math.Tan(Math.PI / 60), Angle.FromDegrees(3)),
            () => Briefings.Flights.With(overFeet: over.Feet),
        ];
        Assert.All(uses, use => Assert.StartsWith(
            "height over the threshold: ", Assert.Throws<RefusedInputException>(use).Message, StringComparison.Ordinal));
    }

    [Fact]
    public void LandingSetup_ShareOfTheBrakingOutsideItsRange_IsRefusedByItsName() => Assert.StartsWith(
        "share of the surface's braking: 1.1 is refused; allowed is 0 to 1. ",
        Assert.Throws<RefusedInputException>(() => Landing.Fly(
            UsualLanding.Setup with { Technique = UsualLanding.Setup.Technique with { BrakingShare = 1.1 } })).Message,
        StringComparison.Ordinal);
}
