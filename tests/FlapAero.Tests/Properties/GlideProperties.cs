using CsCheck;
using FlapAero.Tests.Propulsion;
using MathNet.Numerics;
using UnitsNet;

namespace FlapAero.Tests.Properties;

public sealed class GlideProperties
{
    private static readonly Gen<(Configuration Configuration, Airspeed Airspeed, Force Thrust)> Powered =
        Gen.Select(Generators.Flying, Gen.Double[-0.1, 0.3], (flight, share) =>
            (flight.Configuration, flight.Airspeed, flight.Configuration.Weight * share));

    [Fact]
    public void Glide_AnyThrust_BalancesItsForces() =>
        Powered.Sample(
            flight =>
            {
                SteadyFlight steady = flight.Configuration.Glide(flight.Airspeed, flight.Thrust);
                double pressureForce =
                    steady.Airspeed.DynamicPressure.Pascals * flight.Configuration.Aeroplane.Wing.Area.SquareMeters;
                double weight = flight.Configuration.Weight.Newtons;
                double path = steady.PathAngle.Radians;
                Assert.Equal(Math.Cos(path), pressureForce * steady.LiftCoefficient / weight, 1e-12);
                Assert.Equal(
                    -Math.Sin(path), (pressureForce * steady.DragCoefficient - steady.Thrust.Newtons) / weight, 1e-12);
            },
            iter: Generators.Many);

    [Fact]
    public void OnPath_ThroughGlideWithItsThrust_ComesBack() =>
        Gen.Select(Generators.Flying, Gen.Double[-20, 20]).Sample(
            (flight, degrees) =>
            {
                SteadyFlight there = flight.Configuration.OnPath(flight.Airspeed, Angle.FromDegrees(degrees));
                Assert.Equal(
                    degrees, flight.Configuration.Glide(flight.Airspeed, there.Thrust).PathAngle.Degrees, 1e-9);
            },
            iter: Generators.Many);

    [Fact]
    public void Glide_ThroughOnPathAtItsAngle_ComesBack() =>
        Powered.Sample(
            flight =>
            {
                SteadyFlight there = flight.Configuration.Glide(flight.Airspeed, flight.Thrust);
                // OnPath ends at 30°.
                if (Math.Abs(there.PathAngle.Degrees) >= 30) return;
                double thrust = flight.Configuration.OnPath(flight.Airspeed, there.PathAngle).Thrust.Newtons;
                Assert.Equal(flight.Thrust.Newtons, thrust, 1e-9 * flight.Configuration.Weight.Newtons);
            },
            iter: Generators.Many);

    [Fact]
    public void OnPathOverGround_InWind_HasThatAngleOverTheGround() =>
        Gen.Select(Generators.Flying, Gen.Double[0, 15], Gen.Double[-0.7, 0.7]).Sample(
            (flight, degrees, share) =>
            {
                Speed headwind = Speed.FromKnots(share * Math.Min(flight.Airspeed.True.Knots, 140));
                SteadyFlight steady = flight.Configuration.OnPathOverGround(flight.Airspeed, Angle.FromDegrees(degrees), headwind);
                Assert.Equal(-degrees, steady.AngleOverGround(headwind).Degrees, 1e-8);
            },
            iter: Generators.Many);

    [Fact]
    public void BestGlide_AgainstASearchOverSpeed_IsTheFlattest() =>
        Unlimited((configuration, air) => configuration.BestGlide(air)).Sample(
            (configuration, air) =>
            {
                SteadyFlight closed = configuration.BestGlide(air);
                double speed = SlowestBy(configuration, air, flight => flight.GlideAngle.Radians);
                SteadyFlight found = configuration.Glide(Airspeed.FromTrue(Speed.FromMetersPerSecond(speed), air));
                Assert.True(found.LiftToDrag <= closed.LiftToDrag * (1 + 1e-12), "A speed glides flatter.");
                Close.To(closed.LiftToDrag, found.LiftToDrag, 1e-9);
                Close.To(configuration.Flaps.Drag.MaximumLiftToDrag, closed.LiftToDrag, 1e-12);
                Close.To(closed.Airspeed.True.MetersPerSecond, speed, 1e-5);
            },
            iter: Generators.Many / 10);

    [Fact]
    public void MinimumSink_AgainstASearchOverSpeed_IsTheSlowestDescent() =>
        Unlimited((configuration, air) => configuration.MinimumSink(air)).Sample(
            (configuration, air) =>
            {
                SteadyFlight closed = configuration.MinimumSink(air);
                double speed = SlowestBy(configuration, air, flight => flight.SinkRate.MetersPerSecond);
                SteadyFlight found = configuration.Glide(Airspeed.FromTrue(Speed.FromMetersPerSecond(speed), air));
                Assert.True(found.SinkRate.MetersPerSecond >= closed.SinkRate.MetersPerSecond * (1 - 1e-12), "A speed sinks slower.");
                Close.To(closed.SinkRate.MetersPerSecond, found.SinkRate.MetersPerSecond, 1e-9);
                Close.To(closed.Airspeed.True.MetersPerSecond, speed, 1e-5);
            },
            iter: Generators.Many / 10);

    [Fact]
    public void MinimumSink_AnyPolar_IsSlowerAndSinksLessThanBestGlide() =>
        Gen.Select(Generators.Configurations, Generators.Airs).Sample(
            (configuration, air) =>
            {
                SteadyFlight slow = configuration.MinimumSink(air), flat = configuration.BestGlide(air);
                Assert.True(slow.Airspeed.True <= flat.Airspeed.True && slow.SinkRate <= flat.SinkRate);
            },
            iter: Generators.Many);

    [Fact]
    public void MinimumPowerSpeed_AgainstMinimumDragSpeed_IsTheFourthRootOfThree() =>
        Unlimited((configuration, air) => configuration.MinimumSink(air)).Sample(
            (configuration, air) => Close.To(
                Math.Pow(3, 0.25),
                configuration.MinimumDragSpeed(air)!.True / configuration.MinimumPowerSpeed(air)!.True),
            iter: Generators.Many);

    [Fact]
    public void BestGlideOverGround_StillAir_IsTheBestGlide() =>
        Gen.Select(Generators.Configurations, Generators.Airs).Sample(
            (configuration, air) =>
            {
                SteadyFlight still = configuration.BestGlideOverGround(air, Speed.Zero), closed = configuration.BestGlide(air);
                Close.To(closed.Airspeed.True.Knots, still.Airspeed.True.Knots, 1e-4);
                Close.To(closed.GlideAngle.Degrees, still.GlideAngle.Degrees, 1e-9);
            },
            iter: Generators.Many / 10);

    [Fact]
    public void BestGlideOverGround_Headwind_IsFasterAndTailwindSlower() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[0.05, 0.3]).Sample(
            (configuration, air, share) =>
            {
                SteadyFlight still = configuration.BestGlideOverGround(air, Speed.Zero);
                Speed wind = Headwind(still.Airspeed.True, share);
                Speed into = configuration.BestGlideOverGround(air, wind).Airspeed.True;
                Speed with = configuration.BestGlideOverGround(air, -wind).Airspeed.True;
                // A glide that the stall limits stays there until the wind asks for more speed.
                bool limited = still.LimitedByStall || configuration.BestGlide(air).LimitedByStall;
                Assert.True(limited ? into.Knots >= still.Airspeed.True.Knots - 1e-3 : into > still.Airspeed.True);
                Assert.True(with.Knots <= still.Airspeed.True.Knots + 1e-3);
            },
            iter: Generators.Many / 10);

    [Fact]
    public void BestGlideOverGround_AgainstItsNeighbours_IsFlatter() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[-0.4, 0.3], Gen.Double[0.9, 1.1]).Sample(
            (configuration, air, share, nearby) =>
            {
                Speed wind = Headwind(configuration.BestGlide(air).Airspeed.True, share);
                SteadyFlight best = configuration.BestGlideOverGround(air, wind);
                Speed neighbour = best.Airspeed.True * nearby;
                if (neighbour < configuration.StallSpeed(air).True || neighbour > configuration.MaximumSpeed(air).True) return;
                SteadyFlight other = configuration.Glide(Airspeed.FromTrue(neighbour, air));
                Assert.True(
                    best.AngleOverGround(wind).Radians >= other.AngleOverGround(wind).Radians - 1e-9,
                    "Another speed glides flatter over the ground.");
            },
            iter: Generators.Many / 10);

    [Fact]
    public void BestGlideOverGround_AgainstAllSpeeds_IsTheFlattest() =>
        Gen.Select(Generators.Configurations, Generators.Airs, Gen.Double[-1, 0.9]).Sample(
            (configuration, air, share) =>
            {
                Speed wind = Headwind(configuration.BestGlide(air).Airspeed.True, share);
                SteadyFlight best = configuration.BestGlideOverGround(air, wind);
                Speed slowest = configuration.StallSpeed(air).True, fastest = configuration.MaximumSpeed(air).True;
                Assert.True(best.Airspeed.True.Knots <= fastest.Knots * (1 + 1e-9), "Faster than the flaps allow.");
                Assert.All(Enumerable.Range(0, 50), step =>
                {
                    Speed speed = slowest + (fastest - slowest) * (step / 49.0);
                    if (speed <= wind * 1.3) return;
                    SteadyFlight other = configuration.Glide(Airspeed.FromTrue(speed, air));
                    Assert.True(other.AngleOverGround(wind).Radians <= best.AngleOverGround(wind).Radians + 1e-9);
                });
            },
            iter: Generators.Many / 10);

    [Fact]
    public void BestGlide_SlowFlapLimit_KeepsToTheFlapsHighestSpeed()
    {
        FlapSetting usual = Trainer.Setting("up", 0);
        FlapSetting slow = new(usual.Name, usual.Deflection, usual.Lift, usual.Drag, usual.Calibration, Speed.FromKnots(60));
        Aeroplane aeroplane = new(
            "Invented", "", Trainer.Wing, Mass.FromKilograms(700), Mass.FromKilograms(1100), InventedPropeller.Propeller, InventedPropeller.Engine, [slow]);
        Configuration configuration = aeroplane.Configure(slow);
        Assert.True(
            configuration.BestGlide(Air.StandardSeaLevel).Airspeed.True <= configuration.MaximumSpeed(Air.StandardSeaLevel).True);
    }

    // Winds end at 100 kt.
    private static Speed Headwind(Speed airspeed, double share) =>
        Speed.FromKnots(Math.Clamp(airspeed.Knots * share, -100, 100));

    // Well clear of the stall: a steep glide's own stall is slower than the 1 g stall where the search begins.
    private static Gen<(Configuration, Air)> Unlimited(Func<Configuration, Air, SteadyFlight> optimum) =>
        Gen.Select(Generators.Configurations, Generators.Airs)
            .Where(pair => optimum(pair.Item1, pair.Item2).LiftCoefficient < 0.9 * pair.Item1.Flaps.Lift.MaximumLiftCoefficient);

    private static double SlowestBy(Configuration configuration, Air air, Func<SteadyFlight, double> measure)
    {
        double slowest = configuration.StallSpeed(air).True.MetersPerSecond;
        double fastest = configuration.MaximumSpeed(air).True.MetersPerSecond;

        // The search tries speeds outside its bounds, where it must find nothing better.
        double Measure(double speed)
        {
            double inside = Math.Clamp(speed, slowest, fastest);
            Airspeed airspeed = Airspeed.FromTrue(Speed.FromMetersPerSecond(inside), air);
            return measure(configuration.Glide(airspeed)) + Math.Abs(speed - inside);
        }

        return FindMinimum.OfScalarFunctionConstrained(Measure, slowest, fastest, 1e-9);
    }
}
