using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using UnitsNet;

namespace FlapAero.Charts.Tests.Pictures;

/// <summary>What the tests of pictures share: what flies, and how coordinates are read back from a drawing.</summary>
internal static partial class Drawn
{
    internal static readonly Air Air = Quillmere.Monday.Air;

    internal static readonly Angle Path = Angle.FromDegrees(3.5);

    /// <summary>Both demo aeroplanes in each of their flap settings.</summary>
    internal static IEnumerable<Configuration> Configurations =>
        DemoAeroplanes.All.SelectMany(aeroplane => aeroplane.FlapSettings.Select(flaps => aeroplane.Configure(flaps)));

    public static TheoryData<int> EachConfiguration => [.. Enumerable.Range(0, Configurations.Count())];

    public static TheoryData<int> EachAeroplane => [.. Enumerable.Range(0, DemoAeroplanes.All.Count)];

    internal static (Configuration Up, Configuration Full) Flaps(int aeroplane) =>
        (DemoAeroplanes.All[aeroplane].Configure(DemoAeroplanes.All[aeroplane].FlapsUp), DemoAeroplanes.All[aeroplane]
            .Configure(DemoAeroplanes.All[aeroplane].FullFlaps));

    internal static PilotsView See(string name, Configuration c, double factor = 1.3, double feet = 1000) =>
        PilotsView.OnPath(name, c, c.ReferenceSpeed(Air, factor), Path, Length.FromFeet(feet));

    internal static SteadyFlight Final(Configuration c) => c.OnPath(c.ReferenceSpeed(Air), -Path);

    internal static LandedView Landed(string name, Configuration c) => LandedView.Of(name, c,
        Landing.Fly(
            LandingSetup.For(c, air: Air),
            interval: Duration.FromSeconds(0.25)).Value);

    /// <summary>From 1000 ft before the threshold, so much above the path, to the usual height over it.</summary>
    internal static IReadOnlyList<DescentPoint> Down(Configuration c, double above)
    {
        Length away = Length.FromFeet(1000), over = Length.FromFeet(50);
        return c.StraightDescent(
            c.ReferenceSpeed(Air), over + away * Math.Tan(Path.Radians) + Length.FromFeet(above), over, away).Value;
    }

    /// <summary>A right-hand circuit with flaps up.</summary>
    internal static Circuit Circuit(Wind wind)
    {
        Configuration up = Flaps(0).Up;
        CircuitPlan plan = DemoCircuits.PlanFor(up, up, up, Air, RotationalSpeed.FromRevolutionsPerMinute(1300))
            .With(Quillmere.Runway24, wind,
                CircuitHand.Right);
        return FlapAero.Circuit.Backwards(plan).Value;
    }

    /// <summary>The points of the parts of one name, in their order.</summary>
    internal static double[][] Points(string svg, string part) =>
        [.. XElement.Parse(svg).Elements().Where(e => e.Attribute("data-part")?.Value == part)
            .Select(e => Number().Matches(e.Attribute("d")!.Value)
                .Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray())];

    /// <summary>How steeply a line rises from its first to its second point, in degrees.</summary>
    internal static double Rise(double[] line) =>
        double.RadiansToDegrees(Math.Atan2(line[1] - line[3], line[2] - line[0]));

    internal static double LengthOf(double[] line) =>
        Math.Sqrt(Math.Pow(line[2] - line[0], 2) + Math.Pow(line[3] - line[1], 2));

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
