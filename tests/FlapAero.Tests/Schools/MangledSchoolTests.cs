using System.Globalization;
using System.Text.Json.Nodes;
using FlapAero.Tests.Aeroplanes;

namespace FlapAero.Tests.Schools;

/// <summary>
/// However a school's file is mangled, it is refused clearly or makes a school: no other exception, no NaN, no half of a school. 300 in the
/// suite; <c>MangledSchools=3000</c> for more.
/// </summary>
public sealed class MangledSchoolTests(ITestOutputHelper output)
{
    private const string Stray = "{}[],:\"0-. \\\u0000";

    private static int Count { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("MangledSchools"), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : 300;

    private static string[] Keys { get; } = [.. AeroplaneText.Keys(SchoolText.Good())];

    private static string[] Values { get; } =
    [
        "null", "true", "\"\"", "\"x\"", "-1", "0", "1", "1e300", "1e999", "1.35", "[]", "{}", "[{}]", "[1, \"a\", {}]", "\"0 kt\"", "\"1e5 ft\"",
        "\"-40 C\"", "\"99999999999999999999 m\"", "\"NaN kt\"", "\"85 KIAS\"", "\"1.5 VS\"", "\"2 deg\"", "\"8000 ft\"", "\"500 m\"", "\"grass\"", "\"ice\"",
        "\"210/12G20\"", "\"calm\"", "\"XQAA 291450Z VRB03KT CAVOK M01/ Q0990\"", "\"XQAA 291450Z NIL\"", "\"/////KT\"", "\"../x.png\"", "\"a/b.svg\"",
        "\"/dev/zero\"", "\"<script>alert(1)</script>\"", "\"\\u202etxt\"", "\"\\ud800\"", "\"letter\"", "\"si\"", "\"left\"", "\"27\"", "\"1.5 % down\"", "\"30 % up\"",
    ];

    [Fact]
    public void Parse_MangledSchools_AreRefusedClearlyOrMakeASchool()
    {
        (int refused, int made) = (0, 0);
        for (int seed = 0; seed < Count; seed++)
        {
            try
            {
                School school = School.Parse(Mangled(seed), "school.json");
                Usable(school);
                made++;
            }
            catch (AeroplaneFileException clear)
            {
                Assert.NotEmpty(clear.Faults);
                Assert.All(clear.Faults, fault => Assert.False(string.IsNullOrWhiteSpace(fault.Problem) || string.IsNullOrWhiteSpace(fault.Expected)));
                Assert.DoesNotContain("   at ", clear.Message, StringComparison.Ordinal);
                refused++;
            }
            catch (Exception e) when (e is not Xunit.Sdk.IAssertionException)
            {
                Assert.Fail($"Seed {seed}: {e.GetType().Name}: {e.Message} {e.StackTrace}");
            }
        }

        output.WriteLine($"{Count}: {refused} refused, {made} schools");
        Assert.True(refused > 0.3 * Count, $"{refused} refused");
        Assert.True(made > 0.05 * Count, $"{made} made");
    }

    /// <summary>What a briefing takes of a school is there and finite.</summary>
    private static void Usable(School school)
    {
        Assert.False(string.IsNullOrWhiteSpace(school.Name));
        double[] numbers =
        [
            school.Rules.FlapsUpMultiple, school.Rules.BankLimit.Degrees, school.Rules.StabilisedBy.Feet, school.Rules.GustShare, school.Rules.HeadwindShare,
            school.Rules.FastBy.Knots, school.Rules.SlowBy.Knots, school.Rules.Margin.Factor, school.Circuit.Height?.Feet ?? 1000,
            .. school.Aerodromes.SelectMany(at => at.Runways).SelectMany(runway => (double[])
            [
                runway.Runway.LengthAvailable.Meters, runway.Runway.Direction.Degrees, runway.Runway.Elevation.Feet, runway.Runway.Slope,
                runway.ThresholdDisplaced.Meters, runway.ForFirstThird?.At.Meters ?? 0,
            ]),
            .. school.Days.Select(day => day.Temperature?.DegreesCelsius ?? 0), .. school.Days.Select(day => day.Wind?.Mean.Speed.Knots ?? 0),
        ];
        Assert.All(numbers, number => Assert.True(double.IsFinite(number)));
        Assert.All(school.Aerodromes, at => Assert.NotEmpty(at.Runways));
    }

    private static string Mangled(int seed)
    {
        var random = new Random(seed);
        if (random.Next(4) == 0)
        {
            string broken = SchoolText.Example;
            int at = random.Next(broken.Length);
            return random.Next(3) switch
            {
                0 => broken[..at],
                1 => broken.Remove(at, Math.Min(random.Next(1, 40), broken.Length - at)),
                _ => broken.Insert(at, Stray[random.Next(Stray.Length)].ToString()),
            };
        }

        JsonNode root = SchoolText.Good();
        string[] places =
            [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Keys[random.Next(Keys.Length)]).Distinct().OrderByDescending(key => key.Length)];
        foreach (string place in places)
        {
            switch (random.Next(3))
            {
                case 0: root.Remove(place); break;
                case 1: root.Set(place, Values[random.Next(Values.Length)].Replace("\\ud800", "x", StringComparison.Ordinal)); break;
                default: root.Set(place, root.At(Keys[random.Next(Keys.Length)] is var other && Keys.Contains(other) && !other.StartsWith(place, StringComparison.Ordinal) && Still(root, other) ? other : place).ToJsonString()); break;
            }
        }

        return AeroplaneText.Written(root);
    }

    /// <summary>Whether a place is still there after what was mangled before.</summary>
    private static bool Still(JsonNode root, string place)
    {
        try
        {
            return root.At(place) is not null;
        }
        catch (Exception e) when (e is NullReferenceException or InvalidOperationException or ArgumentOutOfRangeException)
        {
            return false;
        }
    }
}
