using UnitsNet;

namespace FlapAero;

/// <summary>The runway as a circuit sees it: a direction, a threshold and a point to aim at. Level. Immutable.</summary>
public sealed class CircuitRunway
{
    /// <summary>A runway.</summary>
    /// <param name="direction">Direction of landing, 0° to 360°, in the same north as the wind's.</param>
    /// <param name="thresholdHeight">h_t, wheels over the threshold, 1 m to 60 m: the final path passes there.</param>
    /// <param name="touchdownPoint">
    /// The point that "abeam" and "behind the wing" mean, past the threshold, 0 to 2 000 m; where none is given, the
    /// aiming point, at which the final path meets the runway.
    /// </param>
    /// <exception cref="RefusedInputException">A value outside its range.</exception>
    public CircuitRunway(Angle direction, Length thresholdHeight, Length? touchdownPoint = null)
    {
        Direction = Require.Between(direction, Angle.Zero, Angle.FromDegrees(360), "runway direction", "Directions run from 0° to 360°.");
        ThresholdHeight = Require.Between(
            thresholdHeight, Length.FromMeters(1), Length.FromMeters(60), "threshold height", "Lower strikes it, higher flies past the runway.");
        TouchdownPoint = touchdownPoint is { } point
            ? Require.Between(
                point, Length.Zero, Length.FromMeters(2000), "touchdown point", "It lies on the runway.", nameof(touchdownPoint))
            : null;
    }

    /// <summary>A runway whose aiming point is given: the threshold is crossed at the height that the path has there.</summary>
    /// <remarks>Formula: h_t = d tan γ_p. Range: as the constructor's for h_t. Source: [phak].</remarks>
    /// <param name="direction">Direction of landing.</param>
    /// <param name="aimingPoint">d, where the path meets the runway, past the threshold.</param>
    /// <param name="pathAngle">γ_p of the final leg, over the ground.</param>
    /// <returns>The runway.</returns>
    /// <exception cref="RefusedInputException">
    /// The path would cross the threshold outside the range of heights.
    /// </exception>
    /// <example><code>CircuitRunway.AimedAt(Angle.Zero, Length.FromMeters(290), Angle.FromDegrees(3)).ThresholdHeight.Feet // 49.9</code></example>
    public static CircuitRunway AimedAt(Angle direction, Length aimingPoint, Angle pathAngle)
    {
        Require.Between(pathAngle, Angle.FromDegrees(1), Angle.FromDegrees(15), "path angle", "Light aeroplanes approach inside it.");
        Require.Between(aimingPoint, Length.Zero, Length.FromMeters(2000), "aiming point", "It lies on the runway.");
        return new(direction, aimingPoint * Math.Tan(pathAngle.Radians));
    }

    /// <summary>Direction of landing.</summary>
    public Angle Direction { get; }

    /// <summary>h_t, of the wheels over the threshold.</summary>
    public Length ThresholdHeight { get; }

    /// <summary>The point that "abeam" means, past the threshold, where one is given.</summary>
    public Length? TouchdownPoint { get; }
}

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
