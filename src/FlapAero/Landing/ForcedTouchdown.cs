using System.Globalization;
using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// A landing whose wheels were put on while the wing was still flying. The model has a point mass and cannot bounce: what it reports after
/// the touchdown is the roll of an aeroplane that stays down, and <see cref="Explanation"/> says why a real one will not. Immutable.
/// </summary>
public sealed class ForcedTouchdown
{
    internal ForcedTouchdown(
        LandingSetup setup, LandingInput normal, Outcome<LandingResult, LandingRefusal> landing, in LandingOutcome outcome)
    {
        Outcome = landing;
        double perLift = 0.5 * normal.Density * normal.WingArea * outcome.TouchdownSpeed * outcome.TouchdownSpeed
            / (normal.Mass * StandardConstants.Gravity);
        WeightCarried = perLift * normal.NoseHighLift;
        WeightCarriedNoseDown = perLift * normal.LevelLift;
        LiftAvailable = perLift * normal.TouchdownLiftFraction * normal.MaximumLift;
        HeightGivenUp = Length.FromMeters(outcome.HoldOffEndHeight);
        Explanation = double.IsNaN(perLift) ? Outcome.Explanation : Say(outcome, setup.Technique.ThresholdSpeed.Unit);
    }

    /// <summary>The landing as the model has it, the aeroplane staying down.</summary>
    public Outcome<LandingResult, LandingRefusal> Outcome { get; }

    /// <summary>Share of the weight that the wing still carries with the nose at the attitude of the roll, C_Lg1; above 1 it carries all of it.</summary>
    public double WeightCarried { get; }

    /// <summary>The same with the nose down, C_Lg2.</summary>
    public double WeightCarriedNoseDown { get; }

    /// <summary>Lift that the wing gives at the normal touchdown attitude, as a share of the weight: above 1 it flies again.</summary>
    public double LiftAvailable { get; }

    /// <summary>Wheel height that was given up to put the wheels on.</summary>
    public Length HeightGivenUp { get; }

    /// <summary>What happens, in words, and why no number is given for it.</summary>
    public string Explanation { get; }

    private string Say(in LandingOutcome outcome, SpeedUnit unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"The wheels are put on at {In(outcome.TouchdownSpeed, unit, "0.0")} with a sink of {Sink(outcome.TouchdownSink, unit)}. With the nose held off the wing still carries {100 * WeightCarried:0} % of the weight, and at the attitude of a normal touchdown it would carry {100 * LiftAvailable:0} %. It will bounce: the springs of the gear give back a part of the sink, and whatever raises the nose (a nosewheel that touches first, or main wheels ahead of the centre of gravity) makes a wing that is faster than its touchdown speed lift more than the weight. How high depends on the gear's springs, the pitching motion and the pilot, which a point mass does not have: no height is given.");

    /// <summary>Where airspeeds are in knots, sink rates are in feet per minute.</summary>
    private static string Sink(double si, SpeedUnit airspeed) =>
        airspeed == SpeedUnit.Knot ? In(si, SpeedUnit.FootPerMinute, "0") : In(si, airspeed, "0.00");

    private static string In(double si, SpeedUnit unit, string pattern) => Require.WithUnit(
        Speed.FromMetersPerSecond(si).As(unit).ToString(pattern, CultureInfo.InvariantCulture), unit);
}
