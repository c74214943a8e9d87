using FlapAero.Equations;

namespace FlapAero.Tests.Propulsion;

/// <summary>The highest root of a balance, on balances whose roots are plain to see.</summary>
public sealed class PropellerSpeedSolverTests
{
    [Theory]
    [InlineData(17.3), InlineData(10.001), InlineData(39.999), InlineData(25.0)]
    public void Highest_OneRoot_IsThatRoot(double root)
    {
        Assert.Equal(root, PropellerSpeedSolver.Highest(n => n * n - root * root, 10, 40)!.Value, 1e-9);
        Assert.Equal(root, PropellerSpeedSolver.Highest(n => root - n, 10, 40)!.Value, 1e-9);
    }

    [Fact]
    public void Highest_TwoRoots_IsTheHigher() =>
        Assert.Equal(31, PropellerSpeedSolver.Highest(n => (n - 13) * (n - 31), 10, 40)!.Value, 1e-9);

    // A pair of roots a tenth of a revolution apart: 400 looks over 30 revolutions are fine enough.
    [Fact]
    public void Highest_TwoRootsCloseTogether_AreNotSteppedOver() =>
        Assert.Equal(20.1, PropellerSpeedSolver.Highest(n => (n - 20) * (n - 20.1), 10, 40)!.Value, 1e-9);

    [Fact]
    public void Highest_RootAtALimit_IsFound()
    {
        Assert.Equal(40, PropellerSpeedSolver.Highest(n => n - 40, 10, 40));
        Assert.Equal(10, PropellerSpeedSolver.Highest(n => n - 10, 10, 40));
    }

    [Fact]
    public void Highest_NoRootOrNoRange_HasNoAnswer()
    {
        Assert.Null(PropellerSpeedSolver.Highest(n => n + 1, 10, 40));
        Assert.Null(PropellerSpeedSolver.Highest(n => n - 41, 10, 40));
        Assert.Null(PropellerSpeedSolver.Highest(n => n - 9, 10, 40));
        Assert.Null(PropellerSpeedSolver.Highest(n => n - 10, 10, 10));
        Assert.Null(PropellerSpeedSolver.Highest(n => n - 10, 12, 8));
        Assert.Null(PropellerSpeedSolver.Highest(n => n - 10, double.NaN, 40));
    }

    // J = 40/(20 · 2) = 1; T = 0.1 · 1.2 · 400 · 16; P = 0.05 · 1.2 · 8000 · 32; Q = P/40π; η = 1 · 0.1/0.05.
    [Fact]
    public void Laws_ByHand_AreTheDefinitions()
    {
        Assert.Equal(1, PropellerLaws.AdvanceRatio(40, 20, 2), 1e-12);
        Assert.Equal(768, PropellerLaws.Thrust(0.1, 1.2, 20, 2), 1e-9);
        Assert.Equal(15360, PropellerLaws.Power(0.05, 1.2, 20, 2), 1e-9);
        Assert.Equal(15360 / (40 * Math.PI), PropellerLaws.Torque(0.05, 1.2, 20, 2), 1e-9);
        Assert.Equal(0.6, PropellerLaws.Efficiency(0.5, 0.06, 0.05), 1e-12);
    }
}
