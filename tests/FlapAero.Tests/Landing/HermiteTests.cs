using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The cubic through two values and two slopes, held to cubics whose root is known.</summary>
public sealed class HermiteTests
{
    // p = (t − r)(t² + 1), which rises through zero at r alone; over a length L the slopes are 1/L of those in t.
    [Theory]
    [InlineData(0.3, 1.0)]
    [InlineData(0.55, 2.5)]
    [InlineData(0.8, 0.1)]
    public void Root_CubicOfOneRoot_IsThatRoot(double root, double length)
    {
        ScalarLane found = Hermite.Root<ScalarLane>(length, -root, 1 / length, 2 * (1 - root), (4 - 2 * root) / length);
        Assert.Equal(root * length, found.Value, 2e-3 * length);
    }

    // p = (t − r)/L is found by the first chord.
    [Fact]
    public void Root_StraightLine_IsExact() =>
        Assert.Equal(1.5, Hermite.Root<ScalarLane>(2, -3, 2, 1, 2).Value, 1e-12);

    [Theory]
    [InlineData(0.001, 0.02)]
    [InlineData(0.999, 0.98)]
    public void Root_NextToAnEnd_StaysInside(double root, double inside) =>
        Assert.Equal(4 * inside, Hermite.Root<ScalarLane>(4, -root, 0.25, 1 - root, 0.25).Value, 1e-12);

    [Fact]
    public void Root_FourLanes_AreFourRoots()
    {
        double[] table = [0.2, 0.4, 0.6, 0.8];
        Lanes4 root = Lanes4.Gather(table, 0, 1);
        Lanes4 found = Hermite.Root(
            1, 0 - root, 1, 2.0 * (1 - root), 4 - 2.0 * root);
        for (int i = 0; i < 4; i++)
            Assert.Equal(table[i], found[i], 5e-3);
    }

    // p = h − (t − s)² peaks with h at s, and each of the fifteen looks between the ends must see its own peak.
    [Fact]
    public void Above_PeakAtAnyLook_IsSeen()
    {
        for (int i = 1; i < 16; i++)
        {
            double place = i / 16.0;
            Assert.True(IsAbove(place, 1e-3), $"a peak at {place}");
            Assert.False(IsAbove(place, -1e-3), $"no peak at {place}");
            // The same parabola stretched: slopes are per length.
            Assert.True(IsAbove(place, 1e-3, 5), $"a peak at {place} of a longer step");
        }
    }

    // p = 10 t (1 − t)(t − ½) − 0.3 is below at both ends and above near t = 0.8 only.
    [Fact]
    public void Above_CubicWithOneHump_IsSeenInItsLaneOnly()
    {
        static Lanes4 Of(params double[] values) => Lanes4.Gather(values, 0, 1);
        Lanes4 above = Hermite.Above(
            1, Of(-0.3, -0.6, -0.3, -0.5), -5, Of(-0.3, -0.6, -0.3, -0.5), -5);
        Assert.Equal([true, false, true, false], [.. Enumerable.Range(0, 4).Select(i => double.IsNaN(above[i]))]);
    }

    private static bool IsAbove(double place, double peak, double length = 1) => ScalarLane.Any(Hermite.Above<ScalarLane>(
        length, peak - place * place, 2 * place / length, peak - (1 - place) * (1 - place), -2 * (1 - place) / length));
}
