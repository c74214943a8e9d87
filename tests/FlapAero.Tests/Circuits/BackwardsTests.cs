using UnitsNet;
using static FlapAero.Tests.Circuits.Plans;

namespace FlapAero.Tests.Circuits;

/// <summary>Closed forms that a solved circuit has to meet.</summary>
public sealed class BackwardsTests
{
    [Theory]
    [InlineData(75, 20)]
    [InlineData(90, 30)]
    public void Turns_CalmAndLevel_AreTwoRadiiWideInHalfACirclesTime(double knots, double bank)
    {
        double speed = Knots(knots).True.MetersPerSecond, tangent = Math.Tan(bank * Math.PI / 180);
        double radius = speed * speed / (9.80665 * tangent);
        Circuit circuit = Solve(Plain(knots, bank, Descent.Level, Descent.Level, Descent.Level, spacing: 2 * radius));

        Assert.Equal(0, circuit.Base.Distance.Meters, 1e-6);
        Assert.Equal(2 * radius, circuit.TurnToBase.Begin.Y.Meters - circuit.TurnToFinal.End.Y.Meters, 1e-6);
        Assert.Equal(
            Math.PI * speed / (9.80665 * tangent), (circuit.TurnToBase.Time + circuit.TurnToFinal.Time).Seconds, 1e-9);
        Assert.Equal(radius, circuit.TurnToBase.TurnRadius!.Value.Meters, 1e-6);
        Assert.Equal(0, circuit.TurnToBase.HeightLost.Meters, 0);
        Assert.Equal(1 / Math.Cos(bank * Math.PI / 180), circuit.TurnToBase.LoadFactor, 1e-12);
    }

    [Theory]
    [InlineData(1200)]
    [InlineData(2500)]
    public void BaseTurn_CalmAtFortyFiveDegrees_IsAsFarPastAbeamAsTheSpacing(double spacing)
    {
        Circuit circuit = Solve(Plain(spacing: spacing, height: 400));
        Assert.Equal(spacing, circuit.BaseTurnPastAbeam.Meters, 1e-6);
        Assert.Equal(45, circuit.AngleBehindWing.Degrees, 1e-9);
    }

    [Fact]
    public void AngleBehindWing_InWind_IsMeasuredFromTheWingNotFromTheTrack()
    {
        // From the runway's side on downwind: the nose points inwards, and the wing towards the point less far back.
        Circuit circuit = Solve(Plain(height: 400, wind: WindOf(270, 15)));
        CircuitPoint at = circuit.TurnToBase.Begin;
        double bearing = Math.Atan2(-at.Y.Meters, circuit.Plan.TouchdownPoint.Meters - at.X.Meters) * 180 / Math.PI;
        SameHeading(bearing, at.Heading.Degrees + 90 + 45);
        Assert.True(circuit.BaseTurnPastAbeam > circuit.Plan.Spacing, "The crab did not count.");
    }

    [Fact]
    public void TouchdownPoint_FurtherIn_MovesWhatAbeamMeans()
    {
        Circuit near = Solve(Plain(height: 400)), far = Solve(Plain(height: 400).With(touchdownPoint: Length.FromMeters(400)));
        Assert.Equal(near.Plan.AimingPoint.Meters, near.Plan.TouchdownPoint.Meters);
        Assert.Equal(
            400 - near.Plan.AimingPoint.Meters, near.LengthOfFinal.Meters - far.LengthOfFinal.Meters, 1e-6);
    }

    // 1667 m by common practice's 45°, less the aiming point 50 ft/tan 3.5° = 249.2 m past the threshold: 1417.6 m and 334 ft.
    [Fact]
    public void Demo_CalmFortyFive_HasTheFinalThatGeometrySays()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        double aim = 50 * 0.3048 / Math.Tan(3.5 * Math.PI / 180);
        Assert.Equal(0.9 * 1852 - aim, circuit.LengthOfFinal.Meters, 1e-6);
        Assert.Equal(50 + circuit.LengthOfFinal.Feet * Math.Tan(3.5 * Math.PI / 180), circuit.HeightRollingOut.Feet, 1e-6);
    }

    [Fact]
    public void Downwind_Level_ReducesPowerInTheBaseTurn()
    {
        Circuit circuit = Solve(Plain(downwind: Descent.Level, height: 300));
        Assert.Null(circuit.Plan.Fix);
        Assert.Equal(0, circuit.Downwind.Time.Seconds);
        Assert.Equal(300, circuit.TurnToBase.Begin.Height.Meters, 1e-9);
        Assert.Equal(circuit.BaseTurnPastAbeam.Meters, circuit.PowerReducedPastAbeam.Meters, 1e-9);
    }

    [Fact]
    public void Fixes_OfOneCircuit_GiveThatCircuit() => EachCircuit(circuit =>
    {
        if (circuit.Plan.Legs.Downwind.Descent.IsLevel || circuit.AngleBehindWing > Degrees(80)) return;
        CircuitFix[] others =
        [
            CircuitFix.BaseTurnAt(circuit.AngleBehindWing), CircuitFix.PowerReducedAt(circuit.PowerReducedPastAbeam),
            CircuitFix.RollOutAt(circuit.HeightRollingOut),
        ];
        // What a rounded fix refuses lies within rounding of the limit.
        foreach (CircuitFix fix in others)
            if (circuit.HeightRollingOut.Feet > 300.001 && circuit.Downwind.Time.Seconds > 0.001)
                Same(circuit.TurnToBase.Begin, Solve(circuit.Plan.With(fix: fix)).TurnToBase.Begin, 1e-5);
    });

    [Fact]
    public void Turn_StatedThrust_SinksFasterThanStraightFlight()
    {
        Circuit circuit = Solve(Plain(height: 400));
        Assert.Equal(circuit.Base.Thrust.Newtons, circuit.TurnToFinal.Thrust.Newtons, 1e-9);
        Assert.True(circuit.TurnToFinal.SinkRate > circuit.Base.SinkRate);
        Assert.True(circuit.TurnToFinal.StallMargin < circuit.Base.StallMargin);
    }

    [Fact]
    public void Descents_StatedThreeWays_AreOneCircuit()
    {
        Circuit thrust = Solve(Plain(height: 400));
        Airspeed speed = thrust.Plan.Legs.Base.Airspeed;
        Descent power = Descent.AtPower(Power.FromWatts(400 * speed.True.MetersPerSecond));
        Descent sink = Descent.AtSinkRate(thrust.Base.SinkRate);
        Same(thrust.Legs[0].Begin, Solve(Plain(height: 400, downwind: power, turns: power, baseLeg: power)).Legs[0].Begin);
        Same(thrust.Legs[0].Begin, Solve(Plain(height: 400, downwind: sink, baseLeg: sink)).Legs[0].Begin, 1e-6);
    }

    [Fact]
    public void SteadyFlight_OfAStraightLeg_IsTheConfigurationsGlide()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        SteadyFlight glide = circuit.Base.Configuration.Glide(circuit.Base.Airspeed, circuit.Base.Thrust);
        Assert.Equal(glide.PathAngle.Degrees, circuit.Base.PathAngle.Degrees, 1e-10);
        SteadyFlight final = circuit.Final.Configuration.OnPathOverGround(circuit.Final.Airspeed, Degrees(3.5), Speed.Zero);
        Assert.Equal(final.Thrust.Newtons, circuit.Final.Thrust.Newtons, 1e-8);
    }

    // (85² − 75²) kt²/2g = 21.6 m.
    [Fact]
    public void HeightWorthOfSlowing_EightyFiveToSeventyFive_IsItsEnergy() =>
        Assert.Equal(21.5896, Solve(DemoCircuits.FlapsUp).TurnToBase.HeightWorthOfSlowing.Meters, 0.001);

    [Fact]
    public void Track_Drawn_FollowsTheLegs()
    {
        Circuit circuit = Solve(DemoCircuits.FlapsUp);
        Same(circuit.Legs[0].Begin, circuit.Track[0]);
        Same(circuit.Legs[6].End, circuit.Track[^1]);
        Assert.All(circuit.Track.Zip(circuit.Track.Skip(1)), pair =>
        {
            Assert.True(pair.First.Time <= pair.Second.Time);
            Assert.InRange(Math.Abs(Math.IEEERemainder(pair.Second.Heading.Degrees - pair.First.Heading.Degrees, 360)), 0, 5.001);
        });
        Same(circuit.TurnToBase.End, circuit.TurnToBase.Point(circuit.TurnToBase.Time));
        Assert.Throws<RefusedInputException>(() => circuit.Base.Point(circuit.Base.Time + Seconds(1)));
    }
}
