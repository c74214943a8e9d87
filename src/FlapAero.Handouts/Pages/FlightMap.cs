using System.Globalization;
using System.Text;
using FlapAero.Charts;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Pages;

/// <summary>
/// The home page's drawing: one flight from above, to scale, and on it the lessons as links. Twice: landing to the right with
/// titles where there is room, and landing up the screen with numbers alone on a phone; a page shows one of them.
/// </summary>
internal sealed class FlightMap
{
    private const double Dot = 15, Line = 20;

    private readonly FlightTrack _track = FlightTrack.WithoutFlaps();
    private readonly IReadOnlyList<(LessonNotebook Lesson, FlightPlace Place, bool IsThere)> _lessons;
    private readonly StringBuilder _svg = new();
    private readonly double _lowAlong, _lowAcross, _highAlong, _highAcross;

    private FlightMap(IReadOnlyList<(LessonNotebook, FlightPlace, bool)> lessons)
    {
        _lessons = lessons;
        _lowAlong = _track.Path.Min(point => point.Along);
        _highAlong = Math.Max(_track.RunwayLength, _track.Path.Max(point => point.Along));
        _lowAcross = _track.Path.Min(point => point.Across);
        _highAcross = _track.Path.Max(point => point.Across);
    }

    /// <summary>The drawing; nothing where no lesson has a place on the flight.</summary>
    /// <param name="notebooks">The lessons.</param>
    /// <param name="isThere">Whether a file of that name is there to be linked to.</param>
    public static string ToHtml(IReadOnlyList<LessonNotebook> notebooks, Func<string, bool> isThere)
    {
        (LessonNotebook, FlightPlace, bool)[] lessons = [.. notebooks
            .Select(notebook => (Notebook: notebook, Place: FlightPlace.Of(notebook.Slug)))
            .Where(lesson => lesson.Place is not null)
            .Select(lesson => (lesson.Notebook, lesson.Place!, isThere(PageShell.FileName(lesson.Notebook, Edition.Student))))];
        return lessons.Length == 0 ? "" : new FlightMap(lessons).Draw();
    }

    private string Draw()
    {
        FormattableString caption = $"""
            One landing without flaps of the invented {HtmlText.Escape(_track.Aeroplane)} on a calm day, computed and drawn to scale from above; only the
            runway is drawn wider than it is. Final is {_track.LengthOfFinal.NauticalMiles:0.00} NM long; from the threshold it is {_track.Touchdown.Feet:0} ft to the
            touchdown and {_track.Stop.Feet:0} ft to the stop. Each number is a lesson and stands where the lesson belongs.
            """;
        _svg.Append("<nav class=\"flight\" aria-label=\"Lessons along one flight\">\n<figure>\n");
        DrawWide();
        DrawNarrow();
        return _svg.Append(CultureInfo.InvariantCulture, $"<figcaption>{caption.ToString(CultureInfo.InvariantCulture)}</figcaption>\n</figure>\n</nav>\n").ToString();
    }

    private void DrawWide()
    {
        const double width = 1000, aside = 90, top = 76, bottom = 70, highest = 420;
        double scale = Math.Min((width - 2 * aside) / (_highAlong - _lowAlong), highest / (_highAcross - _lowAcross));
        double left = (width - scale * (_highAlong - _lowAlong)) / 2;
        Point On((double Along, double Across) at) => new(left + scale * (at.Along - _lowAlong), top + scale * (at.Across - _lowAcross));
        Begin("wide", width, top + bottom + scale * (_highAcross - _lowAcross));
        DrawFlight(On, scale);
        Leg("downwind", On(_track.PastAbeam(0.3)), 0, 26);
        Leg("base", On(_track.OnBase(0.5)), -44, 6);
        Leg("final", On(_track.OnFinal(0.4)), 0, -12);
        foreach ((LessonNotebook lesson, FlightPlace place, bool isThere) in _lessons)
            Link(lesson, isThere, On(place.At(_track)), place);
        _svg.Append("</svg>\n");
    }

    private void DrawNarrow()
    {
        const double width = 288, margin = 24;
        double scale = (width - 2 * margin) / (_highAcross - _lowAcross);
        Point On((double Along, double Across) at) => new(margin + scale * (at.Across - _lowAcross), margin + scale * (_highAlong - at.Along));
        Begin("narrow", width, 2 * margin + scale * (_highAlong - _lowAlong));
        DrawFlight(On, scale);
        Leg("downwind", On(_track.OnDownwind(0.75)), 52, 6);
        Leg("base", On(_track.OnBase(0.5)), 0, -24);
        Leg("final", On(_track.OnFinal(0.4)), -34, 6);
        foreach ((LessonNotebook lesson, FlightPlace place, bool isThere) in _lessons)
            Link(lesson, isThere, On(place.At(_track)), null);
        _svg.Append("</svg>\n");
    }

    private void Begin(string kind, double width, double height) =>
        _svg.Append(CultureInfo.InvariantCulture, $"<svg class=\"{kind}\" viewBox=\"0 0 {width:0} {height:0}\">\n");

    private void DrawFlight(Func<(double, double), Point> on, double scale)
    {
        double half = Math.Max(18, 7 / scale);
        Path("runway", [on((0, -half)), on((_track.RunwayLength, -half)), on((_track.RunwayLength, half)), on((0, half))]);
        Path("threshold", [on((0, -1.6 * half)), on((0, 1.6 * half))]);
        Path("track", [.. _track.Path.Select(on)]);
    }

    private void Path(string part, IReadOnlyList<Point> points) => _svg.Append(CultureInfo.InvariantCulture,
        $"<path class=\"{part}\" d=\"M{string.Join('L', points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.X:0.0} {point.Y:0.0}")))}\"/>\n");

    private void Leg(string name, Point at, double aside, double down) => _svg.Append(CultureInfo.InvariantCulture,
        $"<text class=\"leg\" x=\"{at.X + aside:0.0}\" y=\"{at.Y + down:0.0}\" text-anchor=\"middle\">{name}</text>\n");

    private void Link(LessonNotebook lesson, bool isThere, Point at, FlightPlace? withTitle)
    {
        string name = HtmlText.Escape(string.Create(CultureInfo.InvariantCulture, $"Lesson {lesson.Number}: {lesson.Title}"));
        _svg.Append(isThere ? $"<a href=\"{PageShell.FileName(lesson, Edition.Student)}\">" : "<g>");
        _svg.Append(CultureInfo.InvariantCulture,
            $"<title>{name}</title><circle cx=\"{at.X:0.0}\" cy=\"{at.Y:0.0}\" r=\"{Dot:0}\"/><text class=\"number\" x=\"{at.X:0.0}\" y=\"{at.Y + 6:0.0}\" text-anchor=\"middle\">{lesson.Number}</text>");
        if (withTitle is not null)
            foreach ((int row, string words) in Rows(lesson.Title).Index())
                _svg.Append(CultureInfo.InvariantCulture,
                    $" <text class=\"title\" x=\"{at.X + withTitle.Title.X:0.0}\" y=\"{at.Y + withTitle.Title.Y + Line * row:0.0}\" text-anchor=\"{withTitle.Anchor}\">{HtmlText.Escape(words)}</text>");
        _svg.Append(isThere ? "</a>\n" : "</g>\n");
    }

    /// <summary>A title in two rows of about the same length; a short one in one.</summary>
    private static IReadOnlyList<string> Rows(string title)
    {
        if (title.Length <= 16)
            return [title];
        int middle = Enumerable.Range(1, title.Length - 2).Where(at => title[at] == ' ').DefaultIfEmpty(0).MinBy(at => Math.Abs(2 * at - title.Length));
        return middle == 0 ? [title] : [title[..middle], title[(middle + 1)..]];
    }
}
