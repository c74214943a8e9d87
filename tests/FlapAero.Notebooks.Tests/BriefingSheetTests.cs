using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public sealed class BriefingSheetTests
{
    private static readonly BriefingSheet Demo = BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value);

    [Fact]
    public void ToString_DemoFlight_SaysThatItDoesNotFitWithItsNumbers()
    {
        string text = Demo.ToString();
        Assert.StartsWith("LANDING WITHOUT FLAPS: BRIEFING\n", text, StringComparison.Ordinal);
        string plain = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(">> DO NOT LAND HERE WITHOUT FLAPS. By the rule for short dry grass on firm ground it stops 910 m after passing 50 ft", plain, StringComparison.Ordinal);
        Assert.Contains("The manual decides.", plain, StringComparison.Ordinal);
        Assert.Contains("headwind 10 kt, crosswind 6 kt from the left, 10 kt in gusts; limit 15 kt (the aeroplane's file)", plain, StringComparison.Ordinal);
        Assert.Contains("67 kt to 82 kt", plain, StringComparison.Ordinal);
        Assert.Contains("Aeroplane  Trainer H4, 1 050 kg (2 315 lb)", text, StringComparison.Ordinal);
        Assert.Contains("Instructor ____", text, StringComparison.Ordinal);
        Assert.Contains("Signature ____", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 100));
        Assert.DoesNotContain(QuantityText.NoBreakSpace, text);
    }

    [Theory]
    [InlineData(700, "Do not land here without flaps. By the rule for short dry grass on firm ground it stops 910 m after passing 50 ft")]
    [InlineData(920, "Do not land here without flaps. By the rule for short dry grass on firm ground it is 910 m from 50 ft to the stop, 1 300 m with the margin;")]
    [InlineData(1300, "As briefed, this ends in a go-around. The distance fits (1 300 m with the margin, the runway has 1 300 m), but the wheels touch at 540 m, past the first third, which ends at 430 m, and aiming as low as 30 ft over the threshold does not help. What would help, each alone: a runway of 1 320 m (4 340 ft);")]
    [InlineData(1350, "Fits, by this model. It is 1 140 m with the margin, the runway has 1 350 m; the wheels touch at 440 m, within the first third, which ends at 450 m. Aim 150 m past the threshold, 30 ft over it, not 50 ft. The manual decides.")]
    [InlineData(1700, "Fits, by this model. It is 1 300 m with the margin, the runway has 1 700 m; the wheels touch at 540 m, within the first third, which ends at 560 m. Aim 250 m past the threshold, 50 ft over it. The manual decides.")]
    public void ToHtml_RunwayLength_DecidesTheVerdict(double metres, string verdict)
    {
        IElement said = Html.Parse(On(metres).ToHtml()).QuerySelector(".verdict")!;
        Assert.StartsWith(verdict, Plain(said.TextContent), StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_DemoFlight_RoundsAgainstThePilotAndAddsUp()
    {
        IHtmlDocument page = Html.Parse(Demo.ToHtml());
        string[] Row(string table, string head) => [.. page.QuerySelectorAll($".{table} tbody tr").Single(r => Plain(r.Children[0].TextContent).StartsWith(head, StringComparison.Ordinal)).Children.Skip(1).Select(c => Plain(c.TextContent))];

        // 52.28 and 67.97 kt CAS are printed as 53 and 68; the needle's 45.1 and 71.5 as 46 and 72.
        Assert.Equal(["46", "53", "68", "72", "150", "____"], Row("speeds", "up"));
        Assert.Equal(["85", "2 050", "1 000", "1 450"], Row("circuit-up", "At circuit height"));
        Assert.Equal(["35°", "60", "1 810", "350", "800"], Row("circuit-flaps", "Final"));
        Assert.Equal(["900", "2 950", "900", "2 950", "____"], Row("landings", "Runway"));
        Assert.Equal(["−400", "−1 310", "0", "0", "____"], Row("landings", "Left over"));
        // 1.15 times what it is on dry asphalt, and not the model's on the grass, which is less.
        Assert.Equal(["810", "2 650", "560", "1 840", "____"], Row("landings", "To the stop"));
        Assert.Equal(["910", "2 990", "630", "2 060", "____"], Row("landings", "By the rule, × 1.15"));
        Assert.Equal(["910", "2 990", "630", "2 060", "____"], Row("landings", "Counted"));
        Assert.Equal(["1 300", "4 260", "900", "2 950", "____"], Row("landings", "Margin"));
    }

    [Fact]
    public void ToHtml_EveryWordOfIt_IsInTheTextAsWell()
    {
        string text = string.Concat(Demo.ToString().Where(char.IsLetterOrDigit)).ToUpperInvariant();
        foreach (IElement piece in Html.Parse(Demo.ToHtml()).QuerySelectorAll("dt, dd b, td, th, li, caption, .failure p, .assumed p"))
            Assert.Contains(string.Concat(piece.TextContent.Where(char.IsLetterOrDigit)).ToUpperInvariant(), text, StringComparison.Ordinal);
    }

    [Theory, InlineData(1), InlineData(3)]
    public void ToHtmlFragment_HeadingLevel_SkipsNone(int level)
    {
        IHtmlDocument page = Html.Parse(Demo.ToHtmlFragment(level));
        int[] levels = [.. page.QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.LocalName[1] - '0')];
        Assert.Equal(level, levels[0]);
        Assert.All(levels[1..], other => Assert.Equal(level + 1, other));
        Assert.Contains(BriefingSheet.Caution, page.QuerySelector(".sheet-caution")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(page.QuerySelectorAll("[style], script, img"));
        Assert.Throws<RefusedInputException>(() => Demo.ToHtmlFragment(6));
    }

    [Fact]
    public void Sheet_OtherCulture_HasTheSameBytes()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            BriefingSheet german = BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value);
            Assert.Equal(Demo.ToHtml(), german.ToHtml());
            Assert.Equal(Demo.ToString(), german.ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void ToString_AnyAeroplane_SaysThatPowerStaysOnToTheRoundOut()
    {
        BriefingRequest demo = DemoBriefings.Flight;
        BriefingRequest light = new(demo.Aeroplane, Mass.FromKilograms(700), demo.Runway, demo.Air, new(new Wind(Angle.Zero, Speed.Zero)), hand: CircuitHand.Right);
        string text = BriefingSheet.Of(Briefing.For(light).Value).ToString().ReplaceLineEndings(" ");
        Assert.Contains("power kept to the round-out, then closed over 4 s", text, StringComparison.Ordinal);
        Assert.Contains("right-hand", text, StringComparison.Ordinal);
        Assert.Contains("calm: no headwind, no crosswind", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Crosswind: “", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(15.0, 30, "Do not land here in this wind. The crosswind is 30 kt in the gusts; the limit is 15 kt (the aeroplane's file).", "does-not-fit")]
    [InlineData(15.0, 12, "Fits, by this model.", "fits")]
    [InlineData(null, 12, "No verdict without a crosswind limit. The crosswind is 12 kt in the gusts; the aeroplane's file gives no limit.", "undecided")]
    [InlineData(null, 0, "Fits, by this model.", "fits")]
    public void ToHtml_PureCrosswind_ComesBeforeFits(double? limit, double gust, string verdict, string part)
    {
        IElement said = Html.Parse(Across(limit, gust, own: null).ToHtml()).QuerySelector(".verdict")!;
        Assert.StartsWith(verdict, Plain(said.TextContent), StringComparison.Ordinal);
        Assert.Contains(part, said.ParentElement!.ClassList);
    }

    [Fact]
    public void ToHtml_InstructorsOwnLimit_DecidesAndIsNamed()
    {
        IHtmlDocument page = Html.Parse(Across(limit: null, 12, own: 12).ToHtml());
        Assert.StartsWith("Fits, by this model.", Plain(page.QuerySelector(".verdict")!.TextContent), StringComparison.Ordinal);
        Assert.Contains("limit 12 kt (the instructor's or the school's own)", Plain(page.QuerySelector(".flight")!.TextContent), StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_NoComparison_SaysWhyAndBriefsTheFlight()
    {
        BriefingRequest demo = DemoBriefings.Flight;
        BriefingSheet gusty = BriefingSheet.Of(Briefing.For(new(
            demo.Aeroplane, demo.Mass, demo.Runway, demo.Air, new(new Wind(Angle.FromDegrees(240), Speed.FromKnots(10)), Speed.FromKnots(70)))).Value);
        IHtmlDocument page = Html.Parse(gusty.ToHtml());
        Assert.Contains("Speeds with flaps 35°: calibrated airspeed", page.QuerySelector(".circuit-flaps p")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["–", "–", "____"], page.QuerySelectorAll(".landings tbody tr")[4].Children.Skip(3).Select(cell => cell.TextContent));
        Assert.Equal(3, page.QuerySelectorAll(".speeds tbody tr").Length);
        Assert.Contains("NO CIRCUIT WITH FLAPS TO COMPARE", gusty.ToString(), StringComparison.Ordinal);
    }

    // What must not be flown has no large type, and no gate that its own numbers fail.
    [Theory, InlineData(900, false), InlineData(1700, true)]
    public void ToHtml_RunwayLength_DecidesWhatStandsInLargeType(double metres, bool large)
    {
        IHtmlDocument page = Html.Parse(On(metres).ToHtml());
        Assert.Equal(large, page.QuerySelectorAll(".glance b").Length > 0);
        string gates = Plain(page.QuerySelector(".gates")!.TextContent), glance = Plain(page.QuerySelector(".glance")!.TextContent);
        Assert.Contains("72 kt", glance, StringComparison.Ordinal);
        Assert.Equal(large, glance.Contains("Wheels down by", StringComparison.Ordinal));
        Assert.Equal(large, gates.Contains("the wheels are not down by 560 m (1 850 ft) (first third; expected at 540 m)", StringComparison.Ordinal));
        Assert.Equal(!large, gates.Contains("always, on this runway", StringComparison.Ordinal));
    }

    [Fact]
    public void ToHtml_GoAroundAndCrosswind_SayWhatTheyCost()
    {
        string plain = Plain(Html.Parse(Demo.ToHtml()).Body!.TextContent);
        GoAround goAround = Demo.Briefing.GoAround.Value;
        Assert.InRange(goAround.RateOfClimb.FeetPerMinute, 550, 750);
        Assert.Contains(FormattableString.Invariant($"then climbs about {10 * Math.Floor(goAround.RateOfClimb.FeetPerMinute / 10):0} ft/min here; the manual: ____."), plain, StringComparison.Ordinal);
        Assert.Matches(@"The crab is \d+°; taken off at the round-out, wings level, it drifts up to \d+ m, with flaps \d+ m\.", plain);
    }

    /// <summary>On a long runway, the wind straight across it.</summary>
    private static BriefingSheet Across(double? limit, double gust, double? own)
    {
        BriefingRequest demo = DemoBriefings.Flight;
        Aeroplane h4 = demo.Aeroplane;
        Aeroplane aeroplane = new(
            h4.Name, h4.Description, h4.Wing, h4.MinimumMass, h4.MaximumMass, h4.Propeller, h4.Engine, h4.FlapSettings, Knots(limit));
        Runway runway = demo.Runway with { LengthAvailable = Length.FromMeters(2900), Surface = RunwaySurface.DryPaved };
        BriefingWind wind = new(new Wind(Angle.FromDegrees(330), Speed.FromKnots(0.7 * gust)), Speed.FromKnots(gust));
        return BriefingSheet.Of(Briefing.For(new(aeroplane, demo.Mass, runway, demo.Air, wind, crosswindLimit: Knots(own))).Value);
    }

    private static Speed? Knots(double? knots) => knots is { } given ? Speed.FromKnots(given) : null;

    private static BriefingSheet On(double metres)
    {
        BriefingRequest demo = DemoBriefings.Flight;
        Runway runway = demo.Runway with { LengthAvailable = Length.FromMeters(metres) };
        return BriefingSheet.Of(Briefing.For(new(demo.Aeroplane, demo.Mass, runway, demo.Air, demo.Wind)).Value);
    }

    private static string Plain(string text) => text.Replace(QuantityText.NoBreakSpace, ' ').Replace(QuantityText.NarrowNoBreakSpace, ' ');
}
