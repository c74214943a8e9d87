using CsCheck;
using FlapAero.Tests.Properties;
using UnitsNet;

namespace FlapAero.Tests.Wings;

public sealed class LiftingLineProperties
{
    private const int Many = 300;

    private static readonly Gen<(LiftingLine Line, WingPlanform Planform, WingSection Section)> Flapped = Gen.Select(
        Planforms.Any, Planforms.Section, Planforms.Flap, Gen.Bool, (planform, section, flap, down) =>
            (new LiftingLine(planform, section, flap: down ? flap : null, terms: 32), planform, section));

    [Fact]
    public void LiftCoefficient_AnyWing_IsLinear() =>
        Gen.Select(Flapped, Gen.Double[-10, 10], Gen.Double[0.1, 8]).Sample(
            (wing, degrees, step) =>
            {
                double At(double angle) => wing.Line.LiftCoefficient(Angle.FromDegrees(angle));
                Assert.Equal(At(degrees + step) - At(degrees), At(degrees) - At(degrees - step), 1e-10);
                Assert.Equal(degrees, wing.Line.AngleOfAttack(Math.Clamp(At(degrees), -4, 4)).Degrees, 1e-9);
            },
            iter: Many);

    [Fact]
    public void InducedDrag_AnyWing_IsAtLeastTheEllipticOnes() =>
        Gen.Select(Flapped, Gen.Double[0.06, 3]).Sample(
            (wing, lift) =>
            {
                double least = lift * lift / (Math.PI * wing.Planform.AspectRatio);
                Assert.True(wing.Line.InducedDrag.At(lift) >= least * (1 - 1e-9));
                Assert.InRange(wing.Line.InducedDrag.SpanEfficiency(lift), 0, 1 + 1e-9);
                Assert.True(wing.Line.InducedDrag.Constant >= -1e-12);
            },
            iter: Many);

    [Fact]
    public void SpanEfficiency_UntwistedWing_IsTheSameAtAnyLift() =>
        Gen.Select(Planforms.Untwisted, Planforms.Section, Gen.Double[0.1, 2], Gen.Double[0.1, 2]).Sample(
            (planform, section, lift, other) =>
            {
                InducedDragPolar polar = new LiftingLine(planform, section, terms: 32).InducedDrag;
                Assert.InRange(polar.SpanEfficiency(lift), 0.7, 1);
                Assert.Equal(polar.SpanEfficiency(lift), polar.SpanEfficiency(other), 1e-10);
            },
            iter: Many);

    [Fact]
    public void LoadAt_OverTheSpan_IntegratesToTheLift() =>
        Gen.Select(Flapped, Gen.Double[-1, 2]).Sample(
            (wing, lift) =>
            {
                // Midpoints of equal angles; C_L = A ∫ (Γ/bV) dη over the half span. The flap's ends have a vertical tangent
                // there.
                const int Points = 400;
                double sum = 0;
                for (int i = 0; i < Points; i++)
                {
                    double angle = (i + 0.5) * Math.PI / (2 * Points);
                    double share = Math.Cos(angle);
                    if (share > 0.999) continue;
                    sum += wing.Line.LoadAt(share, lift).CirculationRatio * Math.Sin(angle) * Math.PI / (2 * Points);
                }

                Assert.Equal(lift, 2 * wing.Planform.AspectRatio * sum, 2e-3);
            },
            iter: Many);

    [Fact]
    public void LiftingLine_TwiceTheFlap_IsTwiceTheChange() =>
        Gen.Select(Planforms.Any, Planforms.Flap).Sample(
            (planform, flap) =>
            {
                double Zero(double times) => new LiftingLine(
                    planform, Planforms.Thin, flap: new PartSpanFlap(flap.From, flap.To, flap.ZeroLiftAngleChange * times, 0), terms: 24)
                    .ZeroLiftAngle.Degrees;
                double none = Zero(0);
                Assert.Equal(2 * (Zero(1) - none), Zero(2) - none, 1e-9);
                Assert.True(Zero(1) < none);
            },
            iter: Many);

    [Fact]
    public void LiftingLine_TwoFlapsThatMeet_AreOne() =>
        Gen.Select(Planforms.Untwisted, Gen.Double[0.05, 0.4], Gen.Double[0.5, 0.9]).Sample(
            (planform, from, to) =>
            {
                double middle = (from + to) / 2;
                double Change(double a, double b) => new LiftingLine(
                    planform, Planforms.Thin, flap: new PartSpanFlap(a, b, Angle.FromDegrees(-10), 0), terms: 24).ZeroLiftAngle.Degrees;
                Assert.Equal(Change(from, to), Change(from, middle) + Change(middle, to), 1e-8);
            },
            iter: Many);

    [Fact]
    public void LiftingLine_AnotherSizeOfTheSameShape_IsTheSame() =>
        Gen.Select(Planforms.Untwisted, Planforms.Flap, Gen.Double[0.5, 3]).Sample(
            (planform, flap, scale) =>
            {
                WingPlanform scaled = new(
                    planform.Span * scale,
                    new[] { 0, 1.0 }.Select(share => (share, planform.Chord(share) * scale, planform.Twist(share))));
                LiftingLine one = Planforms.Line(planform, flap, 0.2, 24);
                LiftingLine other = new(scaled, Planforms.Thin, flap: flap, height: scaled.Span * 0.2, terms: 24);
                Close.To(one.SlopePerRadian, other.SlopePerRadian, 1e-10);
                Close.To(one.InducedDrag.At(1), other.InducedDrag.At(1), 1e-9);
            },
            iter: Many);

    [Fact]
    public void FirstStall_AnyWing_HasNoSectionPastItsMaximum() =>
        Flapped.Sample(
            wing =>
            {
                StallOnset onset = wing.Line.FirstStall();
                if (onset.MaximumLiftCoefficient is < -4 or > 4) return;
                foreach (double share in Enumerable.Range(0, 98).Select(i => 0.01 * i))
                {
                    SpanwiseLoad load = wing.Line.LoadAt(share, onset.MaximumLiftCoefficient);
                    Assert.True(load.SectionLiftCoefficient <= load.SectionMaximum + 1e-3);
                }
            },
            iter: Many);
}
