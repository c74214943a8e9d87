using FlapAero.Equations;

namespace FlapAero.Tests.Equations;

public sealed class TrackLawsTests
{
    // Half of the speed across: 30°.
    [Fact]
    public void Crab_HalfTheSpeedAcross_IsThirtyDegrees() => Assert.Equal(Math.PI / 6, TrackLaws.Crab(20, 40)!.Value, 1e-12);

    [Theory]
    [InlineData(40)]
    [InlineData(-41)]
    public void Crab_WindAcrossAsFastAsTheAeroplane_HasNoAnswer(double across) => Assert.Null(TrackLaws.Crab(across, 40));

    // 3-4-5: 50 through the air, 30 across, leaves 40, less 10 from ahead.
    [Fact]
    public void GroundSpeed_WindAcrossAndAhead_TakesBoth() => Assert.Equal(30, TrackLaws.GroundSpeed(50, 10, 30), 1e-12);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 12)]
    [InlineData(-10, -20)]
    public void SinkOnPath_WindAcross_HoldsTheAngleOverTheGround(double headwind, double crosswind)
    {
        double sink = TrackLaws.SinkOnPath(40, 0.07, headwind, crosswind);
        double ground = TrackLaws.GroundSpeed(Math.Sqrt(1600 - sink * sink), headwind, crosswind);
        Assert.Equal(Math.Tan(0.07), sink / ground, 1e-12);
    }

    [Fact]
    public void PastAbeam_FortyFive_IsTheSpacing() => Assert.Equal(1500, TrackLaws.PastAbeam(1500, Math.PI / 4, 0), 1e-9);

    [Fact]
    public void AngleBehindWing_OfPastAbeam_ComesBack() =>
        Assert.Equal(0.6, TrackLaws.AngleBehindWing(1500, TrackLaws.PastAbeam(1500, 0.6, -0.2), -0.2), 1e-12);
}
