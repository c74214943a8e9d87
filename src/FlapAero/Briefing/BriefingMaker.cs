using UnitsNet;

namespace FlapAero;

/// <summary>From a flight to its briefing: every part is tried, so that all refusals come at once.</summary>
internal sealed class BriefingMaker
{
    private readonly BriefingRequest _request;
    private readonly Speed _additive;
    private readonly List<string> _refusals = [];

    private BriefingMaker(BriefingRequest request) =>
        (_request, _additive) = (request, request.Rules.Additive(request.Wind.GustFactor));

    public static Outcome<Briefing, IReadOnlyList<string>> Make(BriefingRequest request)
    {
        BriefingMaker flight = new(request), comparison = new(request);
        Aeroplane aeroplane = request.Aeroplane;
        if (flight.Speeds(aeroplane.FlapsUp) is not { } up) return flight.Refused;
        const string name = "without flaps";
        BriefedLanding? landing = flight.Try($"Landing {name}", () => flight.AimedLanding(up, name));
        Length over = landing?.ThresholdHeight ?? request.ThresholdHeight;
        BriefedCircuit? circuit = flight.Try($"Circuit {name}", () => flight.Circuit(up, [up, up, up], over, name));
        if (circuit is null || landing is null) return flight.Refused;
        BriefedSpeeds?[] speeds = [up, .. aeroplane.FlapSettings.Skip(1).Select(comparison.Speeds)];
        return new(new Briefing(
            request, [.. speeds.OfType<BriefedSpeeds>()], new(up, circuit, landing, request.Rules), comparison.Compare(up, speeds, over),
            landing.Fit == RunwayFit.Fits ? null : flight.Remedies(up, speeds)));
    }

    private Outcome<Briefing, IReadOnlyList<string>> Refused => new(_refusals, string.Join('\n', _refusals));

    /// <summary>The same with flaps: what of it cannot be is missing with its reason and stops nobody.</summary>
    private BriefedComparison Compare(BriefedSpeeds up, BriefedSpeeds?[] speeds, Length over)
    {
        const string name = "with flaps";
        int full = speeds.Length - 1;
        BriefedSpeeds? onFinal = speeds[full];
        // A circuit or landing at speeds that were refused would only say so again.
        BriefedCircuit? circuit = speeds[Math.Min(1, full)] is { } downwind && speeds[Math.Min(2, full)] is { } onBase && onFinal is not null
            ? Try($"Circuit {name}", () => Circuit(up, [downwind, onBase, onFinal], over, name)) : null;
        BriefedLanding? landing = onFinal is null ? null : Try($"Landing {name}", () => Landing(onFinal, over, name));
        return new(onFinal, circuit, landing, _refusals);
    }

    private BriefedSpeeds? Speeds(FlapSetting flaps) => Try(
        $"Speeds with flaps {flaps}", () => new BriefedSpeeds(
            _request.Aeroplane.Configure(flaps, _request.Mass), _request.Air, _additive, _request.Rules.MultipleOf(_request.Aeroplane, flaps)));

    /// <summary>
    /// Aimed so that the wheels touch within the first third with the margin kept: the height over the threshold that is asked for if that does it,
    /// or the highest below it that does; the one asked for where none does.
    /// </summary>
    private BriefedLanding? AimedLanding(BriefedSpeeds speeds, string name)
    {
        Length lowest = _request.LowestThresholdHeight;
        BriefedLanding? usual = Landing(speeds, _request.ThresholdHeight, name);
        BriefedLanding? landing = usual;
        while (landing is not null && landing.Fit != RunwayFit.Fits && landing.ThresholdHeight > lowest)
        {
            Length lower = landing.ThresholdHeight - BriefingTechnique.ThresholdHeightStep;
            // The flight does not hang on a height that is only tried.
            landing = new BriefingMaker(_request).Landing(speeds, lower < lowest ? lowest : lower, name);
        }

        return landing is { Fit: RunwayFit.Fits } ? landing : usual;
    }

    private BriefedLanding? Landing(BriefedSpeeds speeds, Length over, string name)
    {
        Speed headwind = _request.Rules.PlannedHeadwind(_request.Wind.Mean.Headwind(_request.Runway.Direction));
        LandingSetup usual = LandingSetup.For(
            speeds.Configuration, _request.Runway, LandingPilot.Usual with { ThresholdHeight = over }, _request.Air, headwind);
        LandingSetup setup = usual with { Technique = usual.Technique with { ThresholdSpeed = speeds.Approach.True } };
        Outcome<LandingResult, LandingRefusal> landing = FlapAero.Landing.Fly(setup);
        Outcome<PlannedDistance>? planned = landing.Happened ? PlannedDistance.Of(setup, _request.Runway.Surface, _request.Rules) : null;
        if (planned is { Happened: true }) return new(setup, landing.Value, planned.Value, _request);
        _refusals.Add(planned is null ? $"Landing {name}: {landing.Explanation}" : $"Landing {name}, {planned.Explanation}");
        return null;
    }

    /// <summary>What would help, each alone: found by trying, to the step that a sheet prints.</summary>
    private LandingRemedies Remedies(BriefedSpeeds up, BriefedSpeeds?[] speeds)
    {
        Aeroplane aeroplane = _request.Aeroplane;
        bool Fits(BriefingRequest request, FlapSetting flaps)
        {
            BriefingMaker other = new(request);
            return other.Speeds(flaps) is { } at && other.Try("", () => other.AimedLanding(at, "")) is { Fit: RunwayFit.Fits };
        }

        Length? Longer()
        {
            if (new BriefingMaker(_request).Landing(up, _request.LowestThresholdHeight, "") is not { } lowest) return null;
            for (Length length = BriefedLanding.RoundedUp(lowest.RunwayNeeded); length < Runway.Longest; length += BriefingTechnique.DistanceStep)
            {
                if (Fits(_request.With(runway: _request.Runway with { LengthAvailable = length }), aeroplane.FlapsUp)) return length;
            }

            return null;
        }

        Mass? Lighter()
        {
            for (double kilograms = 10 * Math.Floor(_request.Mass.Kilograms / 10 - 1e-9); kilograms >= aeroplane.MinimumMass.Kilograms; kilograms -= 10)
            {
                if (Fits(_request.With(mass: Mass.FromKilograms(kilograms)), aeroplane.FlapsUp)) return Mass.FromKilograms(kilograms);
            }

            return null;
        }

        Speed? Headwind()
        {
            for (int knots = 1; knots <= 30; knots++)
            {
                Wind along = new(_request.Runway.Direction, Speed.FromKnots(knots));
                if (Fits(_request.With(wind: new BriefingWind(along)), aeroplane.FlapsUp)) return Speed.FromKnots(knots);
            }

            return null;
        }

        return new(
            Longer(), Lighter(), Headwind(),
            speeds.Skip(1).OfType<BriefedSpeeds>().Select(at => at.Configuration.Flaps).FirstOrDefault(flaps => Fits(_request, flaps)));
    }

    /// <summary>The first flap comes when power is reduced, and nobody slows down before it: downwind has the speeds of flaps up.</summary>
    private BriefedCircuit? Circuit(BriefedSpeeds up, BriefedSpeeds[] onLegs, Length over, string name)
    {
        Airspeed final = onLegs[2].Approach;
        // No leg is flown slower than the one after it: a large gust additive lifts them all.
        BriefingRules rules = _request.Rules;
        Airspeed onBase = Faster(rules.Descending.Of(onLegs[1].Configuration, _request.Air), final);
        Airspeed downwind = Faster(rules.Descending.Of(up.Configuration, _request.Air), onBase);
        Airspeed level = Faster(rules.Downwind.Of(up.Configuration, _request.Air), downwind);
        Descent descent = Descent.AtSinkRate(BriefingTechnique.Descent);
        var legs = new CircuitLegs(
            new(onLegs[0].Configuration, downwind, descent),
            new(onLegs[1].Configuration, onBase, descent, rules.Bank),
            new(onLegs[1].Configuration, onBase, descent),
            new(onLegs[1].Configuration, onBase, descent, rules.Bank),
            new(onLegs[2].Configuration, final, LandingPilot.Usual.PathAngle));
        Outcome<Circuit, CircuitRefusal> outcome = FlapAero.Circuit.Backwards(new(
            _request.Runway, _request.Wind.Mean, _request.Hand, _request.CircuitHeight, _request.Spacing, legs, Thrusts(legs),
            rules.BankLimit, CircuitFix.RollOutAt(rules.RollOut), rules.StabilisedBy, over));
        if (!outcome.Happened)
        {
            _refusals.Add($"Circuit {name}: {outcome.Explanation}");
            return null;
        }

        Circuit circuit = outcome.Value;

        SteadyFlight On(CircuitLeg leg) => leg.Configuration.OnPath(leg.Airspeed, leg.PathAngle);
        SteadyFlight before = up.Configuration.OnPath(level, Angle.Zero);
        BriefedLeg?[] briefed =
        [
            Leg(before, LegName.DownwindLevel, _request.CircuitHeight, _request.CircuitHeight, name),
            .. new[] { circuit.Downwind, circuit.Base, circuit.Final }
                .Select(leg => Leg(On(leg), leg.Name, leg.Begin.Height, leg.End.Height, name)),
        ];
        return briefed is [{ } first, { } second, { } third, { } fourth] ? new(circuit, first, second, third, fourth) : null;
    }

    /// <summary>From the least that any leg's idling propeller gives to the most that any leg's turns at its highest speed.</summary>
    internal static ThrustRange Thrusts(CircuitLegs legs)
    {
        Propeller propeller = legs.Final.Configuration.Aeroplane.Propeller;
        (Configuration, Airspeed)[] flown =
        [
            (legs.Downwind.Configuration, legs.Downwind.Airspeed), (legs.Base.Configuration, legs.Base.Airspeed),
            (legs.Final.Configuration, legs.Final.Airspeed),
        ];
        double idle = flown.Min(leg => (leg.Item1.IdleThrust(leg.Item2) ?? Force.Zero).Newtons);
        double full = flown.Max(leg => propeller.Running(leg.Item2, propeller.MaximumSpeed).Thrust.Newtons);
        return new(Force.FromNewtons(idle), Force.FromNewtons(full));
    }

    private BriefedLeg? Leg(SteadyFlight flight, string leg, Length begin, Length end, string name)
    {
        Configuration flown = flight.Configuration;
        if (flown.EngineSpeedOnPath(flight.Airspeed, flight.PathAngle) is { } engine) return new(flight, engine, begin, end);
        Propeller propeller = _request.Aeroplane.Propeller;
        string idle = flown.IdleThrust(flight.Airspeed) is { } least ? Require.Text(least) : "idle";
        string full = Require.Text(propeller.Running(flight.Airspeed, propeller.MaximumSpeed).Thrust);
        RefusedInputException refused = Require.Refused(
            null, $"thrust on {leg}", $"{Require.Text(flight.Thrust)} at {Require.Text(flight.Airspeed.Calibrated)} CAS",
            $"{idle} to {full}", "It is what this propeller gives between closed throttle and its highest speed.");
        _refusals.Add($"Circuit {name}: {refused.Message}");
        return null;
    }

    internal static Airspeed Faster(Airspeed first, Airspeed second) => first.SiTrue >= second.SiTrue ? first : second;

    private T? Try<T>(string what, Func<T?> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            _refusals.Add($"{what}: {PlainWords.Of(refused)}");
            return null;
        }
    }
}
