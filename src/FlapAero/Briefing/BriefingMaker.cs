using UnitsNet;

namespace FlapAero;

/// <summary>From a flight to its briefing: every part is tried, so that all refusals come at once.</summary>
internal sealed class BriefingMaker
{
    private readonly BriefingRequest _request;
    private readonly Speed _additive;
    private readonly List<string> _refusals = [];

    private BriefingMaker(BriefingRequest request) =>
        (_request, _additive) = (request, Gust.Additive(request.Wind.GustFactor));

    public static BriefingOutcome Make(BriefingRequest request)
    {
        var maker = new BriefingMaker(request);
        Aeroplane aeroplane = request.Aeroplane;
        BriefedSpeeds[] speeds =
        [
            .. aeroplane.FlapSettings.Select(flaps => maker.Try(
                $"Speeds with flaps {flaps}", () => new BriefedSpeeds(aeroplane.Configure(flaps, request.Mass), request.Air, maker._additive)))
                .OfType<BriefedSpeeds>(),
        ];
        // A circuit or landing at speeds that were refused would only say so again.
        if (speeds.Length < aeroplane.FlapSettings.Count) return new(null, maker._refusals);
        BriefedCase? flapless = maker.Case(speeds, [speeds[0], speeds[0], speeds[0]], "without flaps");
        int full = speeds.Length - 1;
        BriefedCase? flapped = maker.Case(
            speeds, [speeds[Math.Max(0, full - 2)], speeds[full - 1], speeds[full]], "with flaps");
        return flapless is not null && flapped is not null
            ? new(new Briefing(request, speeds, flapless, flapped), [])
            : new(null, maker._refusals);
    }

    /// <param name="speeds">All settings' speeds.</param>
    /// <param name="onLegs">Those of downwind, base and final.</param>
    /// <param name="name">What messages call it.</param>
    private BriefedCase? Case(BriefedSpeeds[] speeds, BriefedSpeeds[] onLegs, string name)
    {
        BriefedCircuit? circuit = Try($"Circuit {name}", () => Circuit(onLegs, name));
        BriefedLanding? landing = Try($"Landing {name}", () => Landing(onLegs[2], name));
        return circuit is null || landing is null ? null : new(onLegs[2], circuit, landing);
    }

    private BriefedLanding? Landing(BriefedSpeeds speeds, string name)
    {
        LandingSetup usual = _request.Runway.LandingOf(speeds.Configuration, _request.Air, _request.Wind.Mean);
        LandingSetup setup = usual with { Technique = usual.Technique with { ThresholdSpeed = speeds.Approach.True } };
        LandingReport report = FlapAero.Landing.Fly(setup);
        bool keepsPower = report.Refusal == LandingRefusal.LiftLimitBeforeRoundOut;
        if (keepsPower)
        {
            // Light, or into wind, with much drag: idle from the threshold on leaves no speed to round out with.
            Speed sink = speeds.Configuration.OnPathOverGround(speeds.Approach, setup.Technique.PathAngle, setup.Runway.Headwind).SinkRate;
            setup = setup with
            {
                Technique = setup.Technique with { PowerCutHeight = DemoLandings.HoldOffHeight + sink * DemoLandings.FlareTimeConstant },
            };
            report = FlapAero.Landing.Fly(setup);
        }

        if (report.Result is { } result) return new(setup, result, _request, keepsPower);
        _refusals.Add($"Landing {name}: {report.Explanation}");
        return null;
    }

    private BriefedCircuit? Circuit(BriefedSpeeds[] onLegs, string name)
    {
        Airspeed final = onLegs[2].Approach;
        // No leg is flown slower than the one after it: a large gust additive lifts them all.
        Airspeed onBase = Faster(Multiple(onLegs[1], BriefingTechnique.DescentMultiple), final);
        Airspeed downwind = Faster(Multiple(onLegs[0], BriefingTechnique.DescentMultiple), onBase);
        Airspeed level = Faster(Multiple(onLegs[0], BriefingTechnique.LevelMultiple), downwind);
        Descent descent = Descent.AtSinkRate(BriefingTechnique.Descent);
        var legs = new CircuitLegs(
            new(onLegs[0].Configuration, downwind, descent),
            new(onLegs[1].Configuration, onBase, descent, BriefingTechnique.Bank),
            new(onLegs[1].Configuration, onBase, descent),
            new(onLegs[1].Configuration, onBase, descent, BriefingTechnique.Bank),
            new(onLegs[2].Configuration, final, DemoLandings.PathAngle));
        CircuitOutcome outcome = FlapAero.Circuit.Backwards(new(
            new(_request.Runway.Direction, _request.Runway.ThresholdHeight), _request.Wind.Mean, _request.Hand, _request.CircuitHeight,
            _request.Spacing, legs, Thrusts(legs), bankLimit: Angle.FromDegrees(30), CircuitFix.RollOutAt(BriefingTechnique.RollOut)));
        if (outcome.Circuit is not { } circuit)
        {
            _refusals.Add($"Circuit {name}: {outcome.Refusal!.Message}");
            return null;
        }

        SteadyFlight On(CircuitLeg leg) => leg.Configuration.OnPath(leg.Airspeed, leg.PathAngle);
        SteadyFlight before = onLegs[0].Configuration.OnPath(level, Angle.Zero);
        BriefedLeg?[] briefed =
        [
            Leg(before, LegName.DownwindLevel, _request.CircuitHeight, _request.CircuitHeight, name),
            .. new[] { circuit.Downwind, circuit.Base, circuit.Final }
                .Select(leg => Leg(On(leg), leg.Name, leg.Begin.Height, leg.End.Height, name)),
        ];
        return briefed is [{ } first, { } second, { } third, { } fourth] ? new(circuit, first, second, third, fourth) : null;
    }

    /// <summary>From the least that any leg's idling propeller gives to the most that any leg's turns at its highest speed.</summary>
    private ThrustRange Thrusts(CircuitLegs legs)
    {
        Propeller propeller = _request.Aeroplane.Propeller;
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
        _refusals.Add(
            $"Circuit {name}: thrust on {leg}: {Require.Text(flight.Thrust)} at {Require.Text(flight.Airspeed.Calibrated)} CAS is refused; "
            + $"allowed is {idle} to {full}. It is what this propeller gives between closed throttle and its highest speed.");
        return null;
    }

    private Airspeed Multiple(BriefedSpeeds speeds, double multiple) =>
        speeds.Configuration.ReferenceSpeed(_request.Air, multiple);

    private static Airspeed Faster(Airspeed first, Airspeed second) => first.SiTrue >= second.SiTrue ? first : second;

    private T? Try<T>(string what, Func<T?> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            // The runtime adds its own name for the argument, which a reader has never seen.
            int parameter = refused.Message.LastIndexOf(" (Parameter '", StringComparison.Ordinal);
            _refusals.Add($"{what}: {(parameter < 0 ? refused.Message : refused.Message[..parameter])}");
            return null;
        }
    }
}
