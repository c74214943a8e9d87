using System.Text.Json.Nodes;
using FlapAero.Tests.Aeroplanes;

namespace FlapAero.Tests.Manuals;

/// <summary>What the fit of a manual gives: the example's aeroplane, its file, and what it says of numbers that the model cannot reach.</summary>
public sealed class ManualFitTests
{
    private static ManualFit Example { get; } = ManualFit.Of(DemoManuals.TrainerH4).Value;

    [Theory]
    [InlineData("C_Lmax, flaps up", 1.4)]
    [InlineData("C_Lmax, flaps 10°", 1.6)]
    [InlineData("C_Lmax, flaps 20°", 1.82)]
    [InlineData("C_Lmax, flaps 35°", 2.0)]
    [InlineData("C_D0", 0.034)]
    [InlineData("Oswald factor, flaps up", 0.74)]
    [InlineData("drag increment, flaps 35°", 0.052)]
    [InlineData("full-throttle torque", 450)]
    [InlineData("pitch of the propeller", 1)]
    [InlineData("pilot: touchdown share of C_Lmax", 0.8)]
    [InlineData("pilot: share of the surface's braking", 0.75)]
    public void Of_ExampleManual_GivesTrainerH4Back(string name, double truth)
    {
        FittedValue value = Example.Value(name);

        Assert.NotEqual(FitStanding.Assumed, value.Standing);
        Assert.InRange((value.Value - truth) / value.StandardError, -3, 3);
        Assert.InRange(value.StandardError / truth, 1e-4, 0.1);
    }

    [Fact]
    public void Of_ExampleManual_HasEveryNumberWithinItsRounding() =>
        Assert.All(Example.Numbers.Where(number => !number.IsCompared), number => Assert.True(number.IsReached, number.ToString()));

    [Fact]
    public void Of_ExampleManual_SaysWhatItIsGoodFor()
    {
        Assert.Equal(UseVerdict.Yes, Example.Uses.Single(use => use.Name == "speeds").Verdict);
        Assert.Equal(UseVerdict.Yes, Example.Uses.Single(use => use.Name == "landing roll").Verdict);
        Assert.Equal(UseVerdict.No, Example.Uses.Single(use => use.Name == "attitude").Verdict);
    }

    [Fact]
    public void Json_OfTheExample_IsAnAeroplaneThatLandsAsTheDemo()
    {
        Aeroplane read = AeroplaneFile.Parse(Example.Json, "fitted.json");
        double Stop(Aeroplane aeroplane) => Landing.Fly(LandingSetup.For(aeroplane.Configure(aeroplane.FullFlaps))).Value.StopDistance.Meters;

        Assert.InRange(Stop(read) / Stop(DemoAeroplanes.TrainerH4), 0.97, 1.03);
        Assert.InRange(
            read.Configure(read.FlapsUp).StallSpeed(Air.StandardSeaLevel).Calibrated.Knots
            / DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp).StallSpeed(Air.StandardSeaLevel).Calibrated.Knots, 0.99, 1.01);
    }

    [Fact]
    public void Json_OfTheExample_SaysOfEachValueWhereItIsFrom()
    {
        JsonNode file = JsonNode.Parse(Example.Json)!;
        string[] origins = [.. AeroplaneText.Keys(file).Where(key => key.EndsWith(".origin", StringComparison.Ordinal)).Select(key => (string)file.At(key)!)];

        Assert.Contains(origins, origin => origin.StartsWith("estimate: fitted from 16 stalling speeds, standard error ", StringComparison.Ordinal));
        Assert.Contains(origins, origin => origin.StartsWith("estimate: assumed from what is typical of light trainers", StringComparison.Ordinal));
        Assert.Contains("published: the manual, 2403 lb", origins);
        Assert.All(origins, origin => Assert.Matches("fitted from|assumed from|the manual|datum", origin));
    }

    [Fact]
    public void Stall_ByHand_IsTheFittedLift()
    {
        // 48 kt calibrated with 1000 kg on 15 m²: C_Lmax = 2 · 1000 · 9.80665/(1.225 · 15 · 24.693²) = 1.7505.
        ManualFit fit = ManualFit.Of(Manual.Parse(Bare("\"stallSpeeds\": [ { \"flaps\": \"up\", \"speed\": \"48.000 KCAS\" } ]"), "bare.json")).Value;

        Assert.Equal(1.7505, fit.Value("C_Lmax, flaps up").Value, 1e-3);
    }

    [Fact]
    public void Glide_ByHand_IsTheFittedPolar()
    {
        // C_L = W/(q S) cos γ at 70.000 kt and a ratio of 10.000: q = ½ 1.225 36.011² = 794.3; C_L = 9806.65 · 0.99504/(794.3 · 15) = 0.8190.
        // At the best glide C_D0 = C_L/(2 · 10) = 0.04095 and K = C_D0/C_L² = 0.06105; A = 100/15: e = 1/(π K A) = 0.7821.
        ManualFit fit = ManualFit.Of(Manual.Parse(
            Bare("\"glides\": [ { \"is\": \"best\", \"propeller\": \"none\", \"speed\": \"70.000 KCAS\", \"ratio\": 10.000 } ]"), "bare.json")).Value;

        Assert.Equal(0.04095, fit.Value("C_D0").Value, 1e-4);
        Assert.Equal(0.7821, fit.Value("Oswald factor, flaps up").Value, 2e-3);
    }

    [Fact]
    public void Of_OneWrongRowOfALandingTable_TakesItOutAndBendsNothing()
    {
        ManualFit fit = ManualFit.Of(Manual.Parse(ManualText.Edited(root => root.Set("landings[4].from50ft", "\"2165 ft\"")), "m")).Value;

        ManualResidual wrong = fit.Numbers.Single(number => number.Written == "2165 ft");
        Assert.True(wrong.IsTakenOut);
        Assert.False(wrong.IsReached);
        Assert.InRange(fit.Value("C_D0").Value / Example.Value("C_D0").Value, 0.97, 1.03);
    }

    [Fact]
    public void Of_LandingsThatTheModelCannotFollow_CountLessAndBendNoOtherNumber()
    {
        // Every distance from 50 ft half as long again with the same rolls: no pilot of this model lands so far.
        ManualFit fit = ManualFit.Of(Manual.Parse(
            ManualText.Edited(root =>
            {
                int row = 0;
                foreach (JsonNode? landing in root["landings"]!.AsArray())
                {
                    double feet = double.Parse(((string)landing!["from50ft"]!).Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
                    landing["from50ft"] = FormattableString.Invariant($"{Math.Round(feet * (row++ % 2 == 0 ? 1.5 : 1.8) / 5) * 5} ft");
                }
            }),
            "m")).Value;

        Assert.Contains(fit.Numbers, number => number.What.StartsWith("landing from 50 ft", StringComparison.Ordinal) && !number.IsReached && number.Enlarged > 3);
        Assert.All(fit.Numbers.Where(number => number.What.StartsWith("stall", StringComparison.Ordinal)), number => Assert.True(number.IsReached, number.ToString()));
        Assert.InRange(fit.Value("C_D0").Value, 0.030, 0.038);
    }

    [Fact]
    public void PilotWith_TheExamplesFullFlaps_ApproachesAsTheManual() =>
        Assert.Equal(1.3, Example.PilotWith(Example.Aeroplane.FullFlaps).SpeedMultiple, 0.03);

    private static string Bare(string tables) =>
        "{ \"name\": \"Bare\", \"masses\": { \"maximum\": \"1000 kg\" }, \"wing\": { \"span\": \"10 m\", \"area\": \"15 m2\" }, "
        + $"\"flapSettings\": [ {{ \"name\": \"up\", \"deflection\": \"0 deg\" }} ], {tables} }}";
}
