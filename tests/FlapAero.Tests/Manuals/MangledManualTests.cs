using System.Globalization;
using System.Text.Json.Nodes;
using FlapAero.Tests.Aeroplanes;

namespace FlapAero.Tests.Manuals;

/// <summary>
/// However a manual's file is mangled, it is refused clearly or fitted: no other exception, no NaN, no aeroplane that cannot be read. 150 in
/// the suite; <c>MangledManuals=10000</c> for more.
/// </summary>
public sealed class MangledManualTests(ITestOutputHelper output)
{
    private static int Count { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("MangledManuals"), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : 150;

    private const string Stray = "{}[],:\"0-. \\\u0000";

    private static string[] Keys { get; } = [.. AeroplaneText.Keys(ManualText.Good())];

    private static string[] Values { get; } =
    [
        "null", "true", "\"\"", "\"x\"", "-1", "0", "1", "1e300", "1e999", "[]", "{}", "[{}]", "\"0 kt\"", "\"1e5 ft\"", "\"-40 C\"", "\"99999999999999999999 ft\"",
        "\"60 KIAS\"", "\"110 KCAS\"", "\"20 mph IAS\"", "\"2 ft\"", "\"8000 ft\"", "\"500 m\"", "\"1200 kg\"", "\"1200 lb\"", "\"2700 rpm\"", "\"1200 rpm\"", "\"0 deg\"", "\"59 deg\"",
        "9.5", "3.0", "39", "\"up\"", "\"35°\"", "\"grass\"", "\"ice\"", "\"stopped\"", "\"none\"", "\"3000 ft/min\"", "\"10 ft/min\"", "\"1000 hp\"", "\"20 hp\"",
    ];

    [Fact]
    public void Fit_MangledManuals_AreRefusedClearlyOrFitted()
    {
        (int refused, int unmade, int fitted) = (0, 0, 0);
        var watch = System.Diagnostics.Stopwatch.StartNew();
        double longest = 0;
        for (int seed = 0; seed < Count; seed++)
        {
            string text = Mangled(seed);
            double begun = watch.Elapsed.TotalSeconds;
            try
            {
                Outcome<ManualFit> outcome = ManualFit.Of(Manual.Parse(text, "m.json"));
                if (!outcome.Happened)
                {
                    Assert.False(string.IsNullOrWhiteSpace(outcome.Explanation));
                    unmade++;
                    continue;
                }

                ManualFit fit = outcome.Value;
                Assert.All(fit.Values, value => Assert.True(double.IsFinite(value.Value), value.Name));
                Assert.All(fit.Values, value => Assert.True(double.IsFinite(value.StandardError), value.Name));
                Assert.DoesNotContain("NaN", fit.Json, StringComparison.Ordinal);
                AeroplaneFile.Parse(fit.Json, "fitted.json");
                fitted++;
            }
            catch (AeroplaneFileException clear)
            {
                Assert.All(clear.Faults, fault => Assert.False(string.IsNullOrWhiteSpace(fault.Expected)));
                refused++;
            }
            catch (Exception e) when (e is not Xunit.Sdk.IAssertionException)
            {
                Assert.Fail($"Seed {seed}: {e.GetType().Name}: {e.Message} {e.StackTrace}");
            }

            longest = Math.Max(longest, watch.Elapsed.TotalSeconds - begun);
        }

        output.WriteLine($"{Count}: {refused} refused, {unmade} make no aeroplane, {fitted} fitted; the longest took {longest:0.0} s");
        Assert.True(refused > 0.1 * Count);
        Assert.True(fitted > 0.05 * Count);
    }

    private static string Mangled(int seed)
    {
        var random = new Random(seed);
        if (random.Next(4) == 0)
        {
            string broken = ManualText.Example;
            int at = random.Next(broken.Length);
            return random.Next(3) switch
            {
                0 => broken[..at],
                1 => broken.Remove(at, Math.Min(random.Next(1, 40), broken.Length - at)),
                _ => broken.Insert(at, Stray[random.Next(Stray.Length)].ToString()),
            };
        }

        JsonNode root = ManualText.Good();
        string[] places = [.. Enumerable.Range(0, random.Next(1, 5)).Select(_ => Keys[random.Next(Keys.Length)]).Distinct().OrderByDescending(key => key.Length)];
        foreach (string place in places)
        {
            switch (random.Next(4))
            {
                case 0: root.Remove(place); break;
                case 1: root.Set(place, Values[random.Next(Values.Length)]); break;
                case 2 when root.At(place) is JsonValue value: root.Set(place, Swapped((string?)value.ToString() ?? "", random)); break;
                default: root.Set(place, root.At(Keys[random.Next(Keys.Length)] is var other && other.StartsWith("stall", StringComparison.Ordinal) ? other : place).ToJsonString()); break;
            }
        }

        return AeroplaneText.Written(root);
    }

    /// <summary>Another unit, or a number that is a little or far off.</summary>
    private static string Swapped(string text, Random random)
    {
        string[] parts = text.Split(' ', 2);
        if (!double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double number)) return $"\"{text}x\"";
        string unit = parts.Length < 2 ? "" : random.Next(2) == 0 ? parts[1] : ((string[])["kg", "lb", "ft", "m", "KIAS", "KCAS", "kt", "C", "F", "rpm", "ft/min", "ft2", "m2"])[random.Next(13)];
        double changed = number * ((double[])[1, 0.5, 0.9, 1.02, 1.1, 2, 10])[random.Next(7)];
        string digits = changed.ToString("0.##", CultureInfo.InvariantCulture);
        return parts.Length < 2 ? digits : $"\"{digits} {unit}\"";
    }
}
