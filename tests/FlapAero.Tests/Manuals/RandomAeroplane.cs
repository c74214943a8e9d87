using System.Globalization;
using FlapAero.Manuals;
using UnitsNet;

namespace FlapAero.Tests.Manuals;

/// <summary>A light trainer as the kind spreads: every unknown is drawn about its typical value, at most two spreads away.</summary>
internal sealed class RandomAeroplane
{
    private RandomAeroplane(ManualContent manual, Trial truth, ManualStyle style) => (Skeleton, Truth, Style) = (manual, truth, style);

    public ManualContent Skeleton { get; }

    /// <summary>What the fit should find.</summary>
    public Trial Truth { get; }

    public ManualStyle Style { get; }

    public double[] Drawn { get; private init; } = [];

    public static RandomAeroplane Of(int seed, string glidePropeller = "idling")
    {
        var random = new Random(seed);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        double mass = Math.Round(Between(600, 1250));
        double area = Math.Round(mass / Between(52, 68), 2);
        double span = Math.Round(Math.Sqrt(area * Between(6, 8.5)), 2);
        double[] flaps = random.Next(3) switch { 0 => [30], 1 => [15, 35], _ => [10, 20, 40] };
        string settings = string.Join(",", flaps.Select((deflection, i) => Text($$"""{ "name": "{{deflection}}°", "deflection": "{{deflection}} deg", "maximumSpeed": "{{110 - 10 * i}} KIAS" }""")));
        string skeleton = Text($$"""
            {
              "name": "Invented {{seed}}", "masses": { "minimum": "{{Math.Round(0.7 * mass)}} kg", "maximum": "{{mass}} kg" },
              "wing": { "span": "{{span}} m", "area": "{{area}} m2", "position": "high" },
              "engine": { "speed": "2700 rpm", "propellerDiameter": "{{Math.Round(193 * Math.Pow(mass / 1090, 0.25))}} cm" },
              "tailLimitAttitude": "9 deg",
              "flapSettings": [ { "name": "up", "deflection": "0 deg", "maximumSpeed": "150 KIAS" }, {{settings}} ]
            }
            """);
        ManualContent manual = Manual.Parse(skeleton, "skeleton").Content;
        PrintedCalibration[] calibrations = [.. manual.Settings.Select(setting => new PrintedCalibration(setting))];
        var unknowns = new Unknowns(manual, calibrations);
        double[] drawn = [.. unknowns.All.Select(unknown => Math.Clamp(
            (unknown.Parts & Parts.ApproachSpeed) != 0 ? 0 : Normal(random), Math.Max(-Farthest(unknown), unknown.Lowest), Math.Min(Farthest(unknown), unknown.Highest)))];
        Trial truth = unknowns.At(drawn);
        int stopped = unknowns.All.ToList().FindIndex(unknown => (unknown.Parts & Parts.StoppedPropeller) != 0);
        return new(manual, truth, new ManualStyle
        {
            GlidePropeller = glidePropeller,
            StoppedDrag = unknowns.All[stopped].Value(drawn[stopped]),
            Pilot = LandingPilot.Usual with
            {
                FlareTimeConstant = Duration.FromSeconds(truth.Technique.RoundOut),
                TouchdownLiftFraction = truth.Technique.TouchdownLift,
                BrakingShare = truth.Technique.Braking,
            },
        })
        { Drawn = drawn };
    }

    public string Printed => ManualMaker.Of(Truth.Aeroplane, Style);

    // Lift that is at the edge of the kind twice over is no wing's.
    private static double Farthest(Unknown unknown) => (unknown.Parts & Parts.Lift) != 0 ? 1 : 2;

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
