using System.Text.RegularExpressions;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

/// <summary>The correction drills on one page: seven, each with its five parts, and the numbers of the flight.</summary>
public sealed partial class DrillSheetTests
{
    private static readonly string[] InOrder = ["Too fast", "Too slow", "Too high", "Too low", "Balloon", "Bounce", "Drift"];

    public static TheoryData<string, double> Flights => new() { { "h4", 1600 }, { "h4", 700 }, { "l2", 1600 } };

    [Theory, MemberData(nameof(Flights))]
    public void Of_Flight_HasSevenDrillsWithFivePartsEach(string name, double metres)
    {
        string text = DrillSheet.Of(Flight(name, metres)).ToString();

        Assert.Equal(InOrder, DrillLine().Matches(text).Select(drill => drill.Groups["name"].Value));
        Assert.All(["   Cue: ", "   Action: ", "   Numbers: ", "   Limit: ", "   Go around: "], part => Assert.Equal(7, Regex.Count(text, $"(?m)^{part}")));
        Assert.Contains("common practice without a source", Blanks().Replace(text, " "), StringComparison.Ordinal);
        Assert.Equal(metres < 1000, text.Contains(">> DO NOT LAND HERE", StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Flights))]
    public void Of_Flight_SaysTheDrillsNumbers(string name, double metres)
    {
        Briefing briefing = Flight(name, metres);
        CorrectionDrills drills = CorrectionDrills.For(briefing);
        string text = Blanks().Replace(DrillSheet.Of(briefing).ToString(), " ");

        Assert.Contains($"they take {Tens(drills.TooFast.Value.FinalNeeded.Meters)} m of final", text, StringComparison.Ordinal);
        Assert.Contains($"5 kt too slow leave {100 * drills.TooSlow.Value.Margin:0} % over the stall", text, StringComparison.Ordinal);
        Assert.Contains($"50 ft too high take {Tens(drills.TooHigh.Value.FinalNeeded.Meters)} m of final", text, StringComparison.Ordinal);
        Assert.Contains($"fly level for {Tens(drills.TooLow.Value.LevelFor.Meters)} m", text, StringComparison.Ordinal);
        Assert.Contains($"{100 * drills.Balloon.Value.Margin:0} % are left over the stall", text, StringComparison.Ordinal);
        Assert.Contains($"it lifts {100 * drills.Bounce.Value.LiftAvailable:0} %", text, StringComparison.Ordinal);
        Assert.Contains($"it drifts {Math.Ceiling(drills.Drift.Value.Drift.Meters)} m at the most", text, StringComparison.Ordinal);
        Assert.Contains($"{drills.GoArounds[0].GoAround.Value.RateOfClimb.FeetPerMinute:0} ft/min", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_HotHighAndHeavyWithFullFlap_SaysThatItNeverClimbs()
    {
        string h4 = DrillSheet.Of(Flight("h4", 1600)).ToString();

        Assert.Contains("never climbs  sinks", h4, StringComparison.Ordinal);
        Assert.DoesNotContain("never climbs", DrillSheet.Of(Flight("l2", 1600)).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Calm_HasNoCrosswindToSpeakOf()
    {
        BriefingRequest demo = DemoBriefings.Flight;
        string text = DrillSheet.Of(Briefing.For(new(demo.Aeroplane, demo.Mass, demo.Runway, demo.Air, new BriefingWind(new Wind(Angle.Zero, Speed.Zero)))).Value).ToString();

        Assert.Contains("No wind across is reported.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("in a lull", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_Sheet_SaysWhatTheTerminalSays()
    {
        DrillSheet sheet = DrillSheet.Of(Flight("h4", 1600));
        string html = sheet.ToHtml();

        Assert.All(InOrder, name => Assert.Contains($"<li><h5>{name}</h5>", html, StringComparison.Ordinal));
        Assert.Contains(BriefingSheet.Caution, html, StringComparison.Ordinal);
        Assert.Contains(BriefingSheet.Caution, Blanks().Replace(sheet.ToString(), " "), StringComparison.Ordinal);
    }

    private static Briefing Flight(string name, double metres)
    {
        BriefingRequest demo = DemoBriefings.Flight;
        Aeroplane aeroplane = name == "l2" ? DemoAeroplanes.TrainerL2 : DemoAeroplanes.TrainerH4;
        return Briefing.For(new(
            aeroplane, aeroplane.MaximumMass, demo.Runway with { LengthAvailable = Length.FromMeters(metres) }, demo.Air, demo.Wind)).Value;
    }

    private static string Tens(double metres) => $"{10 * Math.Ceiling((metres / 10) - 1e-6):0}";

    [GeneratedRegex(@"^\d\. (?<name>.+)$", RegexOptions.Multiline)]
    private static partial Regex DrillLine();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
