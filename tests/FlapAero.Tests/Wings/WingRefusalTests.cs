using CsCheck;
using FlapAero.Tests.Properties;
using UnitsNet;

namespace FlapAero.Tests.Wings;

/// <summary>What is refused, in words; and any numbers at all, with a finite answer or a refusal.</summary>
public sealed class WingRefusalTests
{
    private const int Samples = 5000;

    public static TheoryData<string, Action, string> Refusals => new()
    {
        { "taper", () => Planforms.Tapered(8, 0.01), "taper: 0.01" },
        { "aspect ratio", () => Planforms.Tapered(3, 1), "aspect ratio" },
        { "stations", () => Stations(0), "at least two" },
        { "order", () => Stations(0, 0, 1), "further out" },
        { "height", () => Planforms.Line(Planforms.Tapered(8, 1), heightOverSpan: 0.01), "height of the wing: 0.1" },
        { "terms", () => Planforms.Line(Planforms.Tapered(8, 1), terms: 3), "terms" },
        { "flap ends", () => _ = new PartSpanFlap(0.6, 0.5, Angle.Zero, 0), "inboard end of the flap: 0.6" },
        { "flap up", () => _ = new PartSpanFlap(0.1, 0.5, Angle.FromDegrees(3), 0), "more negative" },
        { "deflection", () => new FlapGeometry(FlapKind.Slotted, 0.25, 0, 0.5).At(Angle.FromDegrees(45)), "flap deflection: 45" },
        { "kind", () => _ = new FlapGeometry((FlapKind)7, 0.25, 0, 0.5), "plain or slotted" },
        { "tip", () => Planforms.Line(Planforms.Tapered(8, 1)).LoadAt(1, 1), "short of the tip" },
        { "no lift", () => Planforms.Line(Planforms.Tapered(8, 1)).InducedDrag.SpanEfficiency(0), "Near no lift" },
        { "parabola", () => Planforms.Line(Planforms.Tapered(8, 1)).InducedDrag.Parabola(1, 1.01), "higher lift coefficient" },
        { "area", () => Planforms.Tapered(8, 1).AreaShare(0.7, 0.2), "inboard end" },
    };

    [Theory, MemberData(nameof(Refusals))]
    public void Refusal_SaysWhat(string what, Action act, string words)
    {
        RefusedInputException refusal = Assert.Throws<RefusedInputException>(act);
        Assert.True(refusal.Message.Contains(words, StringComparison.Ordinal), $"{what}: {refusal.Message}");
    }

    [Fact]
    public void Wings_AnyNumbers_AnswerFinitelyOrRefuse()
    {
        int answered = FiniteOrRefused.Sample(Numbers.Any.Array[13], Samples, Evaluate);
        Assert.True(answered > Samples / 100, $"Only {answered} of {Samples} were answered.");
    }

    private static double[] Evaluate(double[] x)
    {
        // Each number is as likely to be a usable one as an edge: of thirteen, enough samples have none that is refused.
        double span = x[0] is > 0 and < 1 ? 5 + 20 * x[0] : x[0];
        WingPlanform planform = WingPlanform.Tapered(
            Length.FromMeters(span), Length.FromMeters(span * Scaled(x[1], 0.06, 0.2)), Scaled(x[2], 0.2, 1), Degrees(x[3], 6));
        WingSection section = new(Scaled(x[4], 5, 7), Degrees(x[5], -5), Scaled(x[6], 0.8, 2));
        FlapGeometry geometry = new(FlapKind.Slotted, Scaled(x[7], 0.15, 0.35), Scaled(x[8], 0, 0.3), Scaled(x[9], 0.4, 1));
        PartSpanFlap flap = geometry.At(Degrees(x[10], 40));
        LiftingLine line = new(planform, section, flap: flap, height: planform.Span * Scaled(x[11], 0.05, 2), terms: 12);
        double lift = Scaled(x[12], 0.2, 2);
        StallOnset stall = line.FirstStall();
        FlapIncrements wing = geometry.OnWing(planform, section, Degrees(x[10], 40));
        return
        [
            line.SlopePerRadian, line.ZeroLiftAngle.Degrees, line.InducedDrag.At(lift), line.InducedDrag.SpanEfficiency(lift),
            line.LoadAt(0.5, lift).SectionLiftCoefficient, line.AngleOfAttack(lift).Degrees,
            stall.MaximumLiftCoefficient, stall.AngleOfAttack.Degrees,
            wing.ZeroLiftAngleChange.Degrees, wing.MaximumLiftIncrement, .. line.Loading(lift, 9).Select(load => load.CirculationRatio),
        ];
    }

    private static WingPlanform Stations(params double[] shares) =>
        new(Planforms.Span, shares.Select(share => (share, Length.FromMeters(1), Angle.Zero)));

    private static double Scaled(double x, double low, double high) => x is >= 0 and <= 1 ? low + x * (high - low) : x;

    private static Angle Degrees(double x, double most) => Angle.FromDegrees(x is >= 0 and <= 1 ? x * most : x);
}
