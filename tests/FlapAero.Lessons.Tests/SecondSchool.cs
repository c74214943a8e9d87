using System.Collections.Concurrent;
using System.Net;
using System.Text.RegularExpressions;
using FlapAero.Handouts;
using FlapAero.Handouts.Kernels;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Pages;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>Every lesson at an invented school whose rules are not the usual ones, run once; and what students read of it.</summary>
internal static partial class SecondSchool
{
    /// <summary>Multiples of 1.4, 15° of bank, one metric runway at 4 000 ft, and other numbers wherever a rule has one.</summary>
    public const string Json = """
        {
          "name": "Highmoor Flying Club",
          "units": "aviation-kg",
          "aerodromes": [
            { "name": "Highmoor", "station": "XQHM", "elevation": "4000 ft",
              "runways": [ { "name": "17", "heading": "172 deg", "length": "1100 m", "surface": "asphalt" } ] }
          ],
          "rules": {
            "referenceMultiples": { "flapsUp": 1.4, "partFlaps": 1.4, "fullFlaps": 1.4 },
            "bankLimit": "15 deg",
            "stableHeight": "400 ft",
            "thresholdHeight": "12 m",
            "gusts": { "share": 0.6 },
            "margin": { "factor": 1.5, "origin": "the club's flying order" },
            "headwindShare": 0.4,
            "tolerances": { "fast": "8 kt", "slow": "4 kt" }
          }
        }
        """;

    private static readonly ConcurrentDictionary<string, Lazy<Task<RanLesson>>> Runs = new();

    /// <summary>A lesson as handouts run it for the school: a check that does not pass with the notebook's answer has failed the run.</summary>
    public static Task<RanLesson> RunAsync(string slug) => Runs.GetOrAdd(slug, _ => new(() => LessonRunner.RunAsync(
        LessonCopies.Named(slug), new LessonInput(1, 1, null, DisplayUnits.AviationKilograms, new SchoolFileText("school.json", Json)),
        () => new InteractiveKernel(), (_, _) => { }, TestContext.Current.CancellationToken))).Value;

    /// <summary>What a student reads: page, sheet, and the key that comes with the sheet; what the sources cite is left out.</summary>
    public static string ReadBy(RanLesson lesson, Mathematics mathematics)
    {
        var editions = new HashSet<Edition> { Edition.Student, Edition.Sheets, Edition.Key };
        return string.Join('\n', LessonArtefacts.Of(lesson, mathematics, new ArtefactChoice(editions)).Select(artefact => Text(artefact.Content)));
    }

    private static string Text(string page)
    {
        int sources = page.IndexOf("<h2 id=\"sources\"", StringComparison.Ordinal);
        string body = sources < 0 ? page : page[..sources];
        return Space().Replace(WebUtility.HtmlDecode(Tag().Replace(Unread().Replace(body, " "), " ")), " ");
    }

    [GeneratedRegex("<(script|style)\\b.*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex Unread();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("\\s+")]
    private static partial Regex Space();
}
