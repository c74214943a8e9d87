using FlapAero.Equations;
using MathNet.Numerics.RootFinding;

namespace FlapAero;

/// <summary>The bank with which a turn to final, from where it is begun, ends on the extended centreline.</summary>
internal static class CentrelineBank
{
    private const double Accuracy = 1e-12;
    private const int MostSteps = 200;

    public static double? Find(Circuit planned, CircuitLeg turn)
    {
        double least = Turn.LeastBank.Radians, most = StallingBank(planned, turn.Flight);
        if (!(most > least) || turn.SiBegin.Y <= 0) return null;
        return Brent.TryFindRoot(bank => Offset(planned, turn, bank), least, most, Accuracy, MostSteps, out double root) ? root : null;
    }

    /// <summary>γ of the turn to final at a bank.</summary>
    public static double Path(Circuit planned, double bank)
    {
        TurnLeg leg = planned.Plan.Legs.TurnToFinal;
        return Math.Asin(new Aerodynamics(leg.Configuration, leg.Airspeed).SinPath(leg.Descent, bank));
    }

    /// <summary>Where the turn ends across the runway.</summary>
    private static double Offset(Circuit planned, CircuitLeg turn, double bank)
    {
        LegFlight flight = turn.Flight;
        double path = Path(planned, bank), rate = TurnLaws.Rate(flight.Speed, bank);
        double time = (planned.Flights.Final.Heading - flight.Heading) / rate;
        double radius = TurnLaws.Radius(flight.Speed, path, bank);
        return turn.SiBegin.Y + TurnLaws.Displacement(radius, flight.Heading, rate, time, flight.WindX, flight.WindY).Y;
    }

    /// <summary>
    /// The level turn's: descending, the wing carries a little less, so that a path exists at every bank up to it. Never past
    /// the steepest bank that the library calls a turn.
    /// </summary>
    private static double StallingBank(Circuit planned, LegFlight flight)
    {
        double stall = planned.Plan.Legs.TurnToFinal.Configuration.StallSpeed(flight.Airspeed.Air).SiTrue;
        return Math.Min(StallLaws.StallingBank(flight.Speed, stall) ?? 0, Turn.SteepestBank.Radians);
    }
}
