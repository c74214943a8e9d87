using UnitsNet;

namespace FlapAero.Tests.Propulsion;

/// <summary>One invented propeller and engine of round numbers, for every test that needs one and not a certain one.</summary>
internal static class InventedPropeller
{
    public static Propeller Propeller { get; } = new(
        Length.FromMeters(2),
        new PropellerTable([(0, 0.1, 0.05), (0.4, 0.08, 0.05), (0.8, 0.03, 0.03), (1, 0, 0.01), (1.2, -0.04, -0.02), (1.7, -0.15, -0.12)]),
        RotationalSpeed.FromRevolutionsPerMinute(2700));

    public static ClosedThrottleEngine Engine { get; } =
        new(Torque.FromNewtonMeters(100), RotationalSpeed.FromRevolutionsPerMinute(800));
}
