using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

/// <summary>A polar with C_D0 = 0.035, e = 0.75, A = 7.2; optima by a search on the polar itself.</summary>
public sealed class DragLawsTests
{
    private const double Parasite = 0.035;
    private const double Induced = 0.058946275219220495;

    // 1/(3.14159265 · 0.75 · 7.2) = 1/16.9646003.
    [Fact]
    public void InducedFactor_OswaldAndAspectRatio_IsTheirReciprocalOverPi() =>
        Assert.Equal(1 / 16.96460033, DragLaws.InducedFactor(0.75, 7.2), 1e-10);

    [Fact]
    public void Coefficient_FarFromTheGround_IsTheParabola() =>
        Assert.Equal(0.106324993, DragLaws.Coefficient(Parasite, Induced, 1.1), 1e-9);

    [Fact]
    public void Coefficient_NearTheGround_LosesInducedDragOnly() =>
        Assert.Equal(0.0777949958, DragLaws.Coefficient(Parasite, Induced, 1.1, 0.6), 1e-9);

    // 2z/b = 0.4: 0.4^0.768 = e^(0.768 ln 0.4) = 0.494746, e^(−2.48 · 0.494746) = 0.293180.
    [Fact]
    public void GroundEffect_FifthOfTheSpan_IsTheExponentialFit() =>
        Assert.Equal(0.706820, DragLaws.GroundEffect(2, 10), 1e-6);

    [Fact]
    public void BestGlideLift_Polar_IsWhereTheSearchFindsIt() =>
        Assert.Equal(0.7705588956, DragLaws.BestGlideLift(Parasite, Induced), 1e-8);

    [Fact]
    public void MaximumLiftToDrag_Polar_IsWhatTheSearchFinds() =>
        Assert.Equal(11.0079842223, DragLaws.MaximumLiftToDrag(Parasite, Induced), 1e-9);

    [Fact]
    public void MinimumPowerLift_Polar_IsWhereTheSearchFindsIt() =>
        Assert.Equal(1.33464715, DragLaws.MinimumPowerLift(Parasite, Induced), 1e-7);
}
