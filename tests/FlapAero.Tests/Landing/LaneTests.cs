using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>A lane computes what its own number would, whatever stands beside it.</summary>
public sealed class LaneTests
{
    private const int Rows = 4;

    // Four rows of three numbers.
    private static readonly double[] Table = [1.5, -4, 10, -2, 0.5, 20, 0.25, 2, 30, 9, 9, 40];

    [Fact]
    public void Count_OfEach_IsOneAndFour() => Assert.Equal([1, 4], [ScalarLane.Count, Lanes4.Count]);

    [Fact]
    public void Arithmetic_ScalarAndLanes_IsThatOfEachNumber()
    {
        Arithmetic<ScalarLane>();
        Arithmetic<Lanes4>();
    }

    [Fact]
    public void Masks_ScalarAndLanes_AreTrueWhereTheComparisonIs()
    {
        Masks<ScalarLane>();
        Masks<Lanes4>();
    }

    [Fact]
    public void Any_OneLaneOfFour_IsEnough()
    {
        Lanes4 one = Lanes4.Less(Column<Lanes4>(0, 0), -1);
        Assert.Equal([false, true, false, false], [.. Enumerable.Range(0, Rows).Select(i => double.IsNaN(one[i]))]);
        Assert.True(Lanes4.Any(one));
        Assert.False(Lanes4.Any(Lanes4.Less(Column<Lanes4>(0, 0), -2)));
        Assert.True(ScalarLane.Any(ScalarLane.True));
        Assert.False(ScalarLane.Any(0));
    }

    private static void Arithmetic<T>()
        where T : unmanaged, ILanes<T>
    {
        for (int first = 0; first < Rows; first += T.Count)
        {
            T a = Column<T>(first, 0), b = Column<T>(first, 1), c = Column<T>(first, 2);
            for (int i = 0; i < T.Count; i++)
            {
                double x = Table[3 * (first + i)], y = Table[3 * (first + i) + 1], z = Table[3 * (first + i) + 2];
                Assert.Equal((x, y, z), (a[i], b[i], c[i]));
                Assert.Equal(x + y, (a + b)[i]);
                Assert.Equal(x - y, (a - b)[i]);
                Assert.Equal(x * y, (a * b)[i]);
                Assert.Equal(x / y, (a / b)[i]);
                Assert.Equal(3 * y, (3.0 * b)[i]);
                Assert.Equal(x * y + z, T.Fused(a, b, c)[i]);
                Assert.Equal(Math.Sqrt(z), T.Sqrt(c)[i]);
                Assert.Equal(Math.Exp(x), T.Exp(a)[i], 1e-12 * Math.Exp(x));
                Assert.Equal(Math.Log(z), T.Log(c)[i], 1e-14);
                Assert.Equal(Math.Abs(x), T.Abs(a)[i]);
                Assert.Equal(Math.Min(x, y), T.Min(a, b)[i]);
                Assert.Equal(Math.Max(x, y), T.Max(a, b)[i]);
                Assert.Equal(7, ((T)7)[i]);
            }
        }
    }

    private static void Masks<T>()
        where T : unmanaged, ILanes<T>
    {
        for (int first = 0; first < Rows; first += T.Count)
        {
            T a = Column<T>(first, 0), b = Column<T>(first, 1), none = 0, all = ~none;
            T less = T.Less(a, b), positive = T.Less(0, a);
            for (int i = 0; i < T.Count; i++)
            {
                double x = Table[3 * (first + i)], y = Table[3 * (first + i) + 1];
                bool isLess = x < y, isPositive = x > 0;
                Assert.Equal(isLess, IsTrue(less, i));
                Assert.Equal(!isLess, IsTrue(~less, i));
                Assert.Equal(isLess && isPositive, IsTrue(less & positive, i));
                Assert.Equal(isLess || isPositive, IsTrue(less | positive, i));
                Assert.True(IsTrue(all, i) && IsTrue(all | none, i) && IsTrue(all & all, i));
                Assert.False(IsTrue(none, i) || IsTrue(all & none, i) || IsTrue(none & all, i) || IsTrue(none | none, i));
                Assert.Equal(isLess ? x : y, T.Select(less, a, b)[i]);
                Assert.Equal(isLess ? y : x, T.Select(less, b, a)[i]);
            }

            Assert.True(T.Any(all));
            Assert.False(T.Any(none));
        }
    }

    private static bool IsTrue<T>(T mask, int lane)
        where T : unmanaged, ILanes<T> => double.IsNaN(mask[lane]);

    private static T Column<T>(int first, int column)
        where T : unmanaged, ILanes<T> => T.Gather(Table.AsSpan(3 * first), column, 3);
}
