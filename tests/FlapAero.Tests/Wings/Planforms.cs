using CsCheck;
using UnitsNet;

namespace FlapAero.Tests.Wings;

/// <summary>Wings for tests: ten metres of span, thin sections unless said otherwise.</summary>
internal static class Planforms
{
    public const double ThinSlope = 2 * Math.PI;

    public static readonly Length Span = Length.FromMeters(10);

    public static readonly WingSection Thin = new(ThinSlope, Angle.Zero, 1.5);

    public static readonly PartSpanFlap HalfSpanFlap = new(0.1, 0.6, Angle.FromDegrees(-10), 0.9);

    public static readonly Gen<WingPlanform> Any = Gen.Select(
        Gen.Double[4.5, 20], Gen.Double[0.2, 1.2], Gen.Double[-5, 5], (aspectRatio, taper, twist) => Tapered(aspectRatio, taper, twist));

    public static readonly Gen<WingPlanform> Untwisted = Gen.Select(
        Gen.Double[4.5, 20], Gen.Double[0.2, 1.2], (aspectRatio, taper) => Tapered(aspectRatio, taper));

    public static readonly Gen<WingSection> Section = Gen.Select(
        Gen.Double[5, 7], Gen.Double[-5, 1], (slope, zeroLift) => new WingSection(slope, Angle.FromDegrees(zeroLift), 1.5));

    public static readonly Gen<PartSpanFlap> Flap = Gen.Select(
        Gen.Double[0, 0.5], Gen.Double[0.1, 0.5], Gen.Double[-15, -1], Gen.Double[0, 1.3],
        (from, length, change, lift) => new PartSpanFlap(from, from + length, Angle.FromDegrees(change), lift));

    public static WingPlanform Tapered(double aspectRatio, double taper, double tipTwist = 0) =>
        WingPlanform.Tapered(
            Span, Length.FromMeters(2 * Span.Meters / (aspectRatio * (1 + taper))), taper, Angle.FromDegrees(tipTwist));

    public static WingPlanform Elliptic(double aspectRatio) =>
        WingPlanform.Elliptic(Span, Length.FromMeters(4 * Span.Meters / (Math.PI * aspectRatio)));

    public static LiftingLine Line(WingPlanform planform, PartSpanFlap? flap = null, double? heightOverSpan = null, int terms = 64) =>
        new(planform, Thin, flap: flap, height: heightOverSpan is { } share ? Span * share : null, terms: terms);
}
