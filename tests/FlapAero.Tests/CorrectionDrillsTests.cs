using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests;

/// <summary>Each drill's numbers against a computation by hand, for two aeroplanes, in wind and calm, on grass and asphalt, light and heavy.</summary>
public sealed class CorrectionDrillsTests
{
    private const double Foot = 0.3048;
    private const double Knot = 1852.0 / 3600;
    private const double G = StandardConstants.Gravity;

    private static readonly double PathTangent = Math.Tan(3.5 * Math.PI / 180);

    public static TheoryData<string, bool, double> Flights => new()
    {
        { "h4", true, 12 }, { "h4", false, 0 }, { "l2", true, 0 }, { "l2", false, 12 },
    };

    [Theory, MemberData(nameof(Flights))]
    public void TooFast_IsEnergyAndTimeByHand(string name, bool heavy, double wind)
    {
        Briefing briefing = Flight(name, heavy, wind);
        TooFastDrill fast = CorrectionDrills.For(briefing).TooFast.Value;
        (double slow, double quick) = (TrueAt(briefing, 0), TrueAt(briefing, 10));

        // (V₂² − V₁²)/2g.
        Assert.Equal((quick * quick - slow * slow) / (2 * G), fast.WorthInHeight.Meters, 1e-6);
        // Small steps of Euler's: the throttle closed, the path held.
        (double v, double way, double time) = (quick, 0, 0);
        const double step = 0.005;
        while (v > slow)
        {
            (double sine, double ground) = PathAt(v, wind * Knot);
            double a = (IdleThrust(briefing, v) - Drag(briefing, v, Math.Asin(sine))) / briefing.Request.Mass.Kilograms + G * sine;
            Assert.True(a < 0);
            (v, way, time) = (v + a * step, way + ground * step, time + step);
        }

        Assert.Equal(time, fast.TimeNeeded.Seconds, 0.02);
        Assert.Equal(way, fast.FinalNeeded.Meters, 0.3);
        Assert.Equal(fast.TouchdownDistance.Meters - briefing.Flapless.Landing.Result.TouchdownDistance.Meters, fast.TouchdownFurther.Meters, 1e-9);
        // The excess has to go between the threshold and the wheels as well: within a third of what final takes in the same air.
        Assert.InRange(fast.TouchdownFurther.Meters / fast.FinalNeeded.Meters, 0.4, 1.2);
    }

    [Theory, InlineData("h4"), InlineData("l2")]
    public void TooFast_MostOverTheThreshold_IsTheLastKnotInTheFirstThird(string name)
    {
        Briefing briefing = Flight(name, heavy: true, wind: 0, metres: 1700);
        TooFastDrill fast = CorrectionDrills.For(briefing).TooFast.Value;
        double most = fast.MostOverThreshold!.Value.Knots;
        double Touches(double knots) => Landing.Fly(Setup(briefing, TrueAt(briefing, knots))).Value.TouchdownDistance.Meters;

        Assert.True(Touches(most) <= 1700 / 3.0);
        Assert.True(most == 10 || Touches(most + 1) > 1700 / 3.0 - 10);
        Assert.Null(CorrectionDrills.For(Flight(name, heavy: true, wind: 0, metres: 700)).TooFast.Value.MostOverThreshold);
    }

    [Theory, MemberData(nameof(Flights))]
    public void TooSlow_IsTheMarginAndTheEnergyByHand(string name, bool heavy, double wind)
    {
        Briefing briefing = Flight(name, heavy, wind);
        TooSlowDrill drill = CorrectionDrills.For(briefing).TooSlow.Value;
        (double slow, double meant) = (TrueAt(briefing, -5), TrueAt(briefing, 0));
        double stall = Math.Sqrt(2 * briefing.Request.Mass.Kilograms * G / (Rho(briefing) * Area(briefing) * MaximumLift(briefing)));

        Assert.Equal(slow / stall - 1, drill.Margin, 1e-6);
        Assert.Equal(drill.Margin, drill.MarginInLull, 1e-9);   // no gusts
        Assert.Equal((meant * meant - slow * slow) / (2 * G), drill.HeightForTheNose.Meters, 1e-6);
        // Some 3 m/s at about 0.2 g.
        Assert.InRange(drill.TimeAtFullThrottle!.Value.Seconds, 0.8, 4);
        Configuration up = briefing.Flapless.Speeds.Configuration;
        Assert.InRange(drill.EngineSpeed.RevolutionsPerMinute, 1000, briefing.Flapless.Circuit.Final.EngineSpeed.RevolutionsPerMinute + 100);
        Assert.True(up.Flaps == briefing.Request.Aeroplane.FlapsUp);
    }

    [Theory, MemberData(nameof(Flights))]
    public void TooHigh_IsTheDifferenceOfTwoTangents(string name, bool heavy, double wind)
    {
        Briefing briefing = Flight(name, heavy, wind);
        TooHighDrill drill = CorrectionDrills.For(briefing).TooHigh.Value;
        double v = TrueAt(briefing, 0), down = 0.1;
        // sin γ = (D − T)/W, drag of L = W cos γ: a few rounds settle it.
        for (int i = 0; i < 30; i++)
            down = Math.Asin((Drag(briefing, v, down) - IdleThrust(briefing, v)) / (briefing.Request.Mass.Kilograms * G));
        double ground = v * Math.Cos(down) - wind * Knot;
        double beyond = v * Math.Sin(down) / ground - PathTangent;

        Assert.Equal(50 * Foot / beyond, drill.FinalNeeded.Meters, 0.01);
        Assert.Equal(50 * Foot / beyond / ground, drill.TimeNeeded.Seconds, 0.01);
        Assert.Equal((300 - briefing.Flapless.Landing.ThresholdHeight.Feet) * Foot / PathTangent * beyond, drill.MostFromGate.Meters, 0.01);
        // Another 50 ft of the same path before the same round-out.
        Assert.Equal(50 * Foot / PathTangent, drill.TouchdownFurther.Meters, 0.5);
        Assert.InRange(drill.SlipLeast.Degrees, 1, 2);
        Assert.InRange(drill.SlipMost.Degrees, 2, 4);
    }

    [Theory, MemberData(nameof(Flights))]
    public void TooLow_IsLevelFlightAndWhatTheNoseWouldPay(string name, bool heavy, double wind)
    {
        Briefing briefing = Flight(name, heavy, wind);
        TooLowDrill drill = CorrectionDrills.For(briefing).TooLow.Value;
        double v = TrueAt(briefing, 0);
        double spent = v - Math.Sqrt(v * v - 2 * G * 50 * Foot);
        double stall = Math.Sqrt(2 * briefing.Request.Mass.Kilograms * G / (Rho(briefing) * Area(briefing) * MaximumLift(briefing)));

        Assert.Equal(50 * Foot / PathTangent, drill.LevelFor.Meters, 1e-6);
        Assert.Equal(50 * Foot / PathTangent / (v - wind * Knot), drill.TimeLevel.Seconds, 1e-6);
        Assert.Equal(spent, drill.PaidByTheNose.MetersPerSecond, 1e-6);
        Assert.Equal((v - spent) / stall - 1, drill.MarginLeft, 1e-6);
        Assert.True(drill.EngineSpeed > briefing.Flapless.Circuit.Final.EngineSpeed);
    }

    [Theory, MemberData(nameof(Flights))]
    public void Balloon_IsEnergyDragAndAFall(string name, bool heavy, double wind)
    {
        Briefing briefing = Flight(name, heavy, wind);
        BalloonDrill drill = CorrectionDrills.For(briefing).Balloon.Value;
        double v = briefing.Flapless.Landing.Result.FlareStartAirspeed.MetersPerSecond, h = 10 * Foot;
        double slows = (Drag(briefing, v, 0) - IdleThrust(briefing, v)) / briefing.Request.Mass.Kilograms;
        // Half the way up at +0.1 g and half at −0.1 g: h = 0.1 g t₁².
        double top = Math.Sqrt(v * v - 2 * G * h) - slows * 2 * Math.Sqrt(h / (0.1 * G));
        double stall = Math.Sqrt(2 * briefing.Request.Mass.Kilograms * G / (Rho(briefing) * Area(briefing) * MaximumLift(briefing)));

        Assert.Equal(v - top, drill.SpeedLost.MetersPerSecond, 1e-6);
        Assert.Equal(top / stall - 1, drill.Margin, 1e-6);
        Assert.Equal((top - stall) / slows, drill.TimeToStall.Seconds, 1e-6);
        Assert.Equal(Math.Sqrt(2 * 0.1 * G * h), drill.SinkAtTheGround.MetersPerSecond, 1e-9);
        Assert.True(drill.UsualSink < drill.SinkAtTheGround);
    }

    [Theory, MemberData(nameof(Flights))]
    public void Bounce_LiftGoesWithTheSquareOfTheSpeed(string name, bool heavy, double wind)
    {
        Briefing briefing = Flight(name, heavy, wind);
        BounceDrill drill = CorrectionDrills.For(briefing).Bounce.Value;
        double end = Landing.Fly(Setup(briefing, TrueAt(briefing, 10))).Value.HoldOffEndAirspeed.MetersPerSecond;
        double square = Math.Pow((end + 10 * Knot) / end, 2);

        // At the float's end the attitude of the touchdown carries the weight, but for what is left of the path's bend.
        Assert.Equal(square, drill.LiftAvailable, 0.05);
        Assert.Equal(0.5 * (drill.LiftAvailable - 1) * G, drill.RiseInASecond.Meters, 1e-9);
        Assert.InRange(drill.CarriedNoseDown, 0.2, 0.8);
    }

    [Theory, InlineData("h4"), InlineData("l2")]
    public void Drift_IsTheWindAcrossTimesTheFloat(string name)
    {
        Briefing briefing = Flight(name, heavy: true, wind: 0, across: 9, gust: 12);
        DriftDrill drill = CorrectionDrills.For(briefing).Drift.Value;
        LandingResult landing = briefing.Flapless.Landing.Result;

        Assert.Equal(12, drill.Crosswind.Knots, 1e-9);
        Assert.Equal(Math.Asin(12 * Knot / TrueAt(briefing, 0)) * 180 / Math.PI, drill.Crab.Degrees, 0.05);
        Assert.Equal(landing.TouchdownTime.Seconds - landing.Stage(LandingStage.HoldOff).Start.Seconds, drill.FloatLasts.Seconds, 1e-6);
        Assert.Equal(12 * Knot * drill.FloatLasts.Seconds, drill.Drift.Meters, 1e-6);
    }

    [Fact]
    public void GoArounds_HotHighHeavyWithFullFlap_DoesNotClimbAndTheRestDoes()
    {
        IReadOnlyList<GoAroundCase> cases = CorrectionDrills.For(Flight("h4", heavy: false, wind: 12)).GoArounds;

        Assert.Equal(4, cases.Count);
        Assert.Equal([true, true, true, false], cases.Select(flown => flown.GoAround.Value.HeightLost is not null));
        Assert.Equal(DemoAeroplanes.TrainerH4.MaximumMass, cases[2].Configuration.Mass);
        foreach (GoAround around in cases.Take(3).Select(flown => flown.GoAround.Value))
        {
            // Two seconds of the idle's sink, then half its square over a tenth of g.
            double sink = around.Descent.SinkRate.MetersPerSecond;
            Assert.Equal(2 * sink + sink * sink / (0.2 * G), around.HeightLost!.Value.Meters, 1e-6);
            Assert.Equal(IdleOf(around.Descent), around.Descent.Thrust.Newtons, 1e-9);
        }
    }

    [Fact]
    public void Drills_WithoutFullThrottle_SayWhyAndKeepTheRest()
    {
        Aeroplane h4 = DemoAeroplanes.TrainerH4;
        Aeroplane without = new(
            h4.Name, h4.Description, h4.Wing, h4.MinimumMass, h4.MaximumMass, h4.Propeller, h4.Engine, h4.FlapSettings, h4.CrosswindLimit,
            h4.TailLimitAttitude);
        BriefingRequest demo = DemoBriefings.Flight;
        CorrectionDrills drills = CorrectionDrills.For(Briefing.For(new(without, demo.Mass, demo.Runway, demo.Air, demo.Wind)).Value);

        Assert.All(drills.GoArounds, flown => Assert.Contains("has no full throttle", flown.GoAround.Explanation, StringComparison.Ordinal));
        Assert.Null(drills.TooSlow.Value.TimeAtFullThrottle);
        Assert.True(drills.TooHigh.Happened);
    }

    // A propeller's table that ends between the briefed speed and ten knots more.
    [Fact]
    public void Drills_PropellerThatIsNotKnownAtTheFasterSpeed_SayWhyAndKeepTheRest()
    {
        Aeroplane h4 = DemoAeroplanes.TrainerH4;
        BriefingRequest demo = DemoBriefings.Flight;
        Briefing known = Briefing.For(demo).Value;
        Airspeed between = Airspeed.FromTrue(Speed.FromMetersPerSecond(TrueAt(known, 6)), demo.Air);
        double revolutions = h4.Propeller.Idling(between, h4.Engine)!.EngineSpeed.RevolutionsPerSecond;
        double last = between.True.MetersPerSecond / (revolutions * h4.Propeller.Diameter.Meters);
        PropellerTable table = h4.Propeller.Table;
        PropellerTable cut = new([
            .. table.Rows.Where(row => row.AdvanceRatio < last - 0.01), (last, table.ThrustCoefficient(last), table.PowerCoefficient(last))]);
        Aeroplane shortTable = new(
            h4.Name, h4.Description, h4.Wing, h4.MinimumMass, h4.MaximumMass, new Propeller(h4.Propeller.Diameter, cut, h4.Propeller.MaximumSpeed),
            h4.Engine, h4.FlapSettings, h4.CrosswindLimit, h4.TailLimitAttitude, h4.FullThrottle);
        CorrectionDrills drills = CorrectionDrills.For(Briefing.For(new(shortTable, demo.Mass, demo.Runway, demo.Air, demo.Wind)).Value);

        Assert.False(drills.TooFast.Happened);
        Assert.Contains("does not idle steadily", drills.TooFast.Explanation, StringComparison.Ordinal);
        Assert.True(drills.TooHigh.Happened && drills.TooLow.Happened && drills.Drift.Happened);
    }

    private static Briefing Flight(string name, bool heavy, double wind, double metres = 1700, double across = 0, double? gust = null)
    {
        Aeroplane aeroplane = name == "l2" ? DemoAeroplanes.TrainerL2 : DemoAeroplanes.TrainerH4;
        Runway runway = DemoBriefings.Flight.Runway with
        {
            LengthAvailable = Length.FromMeters(metres),
            Surface = heavy ? RunwaySurface.FirmGrass : RunwaySurface.DryPaved,
        };
        Wind mean = across > 0 ? new(Angle.FromDegrees(330), Speed.FromKnots(across))
            : new(Angle.FromDegrees(wind < 0 ? 60 : 240), Speed.FromKnots(Math.Abs(wind)));
        return Briefing.For(new(
            aeroplane, heavy ? aeroplane.MaximumMass : aeroplane.MinimumMass, runway, DemoBriefings.Flight.Air,
            new BriefingWind(mean, gust is { } g ? Speed.FromKnots(g) : null))).Value;
    }

    private static double TrueAt(Briefing briefing, double knots) => Airspeed.FromCalibrated(
        briefing.Flapless.Speeds.Approach.Calibrated + Speed.FromKnots(knots), briefing.Request.Air).True.MetersPerSecond;

    private static LandingSetup Setup(Briefing briefing, double speed)
    {
        LandingSetup setup = briefing.Flapless.Landing.Setup;
        return setup with { Technique = setup.Technique with { ThresholdSpeed = Speed.FromMetersPerSecond(speed) } };
    }

    private static double Rho(Briefing briefing) => briefing.Request.Air.Density.KilogramsPerCubicMeter;

    private static double Area(Briefing briefing) => briefing.Request.Aeroplane.Wing.Area.SquareMeters;

    private static double MaximumLift(Briefing briefing) => briefing.Request.Aeroplane.FlapsUp.Lift.MaximumLiftCoefficient;

    /// <summary>C_D0 + K C_L² with L = W cos γ, off the polar that the aeroplane's file has.</summary>
    private static double Drag(Briefing briefing, double v, double path)
    {
        SteadyFlight flight = briefing.Flapless.Speeds.Configuration.OnPath(
            Airspeed.FromTrue(Speed.FromMetersPerSecond(v), briefing.Request.Air), Angle.FromRadians(-Math.Abs(path)));
        return flight.DragCoefficient * 0.5 * Rho(briefing) * v * v * Area(briefing);
    }

    private static double IdleThrust(Briefing briefing, double v) => briefing.Flapless.Speeds.Configuration.IdleThrust(
        Airspeed.FromTrue(Speed.FromMetersPerSecond(v), briefing.Request.Air))!.Value.Newtons;

    private static double IdleOf(SteadyFlight flight) => flight.Configuration.IdleThrust(flight.Airspeed)!.Value.Newtons;

    /// <summary>The path's sine through the air and the speed over the ground: s = k(√(V² − s²) − w), by rounds.</summary>
    private static (double Sine, double Ground) PathAt(double v, double wind)
    {
        double sink = 0;
        for (int i = 0; i < 40; i++) sink = PathTangent * (Math.Sqrt(v * v - sink * sink) - wind);
        return (sink / v, Math.Sqrt(v * v - sink * sink) - wind);
    }
}
