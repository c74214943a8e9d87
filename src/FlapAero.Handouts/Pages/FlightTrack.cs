using UnitsNet;

namespace FlapAero.Handouts.Pages;

/// <summary>
/// One computed landing without flaps of the demo aeroplane, from level on downwind until it is clear of the runway, in metres: along
/// the landing from the threshold, and across it to the right.
/// </summary>
internal sealed class FlightTrack
{
    /// <summary>How far from the centreline the drawing ends, and how far beyond the runway it begins: for the eye, no rule.</summary>
    private const double ClearOf = 240, Before = 300;

    private readonly Circuit _circuit;
    private readonly LandingResult _landing;

    private FlightTrack(Configuration configuration, Runway runway, Circuit circuit, LandingResult landing)
    {
        (_circuit, _landing) = (circuit, landing);
        Aeroplane = configuration.Aeroplane.Name;
        RunwayLength = runway.LengthAvailable.Meters;
    }

    public string Aeroplane { get; }

    public double RunwayLength { get; }

    public Length LengthOfFinal => _circuit.LengthOfFinal;

    public Length Touchdown => _landing.TouchdownDistance;

    public Length Stop => _landing.StopDistance;

    /// <summary>Where the aeroplane goes: the circuit as computed, the landing on the centreline, and off the runway.</summary>
    public IReadOnlyList<(double Along, double Across)> Path =>
        [Start, .. _circuit.Track.Select(point => (point.X.Meters, point.Y.Meters)), (Stop.Meters, 0), Clear];

    public (double Along, double Across) Start => (RunwayLength + Before, PastAbeam(0).Across);

    public (double Along, double Across) Clear => (Stop.Meters, ClearOf);

    /// <summary>The flight on a calm day; the same every time.</summary>
    public static FlightTrack WithoutFlaps()
    {
        FlapAero.Aeroplane aeroplane = DemoAeroplanes.TrainerH4;
        Configuration up = aeroplane.Configure(aeroplane.FlapsUp);
        DemoDay day = Quillmere.Monday;
        Runway runway = Quillmere.Runway24;
        CircuitPlan plan = DemoCircuits.PlanFor(up, up, up, day.Air, RotationalSpeed.FromRevolutionsPerMinute(1600))
            .With(runway, day.Wind.Mean, CircuitHand.Left);
        return new(up, runway, Circuit.Backwards(plan).Value, Landing.Fly(LandingSetup.For(up, runway, air: day.Air)).Value);
    }

    public (double Along, double Across) OnDownwind(double part) =>
        (Start.Along + part * (PastAbeam(0).Along - Start.Along), Start.Across);

    public (double Along, double Across) PastAbeam(double part) => Of(_circuit.Downwind, part);

    public (double Along, double Across) TurningToBase(double part) => Of(_circuit.TurnToBase, part);

    public (double Along, double Across) OnBase(double part) => Of(_circuit.Base, part);

    public (double Along, double Across) TurningToFinal(double part) => Of(_circuit.TurnToFinal, part);

    public (double Along, double Across) OnFinal(double part) => Of(_circuit.Final, part);

    public (double Along, double Across) Floating(double part) =>
        (_landing.FlareStartDistance.Meters + part * (Touchdown - _landing.FlareStartDistance).Meters, 0);

    public (double Along, double Across) Rolling(double part) => (Touchdown.Meters + part * (Stop - Touchdown).Meters, 0);

    private static (double, double) Of(CircuitLeg leg, double part)
    {
        CircuitPoint point = leg.Point(leg.Time * part);
        return (point.X.Meters, point.Y.Meters);
    }
}
