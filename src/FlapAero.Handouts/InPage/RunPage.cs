using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using FlapAero.Charts;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.InPage;

/// <summary>A student's notebook as a page in which its cells can be written and run.</summary>
internal static class RunPage
{
    private const string HintStart = "<details><summary>", HintNamed = "</summary>", HintEnd = "</details>";

    private const string Bar = """
        <section class="facts" aria-label="How the cells run"><p>The cells run in this page, with nothing installed and nothing sent anywhere. A cell can compute and show; it can read no file of yours
        and ask no network. Shift and Enter run the cell that you write in; Ctrl and the space bar tell which names can stand where you write, and
        what they mean.</p></section>
        <section class="facts engine" aria-label="Running the cells">
        <p class="press"><button type="button" data-do="all">Run all</button> <button type="button" data-do="stop" disabled>Stop</button>
        <button type="button" data-do="again">Start again</button> <button type="button" data-do="save">Save as a notebook</button>
        <button type="button" data-do="open">Open a saved notebook</button> <button type="button" data-do="back" hidden>Bring back what was here</button>
        <input type="file" accept=".ipynb" aria-label="A saved notebook" hidden></p>
        <p role="status" class="engine-state">Press Run: the engine comes with the first cell, which takes some seconds.</p>
        </section>

        """;

    private const string Style = """
        <style>
        .run-code textarea { width: 100%; box-sizing: border-box; font-family: ui-monospace, monospace; font-size: .9rem; line-height: 1.45; white-space: pre; overflow-x: auto; color: inherit; background: var(--paper); border: 1px solid var(--line); }
        .run-code { margin: 1rem 0; border-left: 3px solid var(--blue); padding-left: .75rem; }
        .run-code .failure { white-space: pre-wrap; border-left: 3px solid var(--vermillion); padding-left: .75rem; }
        .run-code pre { white-space: pre-wrap; }
        .names { display: grid; grid-template-columns: minmax(12rem, 1fr) 2fr; gap: .75rem; border: 1px solid var(--line); padding: .5rem; }
        .names ul { list-style: none; margin: 0; padding: 0; max-height: 12rem; overflow-y: auto; font-family: ui-monospace, monospace; font-size: .9rem; }
        .names li { padding: .3rem .4rem; cursor: pointer; }
        .names li small { float: right; font-family: inherit; }
        .names li[aria-selected=true] { outline: 2px solid var(--blue); outline-offset: -2px; font-weight: bold; }
        .names p { margin: 0 0 .3rem; white-space: pre-wrap; overflow-wrap: anywhere; }
        @media (max-width: 40rem) { .names { grid-template-columns: 1fr; } .names ul { max-height: 9rem; } }
        .engine { position: sticky; top: 0; background: var(--paper); z-index: 2; padding: .25rem 0; }
        .engine p { margin: .25rem 0; }
        .engine button, .run-code button { font: inherit; font-size: 1rem; padding: .3rem .7rem; margin: 0 .2rem .3rem 0; }
        @media print { .engine, .run-code button { display: none; } }
        </style>

        """;

    /// <summary>What a lesson's page for students says of the page in which its cells run: the way there, or how it is made.</summary>
    public static string WayThere(string stem, bool isMade) => isMade
        ? $"""
            <aside class="facts runs-here" aria-label="Running the cells"><p><a href="{EngineFolder.Name}/{stem}.html">Run this lesson here</a>: its cells run in a page, with nothing
            installed and nothing sent anywhere; the folder <code>{EngineFolder.Name}</code> must lie beside this page.</p>
            {WhatIfPage.WayThere("puts two landings side by side, with everything to be moved.").Trim()}</aside>

            """
        : """
            <aside class="facts runs-here" aria-label="Running the cells"><p>Cells run in no page here; whoever makes these pages adds such pages with <code>handouts --engine</code>.</p></aside>

            """;

    /// <summary>The page of a student's notebook.</summary>
    public static string Of(string stem, string notebook, Paper paper, SchoolMarks? school = null)
    {
        JsonObject root = JsonNode.Parse(notebook)!.AsObject();
        JsonObject about = root["metadata"]!["flapaero"]!.AsObject();
        string title = about["title"]!.GetValue<string>();
        string lesson = string.Create(CultureInfo.InvariantCulture, $"Lesson {about["lesson"]!.GetValue<int>()}");
        var main = new StringBuilder();
        foreach (JsonObject cell in root["cells"]!.AsArray().Select(c => c!.AsObject()))
            main.Append(cell["cell_type"]!.GetValue<string>() == "code" ? Code(cell) : Prose(Source(cell)));
        main.Append("<script type=\"application/json\" id=\"notebook\">").Append(HtmlText.InScript(root.ToJsonString())).Append("</script>\n");
        string header = $"""
            <p class="course"><a href="../index.html">FlapAero</a> · <a href="../{stem}.html">{lesson}</a></p>
            <h1>{HtmlText.Escape(title)}</h1>
            <p class="facts">The cells of the student's notebook, to be run in this page</p>
            """;
        return PageShell.ToHtml(new PageFrame($"{lesson}: {title} (runs here)", "student", "Skip to the cells", header, TryIt.Kept + Bar, Style + main)
        {
            KeptAs = "run " + stem,
            Beside = ["figures.js", "temml.js", "engine.js", "names.js", "run.js"],
            Paper = paper,
            School = school,
        });
    }

    private static string Code(JsonObject cell)
    {
        string id = HtmlText.Escape("code-" + cell["id"]!.GetValue<string>()), source = Source(cell);
        string title = HtmlText.Escape(cell["metadata"]!["flapaero"]!["title"]!.GetValue<string>());
        bool isLocked = cell["metadata"]!["editable"]?.GetValue<bool>() == false;
        return string.Create(CultureInfo.InvariantCulture, $"""
            <section class="run-code" aria-label="{title}" data-cell="{HtmlText.Escape(cell["id"]!.GetValue<string>())}">
            <label for="{id}">{title}</label>
            <textarea id="{id}" rows="{source.Split('\n').Length + 1}" spellcheck="false" autocapitalize="off" autocomplete="off"{(isLocked ? " readonly" : "")}>
            {HtmlText.Escape(source)}</textarea>
            <p class="press"><button type="button" data-do="run">Run<span class="apart">: {title}</span></button>{(isLocked ? "" : Written(title))}</p>
            <div class="output" aria-live="polite"></div>
            </section>

            """);
    }

    /// <summary>What only a cell has that can be written.</summary>
    private static string Written(string title) => $"""
         <button type="button" data-do="reset">As it was<span class="apart">: {title}</span></button> <button type="button" data-do="names">Names<span class="apart"> for {title}</span></button>
        """;

    /// <summary>The one element in a student's prose is a hint's fold.</summary>
    private static string Prose(string source)
    {
        var html = new StringBuilder();
        string[] parts = source.Split(HintStart);
        html.Append(LessonMarkdown.ToHtml(parts[0]).Replace("<h1>", "<h2>", StringComparison.Ordinal).Replace("</h1>", "</h2>", StringComparison.Ordinal));
        foreach (string hint in parts.Skip(1))
        {
            int name = hint.IndexOf(HintNamed, StringComparison.Ordinal), end = hint.IndexOf(HintEnd, StringComparison.Ordinal);
            html.Append("<details class=\"hint\"><summary>").Append(HtmlText.Escape(hint[..name])).Append("</summary>")
                .Append(LessonMarkdown.ToHtml(hint[(name + HintNamed.Length)..end])).Append("</details>")
                .Append(LessonMarkdown.ToHtml(hint[(end + HintEnd.Length)..]));
        }
        return html.ToString();
    }

    private static string Source(JsonObject cell) => cell["source"] is JsonArray lines
        ? string.Concat(lines.Select(line => line!.GetValue<string>())) : cell["source"]!.GetValue<string>();
}
