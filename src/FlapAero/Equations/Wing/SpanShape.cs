namespace FlapAero.Equations;

/// <summary>
/// A wing along its half span, as functions of the share of it from the centreline: chord over span, section slope (1/rad)
/// and geometric twist less the section's own zero-lift angle (rad).
/// </summary>
internal sealed record SpanShape(
    double AspectRatio, Func<double, double> ChordOverSpan, Func<double, double> SectionSlope, Func<double, double> AerodynamicTwist);
