using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using UnitsNet;

namespace FlapAero.Charts.Tests.Pictures;

public class PictureFormTests
{
    public static TheoryData<int> EachPicture => [.. Enumerable.Range(0, All.Count)];

    private static IReadOnlyList<Picture> All { get; } =
    [
        .. DemoAeroplanes.All.Select((_, i) => Drawn.Flaps(i)).SelectMany(flaps =>
        {
            (Configuration up, Configuration full) = flaps;
            LandedView[] landings = [Drawn.Landed("flaps up", up), Drawn.Landed("full flap", full)];
            return (Picture[])
            [
                .. new[] { 1.1, 1.3, 1.6 }.Select(factor => Charts.Pictures.ViewOverTheNose(
                    "View", Quillmere.Runway24, Drawn.See("flaps up", up, factor),
                    Drawn.See("full flap", full, factor))),
                Charts.Pictures.SideView("Side", ("flaps up", Drawn.Final(up)), ("full flap", Drawn.Final(full))),
                Charts.Pictures.Forces(
                    "Forces", ForcesAtAMoment.Of("final, flaps up", Drawn.Final(up)),
                    ForcesAtAMoment.Of("final, full flap", Drawn.Final(full)),
                    ForcesAtAMoment.Of("idle glide, up", up.GlideIdling(up.ReferenceSpeed(Drawn.Air))!),
                    ForcesAtAMoment.Of("idle glide, full", full.GlideIdling(full.ReferenceSpeed(Drawn.Air))!)),
                Charts.Pictures.FinalFromTheSide(
                    "Final", Drawn.Path, ("as meant", up, Drawn.Down(up, 0)), ("too high", up, Drawn.Down(up, 100))),
                Charts.Pictures.RoundOut("Round-out", landings),
                Charts.Pictures.RunwayFromAbove("Runway", Quillmere.Runway24, landings),
                Charts.Pictures.RunwayFromAbove("Runway", Quillmere.Runway24, landings[0]),
            ];
        }),
        Charts.Pictures.CircuitFromAbove(
            "Circuit", Quillmere.Runway24, ("flaps up, no wind", Drawn.Circuit(new Wind(Angle.Zero, Speed.Zero)))),
        Charts.Pictures.CircuitFromAbove(
            "Circuit", Quillmere.Runway24, ("no wind", Drawn.Circuit(new Wind(Angle.Zero, Speed.Zero))),
            ("in Saturday's wind", Drawn.Circuit(Quillmere.Saturday.Wind.Mean))),
    ];

    private static MovingPicture Moving
    {
        get
        {
            (Configuration up, Configuration full) = Drawn.Flaps(0);
            return MovingPicture.Of(
                Axis.Of("speed over the stall", "V/V_S"), Samples.Between(1.1, 1.5, 0.05), 1.3, factor =>
                    Charts.Pictures.ViewOverTheNose(
                "The view", Quillmere.Runway24, Drawn.See("flaps up", up, factor),
                Drawn.See("full flap", full, factor)));
        }
    }

    [Theory]
    [MemberData(nameof(EachPicture))]
    public void Labels_OfEachPicture_NeitherCollideNorLeaveTheDrawing(int which)
    {
        foreach (Picture picture in (Picture[])[All[which], All[which].In(DisplayUnits.SI)])
        {
            XElement svg = XElement.Parse(picture.ToSvg());
            double height = double.Parse(svg.Attribute("viewBox")!.Value.Split(' ')[3], CultureInfo.InvariantCulture);
            (string Text, double Left, double Top, double Right, double Bottom)[] boxes =
                [.. svg.Descendants().Where(e => e.Name.LocalName == "text").Select(Box)];
            Assert.NotEmpty(boxes);
            foreach (var box in boxes)
                Assert.True(
                    box.Left > -4 && box.Right < 404 && box.Top > -2 && box.Bottom < height + 2,
                    $"{picture.Title}: {box} leaves the drawing, {height} tall");
            for (int i = 0; i < boxes.Length; i++)
                for (int k = i + 1; k < boxes.Length; k++)
                    Assert.False(
                        boxes[i].Left < boxes[k].Right && boxes[k].Left < boxes[i].Right
                            && boxes[i].Top < boxes[k].Bottom && boxes[k].Top < boxes[i].Bottom,
                        $"{picture.Title}: {boxes[i]} collides with {boxes[k]}");
        }
    }

    [Theory]
    [MemberData(nameof(EachPicture))]
    public void Html_OfEachPicture_HasAlternativeTextCaptionNumbersAndNoScript(int which)
    {
        Picture picture = All[which];
        IElement figure = new HtmlParser().ParseDocument(picture.ToNotebookHtml())
            .QuerySelector("figure.plot.picture")!;
        Assert.Equal(picture.FindingText, LabelText.Plain(figure.QuerySelector("img")!.GetAttribute("alt")!));
        Assert.Contains(
            LabelText.Plain(picture.CaptionText)[..40], figure.QuerySelector("figcaption")!.TextContent,
            StringComparison.Ordinal);
        Assert.True(figure.QuerySelectorAll("details.plot-numbers td").Length >= 4);
        Assert.Null(figure.QuerySelector("script"));
        Assert.DoesNotContain(
            XElement.Parse(picture.ToSvg()).DescendantsAndSelf(), e => e.Attribute("id") is not null
                || e.Attribute("style") is not null);
        Assert.InRange(picture.ToSvg().Length, 2000, 16000);
    }

    [Fact]
    public void FlapSettings_InEachPicture_HaveTheirOwnInk()
    {
        Assert.Equal("#0072B2", Palette.For(Drawn.Flaps(0).Up).Line);
        Assert.Equal("#D55E00", Palette.For(Drawn.Flaps(0).Full).Line);
        Assert.Equal(
            Palette.IntermediateFlap,
            Palette.For(DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapSettings[1])));
        Assert.Equal(
            4, new[] { Palette.FlapsUp, Palette.FullFlap, Palette.IntermediateFlap, Palette.Changed }.Select(
                style => style.Dash).Distinct().Count());
    }

    [Fact]
    public void Moving_EachFrameOnAnyOther_MakesThatFramesDrawing()
    {
        MovingPicture moving = Moving;
        using JsonDocument json = JsonDocument.Parse(moving.ToJson());
        JsonElement frames = json.RootElement.GetProperty("moving").GetProperty("frames");
        XElement drawing = XElement.Parse(moving.ToSvg());
        foreach (int i in (int[])[0, 8, 3, 5, 1])
        {
            XElement[] elements = [.. drawing.Elements()];
            foreach (JsonElement part in frames[i].GetProperty("parts").EnumerateArray())
                foreach (JsonProperty change in part.EnumerateObject().Where(change => change.Name != "at"))
                    if (change.Name == "inner")
                        elements[part.GetProperty("at").GetInt32()].ReplaceNodes(
                            XElement.Parse($"<g xmlns=\"http://www.w3.org/2000/svg\">{change.Value.GetString()}</g>")
                                .Nodes());
                    else elements[part.GetProperty("at").GetInt32()]
                        .SetAttributeValue(change.Name, change.Value.GetString());
            Assert.Equal(XElement.Parse(moving.Frames[i].ToSvg()).ToString(), drawing.ToString());
        }
        Assert.InRange(moving.ToJson().Length, 2000, 60_000);
        Assert.Equal("1.30", frames[4].GetProperty("value").GetString());
    }

    [Fact]
    public void Moving_WhatCannotMove_IsRefused()
    {
        Picture still = All[0];
        Assert.Contains("the same at every value", Refused(_ => still), StringComparison.Ordinal);
        Assert.Contains("starts at 5", Refused(_ => still, start: 5), StringComparison.Ordinal);
        Assert.Contains(
            "other parts",
            Refused(value => value < 1.5 ? still
                : Charts.Pictures.ViewOverTheNose("View", Quillmere.Runway24, Drawn.See("one", Drawn.Flaps(0).Up))),
                    StringComparison.Ordinal);
        Assert.Contains(
            "refused at speed 2",
            Refused(value => value < 1.5 ? still : throw new InvalidOperationException("too fast.")),
            StringComparison.Ordinal);
    }

    private static string Refused(Func<double, Picture> at, double start = 1) =>
        Assert.Throws<RefusedInputException>(() => MovingPicture.Of(Axis.Of("speed"), [1, 2], start, at)).Message;

    /// <summary>A text's box with letters as wide as they usually are.</summary>
    private static (string Text, double Left, double Top, double Right, double Bottom) Box(XElement text)
    {
        double Number(string name) => double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture);
        double width =
            text.Value.Sum(
                c => c is ' ' or '.' or ',' or 'i' or 'l' or 't' or 'f' or '\u202F' or '\u00A0' ? 5.0 : 9.3),
                    x = Number("x");
        double left =
            text.Attribute("text-anchor")?.Value switch { "middle" => x - width / 2, "end" => x - width, _ => x };
        return (text.Value, left, Number("y") - 13, left + width, Number("y") + 3);
    }
}
