using System.Globalization;
using System.Text.Json;
using FlapAero.Handouts.Tests;
using UnitsNet;

namespace FlapAero.Explorer.Tests;

/// <summary>The what-if page from a disk, without a network: live, faithful, and never blank or frozen.</summary>
public sealed class WhatIfPageTests(MadeEngine made, Browser browser, Firefox firefox)
{
    private const string Rested = "document.documentElement.dataset.whatIf === 'rested'";
    private const string IsWhole = "document.querySelectorAll('.both svg [data-part=path]').length === 2 && document.querySelectorAll('.numbers-of-both td').length > 20";

    [Fact]
    public async Task Page_FromADisk_ShowsBothLandingsAsTheLibraryHasThem()
    {
        await using Tab tab = await OpenAsync();

        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests, request => Assert.Matches("^(file|blob|data):", request));
        Assert.Equal(4, await tab.AskAsync<int>("document.querySelectorAll('.pictures figure svg').length"));
        double stop = Landing.Fly(DemoLandings.TrainerH4FlapsUp).Value.StopDistance.Feet;
        Assert.Equal(Math.Round(stop), await NumberAsync(tab, "Stop"));
        Assert.Contains("Never fly by its numbers", await tab.AskAsync<string>("document.querySelector('.caution').textContent"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_InFirefox_IsLiveAndTakesAStep()
    {
        await using FirefoxTab tab = await firefox.OpenAsync(made.Page("what-if"), 1280);
        for (int i = 0; i < 3000 && !await tab.AskAsync<bool>(Rested); i++)
            await Task.Delay(100, TestContext.Current.CancellationToken);

        await tab.DoAsync("const s = document.getElementById('along-slider'); s.value = 9; s.dispatchEvent(new Event('input', { bubbles: true }))");
        for (int i = 0; i < 600 && !await tab.AskAsync<bool>("location.hash.includes('along=9')"); i++)
            await Task.Delay(100, TestContext.Current.CancellationToken);

        Assert.True(await tab.AskAsync<bool>($"location.hash.includes('along=9') && {IsWhole}"));
        Assert.Contains("Wind along the runway", await tab.AskAsync<string>("document.querySelector('.changed').textContent"), StringComparison.Ordinal);
        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests, request => Assert.Matches("^(file|blob|data):", request));
    }

    [Fact]
    public async Task Slider_MovedByKeys_SaysWhatChangedAndKeepsItInTheAddress()
    {
        await using Tab tab = await OpenAsync();

        await tab.Page.FocusAsync("#along-slider");
        for (int i = 0; i < 10; i++) await tab.Page.Keyboard.PressAsync("ArrowRight");
        await tab.UntilAsync("location.hash.includes('along=10')");

        Assert.Contains("Wind along the runway", await tab.AskAsync<string>("document.querySelector('.changed').textContent"), StringComparison.Ordinal);
        LandingSetup landing = DemoLandings.TrainerH4FlapsUp with { Headwind = Speed.FromKnots(10) };
        Assert.Equal(Math.Round(Landing.Fly(landing).Value.StopDistance.Feet), await NumberAsync(tab, "Stop"));
        await tab.Page.ReloadAsync();
        await tab.UntilAsync(Rested);
        Assert.Equal("10", await tab.AskAsync<string>("document.getElementById('along').value"));
    }

    [Fact]
    public async Task Setting_ThatCannotLand_KeepsThePictureGreyedSaysWhyAndRecovers()
    {
        await using Tab tab = await OpenAsync();

        await TypeAsync(tab, "path", "7.8");
        await tab.UntilAsync("document.querySelectorAll('.refusal .helps button').length > 0");

        Assert.True(await tab.AskAsync<bool>("document.querySelector('.landing .can-be-stale').classList.contains('is-stale') && " + IsWhole));
        await tab.AskAsync<JsonElement?>("(document.querySelector('.refusal .helps button').click(), null)");
        await tab.UntilAsync("document.querySelector('.refusal').hidden && !document.querySelector('.is-stale')");
        await TypeAsync(tab, "along", "ten or so");
        await tab.UntilAsync("document.querySelector('[data-field=along] .fault') !== null");
        Assert.Equal("ten or so", await tab.AskAsync<string>("document.getElementById('along').value"));
    }

    [Fact]
    public async Task Sliders_AThousandRandomMoves_LeaveAWholePageThatStillAnswers()
    {
        await using Tab tab = await OpenAsync();

        await tab.AskAsync<JsonElement?>("""
            (async () => {
              let seed = 5;
              const next = () => (seed = seed * 48271 % 2147483647) / 2147483647;
              const sliders = [...document.querySelectorAll('.setting input[type=range]')];
              for (let i = 0; i < 1000; i++) {
                const one = sliders[Math.floor(next() * sliders.length)];
                one.value = Number(one.min) + next() * (one.max - one.min);
                one.dispatchEvent(new Event('input', { bubbles: true }));
                if (i % 10 === 0) await new Promise((then) => setTimeout(then, 5));
              }
              document.querySelector('[data-do=usual]').click();
            })()
            """);
        // What is whole may still be the answer before the last: the page is asked until it shows the last.
        string stop = Math.Round(Landing.Fly(DemoLandings.TrainerH4FlapsUp).Value.StopDistance.Feet).ToString(CultureInfo.InvariantCulture);
        await tab.UntilAsync($"document.querySelector('.refusal').hidden && !document.querySelector('.is-stale') && {IsWhole} && "
            + $"[...document.querySelectorAll('.numbers-of-both tr')].find(r => r.cells[0].textContent === 'Stop').cells[1].textContent.replace(/[^0-9]/g, '') === '{stop}'");

        Assert.Empty(tab.Complaints);
    }

    [Fact]
    public async Task Address_FiveHundredMangled_GiveAWholePageAndASentence()
    {
        await using Tab tab = await OpenAsync();

        int blank = await tab.AskAsync<int>($$"""
            (async () => {
              let seed = 11, blank = 0;
              const next = () => (seed = seed * 48271 % 2147483647) / 2147483647;
              const parts = ['along=', 'mass=', 'first=', 'surface=', 'base=', 'units=', '9e999', '%', '%E0%A4', '&', '=', '-', 'NaN', '<b>', 'aeroplane=', '__proto__=1', 'constructor=', '12', 'path=99', ' '];
              for (let i = 0; i < 500; i++) {
                location.hash = Array.from({ length: 1 + Math.floor(next() * 8) }, () => parts[Math.floor(next() * parts.length)]).join('');
                if (i % 20 === 0) await new Promise((then) => setTimeout(then, 20));
                if (!({{IsWhole}})) blank++;
              }
              location.hash = 'path=99&along=5';
              return blank;
            })()
            """);
        await tab.UntilAsync("document.querySelector('.put-aside').textContent.includes('99') && document.getElementById('along').value === '5' && !document.querySelector('.is-stale')");

        Assert.Equal(0, blank);
        Assert.Empty(tab.Complaints);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("no JSON at all")]
    [InlineData("{\"name\": \"x\", \"wing\": []}")]
    public async Task File_ThatMakesNoAeroplane_IsRefusedWithReasons(string text)
    {
        await using Tab tab = await OpenAsync();

        await tab.Page.EvaluateFunctionAsync("""
            text => {
              const data = new DataTransfer();
              data.items.add(new File([text], 'bad.json'));
              dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
            }
            """, text);
        await tab.UntilAsync("document.querySelector('.put-aside').textContent.includes('bad.json')");

        Assert.True(await tab.AskAsync<bool>("document.querySelectorAll('.put-aside p').length > 1 && " + IsWhole));
    }

    [Fact]
    public async Task Spread_ThreeHundred_CanBeStoppedAndIsCounted()
    {
        await using Tab tab = await OpenAsync();
        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=spread]').click(), null)");
        await tab.UntilAsync("document.querySelector('.drawing progress').value >= 12");
        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=cancel]').click(), null)");
        Assert.True(await tab.AskAsync<bool>("document.querySelector('.drawing').hidden"));

        await tab.AskAsync<JsonElement?>("(document.querySelector('[data-do=spread]').click(), null)");
        await tab.UntilAsync("document.querySelector('.spread').textContent.includes('of 300 landings')");
    }

    [Theory]
    [InlineData(320)]
    [InlineData(1920)]
    public async Task Page_AtAnyWidth_ScrollsOnlyDown(int width)
    {
        await using Tab tab = await OpenAsync(width);

        Assert.True(await tab.AskAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    private async Task<Tab> OpenAsync(int width = 1280)
    {
        Tab tab = await browser.OpenAsync(made.Page("what-if"), width);
        await tab.UntilAsync(Rested);
        return tab;
    }

    private static Task TypeAsync(Tab tab, string field, string text) => tab.Page.EvaluateFunctionAsync("""
        (field, text) => {
          const input = document.getElementById(field);
          input.value = text;
          input.dispatchEvent(new Event('input', { bubbles: true }));
        }
        """, field, text);

    /// <summary>A number of the first configuration, by its row.</summary>
    private static async Task<double> NumberAsync(Tab tab, string row)
    {
        string text = await tab.AskAsync<string>($"[...document.querySelectorAll('.numbers-of-both tr')].find(r => r.cells[0].textContent === '{row}').cells[1].textContent");
        return double.Parse(string.Concat(text.Where(c => char.IsDigit(c) || c == '.')), CultureInfo.InvariantCulture);
    }
}
