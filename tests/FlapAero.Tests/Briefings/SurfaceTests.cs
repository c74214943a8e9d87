using CsCheck;
using UnitsNet;

namespace FlapAero.Tests.Briefings;

/// <summary>No sheet plans a shorter landing on grass or in the wet than on dry asphalt.</summary>
public sealed class SurfaceTests
{
    private static readonly Aeroplane[] Aeroplanes = [DemoAeroplanes.TrainerH4, DemoAeroplanes.TrainerL2];

    /// <summary>Aeroplane, mass, flaps, wind along the runway, slope, height over the threshold, share of the braking, braking at all.</summary>
    private static readonly Gen<LandingSetup> Any = Gen.Select(
        Gen.Int[0, 1], Gen.Double[0, 1], Gen.Int[0, 3], Gen.Double[-10, 20], Gen.Double[-0.1, 0.1], Gen.Double[0, 1], Gen.Bool,
        (which, load, flaps, headwind, slope, share, brakes) =>
        {
            Aeroplane aeroplane = Aeroplanes[which];
            Mass mass = aeroplane.MinimumMass + (aeroplane.MaximumMass - aeroplane.MinimumMass) * load;
            FlapSetting setting = aeroplane.FlapSettings[Math.Min(flaps, aeroplane.FlapSettings.Count - 1)];
            return LandingSetup.For(
                aeroplane.Configure(setting, mass), new Runway { Slope = slope },
                LandingPilot.Usual with { BrakingShare = brakes ? share : 0 }, headwind: Speed.FromKnots(headwind));
        });

    [Fact]
    public void Planned_AnyLanding_GrowsFromDryPavedToWetGrass()
    {
        int compared = 0;
        Any.Sample(
            drawn =>
            {
                foreach ((RunwaySurface better, RunwaySurface worse) in Ordered)
                {
                    if (PlannedDistance.Of(drawn, worse, BriefingRules.Usual) is not { Happened: true, Value: var with }) continue;
                    Interlocked.Increment(ref compared);
                    PlannedDistance without = PlannedDistance.Of(drawn, better, BriefingRules.Usual).Value;
                    Assert.True(without.Length <= with.Length, $"{better.Name} {without.Length.Meters:0.0} m, {worse.Name} {with.Length.Meters:0.0} m");
                    Assert.True(with.ByRule is not { } ruled || ruled <= with.Length);
                }
            },
            iter: 400);
        Assert.True(compared > 500, $"only {compared} pairs landed");
    }

    private static (RunwaySurface Better, RunwaySurface Worse)[] Ordered { get; } =
    [
        (RunwaySurface.DryPaved, RunwaySurface.WetPaved), (RunwaySurface.DryPaved, RunwaySurface.FirmGrass),
        (RunwaySurface.FirmGrass, RunwaySurface.WetGrass), (RunwaySurface.FirmGrass, RunwaySurface.SoftGrass),
        (RunwaySurface.WetPaved, RunwaySurface.Icy),
    ];

    [Fact]
    public void Planned_DemoFlightOnGrass_IsTheRulesAndSaysSo()
    {
        // 1.15 × the model's landing on dry asphalt; the model alone stops on the grass a metre sooner than on asphalt.
        BriefedLanding grass = Briefing.For(DemoBriefings.Flight).Value.Flapless.Landing;
        BriefedLanding paved = Briefing.For(Flights.With(surface: RunwaySurface.DryPaved)).Value.Flapless.Landing;
        Assert.Equal(DistanceBasis.Model, paved.Planned.Basis);
        Assert.Null(paved.Planned.ByRule);
        Assert.Equal(paved.Result.StopDistance.Meters, paved.Planned.Length.Meters, 1e-9);
        Assert.Equal(DistanceBasis.Rule, grass.Planned.Basis);
        Assert.Equal(1.15 * paved.Planned.Length.Meters, grass.Planned.Length.Meters, 1e-9);
        Assert.Equal(grass.Planned.Length.Meters / 0.7, grass.WithMargin.Meters, 1e-9);
    }

    [Fact]
    public void Planned_SoftGrass_IsNeverLessThanFirmGrass()
    {
        PlannedDistance soft = Briefing.For(Flights.With(surface: RunwaySurface.SoftGrass)).Value.Flapless.Landing.Planned;
        Assert.Equal(DistanceBasis.BetterSurface, soft.Basis);
        Assert.Same(RunwaySurface.FirmGrass, soft.Longest);
    }

    [Fact]
    public void Planned_WithoutBraking_IsStillLongerOnGrassThanOnAsphalt()
    {
        // Grass rolls harder: without brakes the model truly stops there sooner, and no sheet may promise that.
        Aeroplane h4 = DemoAeroplanes.TrainerH4;
        LandingSetup unbraked = LandingSetup.For(h4.Configure(h4.FullFlaps), pilot: LandingPilot.Usual with { BrakingShare = 0 });
        Length Flown(RunwaySurface surface) => Landing.Fly(PlannedDistance.On(unbraked, surface)).Value.StopDistance;
        Assert.True(Flown(RunwaySurface.FirmGrass) < Flown(RunwaySurface.DryPaved));
        Assert.Equal(
            1.15 * Flown(RunwaySurface.DryPaved).Meters, PlannedDistance.Of(unbraked, RunwaySurface.FirmGrass, BriefingRules.Usual).Value.Length.Meters, 1e-9);
    }

    [Fact]
    public void Braking_AnyShare_IsNotLessThanRolling() =>
        Assert.All(RunwaySurface.All, surface => Assert.Equal(surface.RollingFriction, surface.Braking(0)));
}
