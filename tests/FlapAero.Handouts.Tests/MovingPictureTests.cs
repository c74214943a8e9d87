using System.Xml.Linq;
using FlapAero.Charts;
using FlapAero.Notebooks;
using UnitsNet;

namespace FlapAero.Handouts.Tests;

/// <summary>
/// A picture that moves, in a page and in a notebook's outputs: each step is that value's drawing, at once.
/// </summary>
[Collection<TestsOfMovingPages>]
[Trait("Speed", "slow")]
public sealed class MovingPictureTests(MovingPages pages, Browser browser)
{
    private const string Figure = "document.querySelector('figure.picture')";

    private static MovingPicture Nose
    {
        get
        {
            Aeroplane aeroplane = DemoAeroplanes.TrainerH4;
            Air air = Quillmere.Monday.Air;
            PilotsView See(string name, FlapSetting flaps, double times) => PilotsView.OnPath(
                name, aeroplane.Configure(flaps), aeroplane.Configure(flaps).ReferenceSpeed(air, times),
                Angle.FromDegrees(3), Length.FromFeet(1000));
            return MovingPicture.Of(
                Axis.Of("speed over the stall", "V/V_S"), Samples.Between(1.1, 1.5, 0.1), 1.3,
                times => Pictures.ViewOverTheNose(
                    "The view", Quillmere.Runway24,
                    See("flaps up", aeroplane.FlapsUp, times), See("full flap", aeroplane.FullFlaps, times)));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Control_ByKeyboard_MakesEachValuesDrawingWithinAFrame(bool inANotebook)
    {
        MovingPicture nose = Nose;
        string start = Lesson.Begin().ToHtml();
        // A page's figures are there before the script; a notebook's come later.
        string[] outputs = inANotebook ? [start, nose.ToNotebookHtml()] : [nose.ToHtml(), start];
        await using Tab tab = await browser.OpenAsync(pages.Outputs("", outputs), 1280);
        await tab.Page.WaitForFunctionAsync("() => document.querySelector('.picture .plot-control:not([hidden])')");
        await tab.Page.FocusAsync(".picture .plot-control input");

        foreach (
            (string key, int value) in ((string, int)[])[("End", 4), ("ArrowLeft", 3), ("Home", 0), ("ArrowRight", 1)])
        {
            await tab.Page.Keyboard.PressAsync(key);

            string drawn =
                await tab.AskAsync<string>(
                    $"new XMLSerializer().serializeToString({Figure}.querySelector('.plot-drawing svg'))");
            Assert.Equal(XElement.Parse(nose.Frames[value].ToSvg()).ToString(), XElement.Parse(drawn).ToString());
            Assert.Equal(
                nose.Frames[value].FindingText,
                await tab.AskAsync<string>($"{Figure}.querySelector('.plot-finding').textContent"));
            Assert.Equal(
                nose.Frames[value].FindingText,
                await tab.AskAsync<string>($"{Figure}.querySelector('.plot-drawing').getAttribute('aria-label')"));
        }
        // What a step itself takes, a hundred of them, drawn by the browser included; a frame is 16 ms.
        double step = await tab.AskAsync<double>($$"""
            (() => {
              const input = {{Figure}}.querySelector('input'), begin = performance.now();
              for (let i = 0; i < 100; i++) {
                input.value = i % 5;
                input.dispatchEvent(new Event('input'));
                {{Figure}}.querySelector('svg').getBoundingClientRect();
              }
              return (performance.now() - begin) / 100;
            })()
            """);
        Assert.InRange(step, 0, 16);
        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Page_PrintedAfterMoving_ShowsTheStartAndHowFarItMoves()
    {
        MovingPicture nose = Nose;
        await using Tab tab = await browser.OpenAsync(pages.Outputs("", nose.ToHtml(), Lesson.Begin().ToHtml()), 1280);
        await tab.Page.WaitForFunctionAsync("() => document.querySelector('.picture .plot-control:not([hidden])')");
        await tab.Page.FocusAsync(".picture .plot-control input");
        await tab.Page.Keyboard.PressAsync("End");
        Assert.Equal(0, await tab.AskAsync<int>($"{Figure}.querySelector('.plot-range').getClientRects().length"));

        await tab.Page.EmulateMediaTypeAsync(PuppeteerSharp.Media.MediaType.Print);

        await tab.Page.WaitForFunctionAsync(
            "finding => document.querySelector('figure.picture .plot-drawing').getAttribute('aria-label') === finding",
            nose.Frames[2].FindingText);
        Assert.True(await tab.AskAsync<int>($"{Figure}.querySelector('.plot-range').getClientRects().length") > 0);
        Assert.Equal(0, await tab.AskAsync<int>($"{Figure}.querySelector('.plot-control').getClientRects().length"));
    }
}
