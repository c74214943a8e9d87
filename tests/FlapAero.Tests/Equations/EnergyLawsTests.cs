using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

public sealed class EnergyLawsTests
{
    // 500 N more drag than thrust, at 35 m/s, on 10 kN: 500 × 35/10 000 = 1.75 m lost a second.
    [Fact]
    public void Rate_DragBeyondThrust_IsItsPowerPerWeight() =>
        Assert.Equal(-1.75, EnergyLaws.Rate(1000, 1500, 35, 10000), 1e-12);
}
