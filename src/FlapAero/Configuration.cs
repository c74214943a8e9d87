using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// An aeroplane with one flap setting at one mass: what it can do in steady flight. Immutable; made by
/// <see cref="FlapAero.Aeroplane.Configure"/>.
/// </summary>
public sealed partial class Configuration
{
    private readonly double _weight;
    private readonly double _area;

    internal Configuration(Aeroplane aeroplane, FlapSetting flaps, Mass mass)
    {
        if (!aeroplane.FlapSettings.Contains(flaps))
            throw Require.RefusedWhole(
                nameof(flaps), $"{aeroplane.Name} has no flap setting '{flaps}' of its own; it has {string.Join(", ", aeroplane.FlapSettings)}.");
        Aeroplane = aeroplane;
        Flaps = flaps;
        Mass = Require.Between(
            mass, aeroplane.MinimumMass, aeroplane.MaximumMass, "mass", $"{aeroplane.Name} is flown between them.");
        _weight = mass.Kilograms * StandardConstants.Gravity;
        _area = aeroplane.Wing.Area.SquareMeters;
    }

    /// <summary>The aeroplane.</summary>
    public Aeroplane Aeroplane { get; }

    /// <summary>The flap setting.</summary>
    public FlapSetting Flaps { get; }

    /// <summary>The mass.</summary>
    public Mass Mass { get; }

    /// <summary>Weight W = m g.</summary>
    public Force Weight => Force.FromNewtons(_weight);

    private double MaximumLift => Flaps.Lift.MaximumLiftCoefficient;

    private double ZeroLiftDrag => Flaps.Drag.ZeroLiftDragCoefficient;

    private double InducedFactor => Flaps.Drag.InducedFactor;

    /// <summary>Stalling speed.</summary>
    /// <remarks>
    /// Formula: V_S = √(2nW/(ρ S C_Lmax)). Range: n above zero, to 6. Source: [phak].
    /// With flaps for landing and n = 1 the trade calls it V_S0, in another configuration V_S1.
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <param name="loadFactor">n; 1 where none is given.</param>
    /// <returns>The airspeed at the stall.</returns>
    /// <exception cref="RefusedInputException">A load factor outside the range.</exception>
    /// <example><code>flapsUp.StallSpeed(Air.StandardSeaLevel).Calibrated.Knots // 53.3</code></example>
    public Airspeed StallSpeed(Air air, double loadFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(air);
        return new(StallLaws.Speed(_weight, InRange(loadFactor), air.SiDensity, _area, MaximumLift), air);
    }

    /// <summary>Stalling speed in a steady level turn.</summary>
    /// <remarks>Formula: as <see cref="StallSpeed(Air, double)"/> with n = 1/cos φ. Range: n to 6. Source: [phak].</remarks>
    /// <param name="air">The air.</param>
    /// <param name="bank">Angle of bank φ.</param>
    /// <returns>The airspeed at the stall.</returns>
    /// <exception cref="RefusedInputException">A bank past the range.</exception>
    /// <example><code>flapsUp.StallSpeed(Air.StandardSeaLevel, Angle.FromDegrees(60)).Calibrated.Knots // 75.3</code></example>
    public Airspeed StallSpeed(Air air, Angle bank)
    {
        ArgumentNullException.ThrowIfNull(air);
        return StallSpeed(air, LoadFactor.InTurn(bank));
    }

    /// <summary>V_REF over V_S of this flap setting, by the rules that the aeroplane is flown by.</summary>
    public double ReferenceMultiple => Aeroplane.Rules.MultipleOf(Aeroplane, Flaps);

    /// <summary>The usual pilot by the rules that the aeroplane is flown by: <see cref="LandingPilot.Usual"/> at their speed and height.</summary>
    public LandingPilot UsualPilot =>
        LandingPilot.Usual with { SpeedMultiple = ReferenceMultiple, ThresholdHeight = Aeroplane.Rules.ThresholdHeight };

    /// <summary>Reference speed for the approach: a multiple of this configuration's own 1 g stalling speed.</summary>
    /// <remarks>
    /// Formula: V_REF = k V_S, both calibrated airspeeds. Range: k from 1 to 2. Source: [cfr-23] for k = 1.3 on V_S0.
    /// </remarks>
    /// <param name="air">The air.</param>
    /// <param name="multiple">k; <see cref="ReferenceMultiple"/> where none is given.</param>
    /// <returns>The airspeed.</returns>
    /// <exception cref="RefusedInputException">A multiple outside the range.</exception>
    /// <example><code>flapsUp.ReferenceSpeed(Air.StandardSeaLevel).Calibrated.Knots // 69.2</code></example>
    public Airspeed ReferenceSpeed(Air air, double? multiple = null)
    {
        ArgumentNullException.ThrowIfNull(air);
        double times = Require.Between(
            multiple ?? ReferenceMultiple, 1, 2, "multiple of the stalling speed", "Below 1 the wing has stalled; past 2 it is no approach.",
            nameof(multiple));
        return Airspeed.FromCalibrated(StallSpeed(air).Calibrated * times, air);
    }

    /// <summary>Margin over the stall that is left in a turn or a lull.</summary>
    /// <remarks>
    /// Formula: (V − ΔV)/V_S(n) − 1, true airspeeds. Range: any; negative is stalled. Source: [phak].
    /// </remarks>
    /// <param name="airspeed">The airspeed before the lull.</param>
    /// <param name="loadFactor">n; 1 where none is given.</param>
    /// <param name="lull">ΔV, by how much the headwind drops; none where none is given.</param>
    /// <returns>The margin as a share of the stalling speed.</returns>
    /// <exception cref="RefusedInputException">
    /// A load factor outside the range of <see cref="StallSpeed(Air, double)"/>.
    /// </exception>
    /// <example><code>flapsUp.StallMargin(flapsUp.ReferenceSpeed(Air.StandardSeaLevel), LoadFactor.InTurn(Angle.FromDegrees(45))) // 0.0932</code></example>
    public double StallMargin(Airspeed airspeed, double loadFactor = 1, Speed? lull = null)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        double loss = lull is { } less ? Require.In(less, SpeedUnit.MeterPerSecond, "lull", nameof(lull)) : 0;
        return StallLaws.Margin(airspeed.SiTrue, loss, StallSpeed(airspeed.Air, loadFactor).SiTrue);
    }

    /// <summary>Lift coefficient that a speed and load factor call for, whether or not the wing has it.</summary>
    /// <remarks>Formula: C_L = nW/(q S). Range: n above zero, to 6; compare with C_Lmax. Source: [anderson-itf].</remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <param name="loadFactor">n; 1 where none is given.</param>
    /// <returns>C_L.</returns>
    /// <exception cref="RefusedInputException">A load factor outside the range.</exception>
    /// <example><code>flapsUp.RequiredLiftCoefficient(flapsUp.StallSpeed(Air.StandardSeaLevel)) // 1.40</code></example>
    public double RequiredLiftCoefficient(Airspeed airspeed, double loadFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        return GlideLaws.LiftCoefficient(airspeed.SiDynamicPressure, _area, InRange(loadFactor) * _weight, pathAngle: 0);
    }

    /// <summary>The bank at which a level turn at this speed stalls.</summary>
    /// <remarks>Formula: cos φ = (V_S/V)². Range: from V_S. Source: [phak].</remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <returns>φ, or no answer below the stalling speed.</returns>
    /// <exception cref="RefusedInputException">Never for an <see cref="Airspeed"/>.</exception>
    /// <example><code>flapsUp.StallingBank(flapsUp.ReferenceSpeed(Air.StandardSeaLevel))!.Value.Degrees // 53.7</code></example>
    public Angle? StallingBank(Airspeed airspeed)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        return StallLaws.StallingBank(airspeed.SiTrue, StallSpeed(airspeed.Air).SiTrue) is { } bank
            ? Angle.FromRadians(bank).ToUnit(AngleUnit.Degree)
            : null;
    }

    /// <summary>What this aeroplane's needle shows at an airspeed.</summary>
    /// <remarks>Formula: the flap setting's calibration table. Range: the table's. Source: [common-practice].</remarks>
    /// <param name="airspeed">The airspeed.</param>
    /// <returns>Indicated airspeed.</returns>
    /// <exception cref="RefusedInputException">Outside the table.</exception>
    /// <example><code>flapsUp.Indicated(flapsUp.StallSpeed(Air.StandardSeaLevel)).Knots // 46.9</code></example>
    public Speed Indicated(Airspeed airspeed)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        return Flaps.Calibration.Indicated(airspeed.Calibrated);
    }

    /// <summary>The airspeed that belongs to what this aeroplane's needle shows.</summary>
    /// <remarks>Formula: the flap setting's calibration table. Range: the table's. Source: [common-practice].</remarks>
    /// <param name="indicated">Indicated airspeed.</param>
    /// <param name="air">The air.</param>
    /// <returns>The airspeed.</returns>
    /// <exception cref="RefusedInputException">Outside the table.</exception>
    /// <example><code>flapsUp.AtIndicated(Speed.FromKnots(50), Air.StandardSeaLevel).Calibrated.Knots // 55.0</code></example>
    public Airspeed AtIndicated(Speed indicated, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return Airspeed.FromCalibrated(Flaps.Calibration.Calibrated(indicated), air);
    }

    private static double InRange(double loadFactor) => Require.Between(
        loadFactor, 0.01, 6, "load factor", "Without load there is no stall; past 6 there is no light aeroplane.");

    /// <summary>Flap setting, mass and aeroplane.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Aeroplane.Name}, flaps {Flaps}, {Mass.Kilograms:0} kg");
}
