using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests;

/// <summary>Which way each condition moves a landing, by hand, and by how much where a closed form says so.</summary>
public sealed class LandingConditionsTests
{
    private static readonly LandingSetup Usual = UsualLanding.Setup;

    // Power stays on until the hold-off, so that nothing but the wind moves the airspeed on the approach.
    private static readonly LandingSetup Powered = Usual with { Technique = Usual.Technique with { PowerCutHeight = Length.FromMeters(0.8) } };

    [Fact]
    public void Fly_WindThatIsTheSameAtAllHeights_IsTheRunwaysHeadwind() =>
        Assert.Equal(
            Fly(Usual, LandingConditions.Canonical).StopDistance.Meters,
            Fly(Usual, new() { Wind = WindProfile.PowerLaw(Usual.Headwind, 0) }).StopDistance.Meters, 1e-4);

    // At the threshold, held sink and airspeed: T grows by m |ẇ| cos γ, with ẇ = −s p w/z.
    [Fact]
    public void Fly_DecreasingHeadwindOnTheWayDown_NeedsThrustOrLosesAirspeed()
    {
        const double exponent = 0.3;
        WindProfile profile = WindProfile.PowerLaw(Speed.FromKnots(20), exponent);
        Length wing = Usual.Technique.ThresholdHeight + Usual.Aeroplane.WingHeight;
        LandingSetup steady = Powered with { Headwind = profile.At(wing) };
        LandingResult without = Fly(steady, LandingConditions.Canonical), with = Fly(Powered, new() { Wind = profile });

        double sink = with.Trajectory[0].SinkRate.MetersPerSecond, speed = Usual.Technique.ThresholdSpeed.MetersPerSecond;
        double shear = exponent * profile.At(wing).MetersPerSecond / wing.Meters;
        double more = Usual.Aeroplane.Mass.Kilograms * sink * shear * Math.Cos(Math.Asin(sink / speed));
        Assert.True(more > 100, $"{more} N");
        Assert.Equal(more, with.ApproachThrust.Newtons - without.ApproachThrust.Newtons, 1e-3);

        // The thrust that balances the shear at the threshold is too little for the stronger one below.
        Assert.True(without.FlareStartAirspeed.MetersPerSecond > speed - 0.05, $"steady: {without.FlareStartAirspeed}");
        Assert.True(with.FlareStartAirspeed.MetersPerSecond < speed - 0.3, $"shear: {with.FlareStartAirspeed}");
    }

    [Fact]
    public void Fly_DecreasingTailwindOnTheWayDown_GainsAirspeed()
    {
        LandingResult tail = Fly(Powered, new() { Wind = WindProfile.PowerLaw(Speed.FromKnots(-10), 0.3) });
        Assert.True(tail.FlareStartAirspeed > Usual.Technique.ThresholdSpeed + Speed.FromMetersPerSecond(0.1), $"{tail.FlareStartAirspeed}");
    }

    // A gust that is over before drag can answer: the airspeed takes all of it, and gives it back.
    [Fact]
    public void Fly_ShortGustOnTheApproach_AddsItselfToTheAirspeed()
    {
        OneCosineGust gust = new(Speed.FromMetersPerSecond(3), Duration.FromSeconds(1), Duration.FromSeconds(0.4));
        LandingResult with = Fly(Powered, new() { Gust = gust }), without = Fly(Powered, LandingConditions.Canonical);
        double Gain(double time) => SpeedAt(with, time) - SpeedAt(without, time);
        Assert.Equal(0, Gain(0.99), 1e-6);
        Assert.InRange(Gain(1.2), 2.9, 3.0);
        Assert.InRange(Gain(1.5), -0.1, 0.0);
    }

    [Fact]
    public void Fly_LullAtTheHoldOff_DropsTheAeroplaneEarlier()
    {
        LandingResult calm = Fly(Usual, LandingConditions.Canonical);
        double start = calm.Trajectory.First(m => m.Stage == LandingStage.HoldOff).Time.Seconds + 2;
        OneCosineGust lull = new(Speed.FromKnots(-12), Duration.FromSeconds(start), Duration.FromSeconds(4));
        LandingResult with = Fly(Usual, new() { Gust = lull });
        Assert.True(with.TouchdownTime < calm.TouchdownTime - Duration.FromSeconds(0.5), $"{with.TouchdownTime} {calm.TouchdownTime}");
        Assert.True(with.HoldOffEndHeight > calm.HoldOffEndHeight, $"{with.HoldOffEndHeight} {calm.HoldOffEndHeight}");
        Assert.True(with.TouchdownSink > calm.TouchdownSink, $"{with.TouchdownSink} {calm.TouchdownSink}");
    }

    [Fact]
    public void Fly_IdlingPropellerThatBrakesInTheAir_ShortensTheFloat()
    {
        LandingSetup braking = Usual with { Aeroplane = Usual.Aeroplane with { IdleThrust = IdleThrust.Quadratic(Force.FromNewtons(100), 0, -0.6) } };
        LandingResult with = Fly(braking, LandingConditions.Canonical), without = Fly(Usual, LandingConditions.Canonical);
        Assert.True(with.Float < without.Float - Length.FromMeters(5), $"{with.Float} {without.Float}");
        Assert.Equal(without.ApproachThrust.Newtons, with.ApproachThrust.Newtons, 1e-9);
    }

    // x = (m/2E) ln[(C + E V₁²)/(C + E V₂²)] in still air, idle and on the wheels from the touchdown.
    [Fact]
    public void Fly_BrakesFromTouchdown_RollsByTheClosedFormAndShorter()
    {
        LandingSetup still = Usual with { Headwind = Speed.Zero };
        LandingResult braked = Fly(still, new() { BrakesFromTouchdown = true }), canonical = Fly(still, LandingConditions.Canonical);
        LandingInput input = still.Checked();
        double wing = DragLaws.GroundEffect(input.WingHeight, input.Span);
        double induced = DragLaws.InducedFactor(input.Oswald, input.Span * input.Span / input.WingArea);
        double area = 0.5 * input.Density * input.WingArea;
        double c = input.BrakingFriction * input.Mass * StandardConstants.Gravity - input.IdleThrust;
        double e = area * (DragLaws.Coefficient(input.ZeroLiftDrag, induced, input.LevelLift, wing) - input.BrakingFriction * input.LevelLift);
        double speed = braked.TouchdownAirspeed.MetersPerSecond, sink = braked.TouchdownSink.MetersPerSecond;
        double expected = input.Mass / (2 * e) * Math.Log((c + e * (speed * speed - sink * sink)) / c);
        Assert.Equal(expected, braked.GroundRoll.Meters, 1e-4);
        Assert.Equal(braked.TouchdownDistance.Meters, braked.NoseLowerDistance.Meters, 1e-12);
        Assert.True(braked.GroundRoll < canonical.GroundRoll - Length.FromMeters(20), $"{braked.GroundRoll} {canonical.GroundRoll}");
    }

    [Fact]
    public void Fly_Grass_RollsShorterWithoutBrakesAndLongerWithThem()
    {
        LandingSetup On(RunwaySurface surface, double share) =>
            Usual with { Runway = new() { Surface = surface }, Technique = Usual.Technique with { BrakingShare = share } };
        Length Roll(RunwaySurface surface) => Fly(On(surface, 0), new()).GroundRoll;
        Assert.True(Roll(RunwaySurface.FirmGrass) < Roll(RunwaySurface.DryPaved));
        Assert.True(Roll(RunwaySurface.WetGrass) < Roll(RunwaySurface.FirmGrass));
        // With the nose held off first the grass may win all the same; braking from the touchdown, it does not.
        Length Braked(RunwaySurface surface) => Fly(On(surface, 1), new() { BrakesFromTouchdown = true }).GroundRoll;
        Assert.True(Braked(RunwaySurface.WetGrass) > Braked(RunwaySurface.DryPaved));
        Assert.True(Braked(RunwaySurface.Icy) > Braked(RunwaySurface.WetPaved));
    }

    // Measured brakes may hold less than wheels that roll; a share of better ones holds no less.
    [Theory]
    [InlineData(0.05, 0.4, 0.75, 0.3), InlineData(0.05, 0.4, 0.1, 0.05), InlineData(0.05, 0.04, 1, 0.04), InlineData(0.05, 0.04, 0.5, 0.04)]
    public void BrakingFriction_OfASurface_IsTheShareWithinItsTwoCoefficients(double rolling, double braking, double share, double expected) =>
        Assert.Equal(expected, (Usual with
        {
            Runway = new() { Surface = RunwaySurface.Of("any", rolling, braking) },
            Technique = Usual.Technique with { BrakingShare = share },
        }).BrakingFriction, 1e-12);

    // Each in conditions of its own, and still each as it is flown alone.
    [Fact]
    public void FlyMany_EachInItsOwnConditions_IsEachAlone()
    {
        LandingConditions[] conditions =
        [
            new(), new() { Gust = new(Speed.FromKnots(-6), Duration.FromSeconds(4), Duration.FromSeconds(5)) }, new() { BrakesFromTouchdown = true },
            new() { Wind = WindProfile.PowerLaw(Speed.FromKnots(10), 0.2) },
        ];
        foreach (LandingConditions[] some in (LandingConditions[][])[conditions[..2], conditions])
        {
            IReadOnlyList<Outcome<LandingResult, LandingRefusal>> many = Landing.FlyMany([.. some.Select(_ => Usual)], some);
            Assert.All(many.Zip(some), one => Assert.Equal(
                Landing.Fly(Usual, one.Second).Value.StopDistance.Meters, one.First.Value.StopDistance.Meters, 1e-3));
        }

        Assert.StartsWith(
            "number of conditions: 1 is refused; allowed is 2, one for each landing.",
            Assert.Throws<RefusedInputException>(() => Landing.FlyMany([Usual, Usual], conditions[..1])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Surfaces_EveryOne_BrakesNoLessThanItRolls() =>
        Assert.All(RunwaySurface.All, s => Assert.True(s.BrakingFriction > s.RollingFriction && s.RollingFriction > 0, s.ToString()));

    [Fact]
    public void Fly_LongLullOnTheApproach_IsRefusedWithItsReason()
    {
        OneCosineGust lull = new(Speed.FromKnots(-40), Duration.FromSeconds(-1), Duration.FromSeconds(8));
        Outcome<LandingResult, LandingRefusal> report = Landing.Fly(Usual, new() { Gust = lull });
        Assert.Equal(LandingRefusal.LiftLimitBeforeRoundOut, report.Refusal);
        Assert.False(report.Happened);
        Assert.StartsWith("lift-limit-before-round-out", report.Explanation, StringComparison.Ordinal);
    }

    private static LandingResult Fly(LandingSetup setup, LandingConditions conditions)
    {
        Outcome<LandingResult, LandingRefusal> report = Landing.Fly(setup, conditions, Duration.FromSeconds(0.1));
        Assert.Equal("", report.Explanation);
        return report.Value;
    }

    private static double SpeedAt(LandingResult landing, double time) =>
        landing.Trajectory.MinBy(m => Math.Abs(m.Time.Seconds - time))!.Airspeed.MetersPerSecond;
}
