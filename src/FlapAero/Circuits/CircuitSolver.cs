using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;
using static FlapAero.CircuitRefusalReason;

namespace FlapAero;

/// <summary>
/// The circuit backwards. In a steady wind the displacement of each turn and of base do not depend on where they are
/// flown, so that every height and place is linear in the length of final, and the plan's fix gives it in closed form.
/// </summary>
internal sealed class CircuitSolver
{
    // Between feet and metres a height that is exactly enough may miss by rounding.
    private const double Slack = 1e-9;

    private readonly CircuitPlan _plan;
    private readonly CircuitFrame _frame;
    private readonly CircuitFlights _flights;
    private readonly double _height;
    private readonly double _spacing;
    private readonly double _threshold;
    private readonly double _touchdown;
    private readonly double _slope;
    private readonly double _baseTurnTime;
    private readonly double _finalTurnTime;
    private readonly FlightState _baseTurn;
    private readonly FlightState _finalTurn;

    private CircuitSolver(CircuitPlan plan, CircuitFrame frame, CircuitFlights flights)
    {
        _plan = plan;
        _frame = frame;
        _flights = flights;
        _height = plan.Height.Meters;
        _spacing = plan.Spacing.Meters;
        _threshold = plan.ThresholdHeight.Meters;
        _touchdown = plan.TouchdownPoint.Meters;
        _slope = Math.Tan(plan.Legs.Final.PathAngle.Radians);
        _baseTurnTime = (flights.Base.Heading - flights.Downwind.Heading) / flights.TurnToBase.Rate;
        _finalTurnTime = (flights.Final.Heading - flights.Base.Heading) / flights.TurnToFinal.Rate;
        // Displacements: flown from the origin.
        _baseTurn = flights.TurnToBase.After(new(0, 0, 0, 0, flights.Downwind.Heading), _baseTurnTime);
        _finalTurn = flights.TurnToFinal.After(new(0, 0, 0, 0, flights.Base.Heading), _finalTurnTime);
    }

    public static Outcome<Circuit, CircuitRefusal> Solve(CircuitPlan plan)
    {
        var frame = new CircuitFrame(plan);
        var resolver = new LegResolver(plan, frame);
        return resolver.All() is { } flights
            ? new CircuitSolver(plan, frame, flights).Close()
            : resolver.Refusal!.Outcome<Circuit>();
    }

    private Outcome<Circuit, CircuitRefusal> Close()
    {
        double needed = -_baseTurn.Y - _finalTurn.Y;
        double baseLength = _spacing - needed;
        if (baseLength < -Slack)
            return Refuse(NoRoomForTwoTurns, null, "the two turns together are wider than the spacing",
                new("turns", In(_plan.Spacing, needed)), new("spacing", _plan.Spacing));
        double baseTime = Math.Max(baseLength, 0) / _flights.Base.GroundSpeed;

        // What the turns and base lose and cover, whatever the length of final.
        double lost = -_baseTurn.Height + _flights.Base.Sink * baseTime - _finalTurn.Height;
        double along = _baseTurn.X + _finalTurn.X;
        if (FinalLength(lost, along) is not { } final)
            return Refuse(NeverThatFarBehindTheWing, LegName.Downwind, "with this crab the touchdown point never lies there",
                new("angle behind the wing", _plan.Fix!.AngleBehindWing!.Value), new("crab", Degrees(_flights.Downwind.Crab)));

        double rollOut = _threshold + final * _slope;
        if (!(rollOut >= _plan.EstablishedBy.Meters - Slack))
            return Refuse(EstablishedTooLow, LegName.Final, "the turn to final would end too low",
                new("height rolling out", In(_plan.EstablishedBy, rollOut)), new("established by", _plan.EstablishedBy));
        double spare = _height - rollOut - lost;
        if (spare < -Slack)
            return Refuse(CircuitHeightTooLow, LegName.TurnToBase, "the legs from here on lose more than the circuit height",
                new("height needed", In(_plan.Height, _height - spare)), new("circuit height", _plan.Height));

        double baseTurnAt = -final - along;
        double descending = _plan.Legs.Downwind.Descent.IsLevel ? 0 : Math.Max(spare, 0) / _flights.Downwind.Sink;
        double powerAt = baseTurnAt + descending * _flights.Downwind.GroundSpeed;
        double level = Math.Max(_touchdown - powerAt, 0) / _flights.Level.GroundSpeed;
        double ground = _flights.Final.GroundSpeed;
        double[] times = [level, descending, _baseTurnTime, baseTime, _finalTurnTime, final / ground, _threshold / _slope / ground];
        return new(new Circuit(_plan, _frame, _flights, times));
    }

    /// <summary>L, from the end of the turn to the threshold.</summary>
    private double? FinalLength(double lost, double along)
    {
        // At the threshold's end of final: what is left of the height for downwind and final.
        double toLose = _height - _threshold - lost;
        if (_plan.Fix is not { } fix) return toLose / _slope;
        if (fix.RollOutHeight is { } height) return (height.Meters - _threshold) / _slope;
        if (fix.PowerPastAbeam is { } power)
        {
            double downwindSlope = _flights.Downwind.Sink / _flights.Downwind.GroundSpeed;
            double powerAt = _touchdown - power.Meters;
            return (toLose - downwindSlope * (powerAt + along)) / (downwindSlope + _slope);
        }

        double behind = fix.AngleBehindWing!.Value.Radians, crab = _flights.Downwind.Crab;
        return Math.Abs(behind + crab) < Math.PI / 2
            ? TrackLaws.PastAbeam(_spacing, behind, crab) - _touchdown - along
            : null;
    }

    private static Outcome<Circuit, CircuitRefusal> Refuse(
        CircuitRefusalReason reason, string? leg, string why, params CircuitRefusalValue[] values) =>
        new CircuitRefusal(reason, leg, why, values).Outcome<Circuit>();

    /// <summary>A length in the unit that the plan gives its like in.</summary>
    private static Length In(Length like, double si) => Length.FromMeters(si).ToUnit(like.Unit);

    private static Angle Degrees(double si) => Angle.FromRadians(si).ToUnit(AngleUnit.Degree);
}
