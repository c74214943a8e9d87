using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using FlapAero.Handouts.Pages;
using FlapAero.Tests;

namespace FlapAero.Handouts.Tests;

/// <summary>The home page's flight: to scale, each lesson on its place, each a link, whatever the width.</summary>
public sealed partial class FlightMapTests
{
    private static readonly FlightTrack Track = FlightTrack.WithoutFlaps();

    private static readonly IHtmlDocument Home = new HtmlParser().ParseDocument(IndexPage.ToHtml(LessonCopies.All, IsThere));

    [Theory]
    [InlineData("wide")]
    [InlineData("narrow")]
    public void Drawing_Lessons_AreEachALinkWithItsNameOnTheTrack(string kind)
    {
        IElement[] links = [.. Home.QuerySelectorAll($"svg.{kind} a")];
        string[] names = [.. links.Select(link => link.QuerySelector("title")!.TextContent)];
        (double X, double Y)[] track = Points(kind, "track");

        Assert.Equal(LessonCopies.All.Select(l => l.Stem + ".html").Order(StringComparer.Ordinal), links.Select(l => l.GetAttribute("href")).Order(StringComparer.Ordinal));
        Assert.Equal(LessonCopies.All.Select(l => $"Lesson {l.Number}: {l.Title}"), names);
        Assert.Empty(links.Zip(names).Where(link => Distance(Dot(link.First), track) >= 1.5).Select(link => link.Second));
    }

    [Theory]
    [InlineData("wide")]
    [InlineData("narrow")]
    public void Drawing_Dots_DoNotOverlap(string kind)
    {
        (double X, double Y)[] dots = [.. Home.QuerySelectorAll($"svg.{kind} a").Select(Dot)];

        for (int i = 0; i < dots.Length; i++)
            for (int k = i + 1; k < dots.Length; k++)
                Assert.True(Length(dots[i].X - dots[k].X, dots[i].Y - dots[k].Y) > 30, $"{i} and {k}");
    }

    /// <summary>One length in both drawings and both directions: the track's own.</summary>
    [Theory]
    [InlineData("wide")]
    [InlineData("narrow")]
    public void Drawing_Track_IsToScaleAndEndsClearOfTheRunway(string kind)
    {
        (double X, double Y)[] track = Points(kind, "track");
        double along = Track.Path.Max(p => p.Along) - Track.Path.Min(p => p.Along), across = Track.Path.Max(p => p.Across) - Track.Path.Min(p => p.Across);
        double wide = track.Max(p => p.X) - track.Min(p => p.X), high = track.Max(p => p.Y) - track.Min(p => p.Y);

        Assert.Equal(along / across, kind == "wide" ? wide / high : high / wide, 0.01);
        (double X, double Y)[] runway = Points(kind, "runway");
        Assert.InRange(Track.Stop.Meters, Track.Touchdown.Meters, Track.RunwayLength);
        Assert.False(Within(track[^1], runway));
        Assert.True(Within(track[^2], runway));
    }

    [Fact]
    public void Page_EveryLesson_SaysItsPlaceInWordsToo() => Assert.Empty(LessonCopies.All
        .Where(lesson => !Home.QuerySelector($"ol.lessons > li[value='{lesson.Number}']")!.TextContent.Contains(FlightPlace.Of(lesson.Slug)!.Words, StringComparison.Ordinal))
        .Select(lesson => lesson.Title));

    [Fact]
    public void Drawing_LessonNotMade_IsNoLink()
    {
        IHtmlDocument home = new HtmlParser().ParseDocument(IndexPage.ToHtml(LessonCopies.All, name => IsThere(name) && !name.StartsWith("04", StringComparison.Ordinal)));

        Assert.Equal(LessonCopies.All.Count - 1, home.QuerySelectorAll("svg.wide a").Length);
        Assert.Contains("Lesson 4: ", home.QuerySelector("svg.wide g title")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>Sheets go on until one is not there.</summary>
    private static bool IsThere(string name) => !name.Contains(".sheet-", StringComparison.Ordinal);

    private static (double X, double Y) Dot(IElement link)
    {
        IElement circle = link.QuerySelector("circle")!;
        return (Number(circle.GetAttribute("cx")!), Number(circle.GetAttribute("cy")!));
    }

    private static (double X, double Y)[] Points(string kind, string part)
    {
        double[] numbers = [.. Coordinate().Matches(Home.QuerySelector($"svg.{kind} path.{part}")!.GetAttribute("d")!).Select(m => Number(m.Value))];
        return [.. numbers.Chunk(2).Select(pair => (pair[0], pair[1]))];
    }

    private static double Distance((double X, double Y) dot, (double X, double Y)[] track) =>
        track.Zip(track.Skip(1)).Min(piece =>
        {
            (double dx, double dy) = (piece.Second.X - piece.First.X, piece.Second.Y - piece.First.Y);
            double part = Math.Clamp(((dot.X - piece.First.X) * dx + (dot.Y - piece.First.Y) * dy) / Math.Max(1e-9, dx * dx + dy * dy), 0, 1);
            return Length(dot.X - piece.First.X - part * dx, dot.Y - piece.First.Y - part * dy);
        });

    private static double Length(double x, double y) => Math.Sqrt(x * x + y * y);

    private static bool Within((double X, double Y) point, (double X, double Y)[] corners) =>
        point.X > corners.Min(c => c.X) && point.X < corners.Max(c => c.X) && point.Y > corners.Min(c => c.Y) && point.Y < corners.Max(c => c.Y);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"-?[0-9]+\.[0-9]")]
    private static partial Regex Coordinate();
}
