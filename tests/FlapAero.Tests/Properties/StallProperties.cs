using CsCheck;
using FlapAero.Tests.Propulsion;
using UnitsNet;

namespace FlapAero.Tests.Properties;

public sealed class StallProperties
{
    [Fact]
    public void StallSpeed_Heavier_GrowsWithTheRootOfWeight() =>
        Gen.Select(Generators.Aeroplanes(), Generators.Airs, Gen.Double[0.7501, 1]).Sample(
            (aeroplane, air, share) =>
            {
                Speed light = aeroplane.Configure(aeroplane.FlapsUp, aeroplane.MaximumMass * share).StallSpeed(air).True;
                Speed heavy = aeroplane.Configure(aeroplane.FlapsUp).StallSpeed(air).True;
                Close.To(Math.Sqrt(share), light / heavy);
            },
            iter: Generators.Many);

    [Fact]
    public void StallSpeed_UnderLoad_GrowsWithTheRootOfLoadFactor() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[0.01, 6]).Sample(
            (configuration, air, loadFactor) => Close.To(
                Math.Sqrt(loadFactor), configuration.StallSpeed(air, loadFactor).True / configuration.StallSpeed(air).True),
            iter: Generators.Many);

    [Fact]
    public void StallSpeed_ThinnerAir_GrowsWithTheRootOfVolume() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Generators.Airs).Sample(
            (configuration, here, there) => Close.To(
                Math.Sqrt(here.Density / there.Density), configuration.StallSpeed(there).True / configuration.StallSpeed(here).True),
            iter: Generators.Many);

    [Fact]
    public void StallSpeed_AnyAir_IsTheSameEquivalentSpeed() =>
        Gen.Select(Generators.Configurations, Generators.Airs).Sample(
            (configuration, air) => Close.To(
                configuration.StallSpeed(Air.StandardSeaLevel).Equivalent.Knots, configuration.StallSpeed(air).Equivalent.Knots),
            iter: Generators.Many);

    [Fact]
    public void StallMargin_AtTheStall_IsZero() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[0.01, 6]).Sample(
            (configuration, air, loadFactor) => Assert.Equal(
                0, configuration.StallMargin(configuration.StallSpeed(air, loadFactor), loadFactor), 1e-12),
            iter: Generators.Many);

    [Fact]
    public void StallMargin_InALull_IsThatOfTheSlowerSpeed() =>
        Gen.Select(Generators.Flying, Gen.Double[0, 0.5], Gen.Double[1, 2]).Sample(
            (flight, share, loadFactor) =>
            {
                Speed lull = flight.Airspeed.True * share;
                Airspeed slower = Airspeed.FromTrue(flight.Airspeed.True - lull, flight.Airspeed.Air);
                Assert.Equal(
                    flight.Configuration.StallMargin(slower, loadFactor),
                    flight.Configuration.StallMargin(flight.Airspeed, loadFactor, lull),
                    1e-12);
            },
            iter: Generators.Many);

    [Fact]
    public void StallingBank_OfTheStallSpeedInThatBank_IsTheBank() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[1, 80]).Sample(
            (configuration, air, degrees) =>
            {
                Airspeed stall = configuration.StallSpeed(air, Angle.FromDegrees(degrees));
                Assert.Equal(degrees, configuration.StallingBank(stall)!.Value.Degrees, 1e-7);
            },
            iter: Generators.Many);

    [Fact]
    public void StallingBank_BelowTheStall_HasNoAnswer() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[0.1, 0.9999]).Sample(
            (configuration, air, share) => Assert.Null(
                configuration.StallingBank(Airspeed.FromTrue(configuration.StallSpeed(air).True * share, air))),
            iter: Generators.Many);

    [Fact]
    public void RequiredLiftCoefficient_AtAnyStall_IsTheMaximum() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[0.01, 6]).Sample(
            (configuration, air, loadFactor) => Close.To(
                configuration.Flaps.Lift.MaximumLiftCoefficient,
                configuration.RequiredLiftCoefficient(configuration.StallSpeed(air, loadFactor), loadFactor)),
            iter: Generators.Many);

    [Fact]
    public void ReferenceSpeed_AnyMultiple_IsThatManyStallsInCalibratedAirspeed() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[1, 2]).Sample(
            (configuration, air, multiple) => Close.To(
                multiple, configuration.ReferenceSpeed(air, multiple).Calibrated / configuration.StallSpeed(air).Calibrated, 1e-9),
            iter: Generators.Many);

    [Fact]
    public void ReferenceSpeed_NoMultipleGiven_IsThirteenTenths() =>
        Close.To(
            1.3,
            Trainer.FullFlaps.ReferenceSpeed(Air.StandardSeaLevel).Calibrated / Trainer.FullFlaps.StallSpeed(Air.StandardSeaLevel).Calibrated,
            1e-9);

    [Fact]
    public void StallSpeed_HeavyHighAndLoaded_IsRefusedAsSupersonic()
    {
        Wing wing = new(Length.FromMeters(5), Area.FromSquareMeters(5), Angle.Zero, Length.FromMeters(1));
        FlapSetting up = new(
            "up", Angle.Zero, new LiftCurve(3, Angle.Zero, 0.5, Angle.FromDegrees(1)), new DragPolar(0.05, 0.7, 5), Trainer.Table, Speed.FromKnots(150));
        Aeroplane aeroplane = new(
            "Invented", "", wing, Mass.FromKilograms(5000), Mass.FromKilograms(5700), InventedPropeller.Propeller, InventedPropeller.Engine, [up]);
        Air high = Air.Standard(Length.FromMeters(20000));
        Assert.Throws<RefusedInputException>(() => aeroplane.Configure(up).StallSpeed(high, 6));
    }

    [Fact]
    public void ReferenceSpeed_UpAgainstFull_IsTheRootOfTheLiftRatio() =>
        Gen.Select(Generators.Aeroplanes(), Gen.Double[1, 2]).Sample(
            (aeroplane, multiple) =>
            {
                // In EAS and slow: calibrated and equivalent airspeed are one at sea level only.
                double up = aeroplane.Configure(aeroplane.FlapsUp).ReferenceSpeed(Air.StandardSeaLevel, multiple).Equivalent.Knots;
                double full = aeroplane.Configure(aeroplane.FullFlaps).ReferenceSpeed(Air.StandardSeaLevel, multiple).Equivalent.Knots;
                double lifts = aeroplane.FullFlaps.Lift.MaximumLiftCoefficient / aeroplane.FlapsUp.Lift.MaximumLiftCoefficient;
                Close.To(Math.Sqrt(lifts), up / full, 1e-9);
            },
            iter: Generators.Many);

    [Fact]
    public void ReferenceSpeed_AtAltitude_IsNearlyThatRoot() =>
        Gen.Select(Generators.Aeroplanes(), Generators.Airs).Sample(
            (aeroplane, air) =>
            {
                double up = aeroplane.Configure(aeroplane.FlapsUp).ReferenceSpeed(air).Equivalent.Knots;
                double full = aeroplane.Configure(aeroplane.FullFlaps).ReferenceSpeed(air).Equivalent.Knots;
                double lifts = aeroplane.FullFlaps.Lift.MaximumLiftCoefficient / aeroplane.FlapsUp.Lift.MaximumLiftCoefficient;
                Close.To(Math.Sqrt(lifts), up / full, 0.005);
            },
            iter: Generators.Many);

    [Fact]
    public void LoadFactor_Turn_CarriesTheWeight() =>
        Gen.Select(Gen.Double[-85, 85], Gen.Double[-60, 60]).Sample(
            (bank, path) =>
            {
                double loadFactor = LoadFactor.InTurn(Angle.FromDegrees(bank), Angle.FromDegrees(path));
                Close.To(Math.Cos(path * Math.PI / 180), loadFactor * Math.Cos(bank * Math.PI / 180));
                Close.To(loadFactor, LoadFactor.InTurn(Angle.FromDegrees(-bank), Angle.FromDegrees(path)));
                Assert.True(LoadFactor.InTurn(Angle.FromDegrees(bank)) >= 1);
            },
            iter: Generators.Many);
}
