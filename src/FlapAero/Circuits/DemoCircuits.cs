using UnitsNet;

namespace FlapAero;

/// <summary>
/// Circuits over an invented aerodrome: runway 09, left-hand, calm; those of the invented Trainer H4 at its maximum mass, at sea
/// level. Speeds, the 45° and the height are common practice without a source; spacing, banks and thrusts are invented.
/// </summary>
public static class DemoCircuits
{
    private static readonly Angle Bank = Angle.FromDegrees(20);

    /// <summary>Flaps up: 85 kt on downwind, 75 kt on base, 70 kt on final.</summary>
    public static CircuitPlan FlapsUp
    {
        get
        {
            Configuration up = Flaps(0);
            Descent reduced = Descent.AtThrust(Force.FromNewtons(450));
            return Plan(new(
                new(up, Knots(85), reduced), new(up, Knots(75), reduced, Bank), new(up, Knots(75), reduced),
                new(up, Knots(75), reduced, Bank), new(up, Knots(70), PathAngle)));
        }
    }

    /// <summary>Full flaps on final, one more detent on each leg: 85 kt on downwind, 70 kt on base, 60 kt on final.</summary>
    public static CircuitPlan FullFlaps
    {
        get
        {
            Configuration first = Flaps(1), second = Flaps(2);
            Descent reduced = Descent.AtThrust(Force.FromNewtons(700));
            return Plan(new(
                new(first, Knots(85), reduced), new(second, Knots(70), reduced, Bank), new(second, Knots(70), reduced),
                new(second, Knots(70), reduced, Bank), new(Flaps(3), Knots(60), PathAngle)));
        }
    }

    /// <summary>
    /// One engine speed from abeam the touchdown point to the end of base: it alone decides where the base turn comes. Calm,
    /// runway 09, left-hand; downwind at the flapless speed with any flap, for nobody slows down before the first of it.
    /// </summary>
    /// <remarks>
    /// Formula: T = C_T ρ N² D⁴ on each leg; downwind at 1.4 V_S of flaps up, base at 1.4 V_S of its own and final at V_REF; none slower than final.
    /// Range: an engine speed that the propeller's table reaches, speeds that the flaps allow. Source: [uiuc-propellers] for the
    /// thrust, [common-practice] for the rest; height as in the other circuits
    /// here, bank as the aeroplane's rules plan it, spacing as that bank needs.
    /// </remarks>
    /// <param name="downwind">Aeroplane, mass and flap on downwind from where power is reduced.</param>
    /// <param name="baseLeg">The same in the turns and on base.</param>
    /// <param name="final">The same on final.</param>
    /// <param name="air">The air.</param>
    /// <param name="engineSpeed">N.</param>
    /// <returns>The plan; it lets the turn to final end as low as 100 ft, so that too little power shows as a circuit too small.</returns>
    /// <exception cref="RefusedInputException">
    /// An engine speed or a speed outside the range; configurations of different aeroplanes or masses.
    /// </exception>
    /// <example><code>Circuit.Backwards(DemoCircuits.PlanFor(flapsUp, flapsUp, flapsUp, Air.StandardSeaLevel, RotationalSpeed.FromRevolutionsPerMinute(1600))).Value.AngleBehindWing.Degrees // 47.0</code></example>
    public static CircuitPlan PlanFor(Configuration downwind, Configuration baseLeg, Configuration final, Air air, RotationalSpeed engineSpeed)
    {
        ArgumentNullException.ThrowIfNull(downwind);
        ArgumentNullException.ThrowIfNull(baseLeg);
        ArgumentNullException.ThrowIfNull(final);
        ArgumentNullException.ThrowIfNull(air);
        Aeroplane aeroplane = downwind.Aeroplane;
        Airspeed onDownwind = aeroplane.Configure(aeroplane.FlapsUp, downwind.Mass).ReferenceSpeed(air, BriefingTechnique.DescentMultiple);
        Airspeed onBase = baseLeg.ReferenceSpeed(air, BriefingTechnique.DescentMultiple), onFinal = final.ReferenceSpeed(air);
        (onBase, onDownwind) = (BriefingMaker.Faster(onBase, onFinal), BriefingMaker.Faster(onDownwind, onFinal));
        Descent At(Airspeed speed) => Descent.AtThrust(aeroplane.Propeller.Running(speed, engineSpeed).Thrust);
        var turn = new TurnLeg(baseLeg, onBase, At(onBase), aeroplane.Rules.Bank);
        return Plan(
                new(new(downwind, onDownwind, At(onDownwind)), turn, new(baseLeg, onBase, At(onBase)), turn, new(final, onFinal, PathAngle)))
            .With(
                thrust: new(
                    final.IdleThrust(onFinal) ?? Force.Zero, aeroplane.Propeller.Running(onDownwind, aeroplane.Propeller.MaximumSpeed).Thrust),
                spacing: SpacingFor(aeroplane.Rules.Bank), fix: CircuitFix.PowerReducedAt(Length.Zero), establishedBy: Length.FromFeet(100),
                bankLimit: aeroplane.Rules.BankLimit, thresholdHeight: aeroplane.Rules.ThresholdHeight);
    }

    /// <summary>Both turns fit where they fit with the usual bank: further out where the rules plan with less, to a tenth of a mile.</summary>
    private static Length SpacingFor(Angle bank)
    {
        double wider = Math.Tan(Bank.Radians) / Math.Tan(bank.Radians);
        return wider <= 1 ? BriefingTechnique.Spacing : Length.FromNauticalMiles(Math.Ceiling(10 * wider * BriefingTechnique.Spacing.NauticalMiles) / 10);
    }

    private static Angle PathAngle => Angle.FromDegrees(3.5);

    private static CircuitPlan Plan(CircuitLegs legs) => new(
        new Runway { Name = "09", Direction = Angle.FromDegrees(90) },
        new Wind(Angle.FromDegrees(90), Speed.Zero),
        CircuitHand.Left,
        height: Length.FromFeet(1000),
        spacing: Length.FromNauticalMiles(0.9),
        legs,
        new ThrustRange(Force.FromNewtons(-200), Force.FromNewtons(2600)),
        bankLimit: Angle.FromDegrees(30));

    private static Configuration Flaps(int detent) =>
        DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapSettings[detent]);

    private static Airspeed Knots(double calibrated) => Airspeed.FromCalibrated(Speed.FromKnots(calibrated), Air.StandardSeaLevel);
}
