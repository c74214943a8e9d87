using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using FlapAero.Charts;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts.InPage;

/// <summary>The page that asks "what if": two flap settings on one day, side by side, with every input of the landing to be moved.</summary>
internal static class WhatIfPage
{
    /// <summary>Its file in the folder <see cref="EngineFolder.Name"/>.</summary>
    public const string FileName = "what-if.html";

    private const string Header = """
        <p class="course"><a href="../index.html">FlapAero</a></p>
        <h1>What if?</h1>
        <p class="lead">One aeroplane, one day, two flap settings. Move one thing, and see what it does to both landings.</p>
        """;

    private const string Landing = """
        <section class="landing" aria-labelledby="both">
        <h2 id="both">Both landings</h2>
        <p class="engine-state" role="status">The model is coming. It needs a browser that runs scripts, and the file runtime.js beside this page.</p>
        <div class="put-aside" hidden></div>
        <div class="refusal" hidden></div>
        <form class="guess" hidden></form>
        <div class="can-be-stale">
        <p class="changed"></p>
        <figure class="both"><div class="plot-drawing" role="img" aria-label="Nothing is drawn yet."></div>
        <figcaption>Landing to the right, lengths to scale. <span class="raised"></span>
        The thin bar is the roll with the nose up, the thick bar the roll with the brakes on.</figcaption></figure>
        </div>
        <p class="apart" role="status" id="said"></p>
        </section>

        """;

    private const string More = """
        <section class="more" aria-label="More of both landings">
        <div class="can-be-stale">
        <h2>In words</h2>
        <ul class="verdicts"></ul>
        <h2>In numbers</h2>
        <div class="scroll numbers-of-both"></div>
        </div>
        <p class="press"><button type="button" data-do="csv">Save the numbers as CSV</button> <button type="button" data-do="print">Print</button></p>
        <h2>In pictures</h2>
        <div class="pictures can-be-stale"></div>
        <h2>Where 300 landings touch</h2>
        <p>A pilot does not hit every number: here ±5 kt, ±10 ft, a wind that varies, and a round-out, a power cut and brakes that are not a machine's.
        All of these are invented.</p>
        <p class="press"><button type="button" data-do="spread">Draw 300 landings</button> <button type="button" data-do="cancel" hidden>Stop drawing</button>
        <label class="drawing" hidden>Drawn <progress max="300" value="0"></progress> <output></output></label></p>
        <div class="spread"></div>
        </section>

        """;

    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.Default };

    /// <summary>Where the in-page lessons are linked, this page is linked as well.</summary>
    public static string WayThere(string words) => $"<p class=\"what-if\"><a href=\"{EngineFolder.Name}/{FileName}\">What if?</a> {words}</p>\n";

    /// <summary>The page.</summary>
    /// <param name="paper">The paper that it asks for.</param>
    /// <param name="school">Where its controls begin, and its marks; none where it is nobody's.</param>
    public static string Of(Paper paper, SchoolMarks? school = null)
    {
        var start = WhatIfStart.Of(school);
        string main = $"<style>\n{Assets.WhatIfStyle.Trim()}\n</style>\n{Landing}{Setting(start)}{More}"
            + $"<script type=\"application/json\" id=\"what-if\">{HtmlText.InScript(Data(start))}</script>\n";
        return PageShell.ToHtml(new PageFrame("What if? Two landings side by side", "what-if", "Skip to both landings", Header, "", main)
        {
            Beside = ["engine.js", "what-if.js"],
            Paper = paper,
            School = school,
        });
    }

    private static string Setting(WhatIfStart start) => $"""
        <section class="setting" aria-labelledby="the-setting">
        <h2 id="the-setting">The setting</h2>
        {(start.Words.Length == 0 ? "" : $"<p class=\"begins\">{HtmlText.Escape(start.Words)}</p>")}
        <p class="press"><button type="button" data-do="base">Keep this as the base case</button> <button type="button" data-do="drop" hidden>Drop the base case</button>
        <button type="button" data-do="usual">As at first</button></p>
        <p class="press"><label>Units <select id="units"><option value="aviation">kt, ft</option><option value="si">m/s, m</option></select></label>
        <label><input type="checkbox" id="predict"> Predict first</label></p>
        <fieldset><legend>Aeroplane</legend>
        {Choice("aeroplane", "Aeroplane", DemoAeroplanes.All.Select(a => (a.Name, a.Name)))}
        <div class="field one"><label for="file">Or its file; it can be dropped here</label><input type="file" id="file" accept=".json,application/json"></div>
        {Choice("first", "First: flaps", [])}{Choice("second", "Second: flaps", [])}{Fields(start, "mass")}</fieldset>
        <fieldset><legend>Day</legend>
        {Fields(start, "altitude", "temperature", "along", "across", "gust")}</fieldset>
        <fieldset><legend>Approach</legend>
        {Fields(start, "speed", "path", "height")}
        {Field("aim", "Aiming point past the threshold", "m", 60, 900, 1, 249, "With the path it sets the height over the threshold.")}
        {Fields(start, "round")}<div class="field one"><label><input type="checkbox" id="cutsWithRoundOut" checked> The throttle closes with the round-out</label></div>{Fields(start, "cut")}</fieldset>
        <fieldset><legend>Runway</legend>
        {Choice("surface", "Surface", RunwaySurface.All.Select(s => (WhatIfStart.KeyOf(s), s.Name)))}{Fields(start, "slope", "braking", "length", "displaced")}</fieldset>
        <fieldset><legend>Rules</legend>
        {Fields(start, "multipleUp", "multiplePart", "multipleFull", "gustShare", "gustMost", "margin")}</fieldset>
        </section>

        """;

    private static string Fields(WhatIfStart start, params IEnumerable<string> keys) => string.Concat(keys.Select(key => WhatIfField.Of(key))
        .Select(f => Field(f.Key, f.Label, f.Unit, f.Least, f.Most, f.Step, start[f], f.Help)));

    private static string Field(string key, string label, string unit, double least, double most, double step, double usual, string help) =>
        string.Create(CultureInfo.InvariantCulture, $"""
            <div class="field" data-field="{key}"><label for="{key}">{HtmlText.Escape(label)}</label>
            <span class="typed-in"><input type="text" inputmode="decimal" autocomplete="off" id="{key}" value="{usual}" aria-describedby="{key}-help"> <span class="unit">{unit}</span></span>
            <input type="range" id="{key}-slider" aria-label="{HtmlText.Escape(label)}, slider" min="{least}" max="{most}" step="{step}" value="{usual}">
            <p class="help" id="{key}-help">{HtmlText.Escape(help)}</p></div>

            """);

    private static string Choice(string key, string label, IEnumerable<(string Value, string Words)> options) =>
        $"<div class=\"field one\"><label for=\"{key}\">{label}</label><select id=\"{key}\">"
        + string.Concat(options.Select(o => $"<option value=\"{HtmlText.Escape(o.Value)}\">{HtmlText.Escape(o.Words)}</option>")) + "</select></div>\n";

    /// <summary>What the page's script needs to know before the model answers.</summary>
    private static string Data(WhatIfStart start)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Plain))
        {
            json.WriteStartObject();
            json.WriteString("surface", start.Surface);
            json.WriteString("units", start.IsSi ? "si" : "aviation");
            Write(json, "fields", WhatIfField.All, f =>
            {
                json.WriteString("key", f.Key);
                json.WriteString("label", f.Label);
                json.WriteString("unit", f.Unit);
                json.WriteNumber("least", f.Least);
                json.WriteNumber("most", f.Most);
                json.WriteNumber("step", f.Step);
                json.WriteNumber("usual", start[f]);
            });
            Write(json, "rows", WhatIfRow.All, r =>
            {
                json.WriteString("key", r.Key);
                json.WriteString("label", r.Label);
                json.WriteString("unit", r.Unit);
                json.WriteNumber("digits", r.Digits);
                json.WriteString("part", r.Part);
            });
            Write(json, "aeroplanes", DemoAeroplanes.All, a => WhatIf.Describe(json, a));
            Write(json, "styles", Palette.Styles, s =>
            {
                json.WriteString("line", s.Line);
                json.WriteString("text", s.Text);
                json.WriteString("dash", s.Dash);
            });
            Write(json, "pictures", WhatIf.PictureNames, name => json.WriteString("name", name));
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static void Write<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
