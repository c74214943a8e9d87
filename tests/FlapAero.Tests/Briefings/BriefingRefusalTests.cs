using UnitsNet;

namespace FlapAero.Tests.Briefings;

public sealed class BriefingRefusalTests
{
    [Theory, InlineData(699, "699 kg"), InlineData(1091, "1091 kg")]
    public void Request_MassOutsideTheFile_NamesValueAndLimits(double mass, string value)
    {
        string message = Assert.Throws<RefusedInputException>(() => Flights.With(kilograms: mass)).Message;
        Assert.StartsWith($"mass: {value} is refused; allowed is 700 kg to 1090 kg. Trainer H4", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Request_AeroplaneWithoutFlaps_IsRefused()
    {
        Aeroplane h4 = DemoAeroplanes.TrainerH4;
        Aeroplane plain = new("Plain", "no flaps", h4.Wing, h4.MinimumMass, h4.MaximumMass, h4.Propeller, h4.Engine, [h4.FlapsUp]);
        Assert.Contains("one flap setting", Assert.Throws<RefusedInputException>(() => Flights.With(aeroplane: plain)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_OutsideTheirRanges_AreRefused()
    {
        Angle west = Angle.FromDegrees(270);
        Runway runway = DemoBriefings.Flight.Runway;
        Assert.Equal("landing distance available", What(() => runway with { LengthAvailable = Length.FromMeters(99) }));
        Assert.Equal("landing distance available", What(() => runway with { LengthAvailable = Length.FromMeters(6001) }));
        Assert.Equal("runway direction", What(() => runway with { Direction = Angle.FromDegrees(361) }));
        Assert.Equal("runway slope", What(() => runway with { Slope = 0.21 }));
        Assert.Equal("elevation", What(() => runway with { Elevation = Length.FromFeet(20000) }));
        Assert.Equal("height over the threshold", What(() => Flights.With(overFeet: 10)));
        Assert.Equal("gust", What(() => new BriefingWind(new Wind(west, Speed.FromKnots(12)), Speed.FromKnots(11))));
        Assert.Equal("gust", What(() => new BriefingWind(new Wind(west, Speed.FromKnots(12)), Speed.FromKnots(73))));
        Assert.Equal("margin factor", What(() => new LandingMargin(0.99, "nobody")));
        Assert.Equal("circuit height", What(() => Flights.With(circuitFeet: 300)));
        Assert.Throws<RefusedInputException>(() => new LandingMargin(1.2, " "));
        Assert.Equal("name of the runway", What(() => runway with { Name = " " }));
    }

    [Fact]
    public void For_GustsBeyondTheCalibrationWithFlaps_BriefsTheFlightAndNamesSettingValueAndTable()
    {
        // 56.9 kt and 30 kt for the gusts: the table with 35° of flap ends at 84 kt. Without flaps it reaches further.
        Briefing briefing = Briefing.For(Flights.With(wind: 10, gust: 70)).Value;
        string refusal = Assert.Single(briefing.FullFlaps.Missing);
        Assert.StartsWith("Speeds with flaps 35°: calibrated airspeed: 86.8", refusal, StringComparison.Ordinal);
        Assert.Contains("to 84 kt", refusal, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", refusal, StringComparison.Ordinal);
        Assert.Null(briefing.FullFlaps.Speeds);
        Assert.Null(briefing.FullFlaps.Circuit);
        Assert.Null(briefing.FullFlaps.Landing);
        Assert.Equal(["up", "10°", "20°"], briefing.Speeds.Select(speeds => speeds.Configuration.Flaps.Name));
    }

    [Fact]
    public void For_GustsBeyondTheCalibrationWithoutFlaps_IsRefusedWithSettingValueAndTable()
    {
        Outcome<Briefing, IReadOnlyList<string>> outcome = Briefing.For(Flights.With(aeroplane: Slow));
        Assert.False(outcome.Happened);
        string refusal = Assert.Single(outcome.Refusal!);
        Assert.StartsWith("Speeds with flaps up: calibrated airspeed: 71.966 ", refusal, StringComparison.Ordinal);
        Assert.Contains("to 70.6 kt", refusal, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", refusal, StringComparison.Ordinal);
        Assert.Equal(refusal, Assert.Throws<InvalidOperationException>(() => outcome.Value).Message);
    }

    /// <summary>The demo aeroplane with a calibration that ends at 70 kt on the needle, flaps up.</summary>
    private static Aeroplane Slow
    {
        get
        {
            Aeroplane h4 = DemoAeroplanes.TrainerH4;
            FlapSetting up = h4.FlapsUp;
            AirspeedCalibration table = new(up.Calibration.Rows.Where(row => row.Indicated.Knots < 71).Select(row => (row.Indicated, row.Calibrated)));
            FlapSetting slow = new(up.Name, up.Deflection, up.Lift, up.Drag, table, Speed.FromKnots(70));
            return new("Slow", "short table", h4.Wing, h4.MinimumMass, h4.MaximumMass, h4.Propeller, h4.Engine, [slow, .. h4.FlapSettings.Skip(1)]);
        }
    }

    [Fact]
    public void For_CircuitThatOnlyTheComparisonCannotFly_BriefsTheFlightWithoutFlaps()
    {
        // Without flaps the circuit needs 818 ft of height here, with flaps a little more.
        Briefing briefing = Briefing.For(Flights.With(windFrom: 240, wind: 12, gust: 20, circuitFeet: 819)).Value;
        Assert.StartsWith("Circuit with flaps: ", Assert.Single(briefing.FullFlaps.Missing), StringComparison.Ordinal);
        Assert.Null(briefing.FullFlaps.Circuit);
        Assert.NotNull(briefing.FullFlaps.Landing);
        Assert.Equal(4, briefing.Speeds.Count);
    }

    [Fact]
    public void For_StrongTailwind_SaysEverythingThatStandsInTheWay()
    {
        Outcome<Briefing, IReadOnlyList<string>> outcome = Briefing.For(Flights.With(windFrom: 60, wind: 45, circuitFeet: 500));
        Assert.False(outcome.Happened);
        Assert.Contains(outcome.Refusal!, refusal => refusal.StartsWith("Circuit without flaps: ", StringComparison.Ordinal));
        Assert.DoesNotContain(outcome.Refusal!, refusal => refusal.Contains("with flaps", StringComparison.Ordinal));
        Assert.Contains(outcome.Refusal!, refusal => refusal.StartsWith("Landing without flaps: path-steeper-than-idle-glide", StringComparison.Ordinal));
    }

    [Fact]
    public void For_PropellerTooSlowForLevelFlight_NamesThrustAndRange()
    {
        Aeroplane h4 = DemoAeroplanes.TrainerH4;
        Propeller slow = new(h4.Propeller.Diameter, h4.Propeller.Table, RotationalSpeed.FromRevolutionsPerMinute(1900));
        Aeroplane weak = new("Weak", "turns slowly", h4.Wing, h4.MinimumMass, h4.MaximumMass, slow, h4.Engine, h4.FlapSettings);

        Outcome<Briefing, IReadOnlyList<string>> outcome = Briefing.For(Flights.With(aeroplane: weak));

        string refusal = Assert.Single(outcome.Refusal!, refusal => refusal.StartsWith("Circuit without flaps", StringComparison.Ordinal));
        Assert.Matches(@"thrust on downwind, level: \d+(\.\d+)? N at 83\.6\d* kt CAS is refused; allowed is -\d+(\.\d+)? N to \d+(\.\d+)? N\.", refusal);
    }

    private static string What(Func<object> make)
    {
        string message = Assert.Throws<RefusedInputException>(make).Message;
        Assert.Contains("is refused; allowed is", message, StringComparison.Ordinal);
        return message[..message.IndexOf(':', StringComparison.Ordinal)];
    }
}
