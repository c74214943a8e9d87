using System.Globalization;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>The computed lines of docs/handbook-rules.md, by the name of their block.</summary>
internal static class HandbookBlocks
{
    private static readonly RuleLandings Full = RuleLandings.H4Full;
    private static readonly RuleLandings Up = RuleLandings.H4Up;
    private static readonly Practice WithFlaps = new(Full);
    private static readonly Practice Without = new(Up);

    public static IReadOnlyDictionary<string, string[]> All { get; } = new Dictionary<string, string[]>
    {
        ["landings"] = [.. LandingTable()],
        ["rules"] = [.. RuleTable()],
        ["speed"] = [.. SpeedLines()],
        ["wind"] = [.. WindLines()],
        ["weight"] = [.. WeightLines()],
        ["flaps"] = [.. FlapTable()],
        ["drag"] = [.. DragTable()],
        ["drag-worth"] = [.. DragLines()],
        ["practice"] = [.. PracticeLines()],
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Percent(double percent) => percent.ToString("+0' %';−0' %';0' %'", CultureInfo.InvariantCulture);

    private static string Exact(double percent) => percent.ToString("+0.0' %';−0.0' %';0.0' %'", CultureInfo.InvariantCulture);

    private static string Metres(double metres) => Text($"{metres:0} m ({Length.FromMeters(metres).Feet:0} ft)");

    private static double Knots(double metersPerSecond) => Speed.FromMetersPerSecond(metersPerSecond).Knots;

    private static IEnumerable<string> LandingTable()
    {
        yield return "| landing | at 50 ft | touchdown | sink there | 50 ft to touchdown | roll | 50 ft to the stop |";
        yield return "|---|---|---|---|---|---|---|";
        foreach (RuleLandings landings in RuleLandings.All)
        {
            WholeLanding landing = landings.Canonical;
            double sink = Speed.FromMetersPerSecond(landing.Outcome.TouchdownSink).FeetPerMinute;
            yield return Text(
                $"| {landings} | {Knots(landing.Input.ThresholdSpeed):0.0} kt | {Knots(landing.TouchdownSpeed):0.0} kt | {sink:0} ft/min | {Metres(landing.Air)} | {Metres(landing.Roll)} | {Metres(landing.Total)} |");
        }
    }

    private static IEnumerable<string> RuleTable()
    {
        yield return "| change | handbook | full flaps: 50 ft to touchdown | roll | in all | flaps up: 50 ft to touchdown | roll | in all |";
        yield return "|---|---|---|---|---|---|---|---|";
        yield return Row("10 % more speed at the threshold", "at least +21 %", landings => landings.TenPercentFaster);
        yield return Row("headwind, 10 % of the threshold speed", "−19 %", landings => landings.Headwind);
        yield return Row("tailwind, 10 % of the threshold speed", "+21 %", landings => landings.Tailwind);
        yield return Row("10 % more weight, and the speed that goes with it", "+10 %", landings => landings.TenPercentHeavier);
        yield return Row("1 000 ft of density altitude", "+3.5 %", landings => landings.HigherBy(Length.FromFeet(1000)));
        yield return Row("5 000 ft of density altitude", "+17.5 %", landings => landings.HigherBy(Length.FromFeet(5000)));

        static string Row(string change, string rule, Func<RuleLandings, RuleLandings.Change> computed)
        {
            RuleLandings.Change full = computed(Full), up = computed(Up);
            return $"| {change} | {rule} | {Exact(full.Air)} | {Exact(full.Roll)} | {Exact(full.Total)} | {Exact(up.Air)} | {Exact(up.Roll)} | {Exact(up.Total)} |";
        }
    }

    private static IEnumerable<string> SpeedLines()
    {
        foreach ((RuleLandings landings, Practice practice) in new[] { (Full, WithFlaps), (Up, Without) })
        {
            RuleLandings.Change held = landings.TenPercentFaster;
            RuleLandings.Change carried = RuleLandings.From(landings.Canonical, practice.TenPercentFasterTouchdown);
            yield return Text(
                $"- {landings}: held off, {Percent(held.Air)} in the air and {Percent(held.Roll)} on the roll. Put down 10 % faster instead, {Percent(carried.Air)} in the air and {Percent(carried.Roll)} on the roll: {Percent(carried.Total)} in all.");
        }
    }

    private static IEnumerable<string> WindLines()
    {
        foreach (RuleLandings landings in new[] { Full, Up })
        {
            double share = 10 * landings.Canonical.Input.ThresholdSpeed / landings.Canonical.TouchdownSpeed;
            yield return Text(
                $"- {landings}: a headwind of 10 % of the threshold speed is {share:0.0} % of the touchdown speed and shortens the roll by {-landings.Headwind.Roll:0.0} %; one of 10 % of the touchdown speed, by {-landings.HeadwindOfTheTouchdown.Roll:0.0} %.");
        }
    }

    private static IEnumerable<string> WeightLines()
    {
        yield return Text($"- To the round-out the aeroplane has {Full.Canonical.Outcome.FlareStartDistance:0} of its {Full.Canonical.Air:0} m in the air behind it with full flaps, and {Up.Canonical.Outcome.FlareStartDistance:0} of {Up.Canonical.Air:0} m without.");
        yield return $"- 10 % heavier at the same airspeed: {Percent(Full.TenPercentHeavierAtTheSameSpeed.Air)} in the air, {Percent(Full.TenPercentHeavierAtTheSameSpeed.Roll)} on the roll with full flaps; {Percent(Up.TenPercentHeavierAtTheSameSpeed.Air)} and {Percent(Up.TenPercentHeavierAtTheSameSpeed.Roll)} without.";
    }

    private static IEnumerable<string> FlapTable()
    {
        yield return "| landing without flaps against | 50 ft to touchdown | roll | in all |";
        yield return "|---|---|---|---|";
        foreach ((string name, FlapsFailed failed) in new[] { ("H4", FlapsFailed.H4), ("L2", FlapsFailed.L2) })
        {
            yield return Row($"{name}, full flaps", failed.AgainstFull);
            yield return Row($"{name}, flaps that add full flaps' lift and no drag", failed.AgainstLiftWithoutDrag);
            yield return Row($"{name}, flaps that add full flaps' drag and no lift", failed.AgainstDragWithoutLift);
            yield return Row($"{name}, the setting before full", failed.AgainstTheSettingBefore);
            yield return $"| {name}, by the square of the threshold speeds | | | {Percent(failed.SquareOfTheSpeeds)} |";
        }

        static string Row(string name, RuleLandings.Change change) =>
            $"| {name} | {Percent(change.Air)} | {Percent(change.Roll)} | {Percent(change.Total)} |";
    }

    private static IEnumerable<string> DragTable()
    {
        yield return "| share of the touchdown speed | nose up: slowing | of it drag | nose down, braking: slowing | nose up: slowing | of it drag | nose down, braking: slowing |";
        yield return "|---|---|---|---|---|---|---|";
        foreach (double share in new[] { 1, 0.9, 0.8, 0.7, 0.6, 0.5 })
            yield return $"| {Text($"{share:0 %}")} | {Columns(WithFlaps, share)} | {Columns(Without, share)} |";

        static string Columns(Practice practice, double share) => Text(
            $"{practice.SlowingNoseHigh(share):0.000} g | {practice.DragShareOfTheSlowing(share):0 %} | {practice.SlowingBraked(share):0.000} g");
    }

    private static IEnumerable<string> DragLines()
    {
        yield return Text($"- Of the energy at touchdown drag takes {WithFlaps.DragShareOfTheStop:0 %} with full flaps and {Without.DragShareOfTheStop:0 %} without; wheels and idling propeller take the rest.");
        yield return Text($"- At {Practice.LimitOfDrag:0 %} of the touchdown speed the raised nose is worth a braking friction of {WithFlaps.FrictionThatDragIsWorth(Practice.LimitOfDrag):0.00} with full flaps and {Without.FrictionThatDragIsWorth(Practice.LimitOfDrag):0.00} without; at the touchdown, {WithFlaps.FrictionThatDragIsWorth(1):0.00} and {Without.FrictionThatDragIsWorth(1):0.00}.");
    }

    private static IEnumerable<string> PracticeLines()
    {
        yield return Text($"- Ten knots too fast at the threshold: {Metres(WithFlaps.TenKnotsFast.Total - Full.Canonical.Total)} more with full flaps, {Metres(Without.TenKnotsFast.Total - Up.Canonical.Total)} more without.");
        yield return Text($"- The touchdown moves by 400 ft for {WithFlaps.KnotsForTheTolerance:0.0} kt too many at the threshold with full flaps, and for {Without.KnotsForTheTolerance:0.0} kt without.");
        yield return Text($"- Five knots too slow: without flaps {Metres(Up.Canonical.Total - Without.FiveKnotsSlow.Total)} less. With full flaps and the throttle closing across the threshold it cannot be rounded out (`{WithFlaps.FiveKnotsSlow.Outcome.Refusal.Reason()}`); with the power kept to the round-out it can.");
        yield return Text($"- Power kept to the round-out instead of closed across the threshold: {Metres(WithFlaps.PowerKeptToTheRoundOut.Total - Full.Canonical.Total)} more with full flaps, {Metres(Without.PowerKeptToTheRoundOut.Total - Up.Canonical.Total)} more without.");
        yield return Text($"- The touchdown is in the first third of a runway of {Metres(WithFlaps.RunwayOfThreeTimesTheAir)} or more with full flaps, and of {Metres(Without.RunwayOfThreeTimesTheAir)} or more without.");
        yield return Text($"- Nose wheel held off to {DemoLandings.NoseLowerSpeedFraction:0 %} of the touchdown speed, against lowered at once: where no brakes are used it saves {WithFlaps.NoseHighSavesWithoutBrakes:0} m with full flaps and {Without.NoseHighSavesWithoutBrakes:0} m without; where the brakes would have been on at once, on a dry runway, it costs {WithFlaps.NoseHighCostsWithBrakes:0} m and {Without.NoseHighCostsWithBrakes:0} m.");
        yield return Text($"- Ten knots too fast and forced on at {Practice.ForcedOnFraction:0 %} of C_Lmax instead of held off: with the nose down the wing still carries {Practice.LiftWithTheNoseDown(WithFlaps.ForcedOn):0 %} of the weight with full flaps and {Practice.LiftWithTheNoseDown(Without.ForcedOn):0 %} without, against {Practice.LiftWithTheNoseDown(Full.Canonical):0 %} and {Practice.LiftWithTheNoseDown(Up.Canonical):0 %} after the canonical touchdown. Any nose-up change of attitude and it flies again: it will bounce, and a point mass cannot say how high.");
    }
}
