using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>A throttle that begins to close at 10 s and is closed after four seconds; a gust from 12 s to 20 s.</summary>
public sealed class TimetableTests
{
    private static readonly Timetable<ScalarLane> Still = new(10, 4, default);
    private static readonly Timetable<ScalarLane> Gusty = new(10, 4, new(0, 5, 12, 8));

    [Theory]
    [InlineData(0.0, 0.0, 10.0, 10.0)]
    [InlineData(9.999, 0.0, 10.0, 10.0)]
    [InlineData(10.0, 0.0, 14.0, 12.0)]
    [InlineData(12.0, 0.5, 14.0, 14.0)]
    [InlineData(14.0, 1.0, double.PositiveInfinity, 20.0)]
    [InlineData(90.0, 1.0, double.PositiveInfinity, double.PositiveInfinity)]
    public void At_EachSegment_IsItsShareAndEnd(double time, double closed, double end, double inGust)
    {
        Segment<ScalarLane> segment = Still.At(time);
        Assert.Equal(closed, segment.Closed(time).Value, 1e-14);
        Assert.Equal(end, segment.End.Value);
        Assert.Equal(closed, Gusty.At(time).Closed(time).Value, 1e-14);
        Assert.Equal(inGust, Gusty.At(time).End.Value);
    }

    // A segment is linear, also where it is asked for a moment outside itself.
    [Fact]
    public void At_OneSegment_IsAStraightLine()
    {
        Assert.Equal(0.75, Still.At(10).Closed(13).Value, 1e-14);
        Assert.Equal(0, Still.At(3).Closed(13).Value);
        Assert.Equal(1, Still.At(20).Closed(100).Value);
    }

    [Fact]
    public void At_Step_IsClosedAtOnce()
    {
        Timetable<ScalarLane> step = new(10, 0, default);
        Assert.Equal((0, 10), (step.At(9.99).Closed(9.99).Value, step.At(9.99).End.Value));
        Assert.Equal((1, double.PositiveInfinity), (step.At(10).Closed(10).Value, step.At(10).End.Value));
    }

    [Fact]
    public void At_NeverCut_StaysOpen()
    {
        Timetable<ScalarLane> never = new(double.PositiveInfinity, 4, default);
        Assert.Equal(0, never.At(1e6).Closed(1e6).Value);
        Assert.Equal(double.PositiveInfinity, never.Settled.Value);
        Assert.Equal((10, 14), (Still.Cut.Value, Still.Settled.Value));
    }

    [Fact]
    public void At_FourLanes_IsEachLanesOwnSegment()
    {
        Timetable<Lanes4> timetable = new(10, 4, default);
        Lanes4 time = Lanes4.Gather([3, 12, 14, 50], 0, 1), closed = timetable.At(time).Closed(time);
        Assert.Equal([0, 0.5, 1, 1], [.. Enumerable.Range(0, 4).Select(i => closed[i])]);
    }
}
