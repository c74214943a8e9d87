using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

public sealed class TurnLawsTests
{
    // 9.80665·tan 30°/40 and 1600·cos 5°/(9.80665·tan 30°).
    [Fact]
    public void Rate_ThirtyDegrees_IsGravityTimesTangentThroughSpeed() =>
        Assert.Equal(0.141546801, TurnLaws.Rate(40, Math.PI / 6), 1e-9);

    [Fact]
    public void Radius_Descending_HasTheCosineOfThePath() =>
        Assert.Equal(281.516698, TurnLaws.Radius(40, -Math.PI / 36, Math.PI / 6), 1e-6);

    // From the forces: L = nW, D = qS(C_D0 + K C_L²), W sin γ = T − D must close.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.35, 500)]
    [InlineData(0.9, -200)]
    [InlineData(1.2, 3000)]
    public void SinPathAngle_AnyBank_BalancesTheForces(double bank, double thrust)
    {
        const double q = 900, area = 16, cd0 = 0.03, k = 0.06, weight = 10000;
        double sine = TurnLaws.SinPathAngle(q, area, cd0, k, weight, thrust, bank);
        double lift = Math.Sqrt(1 - sine * sine) / Math.Cos(bank) * weight;
        double coefficient = lift / (q * area);
        Assert.Equal(weight * sine, thrust - q * area * (cd0 + k * coefficient * coefficient), 1e-8);
        Assert.Equal(coefficient, TurnLaws.LiftCoefficient(q, area, weight, Math.Asin(sine), bank), 1e-12);
        Assert.Equal(thrust, TurnLaws.Thrust(q, area, cd0, k, weight, Math.Asin(sine), bank), 1e-8);
    }

    // A quarter to the right from north: R ahead and R to the right, and ten seconds of wind.
    [Fact]
    public void Displacement_QuarterTurn_IsARadiusEachWayAndTheDrift()
    {
        (double x, double y) = TurnLaws.Displacement(100, 0, Math.PI / 20, 10, 3, -2);
        Assert.Equal(130, x, 1e-10);
        Assert.Equal(80, y, 1e-10);
    }

    [Fact]
    public void Displacement_ThereAndBack_IsNone()
    {
        (double x, double y) = TurnLaws.Displacement(300, 0.7, 0.1, 12, 5, -4);
        (double backX, double backY) = TurnLaws.Displacement(300, 0.7 + 1.2, 0.1, -12, 5, -4);
        Assert.Equal(0, x + backX, 1e-10);
        Assert.Equal(0, y + backY, 1e-10);
    }

    [Fact]
    public void Distance_Calm_IsTheArc() => Assert.Equal(40 * 12, TurnLaws.Distance(40, 0.3, 0.1, 12, 0, 0), 1e-9);

    // Wind along, against and across: the cycloid's length by a thousand chords of a fine division.
    [Theory]
    [InlineData(0, 15)]
    [InlineData(-20, 5)]
    [InlineData(30, 0)]
    public void Distance_InWind_IsTheSumOfItsChords(double windX, double windY)
    {
        const int chords = 20000;
        double sum = 0;
        for (int at = 0; at < chords; at++)
        {
            (double x, double y) = TurnLaws.Displacement(400, 0.3 + 0.1 * 12 * at / chords, 0.1, 12.0 / chords, windX, windY);
            sum += Math.Sqrt(x * x + y * y);
        }

        Assert.Equal(sum, TurnLaws.Distance(40, 0.3, 0.1, 12, windX, windY), 1e-5);
    }
}
