using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Tests;

/// <summary>The energy of a roll: the ledger balances, and its entries are what a hand finds.</summary>
public sealed class RollEnergyTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(12, 0)]
    [InlineData(-10, 0)]
    [InlineData(0, 0.02)]
    [InlineData(-6, -0.015)]
    public void RollEnergy_AtEveryMoment_AddsUpToAll(double headwind, double slope)
    {
        LandingResult result = Land(DemoLandings.TrainerH4FlapsUp, headwind, slope);

        Assert.All(result.RollEnergy, p => Assert.Equal(1, p.Drag + p.Wheels + p.Propeller + p.Slope + p.Left, 1e-6));
        Assert.Equal(1, result.RollEnergy[0].Left, 1e-12);
        Assert.Equal(0, result.RollEnergy[^1].Left, 1e-9);
        Assert.Equal(result.GroundRoll.Meters, result.RollEnergy[^1].SinceTouchdown.Meters, 1e-3);
        Assert.Equal(0, result.RollEnergy[^1].GroundSpeed.MetersPerSecond, 1e-4);
    }

    [Fact]
    public void RollEnergy_ReferenceLandings_AddUpToAll()
    {
        foreach (ReferenceLandings.Case landing in ReferenceLandings.Cases)
        {
            List<TrajectoryState> states = TrajectorySampler.Sample(landing.Input, LandingSolver.Solve(landing.Input, 1e-11), 0.05, 1e-11);
            RollWorkState last = RollWork.Along(landing.Input, states)[^1];

            // A throttle that is still closing, or wheels taking up weight, have a kink inside a step.
            Assert.Equal(1, last.Taken.Drag + last.Taken.Wheels + last.Taken.Propeller + last.Taken.Slope, 2e-4);
        }
    }

    [Fact]
    public void RollEnergy_TrainerH4FlapsUp_IsThatOfAnotherIntegration()
    {
        // Stepped by 2 ms in another language from the aeroplane's file and its idle thrust: 0.2738, 0.0167 rolling and 0.7076 braked, 0.0019.
        RollEnergyPoint last = Land(DemoLandings.TrainerH4FlapsUp, 0, 0).RollEnergy[^1];

        Assert.Equal(0.2738, last.Drag, 1e-4);
        Assert.Equal(0.0167 + 0.7076, last.Wheels, 2e-4);
        Assert.Equal(0.0019, last.Propeller, 1e-4);
        Assert.Equal(0, last.Slope);
    }

    [Fact]
    public void RollEnergy_ConstantForces_TakeForceTimesDistance()
    {
        LandingSetup setup = DemoLandings.TrainerL2FlapsUp with { Aeroplane = DemoLandings.TrainerL2FlapsUp.Aeroplane with { IdleThrust = Force.FromNewtons(-90) } };
        LandingResult result = Land(setup, -8, 0.01);
        double energy = 0.5 * setup.Aeroplane.Mass.Kilograms * Math.Pow(result.RollEnergy[0].GroundSpeed.MetersPerSecond, 2);
        double weight = setup.Aeroplane.Mass.Kilograms * StandardConstants.Gravity, roll = result.GroundRoll.Meters;

        Assert.Equal(weight * 0.01 / Math.Sqrt(1.0001) * roll / energy, result.RollEnergy[^1].Slope, 1e-6);
        Assert.Equal(90 * roll / energy, result.RollEnergy[^1].Propeller, 1e-6);
    }

    [Fact]
    public void RollEnergy_WindFromBehind_DragPushesAtTheEnd()
    {
        IReadOnlyList<RollEnergyPoint> points = Land(DemoLandings.TrainerH4FullFlaps, -10, 0).RollEnergy;

        Assert.True(points[^1].Drag < points[^3].Drag);
        Assert.True(points[1].Drag > 0);
    }

    [Fact]
    public void RollEnergy_CoarseTrajectory_IsAsGood()
    {
        RollEnergyPoint fine = Land(DemoLandings.TrainerH4FlapsUp, 5, 0).RollEnergy[^1];
        RollEnergyPoint coarse = Landing.Fly(Blown(DemoLandings.TrainerH4FlapsUp, 5, 0), interval: Duration.FromSeconds(1)).Value.RollEnergy[^1];

        Assert.Equal(fine.Drag, coarse.Drag, 1e-5);
        Assert.Equal(fine.Wheels, coarse.Wheels, 1e-5);
    }

    private static LandingResult Land(LandingSetup setup, double headwind, double slope) => Landing.Fly(Blown(setup, headwind, slope)).Value;

    private static LandingSetup Blown(LandingSetup setup, double headwind, double slope) =>
        setup with { Runway = setup.Runway with { Slope = slope }, Headwind = Speed.FromKnots(headwind) };
}
