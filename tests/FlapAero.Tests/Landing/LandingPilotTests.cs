using UnitsNet;

namespace FlapAero.Tests;

/// <summary>The usual pilot, the named changes, and what a slip and a crosswind do to a landing.</summary>
public sealed class LandingPilotTests
{
    public static TheoryData<string> Names => [.. DemoAeroplanes.All.Select(aeroplane => aeroplane.Name)];

    // A first program: any wind, mass, height and setting that an instructor would try.
    [Theory, MemberData(nameof(Names))]
    public void Usual_AnyWindMassHeightAndSetting_IsNeverRefused(string name)
    {
        Aeroplane aeroplane = Named(name);
        LandingSetup[] setups =
        [
            .. from share in (double[])[0.7, 0.8, 0.9, 1]
               from knots in Enumerable.Range(0, 6).Select(i => -5.0 + 5 * i)
               from feet in (double[])[0, 4000, 8000]
               from flaps in new[] { aeroplane.FlapsUp, aeroplane.FullFlaps }
               let mass = Mass.FromKilograms(Math.Max(aeroplane.MinimumMass.Kilograms, share * aeroplane.MaximumMass.Kilograms))
               select LandingSetup.For(
                   aeroplane.Configure(flaps, mass),
                   air: Air.Standard(Length.FromFeet(feet)), headwind: Speed.FromKnots(knots)),
        ];
        IReadOnlyList<Outcome<LandingResult, LandingRefusal>> reports = Landing.FlyMany(setups);
        Assert.Equal(4 * 6 * 3 * 2, reports.Count);
        Assert.All(reports, report => Assert.Equal("", report.Explanation));
        Assert.All(reports, report => Assert.InRange(report.Value.TouchdownSink.FeetPerMinute, 50, 180));
        // Many are the one flown by itself.
        Assert.Equal(Landing.Fly(setups[17]).Value.StopDistance.Meters, reports[17].Value.StopDistance.Meters, 1e-3);
    }

    // The tail ends the hold-off of a file whose tail is low, and the lift that of one whose tail is high.
    [Theory]
    [InlineData(8.0, HoldOffEnd.Tail), InlineData(20.0, HoldOffEnd.Lift), InlineData(null, HoldOffEnd.Lift)]
    public void HoldOff_TailLowHighOrUnknown_EndsByTheLesserLift(double? degrees, HoldOffEnd expected)
    {
        Aeroplane h4 = DemoAeroplanes.TrainerH4;
        Aeroplane other = new(
            "Tail", "tries a tail", h4.Wing, h4.MinimumMass, h4.MaximumMass, h4.Propeller, h4.Engine, h4.FlapSettings,
            tailLimitAttitude: degrees is { } limit ? Angle.FromDegrees(limit) : null);
        Configuration up = other.Configure(other.FlapsUp);
        LandingSetup setup = LandingSetup.For(up);
        LandingResult result = Landing.Fly(setup).Value;
        Assert.Equal(expected, result.HoldOffEnd);
        double lift = result.Trajectory.Last(point => point.Stage == LandingStage.HoldOff).LiftCoefficient;
        double held = 0.8 * up.Flaps.Lift.MaximumLiftCoefficient;
        double tail = degrees is { } at ? up.Flaps.Lift.LiftCoefficient(Angle.FromDegrees(Math.Min(at, 12)) + h4.Wing.Incidence) : held;
        Assert.Equal(Math.Min(held, tail), lift, 1e-4);
        Assert.Equal(Math.Min(held, tail), setup.Aeroplane.NoseHighLiftCoefficient, 1e-12);
    }

    [Fact]
    public void NamedChanges_EachOne_MovesTheLandingTheWayItsNameSays()
    {
        Configuration up = DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp);
        LandingResult By(LandingPilot pilot) => Landing.Fly(LandingSetup.For(up, pilot: pilot)).Value;
        LandingResult usual = By(LandingPilot.Usual);
        Assert.True(By(LandingPilot.ShortField).StopDistance < 0.85 * usual.StopDistance);
        Assert.True(By(LandingPilot.Early).FlareHeight > usual.FlareHeight && By(LandingPilot.Late).FlareHeight < usual.FlareHeight);
        Assert.True(By(LandingPilot.ThrottleClosedFromThreshold).TouchdownDistance < usual.TouchdownDistance);
        Assert.True(By(LandingPilot.Usual.Fast(Speed.FromKnots(5))).TouchdownDistance > usual.TouchdownDistance + Length.FromMeters(60));
        Assert.Equal(5, LandingPilot.Usual.Fast(Speed.FromKnots(5)).SpeedAdditive.Knots, 1e-12);
        // Power is kept to the round-out: the throttle begins to close where it begins.
        LandingSetup setup = LandingSetup.For(up);
        Assert.Null(setup.Technique.PowerCutHeight);
        Assert.Equal(setup.FlareHeight.Meters, setup.Checked().PowerCutHeight, 1e-12);
        Assert.Equal(usual.FlareHeight.Meters, setup.FlareHeight.Meters, 1e-12);
    }

    // On the same path a slip's drag takes ΔC_D q S more thrust, and none after the round-out has begun.
    [Fact]
    public void Slip_OnTheApproach_TakesThrustUntilTheRoundOut()
    {
        LandingSetup plain = DemoLandings.TrainerH4FlapsUp;
        LandingSetup slipped = plain with { Technique = plain.Technique with { SlipDragCoefficient = 0.03 } };
        LandingResult with = Landing.Fly(slipped).Value, without = Landing.Fly(plain).Value;
        double dynamic = 0.5 * 1.225 * Math.Pow(plain.Technique.ThresholdSpeed.MetersPerSecond, 2) * plain.Aeroplane.WingArea.SquareMeters;
        Assert.Equal(0.03 * dynamic, with.ApproachThrust.Newtons - without.ApproachThrust.Newtons, 1e-3);
        // Its thrust is what the drag was: without the slip there is more of it while the throttle closes, and the float is longer.
        Assert.True(with.TouchdownDistance > without.TouchdownDistance);
        Assert.Equal(without.FlareStartDistance.Meters, with.FlareStartDistance.Meters, 0.2);
        Assert.Contains(
            "slip drag coefficient", Assert.Throws<RefusedInputException>(
                () => Landing.Fly(plain with { Technique = plain.Technique with { SlipDragCoefficient = 0.3 } })).Message, StringComparison.Ordinal);
    }

    // A path too steep for the idling engine becomes one that a slip can fly.
    [Fact]
    public void Slip_OnASteepPath_MakesItOneThatCanBeFlown()
    {
        LandingSetup flat = DemoLandings.TrainerH4FlapsUp;
        LandingSetup steep = flat with { Technique = flat.Technique with { PathAngle = Angle.FromDegrees(7) } };
        Assert.Equal(LandingRefusal.PathSteeperThanIdleGlide, Landing.Fly(steep).Refusal);
        (double least, double most) = ForwardSlip.DragOf(Angle.FromDegrees(15));
        Assert.InRange(least, 0.019, 0.022);
        Assert.Equal(2 * least, most, 1e-12);
        Assert.NotEqual(
            LandingRefusal.PathSteeperThanIdleGlide, Landing.Fly(steep with { Technique = steep.Technique with { SlipDragCoefficient = most } }).Refusal);
    }

    // tan γ = C_D/C_L: what the slip adds to the one it adds to the other.
    [Fact]
    public void ForwardSlip_InAGlide_SteepensItByItsDrag()
    {
        Configuration up = DemoAeroplanes.TrainerL2.Configure(DemoAeroplanes.TrainerL2.FlapsUp);
        SteadyFlight glide = up.Glide(up.ReferenceSpeed(Air.StandardSeaLevel));
        (Angle least, Angle most) = ForwardSlip.Steepens(glide, Angle.FromDegrees(20));
        double by = ForwardSlip.DragOf(Angle.FromDegrees(20)).Most;
        Assert.Equal((glide.DragCoefficient + by) / glide.LiftCoefficient, Math.Tan((glide.GlideAngle + most).Radians), 1e-9);
        Assert.True(least > Angle.Zero && least < most);
        Assert.Throws<RefusedInputException>(() => ForwardSlip.DragOf(Angle.FromDegrees(26)));
    }

    // Flaps up the float is longer, and the drift in it.
    [Fact]
    public void Crosswind_InTheFloat_DriftsAsLongAsItLasts()
    {
        LandingResult up = Landing.Fly(DemoLandings.TrainerH4FlapsUp).Value, full = Landing.Fly(DemoLandings.TrainerH4FullFlaps).Value;
        Speed across = Speed.FromKnots(-8);
        double seconds = up.Stage(LandingStage.HoldOff).Lasts.Seconds + up.Stage(LandingStage.Settling).Lasts.Seconds;
        Assert.Equal(across.MetersPerSecond * seconds, up.DriftInFloat(across).Meters, 1e-9);
        Assert.InRange(up.DriftInFloat(across) / full.DriftInFloat(across), 1.3, 3);
        Assert.Equal(across.MetersPerSecond, up.TouchdownAirspeed.MetersPerSecond * Math.Sin(up.CrabAtTouchdown(across).Radians), 1e-9);
        Assert.Throws<RefusedInputException>(() => up.CrabAtTouchdown(Speed.FromKnots(80)));
    }

    // Where the throttle closes is worked out from the others: what makes no sense of them is refused in its own name and unit.
    [Fact]
    public void Fly_InputWithoutSense_IsRefusedByItsOwnName()
    {
        LandingSetup usual = DemoLandings.TrainerH4FlapsUp;
        LandingSetup[] wrong =
        [
            usual with { Headwind = Speed.FromKnots(90) },
            usual with { Technique = usual.Technique with { PathAngle = Angle.FromDegrees(60) }, Headwind = Speed.FromKnots(-99) },
            usual with { Aeroplane = usual.Aeroplane with { Oswald = double.NaN } },
            usual with { Technique = usual.Technique with { FlareTimeConstant = Duration.Zero } },
        ];
        string[] names = ["threshold speed", "path angle", "oswald factor", "flare time constant"];
        Assert.Equal(names, wrong.Select(setup => Assert.Throws<RefusedInputException>(() => Landing.Fly(setup)).Message.Split(':')[0]));
        Assert.Equal(names, wrong.Select(setup => Assert.Single(setup.Faults).Value.Message.Split(':')[0]));
        Assert.Empty(usual.Faults);
        Assert.Contains("90 kt", Assert.Throws<RefusedInputException>(() => Landing.FlyMany([usual, wrong[0]])).Message, StringComparison.Ordinal);
    }

    // A flight stops at the first input that makes no sense; who wants to put them right asks for all.
    [Fact]
    public void Faults_SeveralInputsOfNonsense_AreAllNamed()
    {
        LandingSetup usual = DemoLandings.TrainerH4FlapsUp;
        LandingSetup wrong = usual with
        {
            Aeroplane = usual.Aeroplane with { Mass = Mass.Zero },
            Technique = usual.Technique with { FlareTimeConstant = Duration.FromSeconds(-1), NoseLowerSpeedFraction = 1 },
            // As fast as the aeroplane, and of no account before each input makes sense.
            Headwind = Speed.FromKnots(90),
        };
        Assert.Equal(
            [LandingVariable.Mass, LandingVariable.FlareTimeConstant, LandingVariable.NoseLowerSpeedFraction], wrong.Faults.Keys.Order());
        Assert.StartsWith("flare time constant: -1 s is refused", wrong.Faults[LandingVariable.FlareTimeConstant].Message, StringComparison.Ordinal);
        Assert.Equal([LandingVariable.ThresholdSpeed], (usual with { Headwind = Speed.FromKnots(90) }).Faults.Keys);
    }

    private static Aeroplane Named(string name) => DemoAeroplanes.All.Single(a => a.Name == name);
}
