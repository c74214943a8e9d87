using System.Globalization;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// A speed of the circuit as a school states it: a multiple of the stalling speed, or a number on the needle. Immutable, thread-safe.
/// </summary>
public sealed class CircuitSpeed
{
    private readonly double _multiple;

    private CircuitSpeed(double multiple, Speed? indicated) => (_multiple, Indicated) = (multiple, indicated);

    /// <summary>On the needle; none where it is a multiple.</summary>
    public Speed? Indicated { get; }

    /// <summary>The multiple of the stalling speed; none where it is a number on the needle.</summary>
    public double? Multiple => Indicated is null ? _multiple : null;

    /// <summary>A speed that is a multiple of the stalling speed.</summary>
    /// <remarks>Formula: k V_S, kept as k. Range: 1.2 to 2.5. Source: [common-practice].</remarks>
    /// <param name="multiple">k.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="RefusedInputException">A multiple outside its range.</exception>
    /// <example><code>CircuitSpeed.OfStall(1.6).Multiple.Value // 1.6</code></example>
    public static CircuitSpeed OfStall(double multiple) => new(
        Require.Between(multiple, 1.2, 2.5, "multiple of the stalling speed", "Slower leaves no margin in a turn; faster is no circuit."), null);

    /// <summary>A speed that is read off the needle.</summary>
    /// <remarks>Formula: none, it is kept. Range: 30 kt to 150 kt. Source: [common-practice].</remarks>
    /// <param name="indicated">On the needle.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="RefusedInputException">A speed outside its range.</exception>
    /// <example><code>CircuitSpeed.OnTheNeedle(Speed.FromKnots(85)).Indicated.Value.Knots // 85.0</code></example>
    public static CircuitSpeed OnTheNeedle(Speed indicated) => new(0, Require.Between(
        indicated, Speed.FromKnots(30), Speed.FromKnots(150), "speed of the circuit", "Light aeroplanes fly their circuits between them."));

    internal Airspeed Of(Configuration flown, Air air) =>
        Indicated is { } needle ? flown.AtIndicated(needle, air) : flown.ReferenceSpeed(air, _multiple);

    /// <summary>As it was given.</summary>
    public override string ToString() => Indicated is { } needle
        ? string.Create(CultureInfo.InvariantCulture, $"{needle.Knots:0.#} kt on the needle")
        : string.Create(CultureInfo.InvariantCulture, $"{_multiple:0.0#} × the stalling speed");
}
