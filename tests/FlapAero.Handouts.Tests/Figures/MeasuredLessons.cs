using System.Text.Json;
using PuppeteerSharp;

namespace FlapAero.Handouts.Tests.Figures;

/// <summary>
/// Every lesson's page looked at once in each size: a phone of 320 and of 390 pixels, a laptop, paper's still drawings,
/// and each screen of a projector of 720 and of 1080 lines. One page load a lesson; the window is resized.
/// </summary>
public sealed class MeasuredLessons(Browser browser, LessonPages pages) : IAsyncLifetime
{
    /// <summary>What was found of each lesson in each size.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Measured>> Lessons { get; private set; } = new Dictionary<string, IReadOnlyList<Measured>>();

    public async ValueTask InitializeAsync()
    {
        string measure = await ScriptAsync("measure.js"), grey = await ScriptAsync("measure-grey.js");
        var lessons = new SortedDictionary<string, IReadOnlyList<Measured>>(StringComparer.Ordinal);
        await using Tab tab = await browser.OpenAsync("about:blank", 1280);
        foreach (string page in await pages.OfInstructorAsync())
        {
            await tab.Page.SetViewportAsync(new ViewPortOptions { Width = 1280, Height = 720 });
            await tab.Page.GoToAsync(new Uri(page).AbsoluteUri);
            await tab.AskAsync<JsonElement?>(grey);
            await tab.AskAsync<JsonElement?>(measure);
            lessons.Add(Path.GetFileName(page).Split('.')[0], await MeasureAsync(tab));
        }
        Lessons = lessons;
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    private static async Task<string> ScriptAsync(string name)
    {
        using var script = new StreamReader(typeof(MeasuredLessons).Assembly.GetManifestResourceStream(name)!);
        return await script.ReadToEndAsync(TestContext.Current.CancellationToken);
    }

    private static async Task<IReadOnlyList<Measured>> MeasureAsync(Tab tab)
    {
        var found = new List<Measured>();
        async Task AtAsync(int width, int height, string what)
        {
            await tab.Page.SetViewportAsync(new ViewPortOptions { Width = width, Height = height });
            string json = await tab.AskAsync<string>($"{what}.then(JSON.stringify)");
            found.Add(JsonSerializer.Deserialize<Measured>(json, JsonSerializerOptions.Web)!);
        }
        await AtAsync(1280, 720, "flapaero.ofPage('1280 px')");
        await AtAsync(390, 844, "flapaero.ofPage('390 px')");
        await AtAsync(320, 640, "flapaero.ofPage('320 px')");
        await AtAsync(1280, 720, "flapaero.ofStill()");
        await tab.AskAsync<JsonElement?>("(document.getElementById('project').click(), null)");
        await AtAsync(1280, 720, "flapaero.ofScreens('1280 by 720')");
        await AtAsync(1920, 1080, "flapaero.ofScreens('1920 by 1080')");
        return found;
    }
}

/// <summary>What was found of a lesson's page in one size.</summary>
/// <param name="Figures">The figures that were seen.</param>
/// <param name="Looked">How many drawings were measured: a figure that moves at both ends of its control.</param>
/// <param name="Screens">The screens of a projected lesson.</param>
/// <param name="Labels">Labels on labels, and labels that leave their figure.</param>
/// <param name="Lines">Lines too thin or too thick for their letters.</param>
/// <param name="Grey">Lines that look alike without their colours, and labels that could be another line's.</param>
/// <param name="Empty">Screens without anything but a heading.</param>
/// <param name="Covered">What lies under a bar.</param>
/// <param name="Tall">Screens that are seen whole only by scrolling.</param>
public sealed record Measured(
    string[] Figures, int Looked, int Screens, string[] Labels, string[] Lines, string[] Grey, string[] Empty,
    string[] Covered, string[] Tall);
