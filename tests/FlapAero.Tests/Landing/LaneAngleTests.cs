using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Sine and cosine in lanes against the runtime's scalar functions, and one kind of lane against the other.</summary>
public sealed class LaneAngleTests
{
    [Fact]
    public void SinCos_Angles_AreThoseOfTheScalarFunctions()
    {
        var random = new Random(1);
        for (int i = 0; i < 200_000; i++)
        {
            double angle = (2 * random.NextDouble() - 1) * (i % 2 == 0 ? Math.PI / 4 : i % 3 == 0 ? 100 : 1e-3);
            (ScalarLane sine, ScalarLane cosine) = LaneAngles.SinCos<ScalarLane>(angle);
            Assert.InRange(Math.Abs(sine.Value - Math.Sin(angle)), 0, Math.BitIncrement(Math.Abs(Math.Sin(angle))) - Math.Abs(Math.Sin(angle)));
            Assert.InRange(Math.Abs(cosine.Value - Math.Cos(angle)), 0, Math.BitIncrement(Math.Abs(Math.Cos(angle))) - Math.Abs(Math.Cos(angle)));
        }
    }

    // A large angle beside a small one does not change it.
    [Fact]
    public void SinCos_InAVector_HasTheBitsOfOneAlone()
    {
        var random = new Random(2);
        for (int i = 0; i < 100_000; i++)
        {
            double[] angles = [.. Enumerable.Range(0, Lanes4.Count).Select(_ => (2 * random.NextDouble() - 1) * (i % 8 == 0 ? 4 : 0.5))];
            (Lanes4 sine, Lanes4 cosine) = LaneAngles.SinCos(Lanes4.Gather(angles, 0, 1));
            for (int lane = 0; lane < angles.Length; lane++)
            {
                (ScalarLane oneSine, ScalarLane oneCosine) = LaneAngles.SinCos<ScalarLane>(angles[lane]);
                Assert.Equal((oneSine.Value, oneCosine.Value), (sine[lane], cosine[lane]));
            }
        }
    }

    [Theory, InlineData(double.NaN), InlineData(double.PositiveInfinity), InlineData(double.NegativeInfinity)]
    public void SinCos_NoAngle_IsNoNumber(double angle)
    {
        (ScalarLane sine, ScalarLane cosine) = LaneAngles.SinCos<ScalarLane>(angle);
        Assert.True(double.IsNaN(sine.Value) && double.IsNaN(cosine.Value));
    }
}
