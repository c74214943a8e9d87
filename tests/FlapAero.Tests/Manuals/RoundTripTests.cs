using System.Globalization;
using FlapAero.Manuals;

namespace FlapAero.Tests.Manuals;

/// <summary>
/// Manuals made from random aeroplanes, rounded as manuals are, give the aeroplanes back, with honest errors. 12 aeroplanes in the suite;
/// <c>RoundTripAeroplanes=200</c> for more.
/// </summary>
public sealed class RoundTripTests(ITestOutputHelper output)
{
    private static int Count { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("RoundTripAeroplanes"), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : 12;

    [Fact]
    public void Fit_ManualsOfRandomAeroplanes_GiveThemBackWithHonestErrors()
    {
        List<(string Name, FitStanding Standing, double Off)> all = [];
        int reached = 0, numbers = 0;
        for (int seed = 1; seed <= Count; seed++)
        {
            RandomAeroplane aeroplane = RandomAeroplane.Of(seed);
            ManualFit fit = ManualFit.Of(Manual.Parse(aeroplane.Printed, $"{seed}.json")).Value;
            IReadOnlyList<Derived> values = Derived.Values(Manual.Parse(aeroplane.Printed, $"{seed}.json").Content);
            all.AddRange(values.Zip(fit.Values, (derived, fitted) =>
                (Kind(fitted.Name), fitted.Standing, (fitted.Value - derived.Of(aeroplane.Truth)) / fitted.StandardError)));
            reached += fit.Numbers.Count(number => number.IsReached);
            numbers += fit.Numbers.Count;
        }

        foreach (IGrouping<string, (string Name, FitStanding Standing, double Off)> kind in all.GroupBy(value => value.Name))
            output.WriteLine($"{kind.Key}: {Share(kind, 1):0.00} within one, {Share(kind, 3):0.000} within three of {kind.Count()}, fitted {kind.Count(v => v.Standing == FitStanding.Fitted)}, weakly {kind.Count(v => v.Standing == FitStanding.WeaklyFitted)}");
        (string, FitStanding, double)[] determined = [.. all.Where(value => value.Standing != FitStanding.Assumed)];
        output.WriteLine($"determined: {Share(determined, 1):0.000} within one, {Share(determined, 3):0.0000} within three of {determined.Length}; all {Share(all, 1):0.000}, {Share(all, 3):0.0000} of {all.Count}; numbers within rounding {reached} of {numbers}");

        Assert.True(determined.Length > 9 * Count);
        Assert.True(Share(determined, 3) >= 0.95);
        Assert.InRange(Share(determined, 1), 0.58, 0.78);
        Assert.True(Share(all, 3) >= 0.95);
        Assert.True(reached > 0.97 * numbers);
    }

    private static string Kind(string name) => name.Contains(", flaps", StringComparison.Ordinal) ? name[..name.IndexOf(", flaps", StringComparison.Ordinal)] : name;

    private static double Share(IEnumerable<(string Name, FitStanding Standing, double Off)> values, double errors)
    {
        double[] off = [.. values.Select(value => Math.Abs(value.Off))];
        return (double)off.Count(value => value <= errors) / off.Length;
    }
}
