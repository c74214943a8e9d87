using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;
using static FlapAero.CircuitRefusalReason;

namespace FlapAero;

/// <summary>Finds the steady flight of each leg of a plan, or the reason why there is none.</summary>
internal sealed class LegResolver(CircuitPlan plan, CircuitFrame frame)
{
    private const double DownwindTrack = Math.PI;
    private const double BaseTrack = 1.5 * Math.PI;
    private const double FinalTrack = 2 * Math.PI;

    // sin 30°: steeper is no circuit, nor inside the parabola's small print.
    private const double SteepestSine = 0.5;

    // A thrust or lift that is exactly the limit, or level, may miss it by rounding.
    private const double Rounding = 1e-9;

    // Ten feet a minute: with less, downwind would be longer than any aerodrome's traffic.
    private const double LeastDownwindSink = 0.0508;

    // Two knots: a leg that all but stands still over the ground is no leg.
    private const double LeastGroundSpeed = 1;

    /// <summary>Why there is no flight, once one was sought in vain.</summary>
    public CircuitRefusal? Refusal { get; private set; }

    public CircuitFlights? All()
    {
        CircuitLegs legs = plan.Legs;
        if (Straight(LegName.DownwindLevel, legs.Downwind, Descent.Level, DownwindTrack) is not { } level) return null;
        LegFlight? downwind = level;
        if (!legs.Downwind.Descent.IsLevel)
            downwind = Descending(Straight(LegName.Downwind, legs.Downwind, legs.Downwind.Descent, DownwindTrack));
        if (downwind is null || Straight(LegName.Base, legs.Base, legs.Base.Descent, BaseTrack) is not { } baseLeg
            || Final(legs.Final) is not { } final
            || Turn(LegName.TurnToBase, legs.TurnToBase, legs.TurnToBase.Bank.Radians, downwind, baseLeg) is not { } toBase
            || Turn(LegName.TurnToFinal, legs.TurnToFinal, legs.TurnToFinal.Bank.Radians, baseLeg, final) is not { } toFinal)
            return null;
        return new(level, downwind, toBase, baseLeg, toFinal, final);
    }

    private LegFlight? Descending(LegFlight? downwind) => downwind is null || downwind.Sink >= LeastDownwindSink
        ? downwind
        : Refuse(LegDoesNotDescend, LegName.Downwind, "the circuit height would never be lost on downwind", SinkOf(downwind.Sink));

    private LegFlight? Straight(string name, StraightLeg leg, Descent descent, double track)
    {
        Aerodynamics air = new(leg.Configuration, leg.Airspeed);
        return SinPath(name, air, descent, bank: 0) is { } sine && Flyable(name, air, Math.Asin(sine), bank: 0) is { } thrust
            ? OnTrack(name, air, Math.Asin(sine), thrust, track)
            : null;
    }

    private LegFlight? Final(FinalLeg leg)
    {
        Aerodynamics air = new(leg.Configuration, leg.Airspeed);
        // Straight ahead is x: from ahead is against it, from the right against y.
        double headwind = -frame.WindX, crosswind = -frame.WindY;
        if (!(Math.Abs(crosswind) < air.Speed) || !(TrackLaws.GroundSpeed(air.Speed, headwind, crosswind) > LeastGroundSpeed))
            return NoCrab(LegName.Final, air.Speed, headwind, crosswind);
        double sine = -TrackLaws.SinkOnPath(air.Speed, leg.PathAngle.Radians, headwind, crosswind) / air.Speed;
        if (!(Math.Abs(sine) <= SteepestSine)) return NoPath(LegName.Final, leg.PathAngle);
        double path = Math.Asin(sine);
        return Flyable(LegName.Final, air, path, bank: 0) is { } thrust
            ? OnTrack(LegName.Final, air, path, thrust, FinalTrack)
            : null;
    }

    private LegFlight? Turn(string name, TurnLeg leg, double bank, LegFlight before, LegFlight after)
    {
        if (leg.Bank > plan.BankLimit)
            return Refuse(BankLimitExceeded, name, "the turn is planned steeper than the limit",
                new("bank", leg.Bank), new("limit", plan.BankLimit));
        Aerodynamics air = new(leg.Configuration, leg.Airspeed);
        if (SinPath(name, air, leg.Descent, bank) is not { } sine || Flyable(name, air, Math.Asin(sine), bank) is not { } thrust)
            return null;
        if (!(after.Heading > before.Heading))
            return Refuse(NoTurnToMake, name, "the crab angles before and after leave no turn to this side",
                new("crab before", Degrees(before.Crab)), new("crab after", Degrees(after.Crab)));
        return air.Flight(frame, Math.Asin(sine), thrust, bank, before.Heading, crab: 0);
    }

    /// <summary>sin γ of a level or descending leg.</summary>
    private double? SinPath(string name, Aerodynamics air, Descent descent, double bank)
    {
        double sine = air.SinPath(descent, bank);
        if (!(Math.Abs(sine) <= SteepestSine))
        {
            NoPath(name, Degrees(Math.Asin(Math.Clamp(sine, -1, 1))));
            return null;
        }

        if (sine <= Rounding) return sine;
        Refuse(LegDoesNotDescend, name, "the thrust stated makes the leg climb", SinkOf(-sine * air.Speed));
        return null;
    }

    /// <summary>The thrust, if the wing has the lift and the engine the thrust.</summary>
    private double? Flyable(string name, Aerodynamics air, double path, double bank)
    {
        double lift = air.LiftCoefficient(path, bank);
        if (!(lift <= air.MaximumLift * (1 + Rounding)))
        {
            double stall = air.StallSpeed(path, bank);
            Refuse(Stalled, name, "it calls for more lift than the wing has",
                new("airspeed", Speed(air.Speed)), new("stall at this load factor", Speed(stall)), new("bank", Degrees(bank)));
            return null;
        }

        double thrust = air.Thrust(path, bank);
        double slack = Rounding * air.Weight;
        if (thrust >= plan.Thrust.Idle.Newtons - slack && thrust <= plan.Thrust.Full.Newtons + slack) return thrust;
        Refuse(ThrustOutsideIdleToFull, name, "the engine cannot give the thrust it takes",
            new("thrust", Force.FromNewtons(thrust).ToUnit(plan.Thrust.Idle.Unit)), new("idle", plan.Thrust.Idle), new("full", plan.Thrust.Full));
        return null;
    }

    private LegFlight? OnTrack(string name, Aerodynamics air, double path, double thrust, double track)
    {
        double along = frame.WindX * Math.Cos(track) + frame.WindY * Math.Sin(track);
        double crosswind = frame.WindX * Math.Sin(track) - frame.WindY * Math.Cos(track);
        double horizontal = air.Speed * Math.Cos(path);
        return TrackLaws.Crab(crosswind, horizontal) is { } crab && TrackLaws.GroundSpeed(horizontal, -along, crosswind) > LeastGroundSpeed
            ? air.Flight(frame, path, thrust, bank: 0, track + crab, crab)
            : NoCrab(name, horizontal, -along, crosswind);
    }

    private LegFlight? NoCrab(string name, double airspeed, double headwind, double crosswind) => Refuse(
        NoCrabHoldsTheTrack, name, "no crab holds the track with way over the ground",
        new("airspeed", Speed(airspeed)), new("wind across", Speed(Math.Abs(crosswind))), new("headwind", Speed(headwind)));

    private LegFlight? NoPath(string name, Angle path) => Refuse(
        NoSteadyPath, name, "no steady path within 30° of level", new CircuitRefusalValue("path", path));

    private LegFlight? Refuse(CircuitRefusalReason reason, string leg, string why, params CircuitRefusalValue[] values)
    {
        Refusal ??= new(reason, leg, why, values);
        return null;
    }

    private static CircuitRefusalValue SinkOf(double sink) =>
        new("rate of descent", UnitsNet.Speed.FromMetersPerSecond(sink).ToUnit(SpeedUnit.FootPerMinute));

    private static Speed Speed(double si) => UnitsNet.Speed.FromMetersPerSecond(si).ToUnit(SpeedUnit.Knot);

    private static Angle Degrees(double radians) => Angle.FromRadians(radians).ToUnit(AngleUnit.Degree);
}

/// <summary>The steady flights that a circuit is made of.</summary>
internal sealed record CircuitFlights(
    LegFlight Level, LegFlight Downwind, LegFlight TurnToBase, LegFlight Base, LegFlight TurnToFinal, LegFlight Final);
