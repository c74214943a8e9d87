using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using FlapAero.Handouts.Kernels;
using FlapAero.Tests;

namespace FlapAero.Lessons.Tests;

/// <summary>Run once for all tests: a lesson begun with an aeroplane whose flaps have one setting only: a demo aeroplane's file without the others.</summary>
internal static class OneFlapSetting
{
    private static readonly ConcurrentDictionary<string, Lazy<Task<IReadOnlyDictionary<string, CellResult>>>> Runs = new();

    public static Task<IReadOnlyDictionary<string, CellResult>> RunAsync(string slug) => Runs.GetOrAdd(slug, s => new(() => RunOnceAsync(s))).Value;

    private static async Task<IReadOnlyDictionary<string, CellResult>> RunOnceAsync(string slug)
    {
        JsonNode file = JsonNode.Parse(await File.ReadAllTextAsync(RepositoryRoot.Path("data/aeroplanes/trainer-l2.json"), TestContext.Current.CancellationToken))!;
        JsonArray settings = file["flapSettings"]!.AsArray();
        while (settings.Count > 1) settings.RemoveAt(1);
        string aeroplane = $"aeroplane: AeroplaneFile.Parse(\"\"\"\n{file.ToJsonString()}\n\"\"\", \"one.json\")";
        return await LessonCopies.RunAsync(LessonCopies.Named(slug), cell => LessonCopies.Begun(cell, aeroplane));
    }
}
