using System.Globalization;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>The computed tables of docs/handbook-rules.md, by the name of their block.</summary>
internal static class HandbookBlocks
{
    private static readonly RuleLandings Full = RuleLandings.H4Full;
    private static readonly RuleLandings Up = RuleLandings.H4Up;

    public static IReadOnlyDictionary<string, string[]> All { get; } = new Dictionary<string, string[]>
    {
        ["landings"] = [.. Landings()],
        ["rules"] = [.. Rules()],
        ["speed"] =
        [
            .. Header,
            Row("held off: in the air", landings => Percent(landings.TenPercentFaster.Air)),
            Row("held off: roll", landings => Percent(landings.TenPercentFaster.Roll)),
            Row("held off: in all", landings => Percent(landings.TenPercentFaster.Total)),
            Row("put down 10 % faster: in the air", landings => Percent(PutDown(landings).Air)),
            Row("put down 10 % faster: roll", landings => Percent(PutDown(landings).Roll)),
            Row("put down 10 % faster: in all", landings => Percent(PutDown(landings).Total)),
        ],
        ["wind"] =
        [
            .. Header,
            Row("10 % of the threshold speed, of the touchdown speed", landings => Text(
                $"{10 * landings.Canonical.Input.ThresholdSpeed / landings.Canonical.TouchdownSpeed:0.0} %")),
            Row("roll, headwind of 10 % of the threshold speed", landings => Exact(landings.Headwind.Roll)),
            Row("roll, headwind of 10 % of the touchdown speed", landings => Exact(landings.HeadwindOfTheTouchdown.Roll)),
        ],
        ["weight"] =
        [
            .. Header,
            Row("50 ft to touchdown", landings => Metres(landings.Canonical.Air)),
            Row("of it, 50 ft to the round-out", landings => Metres(landings.Canonical.Outcome.FlareStartDistance)),
            Row("10 % heavier at the same airspeed: in the air", landings => Percent(landings.TenPercentHeavierAtTheSameSpeed.Air)),
            Row("10 % heavier at the same airspeed: roll", landings => Percent(landings.TenPercentHeavierAtTheSameSpeed.Roll)),
        ],
        ["flaps"] = [.. FlapsFailedTable()],
        ["pilots"] = [.. Pilots()],
        ["drag"] = [.. Drag()],
        ["drag-worth"] =
        [
            .. Header,
            Row("share of the energy at touchdown that drag takes", (_, practice) => Share(practice.DragShareOfTheStop)),
            Row("braking friction that the raised nose is worth, at touchdown", (_, practice) => Friction(practice, 1)),
            Row("the same at 65 % of the touchdown speed", (_, practice) => Friction(practice, Practice.LimitOfDrag)),
        ],
        ["practice"] =
        [
            .. Header,
            Row("10 kt too fast at the threshold", (landings, practice) => Longer(landings, practice.TenKnotsFast)),
            Row("5 kt too slow", (landings, practice) => Longer(landings, practice.FiveKnotsSlow)),
            Row(
                "throttle closing from the threshold on",
                (landings, practice) => Longer(landings, practice.ThrottleClosedFromTheThreshold)),
            Row("the same, 5 kt too slow", (landings, practice) => Longer(landings, practice.FiveKnotsSlowThrottleClosed)),
            Row("knots too many that move the touchdown by 400 ft", (_, practice) => Text($"{practice.KnotsForTheTolerance:0.0} kt")),
            Row("shortest runway with the touchdown in its first third", (_, practice) => Metres(practice.RunwayOfThreeTimesTheAir)),
            Row("the same, threshold crossed at 30 ft", (_, practice) => Metres(3 * practice.ThirtyFeetOverTheThreshold.Air)),
            Row(
                "nose held off, no brakes, down to half the touchdown speed: saves",
                (_, practice) => Metres(practice.NoseHighSavesWithoutBrakes)),
            Row("nose held off, brakes could be on at once: costs", (_, practice) => Metres(practice.NoseHighCostsWithBrakes)),
            Row("weight on the wing, nose down after touchdown", landings => Share(Practice.LiftWithTheNoseDown(landings.Canonical))),
            Row("the same, 10 kt too fast and forced on", (_, practice) => Share(Practice.LiftWithTheNoseDown(practice.ForcedOn))),
        ],
    };

    private static LandingPilot Late => LandingPilot.Usual with { TouchdownLiftFraction = 0.9 };

    private static string[] Header => ["| Trainer H4 | full flaps | flaps up |", "|---|---|---|"];

    private static string Row(string name, Func<RuleLandings, string> value) => $"| {name} | {value(Full)} | {value(Up)} |";

    private static string Row(string name, Func<RuleLandings, Practice, string> value) =>
        Row(name, landings => value(landings, new Practice(landings)));

    private static RuleLandings.Change PutDown(RuleLandings landings) =>
        RuleLandings.From(landings.Canonical, new Practice(landings).TenPercentFasterTouchdown);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Percent(double percent) => percent.ToString("+0' %';−0' %';0' %'", CultureInfo.InvariantCulture);

    private static string Exact(double percent) => percent.ToString("+0.0' %';−0.0' %';0.0' %'", CultureInfo.InvariantCulture);

    private static string Share(double share) => Text($"{100 * share:0} %");

    private static string Friction(Practice practice, double share) => Text($"{practice.FrictionThatDragIsWorth(share):0.00}");

    private static string Metres(double metres) => Text($"{metres:0} m ({Length.FromMeters(metres).Feet:0} ft)");

    private static string Longer(RuleLandings landings, WholeLanding changed)
    {
        if (!changed.Happens)
            return $"`{changed.Outcome.Refusal.Reason()}`";
        double metres = changed.Total - landings.Canonical.Total;
        return (metres < 0 ? "−" : "+") + Metres(Math.Abs(metres));
    }

    private static double Knots(double metersPerSecond) => Speed.FromMetersPerSecond(metersPerSecond).Knots;

    private static IEnumerable<string> Landings()
    {
        yield return "| landing | at 50 ft | touchdown | sink there | 50 ft to touchdown | roll | 50 ft to the stop |";
        yield return "|---|---|---|---|---|---|---|";
        foreach (RuleLandings landings in RuleLandings.All)
        {
            WholeLanding landing = landings.Canonical;
            double sink = Speed.FromMetersPerSecond(landing.Outcome.TouchdownSink).FeetPerMinute;
            string speeds = Text($"{Knots(landing.Input.ThresholdSpeed):0.0} kt | {Knots(landing.TouchdownSpeed):0.0} kt | {sink:0} ft/min");
            yield return $"| {landings} | {speeds} | {Metres(landing.Air)} | {Metres(landing.Roll)} | {Metres(landing.Total)} |";
        }
    }

    private static IEnumerable<string> Rules()
    {
        yield return "| change | handbook | full flaps: 50 ft to touchdown | roll | in all | flaps up: 50 ft to touchdown | roll | in all |";
        yield return "|---|---|---|---|---|---|---|---|";
        yield return Rule("10 % more speed at the threshold", "at least +21 %", landings => landings.TenPercentFaster);
        yield return Rule("headwind, 10 % of the threshold speed", "−19 %", landings => landings.Headwind);
        yield return Rule("tailwind, 10 % of the threshold speed", "+21 %", landings => landings.Tailwind);
        yield return Rule("10 % more weight, and the speed that goes with it", "+10 %", landings => landings.TenPercentHeavier);
        yield return Rule("1 000 ft of density altitude", "+3.5 %", landings => landings.HigherBy(Length.FromFeet(1000)));
        yield return Rule("5 000 ft of density altitude", "+17.5 %", landings => landings.HigherBy(Length.FromFeet(5000)));

        static string Rule(string change, string rule, Func<RuleLandings, RuleLandings.Change> computed) =>
            $"| {change} | {rule} | {Three(computed(Full), Exact)} | {Three(computed(Up), Exact)} |";
    }

    private static string Three(RuleLandings.Change change, Func<double, string> text) =>
        $"{text(change.Air)} | {text(change.Roll)} | {text(change.Total)}";

    private static IEnumerable<string> FlapsFailedTable()
    {
        yield return "| landing without flaps against | 50 ft to touchdown | roll | in all |";
        yield return "|---|---|---|---|";
        foreach ((string name, FlapsFailed failed) in new[] { ("H4", FlapsFailed.H4), ("L2", FlapsFailed.L2) })
        {
            yield return $"| {name}, full flaps | {Three(failed.AgainstFull, Percent)} |";
            yield return $"| {name}, flaps that add full flaps' lift and no drag | {Three(failed.AgainstLiftWithoutDrag, Percent)} |";
            yield return $"| {name}, flaps that add full flaps' drag and no lift | {Three(failed.AgainstDragWithoutLift, Percent)} |";
            yield return $"| {name}, the setting before full | {Three(failed.AgainstTheSettingBefore, Percent)} |";
            yield return $"| {name}, by the square of the threshold speeds | | | {Percent(failed.SquareOfTheSpeeds)} |";
        }
    }

    private static IEnumerable<string> Pilots()
    {
        LandingPilot closing = LandingPilot.ThrottleClosedFromThreshold;
        LandingPilot lateAndClosing = closing with { PowerCutTime = Duration.FromSeconds(7), TouchdownLiftFraction = 0.9 };
        (string Name, Func<Aeroplane, FlapsFailed> Land)[] pilots =
        [
            ("the usual one", aeroplane => new(aeroplane)),
            ("crosses the threshold at 30 ft",
                aeroplane => new(aeroplane, LandingPilot.Usual with { ThresholdHeight = Length.FromFeet(30) })),
            ("holds off to 90 % of C_Lmax", aeroplane => new(aeroplane, Late)),
            ("the same, no tail in the way", aeroplane => new(aeroplane, Late, tail: false)),
            ("closes the throttle from the threshold on", aeroplane => new(aeroplane, closing)),
            ("the same without flaps only", aeroplane => new(aeroplane, withoutFlaps: closing)),
            ("closes it from there over 7 s, holds off to 90 % of C_Lmax, no tail in the way",
                aeroplane => new(aeroplane, lateAndClosing, tail: false)),
        ];
        yield return "| pilot | aeroplane | full flaps: touchdown, stop | flaps up: touchdown, stop | flaps up, in all |";
        yield return "|---|---|---|---|---|";
        foreach ((string name, Func<Aeroplane, FlapsFailed> land) in pilots)
        {
            foreach ((string aeroplane, FlapsFailed failed) in new[]
            {
                ("H4", land(DemoAeroplanes.TrainerH4)), ("L2", land(DemoAeroplanes.TrainerL2)),
            })
            {
                string more = failed.Full.Happens && failed.Up.Happens ? Percent(failed.AgainstFull.Total) : "none";
                yield return $"| {name} | {aeroplane} | {TouchdownAndStop(failed.Full)} | {TouchdownAndStop(failed.Up)} | {more} |";
            }
        }
    }

    private static string TouchdownAndStop(WholeLanding landing) => landing.Happens
        ? Text($"{Length.FromMeters(landing.Air).Feet:0} ft, {Length.FromMeters(landing.Total).Feet:0} ft")
        : $"`{landing.Outcome.Refusal.Reason()}`";

    private static IEnumerable<string> Drag()
    {
        const string Columns = "nose up: slowing | drag, of what holds back | nose down, braking: slowing";
        yield return $"| share of the touchdown speed | {Columns} | {Columns} |";
        yield return "|---|---|---|---|---|---|---|";
        foreach (double share in new[] { 1, 0.9, 0.8, 0.7, 0.6, 0.5 })
            yield return $"| {Share(share)} | {Slowing(new(Full), share)} | {Slowing(new(Up), share)} |";

        static string Slowing(Practice practice, double share) => Text(
            $"{practice.SlowingNoseHigh(share):0.000} g | {Share(practice.DragShareOfTheSlowing(share))} | {practice.SlowingBraked(share):0.000} g");
    }
}
