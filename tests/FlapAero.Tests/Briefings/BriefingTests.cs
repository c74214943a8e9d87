using UnitsNet;

namespace FlapAero.Tests.Briefings;

/// <summary>
/// The demo flight worked by hand. Trainer H4 at 1 050 kg: W = 1 050 · 9.80665 = 10 297 N, S = 16.6 m², C_Lmax = 1.4 with flaps up and
/// 2.0 with all of them. Runway 24, wind 210° 12 kt with gusts of 20 kt; 450 ft, 1 018 hPa, 22 °C; path 3.5° from 50 ft.
/// </summary>
public sealed class BriefingTests
{
    private static readonly Briefing Demo = Briefing.For(DemoBriefings.Flight).Value;

    [Fact]
    public void For_DemoFlight_StallAndReferenceSpeedAsByHand()
    {
        // V_S = √(2 · 10 297/(1.225 · 16.6 · 1.4)) = √723.4 = 26.90 m/s = 52.28 kt; 1.3 V_S = 67.97 kt.
        Assert.Equal(52.28, Demo.Flapless.Speeds.Stall.Equivalent.Knots, 0.01);
        Assert.Equal(67.97, Demo.Flapless.Speeds.Reference.Calibrated.Knots, 0.02);
        // With all flaps √(1.4/2.0) of it: 43.74 kt and 56.87 kt.
        Assert.Equal(43.74, Demo.FullFlaps.Speeds!.Stall.Equivalent.Knots, 0.01);
        Assert.Equal(56.87, Demo.FullFlaps.Speeds!.Reference.Calibrated.Knots, 0.02);
    }

    [Fact]
    public void For_DemoFlight_FinalOnTheNeedleAsByHand()
    {
        // Half of 20 − 12 is 4; 71.97 kt lies between the table's 70.6 (needle 70) and 79.6 (80): 70 + 10 · 1.37/9.0 = 71.5.
        Assert.Equal(4, Demo.GustAdditive.Knots, 1e-9);
        Assert.Equal(71.52, Demo.Flapless.Speeds.ApproachIndicated.Knots, 0.03);
        Assert.Equal(81.52, Demo.Flapless.FastestOnFinal.Knots, 0.03);
        Assert.Equal(66.52, Demo.Flapless.SlowestOnFinal.Knots, 0.03);
    }

    [Fact]
    public void For_DemoFlight_WindAsByHand()
    {
        // 30° off the runway, from the left: 12 cos 30° = 10.39, 12 sin 30° = 6, 20 sin 30° = 10; half of the headwind is planned with.
        Assert.Equal(10.392, Demo.Headwind.Knots, 0.001);
        Assert.Equal(-6, Demo.Crosswind.Knots, 1e-9);
        Assert.Equal(-10, Demo.CrosswindInGusts.Knots, 1e-9);
        Assert.Equal(5.196, Demo.PlannedHeadwind.Knots, 0.001);
    }

    [Fact]
    public void For_DemoFlight_AirAsByRuleOfThumb()
    {
        // 27.3 ft a hectopascal: 450 − 4.75 · 27.3 = 320 ft. 118.8 ft a degree over 15 − 0.6 = 14.4 °C: 320 + 7.6 · 118.8 = 1 225 ft.
        Assert.Equal(320, DemoBriefings.Flight.Air.PressureAltitude.Feet, 2.0);
        Assert.Equal(1225, DemoBriefings.Flight.Air.DensityAltitude.Feet, 25.0);
    }

    [Fact]
    public void For_DemoFlight_AimingPointThirdAndFinalAsByHand()
    {
        // 15.24 m/tan 3.5° = 249.2 m; 900 m/3; (350 − 50) ft/tan 3.5° = 1 495 m.
        Assert.Equal(249.17, Demo.AimingPoint.Meters, 0.01);
        Assert.Equal(300, Demo.Request.Runway.EndOfFirstThird.Meters, 1e-9);
        Assert.Equal(1495.0, Demo.Flapless.Circuit.Circuit.LengthOfFinal.Meters, 0.1);
        Assert.Equal(350, Demo.Flapless.Circuit.Final.Begin.Feet, 1e-6);
        Assert.Equal(1000, Demo.Flapless.Circuit.Downwind.Begin.Feet, 1e-6);
    }

    [Fact]
    public void For_DemoFlight_DistancesAreTheCanonicalLandings()
    {
        foreach ((BriefedSpeeds speeds, BriefedLanding landing) in new[] { (Demo.Flapless.Speeds, Demo.Flapless.Landing), (Demo.FullFlaps.Speeds!, Demo.FullFlaps.Landing!) })
        {
            Configuration configuration = speeds.Configuration;
            LandingSetup usual = LandingSetup.For(
                configuration, air: DemoBriefings.Flight.Air, headwind: Speed.FromKnots(6 * Math.Cos(Math.PI / 6)));
            LandingSetup setup = usual with
            {
                Technique = usual.Technique with
                {
                    ThresholdSpeed = Airspeed.FromCalibrated(configuration.ReferenceSpeed(DemoBriefings.Flight.Air).Calibrated + Speed.FromKnots(4), DemoBriefings.Flight.Air).True,
                    BrakingShare = 1,
                },
            };
            LandingResult On(double rolling, double braking) =>
                Landing.Fly(setup with { Runway = new() { Surface = RunwaySurface.Of("by hand", rolling, braking) } }).Value;
            // Short dry grass: 0.05 rolling, and three quarters of 0.3.
            LandingResult expected = On(0.05, 0.225), paved = On(0.02, 0.3);

            Assert.Equal(expected.StopDistance.Meters, landing.Result.StopDistance.Meters, 0.01);
            Assert.Equal(expected.TouchdownDistance.Meters, landing.Result.TouchdownDistance.Meters, 0.01);
            Assert.Equal(1.15 * paved.StopDistance.Meters, landing.Planned.Length.Meters, 0.02);
            Assert.Equal(1.15 * paved.StopDistance.Meters / 0.7, landing.WithMargin.Meters, 0.02);
            Assert.Equal(expected.TouchdownDistance.Meters, (landing.ToRoundOut + landing.Float).Meters, 0.01);
        }
    }

    [Fact]
    public void For_DemoFlight_EngineSpeedsHoldTheirLegs()
    {
        foreach (BriefedLeg leg in new[] { Demo.Flapless.Circuit.Level, Demo.Flapless.Circuit.Downwind, Demo.Flapless.Circuit.Base, Demo.Flapless.Circuit.Final, Demo.FullFlaps.Circuit!.Final })
        {
            PropellerState running = leg.Flight.Configuration.Aeroplane.Propeller.Running(leg.Flight.Airspeed, leg.EngineSpeed);
            Assert.Equal(leg.Flight.Thrust.Newtons, running.Thrust.Newtons, 0.01);
        }

        // From 1.6 V_S level to 500 ft/min at 1.4 V_S: less power; on final full flaps need more than none.
        Assert.True(Demo.Flapless.Circuit.Downwind.EngineSpeed < Demo.Flapless.Circuit.Level.EngineSpeed);
        Assert.True(Demo.Flapless.Circuit.Final.EngineSpeed < Demo.FullFlaps.Circuit!.Final.EngineSpeed);
        Assert.Equal(500, Demo.Flapless.Circuit.Base.Flight.SinkRate.FeetPerMinute, 0.1);
    }

    [Fact]
    public void For_Calm_BaseTurnBeginsNearTheUsualAngle()
    {
        Circuit circuit = Briefing.For(Flights.With(calm: true)).Value.Flapless.Circuit.Circuit;
        Assert.InRange(circuit.AngleBehindWing.Degrees, 42, 50);
    }

    [Theory, InlineData(12, 12, 0), InlineData(12, 13, 0.5), InlineData(10, 25, 7.5), InlineData(15, 41, 13)]
    public void For_Gusts_AddHalfTheGustFactor(double wind, double gust, double additive)
    {
        Briefing briefing = Briefing.For(Flights.With(wind: wind, gust: gust)).Value;
        Assert.Equal(additive, briefing.GustAdditive.Knots, 1e-9);
        Assert.All(briefing.Speeds, speeds => Assert.Equal(additive, (speeds.Approach.Calibrated - speeds.Reference.Calibrated).Knots, 1e-9));
    }

    [Fact]
    public void For_Heavier_IsFasterAndLonger()
    {
        Briefing[] briefings = [.. new[] { 700.0, 800, 900, 1000, 1090 }.Select(mass => Briefing.For(Flights.With(kilograms: mass, calm: true)).Value)];
        foreach ((Briefing light, Briefing heavy) in briefings.Zip(briefings.Skip(1)))
        {
            foreach ((BriefedSpeeds slow, BriefedSpeeds fast) in light.Speeds.Zip(heavy.Speeds))
                Assert.True(fast.ApproachIndicated > slow.ApproachIndicated);
            Assert.True(heavy.Flapless.Landing.Result.StopDistance > light.Flapless.Landing.Result.StopDistance);
            Assert.True(heavy.FullFlaps.Landing!.Result.GroundRoll > light.FullFlaps.Landing!.Result.GroundRoll);
        }
    }

    [Fact]
    public void For_LightWithFullFlaps_KeepsPowerToTheRoundOutAsAlways()
    {
        Briefing light = Briefing.For(Flights.With(kilograms: 700, calm: true)).Value;
        foreach (BriefedLanding landing in new[] { light.Flapless.Landing, light.FullFlaps.Landing!, Demo.Flapless.Landing, Demo.FullFlaps.Landing! })
            Assert.Null(landing.Setup.Technique.PowerCutHeight);
        Assert.InRange(light.FullFlaps.Landing!.Result.TouchdownSink.FeetPerMinute, 90, 180);
    }

    [Fact]
    public void For_SlopeSurfaceAndTailwind_MoveTheStopTheRightWay()
    {
        double Stop(BriefingRequest request) => Briefing.For(request).Value.Flapless.Landing.Result.StopDistance.Meters;
        double calm = Stop(Flights.With(calm: true));
        Assert.True(Stop(Flights.With(calm: true, slope: -0.02)) > calm);
        Assert.True(Stop(Flights.With(calm: true, slope: 0.02)) < calm);
        Assert.True(Stop(Flights.With(calm: true, surface: RunwaySurface.WetGrass)) > calm);
        Assert.True(Stop(Flights.With(calm: true, celsius: 35)) > calm);
        Assert.True(Stop(Flights.With(windFrom: 60, wind: 4)) > calm);
        Assert.True(Stop(Flights.With(windFrom: 240, wind: 4)) < calm);
    }

    [Fact]
    public void Fit_RunwayByTensOfMetres_ChangesWhereTheNumbersSay()
    {
        BriefedLanding On(double metres) => Briefing.For(Flights.With(metres: metres)).Value.Flapless.Landing;
        BriefedLanding landing = Demo.Flapless.Landing;
        double stop = Up(landing.Planned.Length), margin = Up(landing.WithMargin), touch = Up(landing.Result.TouchdownDistance);
        Assert.Equal(RunwayFit.DoesNotStop, On(stop - 10).Fit);
        Assert.Equal(RunwayFit.NotWithMargin, On(stop).Fit);
        Assert.Equal(RunwayFit.NotWithMargin, On(margin - 10).Fit);
        Assert.Equal(RunwayFit.TouchesPastFirstThird, On(margin).Fit);
        Assert.InRange(landing.RunwayNeeded.Meters, 3 * touch - 30, 3 * touch);
        // From 3 × the touchdown on nobody has to aim nearer.
        Assert.Equal((RunwayFit.Fits, 50), (On(3 * touch).Fit, Math.Round(On(3 * touch).ThresholdHeight.Feet, 9)));
    }

    // The longer the float, the nearer the aim: the highest height over the threshold that puts the wheels down in the first third.
    [Fact]
    public void Fit_ShorterRunway_AimsNearerDownToTheSchoolsLimit()
    {
        double touch = Up(Demo.Flapless.Landing.Result.TouchdownDistance);
        double last = 50;
        for (double metres = 3 * touch; ; metres -= 10)
        {
            Briefing briefing = Briefing.For(Flights.With(metres: metres)).Value;
            BriefedLanding landing = briefing.Flapless.Landing;
            if (landing.Fit != RunwayFit.Fits)
            {
                // None below 30 ft: and the remedy names the runway on which 30 ft does it.
                Assert.Equal(30, last, 1e-9);
                Assert.Equal(metres + 10, briefing.Remedies!.Runway!.Value.Meters, 1e-9);
                break;
            }

            double over = landing.ThresholdHeight.Feet;
            Assert.InRange(over, 30 - 1e-9, last + 1e-9);
            Assert.Equal(0, over % 5, 1e-9);
            Assert.True(Up(landing.Result.TouchdownDistance) <= 10 * Math.Floor(metres / 30));
            Assert.Equal(landing.ThresholdHeight.Meters / Math.Tan(3.5 * Math.PI / 180), landing.AimingPoint.Meters, 1e-6);
            Assert.Equal(landing.AimingPoint.Meters, briefing.AimingPoint.Meters, 1e-6);
            Assert.Null(briefing.Remedies);
            last = over;
        }
    }

    [Fact]
    public void Remedies_RunwayTooShort_EachOfThemWorks()
    {
        Briefing briefing = Briefing.For(Flights.With(metres: 1000, calm: true, surface: RunwaySurface.DryPaved)).Value;
        LandingRemedies remedies = briefing.Remedies!;
        RunwayFit With(BriefingRequest request) => Briefing.For(request).Value.Flapless.Landing.Fit;
        Assert.Equal(RunwayFit.Fits, With(Flights.With(metres: remedies.Runway!.Value.Meters, calm: true, surface: RunwaySurface.DryPaved)));
        Assert.Equal(RunwayFit.Fits, With(Flights.With(metres: 1000, kilograms: remedies.Mass!.Value.Kilograms, calm: true, surface: RunwaySurface.DryPaved)));
        Assert.NotEqual(RunwayFit.Fits, With(Flights.With(metres: 1000, kilograms: remedies.Mass!.Value.Kilograms + 10, calm: true, surface: RunwaySurface.DryPaved)));
        double knots = remedies.Headwind!.Value.Knots;
        Assert.Equal(RunwayFit.Fits, With(Flights.With(metres: 1000, windFrom: 240, wind: knots, surface: RunwaySurface.DryPaved)));
        Assert.NotEqual(RunwayFit.Fits, With(Flights.With(metres: 1000, windFrom: 240, wind: knots - 1, surface: RunwaySurface.DryPaved)));
        Assert.NotNull(remedies.Flaps);
    }

    [Fact]
    public void For_AnotherMargin_MultipliesByIt()
    {
        BriefedLanding landing = Briefing.For(Flights.With(margin: new LandingMargin(1.25, "the school"))).Value.Flapless.Landing;
        Assert.Equal(1.25 * landing.Planned.Length.Meters, landing.WithMargin.Meters, 1e-9);
    }

    [Fact]
    public void For_TrainerL2_FliesItsOwnFlaps()
    {
        Briefing briefing = Briefing.For(Flights.With(kilograms: 650, calm: true, aeroplane: DemoAeroplanes.TrainerL2)).Value;
        Assert.Equal(3, briefing.Speeds.Count);
        Assert.Equal(["15°", "35°", "35°"], new[] { briefing.FullFlaps.Circuit!.Downwind, briefing.FullFlaps.Circuit!.Base, briefing.FullFlaps.Circuit!.Final }
            .Select(leg => leg.Flight.Configuration.Flaps.Name));
    }

    private static double Up(Length distance) => BriefedLanding.RoundedUp(distance).Meters;
}
