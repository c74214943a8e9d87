using CsCheck;
using FlapAero.Tests.Properties;
using UnitsNet;
using static FlapAero.Tests.Circuits.Plans;

namespace FlapAero.Tests.Circuits;

public sealed class ForwardsTests
{
    [Fact]
    public void Forwards_OnTime_IsTheCircuitBackwards() => EachCircuit(circuit =>
    {
        FlownCircuit flown = circuit.Forwards(PilotTiming.OnTime).Value;
        Assert.Equal(circuit.Legs.Count, flown.Legs.Count);
        foreach ((CircuitLeg planned, CircuitLeg leg) in circuit.Legs.Zip(flown.Legs))
        {
            Same(planned.Begin, leg.Begin, 1e-6);
            Same(planned.End, leg.End, 1e-6);
        }

        Assert.Equal(0, flown.PastCentreline.Meters, 1e-6);
        Assert.Equal(0, flown.AbovePath.Meters, 1e-8);
        Assert.Equal(0, flown.ExtraFinal.Meters, 1e-6);
        Assert.Equal(circuit.Plan.AimingPoint.Meters, flown.MeetsGroundAt.Meters, 1e-6);
        Assert.Equal(circuit.Plan.Legs.Final.PathAngle.Degrees, flown.PathAngleNeeded.Degrees, 1e-8);
        Assert.Equal(circuit.Final.Thrust.Newtons, flown.ThrustNeeded!.Value.Newtons, 1e-5);
        Assert.True(flown.IsEstablishedInTime && flown.ThrustSuffices);
        Assert.Equal(circuit.Plan.Height.Meters, flown.Ledger.HeightLost.Meters, 1e-8);
    });

    /// <summary>The longer leg is downwind: its ground speed lengthens final, its sink and the path's slope lower the aeroplane.</summary>
    [Fact]
    public void BaseTurn_LateOrEarly_CostsTheDownwindsWayAndSink() => Timed((circuit, late) =>
    {
        if (circuit.Downwind.Time.Seconds + late < 0
            || circuit.Forwards(new PilotTiming(baseTurn: Seconds(late))) is not { Happened: true } outcome) return;
        FlownCircuit flown = outcome.Value;
        bool level = circuit.Plan.Legs.Downwind.Descent.IsLevel;
        double ground = circuit.Downwind.GroundSpeed!.Value.MetersPerSecond;
        double sink = level ? 0 : circuit.Downwind.SinkRate.MetersPerSecond;
        Assert.Equal(ground * late, flown.ExtraFinal.Meters, 1e-6);
        Assert.Equal(-sink * late, flown.HeightErrorRollingOut.Meters, 1e-6);
        Assert.Equal(
            -(sink + ground * Math.Tan(circuit.Plan.Legs.Final.PathAngle.Radians)) * late, flown.AbovePath.Meters, 1e-6);
        Assert.Equal(0, flown.PastCentreline.Meters, 1e-6);
    });

    /// <summary>The longer leg is base: past the centreline by its ground speed, low by its sink; final is no longer.</summary>
    [Fact]
    public void FinalTurn_LateOrEarly_CostsTheBasesWayAndSink() => Timed((circuit, late) =>
    {
        if (circuit.Base.Time.Seconds + late < 0
            || circuit.Forwards(new PilotTiming(finalTurn: Seconds(late))) is not { Happened: true } outcome) return;
        FlownCircuit flown = outcome.Value;
        Assert.Equal(circuit.Base.GroundSpeed!.Value.MetersPerSecond * late, flown.PastCentreline.Meters, 1e-6);
        Assert.Equal(-circuit.Base.SinkRate.MetersPerSecond * late, flown.HeightErrorRollingOut.Meters, 1e-6);
        Assert.Equal(0, flown.ExtraFinal.Meters, 1e-6);
        // The side: past the centreline is away from the circuit.
        double side = circuit.Plan.Hand == CircuitHand.Right ? -1 : 1;
        Assert.Equal(side * flown.PastCentreline.Meters, flown.RollingOut.Y.Meters, 1e-6);
    });

    [Fact]
    public void Power_LateOrEarly_CostsTheSinkOfTheDelay() => Timed((circuit, late) =>
    {
        if (circuit.Plan.Legs.Downwind.Descent.IsLevel || circuit.Downwind.Time.Seconds - late < 0
            || circuit.Forwards(new PilotTiming(power: Seconds(late))) is not { Happened: true } outcome) return;
        FlownCircuit flown = outcome.Value;
        Assert.Equal(circuit.Downwind.SinkRate.MetersPerSecond * late, flown.HeightErrorRollingOut.Meters, 1e-6);
        // Level and descending, the same airspeed has a slightly different ground speed.
        Assert.Equal(0, flown.ExtraFinal.Meters, 1e-6 + 0.02 * Math.Abs(late) * circuit.Downwind.GroundSpeed!.Value.MetersPerSecond);
        Assert.Equal(circuit.Plan.Height.Meters, flown.Legs[0].Begin.Height.Meters, 1e-9);
    });

    // Level in calm the radius has to shrink by V Δt: tan φ' = tan φ R/(R − V Δt).
    [Theory]
    [InlineData(20, 3, true)]
    [InlineData(20, -4, true)]
    [InlineData(20, 7, false)]
    public void BankForCentreline_CalmAndLevel_ShrinksTheRadiusByTheWayLost(double bank, double late, bool withinLimit)
    {
        Circuit circuit = Solve(Plain(bank: bank, turns: Descent.Level, height: 400));
        FlownCircuit flown = circuit.Forwards(new PilotTiming(finalTurn: Seconds(late))).Value;
        double radius = circuit.TurnToFinal.TurnRadius!.Value.Meters;
        double lost = circuit.Base.GroundSpeed!.Value.MetersPerSecond * late;
        double needed = Math.Atan(Math.Tan(bank * Math.PI / 180) * radius / (radius - lost)) * 180 / Math.PI;
        Assert.Equal(needed, flown.BankForCentreline!.Value.Degrees, 1e-7);
        Assert.Equal(withinLimit, flown.CentrelineStillMade);
        Assert.Equal(
            circuit.TurnToFinal.Configuration.StallMargin(circuit.TurnToFinal.Airspeed, LoadFactor.InTurn(Degrees(needed))),
            flown.StallMarginThere!.Value, 1e-7);
    }

    [Fact]
    public void BankForCentreline_FlownInSmallSteps_EndsOnTheCentreline()
    {
        int found = 0;
        Timed((circuit, late) =>
        {
            if (circuit.Base.Time.Seconds + late < 0
                || circuit.Forwards(new PilotTiming(finalTurn: Seconds(late))) is not { Happened: true } outcome
                || outcome.Value.BankForCentreline is not { } bank) return;
            CircuitLeg turn = outcome.Value.Legs[4];
            TurnLeg planned = circuit.Plan.Legs.TurnToFinal;
            var air = new Aerodynamics(planned.Configuration, planned.Airspeed);
            double path = Math.Asin(air.SinPath(planned.Descent, bank.Radians));
            double speed = turn.Airspeed.True.MetersPerSecond;
            double turned = circuit.Flights.Final.Heading - circuit.Flights.Base.Heading;
            double time = turned * speed / (9.80665 * Math.Tan(bank.Radians));
            double[] end = PointMass.Turn(circuit.Plan, turn, bank.Radians, path, air.Thrust(path, bank.Radians), time);
            Assert.Equal(0, end[4], 1e-3);
            Interlocked.Increment(ref found);
        }, iterations: 300);
        Assert.True(found > 30, "Hardly any turn was tried.");
    }

    [Fact]
    public void BankForCentreline_PastTheCentreline_HasNoAnswer()
    {
        Circuit circuit = Solve(Plain(bank: 30, height: 400));
        FlownCircuit flown = circuit.Forwards(new PilotTiming(finalTurn: Seconds(9))).Value;
        Assert.True(flown.Legs[4].Begin.Y < Length.Zero);
        Assert.Null(flown.BankForCentreline);
        Assert.Null(flown.StallMarginThere);
        Assert.False(flown.CentrelineStillMade);
    }

    [Fact]
    public void Final_TooLow_MeetsTheGroundShortOfTheThreshold()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        FlownCircuit flown = circuit.Forwards(new PilotTiming(baseTurn: Seconds(10))).Value;
        double slope = Math.Tan(3.5 * Math.PI / 180);
        Assert.Equal(circuit.Plan.AimingPoint.Meters + flown.AbovePath.Meters / slope, flown.MeetsGroundAt.Meters, 1e-6);
        Assert.True(flown.MeetsGroundAt < Length.Zero && !flown.IsEstablishedInTime);
        Assert.Equal(0, flown.Legs[6].Time.Seconds, 1e-9);
        Assert.True(flown.PathAngleNeeded < Degrees(3.5) && flown.ThrustNeeded!.Value > circuit.Final.Thrust);
    }

    [Fact]
    public void Final_TooHigh_NeedsASteeperPathThanIdleGives()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        FlownCircuit flown = circuit.Forwards(new PilotTiming(baseTurn: Seconds(-20))).Value;
        Assert.True(flown.AbovePath > Length.Zero && flown.PathAngleNeeded > Degrees(3.5));
        Assert.False(flown.ThrustSuffices);
    }

    [Fact]
    public void Timing_BeforeTheLegBefore_IsRefusedWithWhatIsAllowed()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        RefusedInputException thrown = Assert.Throws<RefusedInputException>(
            () => circuit.Forwards(new PilotTiming(baseTurn: Seconds(-60))));
        Assert.Contains("lateness of the base turn: -60", thrown.Message, StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => circuit.Forwards(new PilotTiming(finalTurn: Seconds(-60))));
        Assert.Throws<RefusedInputException>(() => new PilotTiming(Seconds(601)));
        Assert.Throws<RefusedInputException>(
            () => Solve(Plain(downwind: Descent.Level)).Forwards(new PilotTiming(power: Seconds(3))));
    }

    [Fact]
    public void Forwards_Impossible_IsRefusedWithItsReason()
    {
        Circuit low = Solve(Plain(height: 400, fix: CircuitFix.RollOutAt(Length.FromMeters(45))));
        CircuitRefusal ground = low.Forwards(new PilotTiming(finalTurn: Seconds(60))).Refusal!;
        Assert.Equal("reaches-the-ground", ground.Code);
        CircuitRefusal past = low.Forwards(new PilotTiming(baseTurn: Seconds(-20))).Refusal!;
        Assert.Equal(CircuitRefusalReason.RollsOutPastTheThreshold, past.Reason);
        Assert.Throws<InvalidOperationException>(() => low.Forwards(new PilotTiming(finalTurn: Seconds(60))).Value);
    }

    private static void Timed(Action<Circuit, double> check, int iterations = Generators.Many) =>
        Gen.Select(Plans.Random, Gen.Double[-15, 15]).Sample(
            (plan, late) =>
            {
                if (Circuit.Backwards(plan) is { Happened: true } outcome) check(outcome.Value, late);
            },
            iter: iterations);
}
