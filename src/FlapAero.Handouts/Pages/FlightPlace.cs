namespace FlapAero.Handouts.Pages;

/// <summary>Where a lesson belongs on the flight of the home page.</summary>
/// <param name="Words">The place in words.</param>
/// <param name="At">The place on the track.</param>
/// <param name="Title">From the place to the title's first line, in pixels of the wide drawing.</param>
/// <param name="Anchor">Which end of the title stands there: SVG's word for it.</param>
internal sealed record FlightPlace(
    string Words, Func<FlightTrack, (double Along, double Across)> At, (double X, double Y) Title, string Anchor = "middle")
{
    private static readonly Dictionary<string, FlightPlace> Places = new(StringComparer.Ordinal)
    {
        ["start-here"] = new("before the circuit", track => track.Start, (0, -48)),
        ["when-the-flaps-stay-up"] = new("downwind, when the flaps do not move", track => track.OnDownwind(0.5), (0, 40)),
        ["what-flaps-change"] = new("abeam the touchdown point, where the first flap would go down", track => track.PastAbeam(0), (0, -48)),
        ["the-circuit-without-flaps"] = new("past abeam, where the base turn is chosen", track => track.PastAbeam(0.6), (0, -48)),
        ["lift-and-where-it-ends"] = new("in the turn to base", track => track.TurningToBase(0.5), (28, 26), "start"),
        ["drag-and-the-angle-of-descent"] = new("on base, coming down", track => track.OnBase(0.5), (28, 6), "start"),
        ["approach-speed"] = new("in the turn to final", track => track.TurningToFinal(0.4), (28, -6), "start"),
        ["power-on-the-approach"] = new("where final begins", track => track.OnFinal(0.1), (0, 44)),
        ["energy-on-final"] = new("on final", track => track.OnFinal(0.7), (0, 44)),
        ["round-out-and-float"] = new("over the runway, before the wheels touch", track => track.Floating(0.5), (0, -48)),
        ["the-landing-roll"] = new("on the runway, slowing down", track => track.Rolling(0.5), (8, 44), "end"),
        ["how-much-landings-vary"] = new("clear of the runway, after many landings", track => track.Clear, (26, 6), "start"),
    };

    /// <summary>The place of a lesson by its name; null for a lesson that belongs to no place.</summary>
    public static FlightPlace? Of(string slug) => Places.GetValueOrDefault(slug);
}
