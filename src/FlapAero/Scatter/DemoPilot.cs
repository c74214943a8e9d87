using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// An invented pilot for the lessons: holds ±5 kt and ±10 ft at the threshold, and is no machine in the round-out and with the
/// brakes either. No number here was measured on anybody. Safe for any thread.
/// </summary>
public static class DemoPilot
{
    /// <summary>This pilot's landings with one aeroplane: a 3° path, a light headwind, a dry, level, paved runway.</summary>
    /// <remarks>
    /// Formula: none. Threshold speed V_REF ± 5 kt and height 50 ft ± 10 ft, normals of which two deviations are flown;
    /// headwind 5 kt ± 5 kt likewise; power, round-out, touchdown lift, nose and brakes triangular. Lift on the ground as shares of
    /// C_Lmax: 0.70 with the nose held off, 0.25 on all wheels. Range: any aeroplane of this library. Source: [common-practice].
    /// </remarks>
    /// <param name="configuration">Aeroplane, flaps and mass.</param>
    /// <param name="air">The air.</param>
    /// <param name="speedHeightCorrelation">Correlation of threshold speed and height; none where none is given.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A correlation outside −1 to 1.</exception>
    /// <example><code>DemoPilot.Scatter(flapsUp, Air.StandardSeaLevel).Inputs[LandingVariable.ThresholdSpeed].Mean // 69.2</code></example>
    public static LandingScatter Scatter(Configuration configuration, Air air, double speedHeightCorrelation = 0)
    {
        double maximumLift = configuration.Flaps.Lift.MaximumLiftCoefficient;
        double reference = configuration.ReferenceSpeed(air).True.Knots;
        return LandingScatter.Of(
            configuration,
            air,
            new Dictionary<LandingVariable, Distribution>
            {
                [LandingVariable.Headwind] = Around(5, 5, SpeedUnit.Knot),
                [LandingVariable.ThresholdSpeed] = Around(reference, 5, SpeedUnit.Knot),
                [LandingVariable.ThresholdHeight] = Around(50, 10, LengthUnit.Foot),
                [LandingVariable.PathAngle] = Distribution.Fixed(Angle.FromDegrees(3)),
                [LandingVariable.FlareTimeConstant] =
                    Distribution.Triangular(Duration.FromSeconds(1.5), Duration.FromSeconds(2), Duration.FromSeconds(3)),
                [LandingVariable.HoldOffHeight] =
                    Distribution.Triangular(Length.FromFeet(0.5), Length.FromFeet(1), Length.FromFeet(3)),
                [LandingVariable.TouchdownLiftFraction] = Distribution.Triangular(0.8, 0.88, 0.94),
                [LandingVariable.PowerCutHeight] =
                    Distribution.Triangular(Length.FromFeet(5), Length.FromFeet(12), Length.FromFeet(20)),
                [LandingVariable.PowerCutTime] =
                    Distribution.Triangular(Duration.FromSeconds(1), Duration.FromSeconds(2), Duration.FromSeconds(3)),
                [LandingVariable.IdleThrust] = Distribution.Fixed(Force.Zero),
                [LandingVariable.NoseHighLiftCoefficient] = Distribution.Fixed(0.7 * maximumLift),
                [LandingVariable.NoseLowerSpeedFraction] = Distribution.Triangular(0.6, 0.75, 0.9),
                [LandingVariable.LevelLiftCoefficient] = Distribution.Fixed(0.25 * maximumLift),
                [LandingVariable.RollingFriction] = Distribution.Fixed(0.04),
                [LandingVariable.BrakingFriction] = Distribution.Triangular(0.2, 0.3, 0.4),
                [LandingVariable.RunwaySlope] = Distribution.Fixed(0),
            },
            speedHeightCorrelation);
    }

    // What the pilot holds is two deviations of the whole normal, and nothing outside it is flown.
    private static Distribution Around(double middle, double held, Enum unit)
    {
        IQuantity Value(double value) => Quantity.From(value, unit);
        return Distribution.TruncatedNormal(Value(middle), Value(held / 2), Value(middle - held), Value(middle + held));
    }
}
