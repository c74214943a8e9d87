namespace FlapAero.Tests.Manuals;

/// <summary>The example: Trainer H4's manual gives Trainer H4 back.</summary>
public sealed class ManualFitTests
{
    [Fact]
    public void Scratch()
    {
        string json = ManualMaker.Of(DemoAeroplanes.TrainerH4, new());
        File.WriteAllText("/tmp/wt/h4manual.json", json);
        Manual manual = Manual.Parse(json, "m");
        ManualFit.Of(manual);
        var watch = System.Diagnostics.Stopwatch.StartNew();
        ManualFit fit = ManualFit.Of(manual).Value;
        long ms = watch.ElapsedMilliseconds;
        File.WriteAllText("/tmp/wt/h4fit.json", fit.Json);
        File.WriteAllLines("/tmp/wt/h4fit.txt", [$"{ms} ms", .. fit.Values.Select(v => $"{v} {v.Standing} {v.From}"), .. fit.Numbers.Select(n => $"{n} given {n.Given:0.##} {n.IsReached} x{n.Enlarged:0.#}"), .. fit.Uses.Select(u => $"{u} {u.Why}")]);
    }
}
