using UnitsNet;

namespace FlapAero.Tests.Propulsion;

/// <summary>
/// Invented propellers and engines for the demo aeroplanes, in the shape of measured ones: thrust falls to zero a little
/// past the geometric pitch, power a little further on.
/// </summary>
internal static class DemoPropellers
{
    public static Propeller H4 { get; } = new(
        Length.FromMeters(1.93),
        new PropellerTable([
            (0, 0.104, 0.066), (0.1, 0.101, 0.0655), (0.2, 0.097, 0.064), (0.3, 0.0915, 0.0625), (0.4, 0.084, 0.0605), (0.5, 0.0738, 0.057),
            (0.6, 0.061, 0.0515), (0.7, 0.0455, 0.0435), (0.8, 0.0275, 0.0325), (0.93, 0, 0.013), (1, -0.0165, 0.0005), (1.1, -0.04, -0.0175),
            (1.25, -0.073, -0.044), (1.45, -0.113, -0.08), (1.7, -0.155, -0.125)]),
        RotationalSpeed.FromRevolutionsPerMinute(2700));

    public static ClosedThrottleEngine H4Engine { get; } =
        new(Torque.FromNewtonMeters(110), RotationalSpeed.FromRevolutionsPerMinute(880));

    public static Propeller L2 { get; } = new(
        Length.FromMeters(1.75),
        new PropellerTable([
            (0, 0.1, 0.061), (0.1, 0.097, 0.0605), (0.2, 0.093, 0.0595), (0.3, 0.0875, 0.058), (0.4, 0.08, 0.056), (0.5, 0.07, 0.0525),
            (0.6, 0.0565, 0.047), (0.7, 0.0405, 0.0385), (0.8, 0.021, 0.0265), (0.9, 0, 0.0125), (0.97, -0.016, 0.0005), (1.07, -0.039, -0.017),
            (1.2, -0.068, -0.041), (1.4, -0.109, -0.077), (1.65, -0.152, -0.121)]),
        RotationalSpeed.FromRevolutionsPerMinute(2800));

    public static ClosedThrottleEngine L2Engine { get; } =
        new(Torque.FromNewtonMeters(62), RotationalSpeed.FromRevolutionsPerMinute(950));
}
