using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Approach thrust 1, idle −0.5, cut at 10 s, four seconds of a ramp.</summary>
public sealed class PowerScheduleTests
{
    private static readonly PowerSchedule<ScalarLane> Power = new(1, -0.5, 10, 4);

    [Theory]
    [InlineData(0.0, 1.0, 10.0)]
    [InlineData(9.999, 1.0, 10.0)]
    [InlineData(10.0, 1.0, 14.0)]
    [InlineData(12.0, 0.25, 14.0)]
    [InlineData(14.0, -0.5, double.PositiveInfinity)]
    [InlineData(90.0, -0.5, double.PositiveInfinity)]
    public void At_EachSegment_IsItsThrustAndEnd(double time, double thrust, double end)
    {
        Thrust<ScalarLane> segment = Power.At(time);
        Assert.Equal(thrust, segment.At(time).Value, 1e-14);
        Assert.Equal(end, segment.End.Value);
    }

    // A segment is linear, also where it is asked for a moment outside itself.
    [Fact]
    public void At_OneSegment_IsAStraightLine()
    {
        Assert.Equal(-0.125, Power.At(10).At(13).Value, 1e-14);
        Assert.Equal(1, Power.At(3).At(13).Value);
        Assert.Equal(-0.5, Power.At(20).At(100).Value);
    }

    [Fact]
    public void At_Step_GoesToIdleAtOnce()
    {
        PowerSchedule<ScalarLane> step = new(1, -0.5, 10, 0);
        Assert.Equal((1, 10), (step.At(9.99).At(9.99).Value, step.At(9.99).End.Value));
        Assert.Equal((-0.5, double.PositiveInfinity), (step.At(10).At(10).Value, step.At(10).End.Value));
    }

    [Fact]
    public void At_NeverCut_StaysTheApproachs()
    {
        PowerSchedule<ScalarLane> never = new(1, -0.5, double.PositiveInfinity, 4);
        Assert.Equal(1, never.At(1e6).At(1e6).Value);
        Assert.Equal(double.PositiveInfinity, never.Settled.Value);
        Assert.Equal(14, Power.Settled.Value);
    }

    [Fact]
    public void At_FourLanes_IsEachLanesOwnSegment()
    {
        PowerSchedule<Lanes4> power = new(Lanes4.Of(1), Lanes4.Of(-0.5), Lanes4.Of(10), Lanes4.Of(4));
        Lanes4 time = Lanes4.Gather([3, 12, 14, 50], 0, 1), thrust = power.At(time).At(time);
        Assert.Equal([1, 0.25, -0.5, -0.5], [.. Enumerable.Range(0, 4).Select(i => thrust[i])]);
    }
}
