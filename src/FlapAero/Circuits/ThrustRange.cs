using UnitsNet;

namespace FlapAero;

/// <summary>The thrust that the engine can give, from idle to full. Immutable.</summary>
public sealed class ThrustRange
{
    /// <summary>Idle and full thrust at circuit speeds.</summary>
    /// <param name="idle">With the throttle closed; often negative.</param>
    /// <param name="full">With it open.</param>
    /// <exception cref="RefusedInputException">Not finite, beyond 50 kN, or full below idle.</exception>
    public ThrustRange(Force idle, Force full)
    {
        Force most = Force.FromNewtons(50000);
        Idle = Require.Between(idle, -most, most, "idle thrust", "No light aeroplane's propeller gives more.");
        Full = Require.Between(full, idle, most, "full thrust", "It is not less than idle.");
    }

    /// <summary>With the throttle closed.</summary>
    public Force Idle { get; }

    /// <summary>With the throttle open.</summary>
    public Force Full { get; }
}
