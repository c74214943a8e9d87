using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>The demo's runway and screen height against published ones.</summary>
public sealed class FrictionTests
{
    [Fact]
    public void Braking_Demo_IsBelowWhatADryTyreCanDo() =>
        Assert.True(DemoLandings.TrainerH4FlapsUp.BrakingFriction < PublishedRows.Input("T07-001"));

    // The demo's is a student's braking, three quarters of the textbooks'.
    [Theory, InlineData("T07-005"), InlineData("T07-006")]
    public void Braking_Demo_IsALittleBelowTheTextbooks(string id) =>
        Assert.InRange(DemoLandings.TrainerH4FlapsUp.BrakingFriction / PublishedRows.Input(id), 0.6, 0.9);

    [Fact]
    public void Rolling_Demo_IsTheTextbooks() =>
        Assert.Equal(PublishedRows.Input("T07-004"), DemoLandings.TrainerH4FlapsUp.Runway.Surface.RollingFriction);

    // Braking on the demo's dry runway takes as much grip as a tyre finds on snow, and more than ice has.
    [Fact]
    public void Braking_DemoOnAWinterRunway_IsWhatSnowHasAndIceHasNot()
    {
        double[] snow = [.. PublishedRows.Get("T07-002").Value.Split(" to ").Select(text => new PrintedNumber(text, "").Value)];
        Assert.InRange(DemoLandings.TrainerH4FlapsUp.BrakingFriction, snow[0], snow[1]);
        Assert.True(DemoLandings.TrainerH4FlapsUp.BrakingFriction > PublishedRows.Input("T07-003"));
    }

    [Fact]
    public void ApproachGradient_Regulation_IsItsAngleInPerCent() => Assert.Equal(
        PublishedRows.Get("T07-010").Value,
        FormattableString.Invariant($"{100 * Math.Tan(Angle.FromDegrees(3).Radians):0.0} (3 deg)"));

    // The regulation's limit is for showing a distance; the demo's path is a little steeper, and is flown the same with flaps up.
    [Fact]
    public void ApproachGradient_Demo_IsALittleSteeperThanTheRegulationsLimit() =>
        Assert.InRange(LandingPilot.Usual.PathAngle.Degrees, 3, 4);

    [Fact]
    public void ScreenHeight_CurrentRule_IsTheDemosInBothUnits() => Assert.Equal(
        PublishedRows.Get("T07-011").Value,
        FormattableString.Invariant($"{LandingPilot.Usual.ThresholdHeight.Feet:0} ({LandingPilot.Usual.ThresholdHeight.Meters:0})"));
}
