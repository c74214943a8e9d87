using System.Globalization;
using System.Runtime.CompilerServices;
using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Which numbers make sense, column by column, and what is said of those that do not.</summary>
public sealed class LandingCheckTests
{
    private const string Body = "No aeroplane and no air have it otherwise.";

    private static readonly LandingInput Usual = UsualLanding.Setup.Checked();

    // Column, values that are allowed, values that are not, what is said to be allowed, and why.
    public static TheoryData<string, double[], double[], string, string> Columns => new()
    {
        { "mass", [1e-9, 1e9], [0, -1], "a finite number above 0", Body },
        { "wing_area", [1e-9], [0, -1], "a finite number above 0", Body },
        { "span", [1e-9], [0, -1], "a finite number above 0", Body },
        { "wing_height", [1e-9], [0, -1], "a finite number above 0", "The ground effect needs the wing above its wheels." },
        { "cd0", [0, 1], [-1e-9], "a finite number, 0 or more", Body },
        { "oswald", [1e-9, 2], [0, -1], "a finite number above 0", Body },
        { "cl_max", [1e-9, 9], [0, -1], "a finite number above 0", Body },
        { "density", [1e-9], [0, -1], "a finite number above 0", Body },
        { "headwind", [-10, 0, 10], [], "a finite number", "Nothing can be computed from it." },
        { "threshold_height", [1e-9], [0, -1], "a finite number above 0", "The landing begins above the runway." },
        { "threshold_speed", [10, 1e6], [0, -1], "a finite number above 0", "The landing begins in flight." },
        { "path_angle_deg", [1e-9, 89.9], [0, -3, 90, 120], "above 0 and below 90", "The path goes down, and not straight down." },
        { "flare_time_constant", [1e-9], [0, -1], "a finite number above 0", "The sink dies away over it." },
        { "hold_off_height", [1e-9], [0, -1], "a finite number above 0", "The hold-off is flown above the runway." },
        { "touchdown_lift_fraction", [1e-9, 0.999], [0, 1, -1, 2], "above 0 and below 1", "A share of the lift before the stall: none is no flight, all of it is the stall." },
        { "power_cut_height", [-5, 0, 5], [], "a finite number", "Nothing can be computed from it." },
        { "power_cut_time", [0, 5], [-1e-9], "a finite number, 0 or more", "The throttle takes a while to close, or none." },
        { "idle_thrust", [-500, 0, 500], [], "a finite number", "Nothing can be computed from it." },
        { "nose_high_lift_coefficient", [-1, 0, 1], [], "a finite number", "Nothing can be computed from it." },
        { "nose_lower_speed_fraction", [1e-9, 0.999], [0, 1, -1, 2], "above 0 and below 1", "A share of the touchdown speed: the nose comes down after the touchdown and before the stop." },
        { "level_lift_coefficient", [-1, 0, 1], [], "a finite number", "Nothing can be computed from it." },
        { "rolling_friction", [0, 2], [-1e-9], "a finite number, 0 or more", "Friction does not push." },
        { "braking_friction", [0, 2], [-1e-9], "a finite number, 0 or more", "Friction does not push." },
        { "runway_slope", [-1, 0, 1], [], "a finite number", "Nothing can be computed from it." },
    };

    [Theory, MemberData(nameof(Columns))]
    public void Input_ValuesOfAColumn_AreAllowedOrRefusedInWords(string column, double[] allowed, double[] refused, string range, string why)
    {
        int place = LandingColumn.All.ToList().FindIndex(known => known.Name == column);
        foreach (double value in allowed)
        {
            LandingCheck.Input(With(place, value));
            Assert.True(LandingCheck.MakesSense(With(place, value)));
            Assert.Null(LandingCheck.Fault(value, (LandingVariable)place));
        }

        foreach (double value in (double[])[.. refused, double.NaN, double.PositiveInfinity, double.NegativeInfinity])
        {
            string expected = $"{column}: {value.ToString("g6", CultureInfo.InvariantCulture)} is refused; allowed is {range}. {why}";
            Assert.Equal(expected, LandingCheck.Fault(value, (LandingVariable)place)!.Message);
            var error = Assert.Throws<RefusedInputException>(() => LandingCheck.Input(With(place, value)));
            Assert.Equal((expected, column), (error.Message, error.ParamName));
            Assert.False(LandingCheck.MakesSense(With(place, value)));
        }
    }

    [Theory]
    [InlineData(5.0), InlineData(5.5)]
    public void Input_WindAsFastAsTheAeroplane_IsRefusedAsFlyingBackwards(double headwind)
    {
        LandingInput input = Usual with { ThresholdSpeed = 5, Headwind = headwind };
        var error = Assert.Throws<RefusedInputException>(() => LandingCheck.Input(input, 0));
        Assert.Equal("threshold_speed", error.ParamName);
        Assert.StartsWith("Landing 1: threshold_speed: 5 is refused; allowed is more than the headwind, 5", error.Message, StringComparison.Ordinal);
        Assert.Contains("flies backwards", error.Message, StringComparison.Ordinal);
        Assert.StartsWith("threshold_speed: 5 is refused", LandingCheck.FaultOfWhole(input)!.Message, StringComparison.Ordinal);
        Assert.False(LandingCheck.MakesSense(input));
    }

    // w tan γ must stay below V √(1 + tan² γ): at 45° a wind of √2 V is the limit.
    [Fact]
    public void Input_TailwindAtTheLimitOfThePath_IsRefusedOnOneSideOnly()
    {
        LandingInput at45 = Usual with { ThresholdSpeed = 30, PathAngleDegrees = 45 };
        LandingInput within = at45 with { Headwind = -30 * 1.4142 }, beyond = at45 with { Headwind = -30 * 1.4143 };
        LandingCheck.Input(within);
        Assert.Null(LandingCheck.FaultOfWhole(within));
        Assert.True(LandingCheck.MakesSense(within));
        var error = Assert.Throws<RefusedInputException>(() => LandingCheck.Input(beyond, 1));
        Assert.Equal("path_angle_deg", error.ParamName);
        Assert.StartsWith(
            "Landing 2: path_angle_deg: 45 is refused with headwind -42.429 and threshold_speed 30; allowed is an angle at which",
            error.Message, StringComparison.Ordinal);
        Assert.Contains("no flight path through the air does", LandingCheck.FaultOfWhole(beyond)!.Message, StringComparison.Ordinal);
        Assert.False(LandingCheck.MakesSense(beyond));
    }

    [Fact]
    public void Computed_ResultThatIsNoNumber_IsNamedWithTheNumbersBehindIt()
    {
        LandingOutcome outcome = LandingSolver.Solve(Usual);
        LandingCheck.Computed(Usual, outcome);
        outcome.TouchdownSink = double.PositiveInfinity;
        string message = Assert.Throws<RefusedInputException>(() => LandingCheck.Computed(Usual, outcome, 4)).Message;
        Assert.StartsWith(
            "Landing 5: touchdown_sink cannot be computed (mass 1050 kg, wing area 16 m², density 1.225 kg/m³, threshold speed 31.896 m/s)",
            message, StringComparison.Ordinal);
        Assert.Contains("of no aeroplane", message, StringComparison.Ordinal);
        Assert.StartsWith(
            "touchdown_sink", Assert.Throws<RefusedInputException>(() => LandingCheck.Computed(Usual, outcome)).Message, StringComparison.Ordinal);
        // In a refused landing what was not reached is no number, and no fault.
        outcome.Refuse(LandingRefusal.NeverSettles, 1, 0);
        LandingCheck.Computed(Usual, outcome);
    }

    // One table for each input: by the enumeration's order, which is that of the struct's fields.
    [Fact]
    public void Columns_EveryInput_HasARowOfItsOwn()
    {
        Assert.Equal(LandingVariables.All, LandingColumn.All.Select(column => column.Variable));
        Assert.Equal(LandingInput.Count, LandingColumn.All.Count);
        Assert.Equal(LandingInput.Count, LandingColumn.All.Select(column => column.Name).Distinct().Count());
        Assert.Equal(sizeof(double) * LandingInput.Count, Unsafe.SizeOf<LandingInput>());
    }

    [Fact]
    public void Columns_ThatATableNeeds_AreThoseOfTheReferenceFiles()
    {
        string[] needed = [.. LandingColumn.All.Where(column => column.LeftOut is null).Select(column => column.Name)];
        Assert.Equal(needed.Concat(ResultColumns.Names), ReferenceLandings.Header[1..]);
        Assert.Equal(ResultColumns.Count, ResultColumns.Names.Count);
        Assert.Equal(ResultColumns.Count, ResultColumns.Words.Count);
    }

    // What is left out is the canonical landing: a name that is left out and one that is given are the same struct.
    [Fact]
    public void LeftOut_EveryColumn_IsTheStructsOwnDefault()
    {
        double[] row = [.. LandingInput.Rows([new LandingInput()])];
        foreach (LandingColumn column in LandingColumn.All.Where(column => column.LeftOut is not null))
            Assert.Equal(column.LeftOut, row[(int)column.Variable]);
    }

    private static LandingInput With(int place, double value)
    {
        double[] row = [.. LandingInput.Rows([Usual with { Headwind = 1 }])];
        row[place] = value;
        return LandingInput.FromRow(row);
    }
}
