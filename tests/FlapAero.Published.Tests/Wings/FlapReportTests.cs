using UnitsNet;

namespace FlapAero.Published.Tests.Wings;

/// <summary>
/// Measured flaps, known from abstracts, against the estimate from geometry: sign and size. Abstracts leave out dimensions;
/// what is assumed for them stands with each test.
/// </summary>
public sealed class FlapReportTests
{
    private static readonly WingSection Section = new(2 * Math.PI, Angle.FromDegrees(-3), 1.5);
    private static readonly WingPlanform Rectangular = WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(10.0 / 6), 1);

    // The flaps of these reports have a gap, but are no modern slotted flap: they lie between the two, or up to a tenth
    // below the first.
    private static void AssertBetweenPlainAndSlotted(double measured, double chordShare, double span, double degrees)
    {
        double Estimate(FlapKind kind, double most) => new FlapGeometry(kind, chordShare, 0, span)
            .OnWing(Rectangular, Section, Angle.FromDegrees(Math.Min(degrees, most))).MaximumLiftIncrement;
        Assert.InRange(measured, 0.9 * Estimate(FlapKind.Plain, 60), Estimate(FlapKind.Slotted, 40));
    }

    // The flap's chord, a fifth, and its whole span are assumed.
    [Fact]
    public void MaximumLift_ExternalFlapInTheFullScaleTunnel_IsBetweenPlainAndSlotted() =>
        AssertBetweenPlainAndSlotted(PublishedRows.Input("T06-002") - PublishedRows.Input("T06-001"), 0.2, 1, 30);

    // On the whole span; coefficients on wing and flap together. Past 40° the slotted estimate is that at 40°.
    [Fact]
    public void MaximumLift_AuxiliaryFlapOnClarkY_IsBetweenPlainAndSlotted()
    {
        IReadOnlyList<PrintedNumber> numbers = PublishedRows.Get("T06-014").Numbers;
        AssertBetweenPlainAndSlotted(numbers[1].Value - numbers[0].Value, 0.15, 1, 45);
    }

    // Inboard of the ailerons: 55 % of the span, a quarter of the chord, 40° and a C_Lmax of 1.4 flaps up are assumed.
    [Fact]
    public void MaximumLift_FlapsInboardOfTheAilerons_IsBetweenPlainAndSlotted() =>
        AssertBetweenPlainAndSlotted(1.4 * PublishedRows.Input("T06-006") / 100, 0.25, 0.55, 40);

    // Per length of span; the rule of the report on tapered wings with split flaps is sharper than the critical section's on
    // a tapered wing.
    [Theory, InlineData(1), InlineData(0.8), InlineData(0.6)]
    public void MaximumLift_FlapBeyondSeventyPercentOfTheSpan_AddsLess(double taper)
    {
        double share = PublishedRows.Input("T06-017") / 100;
        double Maximum(double to) => new LiftingLine(
            WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(2), taper), Section,
            flap: to > 0 ? new PartSpanFlap(0, to, Angle.FromDegrees(-10), 0.9) : null).FirstStall().MaximumLiftCoefficient;
        double inside = (Maximum(share) - Maximum(0)) / share;
        double beyond = (Maximum(1) - Maximum(share)) / (1 - share);
        Assert.True(beyond > 0 && beyond < inside, FormattableString.Invariant($"{inside:g3} for a whole span inside, {beyond:g3} beyond."));
    }

    [Fact]
    public void MaximumLift_WideSlottedFlap_IsOnlySlightlySuperior()
    {
        double Increment(double chordShare) =>
            new FlapGeometry(FlapKind.Slotted, chordShare, 0, 1).At(Angle.FromDegrees(40)).MaximumLiftIncrement;
        Assert.InRange(Increment(0.40) / Increment(0.25), 1, 1.1);
    }
}
