using UnitsNet;

namespace FlapAero.Notebooks.Tests;

/// <summary>Landings, hands and circuits in one call, against the model asked without it or by hand.</summary>
public sealed class LessonLandingsTests
{
    private static readonly Air Air = Air.StandardSeaLevel;

    private static readonly Configuration Up = DemoAeroplanes.TrainerH4.WithFlapsUp();

    private static readonly Speed Five = Speed.FromKnots(5), Three = Speed.FromKnots(3);

    [Fact]
    public void LandingOn_GustyDay_CrossesHalfTheGustsFaster()
    {
        LandingSetup landing = Up.LandingOn(Quillmere.Wednesday, Quillmere.Runway24);
        Speed half = Quillmere.Wednesday.Wind.GustFactor / 2;

        Assert.True(half.Knots > 1);
        Assert.Equal(Up.ReferenceSpeed(Quillmere.Wednesday.Air).FasterBy(half).True.Knots, landing.Technique.ThresholdSpeed.Knots, 0.01);
        Assert.Equal(Quillmere.Wednesday.HeadwindOn(Quillmere.Runway24).Knots, landing.Headwind.Knots, 9);
        Assert.Equal(0, Up.LandingOn(Quillmere.Wednesday, Quillmere.Runway24, Speed.Zero).Headwind.Knots);
        Assert.Equal(landing.Flown().StopDistance.Feet, Up.Land(Quillmere.Wednesday, Quillmere.Runway24).StopDistance.Feet, 9);
    }

    [Fact]
    public void RunwayLeft_Runway_IsItsLengthLessTheStopOverSeventyPerCent()
    {
        foreach ((string name, Runway runway) in LessonLandings.RunwaysInReach)
        {
            double stop = Up.LandAsPlanned(runway, Air, Quillmere.Saturday.Wind.Mean).StopDistance.Feet;

            Assert.Equal(stop / 0.7, Up.RunwayNeeded(runway, Air, Quillmere.Saturday.Wind.Mean).Feet, 6);
            Assert.True(Math.Abs(runway.LengthAvailable.Feet - stop / 0.7 - Up.RunwayLeft(runway, Air, Quillmere.Saturday.Wind.Mean).Feet) < 1e-6, name);
        }
        Assert.Equal(["runway 24", "runway 06", "runway 33", "Brackmere"], LessonLandings.RunwaysInReach.Keys);
    }

    [Fact]
    public void FinalNeeded_Glide_IsTheExcessOverTheDifferenceOfTheTangents()
    {
        SteadyFlight glide = Up.ThrottleClosed(Up.ReferenceSpeed(Air));
        Length final = glide.FinalNeeded(Length.FromFeet(100));

        double down = final.Feet * Math.Tan(glide.GlideAngle.Radians), onPath = final.Feet * Math.Tan(LandingPilot.Usual.PathAngle.Radians);

        Assert.Equal(100, down - onPath, 6);
    }

    [Fact]
    public void At_ThrustPower_IsThrustTimesTrueAirspeed()
    {
        SteadyFlight flight = Up.At(Power.FromKilowatts(20), Air);

        Assert.Equal(20, flight.Thrust.Newtons * flight.Airspeed.True.MetersPerSecond / 1000, 6);
        Assert.Equal(Up.ReferenceSpeed(Air).True.Knots, flight.Airspeed.True.Knots, 9);
    }

    [Fact]
    public void FasterBy_Airspeed_AddsCalibratedKnots() =>
        Assert.Equal(60, Airspeed.FromCalibrated(Speed.FromKnots(55), Quillmere.Friday.Air).FasterBy(Five).Calibrated.Knots, 9);

    [Fact]
    public void GoodHand_ItsLandings_AreRoundTheOneThatIsMeant()
    {
        var hand = GoodHand.Of(Up, Air, speedWithin: Five, windWithin: Three);
        LandingScatterResult all = hand.Fly(500);

        Assert.Equal(LandingSetup.For(Up, air: Air).Technique.ThresholdSpeed.Knots, hand.Spread.ThresholdSpeed!.Mean.Knots, 6);
        Assert.Equal(0, hand.Spread.Headwind!.Mean.Knots, 6);
        Assert.InRange(hand.Spread.ThresholdSpeed!.StandardDeviation.Knots, 1.8, 2.5);
        Assert.Equal(all.TouchdownDistance.Mean.Feet, LandingScatter.Around(hand.Meant, hand.Spread).Fly(500).TouchdownDistance.Mean.Feet, 9);
        Assert.NotEqual(all.TouchdownDistance.Mean.Feet, hand.Fly(500, seed: 2).TouchdownDistance.Mean.Feet);
    }

    [Fact]
    public void GoodHand_SomethingAsMeant_SpreadsItsTouchdownsLess()
    {
        var hand = GoodHand.Of(Up, Air, speedWithin: Five, windWithin: Three);
        double all = hand.TouchdownDeviation().Feet, speed = hand.Only(LandingVariable.ThresholdSpeed).TouchdownDeviation().Feet;
        double rest = hand.Without(LandingVariable.ThresholdSpeed).TouchdownDeviation().Feet;

        Assert.Equal(all * all, speed * speed + rest * rest, 0.15 * all * all);
        Assert.Equal(speed / 2, hand.WithSpeedWithin(Five / 2).Only(LandingVariable.ThresholdSpeed).TouchdownDeviation().Feet, 0.1 * speed);
    }

    [Fact]
    public void EngineSpeedAbeam_FlapsUp_BeginsBaseWithThePointBehindTheWing()
    {
        Configuration[] legs = [Up, Up, Up];
        RotationalSpeed turns = Quillmere.Runway24.EngineSpeedAbeam(legs, Air);
        Circuit circuit = Quillmere.Runway24.CircuitInACalm(legs, Air, turns);
        double more = Math.Abs(circuit.AtEngineSpeed(turns + RotationalSpeed.FromRevolutionsPerMinute(10)).AngleBehindWing.Degrees - 45);

        Assert.True(Math.Abs(circuit.AngleBehindWing.Degrees - 45) <= more);
        Assert.Equal(circuit.AngleBehindWing.Degrees, circuit.AtEngineSpeed(turns).AngleBehindWing.Degrees, 9);
        // A turn that descends is a little tighter.
        Assert.Equal(1, circuit.RoomForTheTurn() / Up.RoomInACalm(Air, circuit.TurnToFinal.Bank.Degrees), 0.003);
    }

    [Fact]
    public void RoundOutBegins_Landing_IsWhereTheRoundOutBegins()
    {
        LandingResult landing = Up.Land(Air);

        Assert.Equal(landing.FlareStartDistance.Feet, landing.RoundOutBegins().Distance.Feet, 1.0);
    }
}
