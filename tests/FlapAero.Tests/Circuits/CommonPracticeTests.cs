using UnitsNet;
using static FlapAero.Tests.Circuits.Plans;

namespace FlapAero.Tests.Circuits;

/// <summary>
/// Common practice, no source: 85 kt when power is reduced abeam, 75 kt on base, 70 kt on final without flaps; the base
/// turn with the touchdown point 45° behind the wing; on the extended centreline by 300 ft. Sizes for Trainer H4.
/// </summary>
public sealed class CommonPracticeTests
{
    [Fact]
    public void FlapsUp_AtTheUsualSpeeds_ReducesPowerAboutAbeam()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        Assert.Equal([85, 75, 70], new[] { circuit.Downwind, circuit.Base, circuit.Final }
            .Select(leg => Math.Round(leg.Airspeed.Calibrated.Knots)));
        Assert.InRange(circuit.PowerReducedPastAbeam.Meters, -200, 200);
        Assert.Equal(45, circuit.AngleBehindWing.Degrees, 1e-9);
        Assert.InRange(circuit.HeightRollingOut.Feet, 300, 400);
        Assert.InRange(circuit.TurnToBase.Begin.Height.Feet, 600, 800);
        Assert.InRange(circuit.TurnToFinal.Begin.Height.Feet, 400, 550);
        Assert.InRange(circuit.Base.SinkRate.FeetPerMinute, 300, 500);
    }

    [Fact]
    public void FlapsUp_InTheTurns_KeepsAQuarterOverTheStall()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        Assert.InRange(circuit.TurnToFinal.StallMargin, 0.25, 0.45);
        Assert.Equal(0.3, circuit.Final.StallMargin, 0.02);
    }

    [Fact]
    public void FlapsUp_OnTheSameFinal_TakesMuchLessThrust()
    {
        CircuitComparison comparison = new(Solve(DemoCircuits.FlapsUp), Solve(DemoCircuits.FullFlaps));
        Assert.True(comparison.MoreThrustOnFinal.Newtons < -300);
        Assert.Equal(0, comparison.BaseTurnFurtherOut.Meters, 1e-6);
        Assert.Equal(0, comparison.RollsOutHigher.Meters, 1e-6);
    }

    /// <summary>Power reduced abeam to the same thrust: without flaps the aeroplane sinks less and has to go further.</summary>
    [Fact]
    public void FlapsUp_SamePowerReducedAbeam_GoesFurtherOut()
    {
        CircuitFix abeam = CircuitFix.PowerReducedAt(Length.Zero);
        Descent same = Descent.AtThrust(Force.FromNewtons(450));
        CircuitComparison comparison = new(
            Solve(DemoCircuits.FlapsUp.With(fix: abeam)), Solve(Throttled(DemoCircuits.FullFlaps.With(fix: abeam), same)));
        Assert.InRange(comparison.BaseTurnFurtherOut.Meters, 200, 1500);
        Assert.InRange(comparison.FinalLonger.Meters, 200, 1500);
        Assert.Equal(0, comparison.PowerReducedEarlier.Meters, 1e-6);
        Assert.True(comparison.RollsOutHigher.Feet > 40);
    }

    [Fact]
    public void FlapsUp_SameThrustAtFortyFiveDegrees_ReducesPowerEarlier()
    {
        CircuitComparison comparison = new(
            Solve(DemoCircuits.FlapsUp), Solve(Throttled(DemoCircuits.FullFlaps, Descent.AtThrust(Force.FromNewtons(450)))));
        Assert.True(comparison.PowerReducedEarlier.Meters > 200);
    }

    /// <summary>At one engine speed: power abeam, level before it, less of a descent without flaps, and so a base turn further out.</summary>
    [Fact]
    public void FlapsUp_SameEngineSpeedAbeam_GoesFurtherOut()
    {
        Configuration[] detents = [.. DemoAeroplanes.TrainerH4.FlapSettings.Select(flaps => DemoAeroplanes.TrainerH4.Configure(flaps))];
        RotationalSpeed turns = RotationalSpeed.FromRevolutionsPerMinute(1650);
        Circuit up = Solve(DemoCircuits.PlanFor(detents[0], detents[0], detents[0], Air.StandardSeaLevel, turns));
        CircuitComparison comparison = new(up, Solve(DemoCircuits.PlanFor(detents[1], detents[2], detents[3], Air.StandardSeaLevel, turns)));
        Assert.Equal(0, up.PowerReducedPastAbeam.Meters, 1e-6);
        Assert.Equal(up.Downwind.Airspeed.Calibrated.Knots, comparison.Second.Downwind.Airspeed.Calibrated.Knots, 1e-9);
        Assert.Equal(0.3, comparison.Second.Final.StallMargin, 0.01);
        Assert.InRange(comparison.BaseTurnFurtherOut.Meters, 200, 600);
        // Slower air on base: the same revolutions pull harder.
        Assert.True(comparison.Second.Base.Thrust > comparison.Second.Downwind.Thrust);
    }

    private static CircuitPlan Throttled(CircuitPlan plan, Descent descent)
    {
        CircuitLegs legs = plan.Legs;
        return plan.With(
            establishedBy: Length.FromFeet(200),
            legs: new(
                new(legs.Downwind.Configuration, legs.Downwind.Airspeed, descent),
                new(legs.TurnToBase.Configuration, legs.TurnToBase.Airspeed, descent, legs.TurnToBase.Bank),
                new(legs.Base.Configuration, legs.Base.Airspeed, descent),
                new(legs.TurnToFinal.Configuration, legs.TurnToFinal.Airspeed, descent, legs.TurnToFinal.Bank), legs.Final));
    }
}
