using System.Globalization;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>The rows of docs/instructors-table.md, computed: what an instructor would look for in one aeroplane's landings.</summary>
internal sealed class InstructorsTable
{
    // 550 ft·lbf/s in watts.
    private const double HorsePower = 745.7;

    private static readonly double[] MassShares = [0.70, 0.75, 0.80, 0.85, 0.90, 0.95, 1];
    private static readonly double[] Headwinds = [-5, 0, 5, 10, 15, 20];
    private static readonly double[] DensityAltitudes = [0, 2000, 4000, 6000, 8000];
    // The attitude grows to the end of a stage, and both ends of each are among the points.
    private static readonly Duration Points = Duration.FromSeconds(1);

    private static readonly LandingPilot Lower = LandingPilot.Usual with { ThresholdHeight = Length.FromFeet(30) };

    private readonly Aeroplane _aeroplane;
    private readonly IReadOnlyList<Outcome<LandingResult, LandingRefusal>> _full;
    private readonly IReadOnlyList<Outcome<LandingResult, LandingRefusal>> _up;

    private InstructorsTable(Aeroplane aeroplane)
    {
        _aeroplane = aeroplane;
        _full = FlapAero.Landing.FlyMany([.. Conditions.Select(on => Case(aeroplane.FullFlaps, on))], interval: Points);
        _up = FlapAero.Landing.FlyMany([.. Conditions.Select(on => Case(aeroplane.FlapsUp, on))], interval: Points);
        Runway runway = new() { Direction = Angle.Zero, LengthAvailable = Length.FromMeters(3000) };
        Briefing = FlapAero.Briefing.For(
            new(aeroplane, aeroplane.MaximumMass, runway, Air.StandardSeaLevel, new(new(Angle.Zero, Speed.Zero)))).Value;
    }

    /// <summary>What the landings are tried in: share of the maximum mass, density altitude in feet, headwind in knots.</summary>
    public static IReadOnlyList<(double Mass, double Altitude, double Headwind)> Conditions { get; } =
    [
        .. from mass in MassShares
           from altitude in DensityAltitudes
           from headwind in Headwinds
           select (mass, altitude, headwind),
    ];

    public static InstructorsTable H4 { get; } = new(DemoAeroplanes.TrainerH4);

    public static InstructorsTable L2 { get; } = new(DemoAeroplanes.TrainerL2);

    /// <summary>A row: what is expected, with its limits, and how it is found and printed.</summary>
    /// <param name="Name">What is looked at.</param>
    /// <param name="Expected">What an instructor expects, as the table prints it.</param>
    /// <param name="Low">The least that is expected.</param>
    /// <param name="High">The most that is expected.</param>
    /// <param name="Values">The values of an aeroplane, from the least to the greatest.</param>
    /// <param name="Print">One value as the table prints it.</param>
    internal sealed record Row(
        string Name, string Expected, double Low, double High, Func<InstructorsTable, double[]> Values, Func<double, string> Print)
    {
        /// <summary>The cell of an aeroplane.</summary>
        public string Cell(InstructorsTable table) => string.Join(" to ", Values(table).Select(Print).Distinct());

        public bool IsAsExpected(InstructorsTable table) => Values(table).All(value => value >= Low && value <= High);
    }

    public static IReadOnlyList<Row> Rows { get; } =
    [
        new("landings tried", "no number", 1, double.PositiveInfinity, table => [table.All.Count()], Whole("")),
        new("of them refused", "0", 0, 0, table => [table.All.Count(report => report.Refusal != LandingRefusal.None)], Whole("")),
        new("from 50 ft to the stop, flaps up against full", "+35 to +55 %", 35, 55, table => [table.UpAgainstFull], Percent),
        new("the same, over all landings tried", "+35 to +55 %", 35, 55, table => Range(table.UpAgainstFullOfAll), Percent),
        new("touchdown past a 50-ft threshold, flaps up", "1350 to 1650 ft", 1350, 1650,
            table => [table.Result(table._aeroplane.FlapsUp).TouchdownDistance.Feet], Whole(" ft")),
        new("touchdown past a 30-ft threshold, flaps up", "1000 to 1300 ft", 1000, 1300,
            table => [table.Result(table._aeroplane.FlapsUp, Lower).TouchdownDistance.Feet], Whole(" ft")),
        new("sink at the touchdown, full flaps", "below 180 ft/min", 0, 180,
            table => [Sink(table.Result(table._aeroplane.FullFlaps))], Whole(" ft/min")),
        new("sink at the touchdown, flaps up", "below 180 ft/min", 0, 180,
            table => [Sink(table.Result(table._aeroplane.FlapsUp))], Whole(" ft/min")),
        new("sink at the touchdown, over all landings tried", "below 180 ft/min", 0, 180,
            table => Range(table.All.Select(report => Sink(report.Value))), Whole(" ft/min")),
        new("highest attitude in the hold-off, full flaps, over all landings tried", "to 9.0°", double.NegativeInfinity, 9,
            table => [table.HighestAttitude(table._full, table._aeroplane.FullFlaps)], Degrees),
        new("highest attitude in the hold-off, flaps up, over all landings tried", "to 9.0°", double.NegativeInfinity, 9,
            table => [table.HighestAttitude(table._up, table._aeroplane.FlapsUp)], Degrees),
        new("what ends the hold-off, full flaps, over all landings tried", "lift or tail", 0, 1, table => Ends(table._full), End),
        new("what ends the hold-off, flaps up, over all landings tried", "lift or tail", 0, 1, table => Ends(table._up), End),
        new("engine speed on final, full flaps", "no number", 0, double.PositiveInfinity, table => [table.FullOnFinal], Whole(" rpm")),
        new("engine speed on final, flaps up", "no number", 0, double.PositiveInfinity, table => [table.UpOnFinal], Whole(" rpm")),
        new("engine speed on final, flaps up below full", "150 to 270 rpm", 150, 270,
            table => [table.FullOnFinal - table.UpOnFinal], Whole(" rpm")),
        new("full throttle, power at the highest engine speed", "100 to 180 hp", 100, 180,
            table => [table.FullPower], Whole(" hp")),
        new("full throttle at rest, of that", "70 to 95 %", 70, 95,
            table => [100 * table.PowerAtRest / table.FullPower], Whole(" %")),
        new("climb at full throttle, flaps up, 1.4 V_S", "500 to 900 ft/min", 500, 900,
            table => [table.Climb(table._aeroplane.FlapsUp, 1.4)], Whole(" ft/min")),
        new("climb at full throttle, full flaps, 1.3 V_S", "no number", double.NegativeInfinity, double.PositiveInfinity,
            table => [table.Climb(table._aeroplane.FullFlaps, 1.3)], Whole(" ft/min")),
    ];

    /// <summary>The briefed flight at the maximum mass, standard sea level, a calm.</summary>
    public Briefing Briefing { get; }

    /// <summary>θ_max of the aeroplane's file, in degrees.</summary>
    public double TailLimit => _aeroplane.TailLimitAttitude!.Value.Degrees;

    private IEnumerable<Outcome<LandingResult, LandingRefusal>> All => _full.Concat(_up);

    private double UpAgainstFull => More(Result(_aeroplane.FullFlaps), Result(_aeroplane.FlapsUp));

    /// <summary>Flaps up against full, in per cent, condition by condition.</summary>
    public IEnumerable<double> UpAgainstFullOfAll => _full.Zip(_up, (full, up) => More(full.Value, up.Value));

    /// <summary>The share of the full-flap landing that the path down to the round-out is, condition by condition.</summary>
    public IEnumerable<double> PathOfTheFullFlapLandingOfAll =>
        _full.Select(report => report.Value.FlareStartDistance / report.Value.StopDistance);

    private double FullPower => _aeroplane.FullThrottle!.TorqueAtSeaLevel.NewtonMeters * 2 * Math.PI
        * _aeroplane.Propeller.MaximumSpeed.RevolutionsPerSecond / HorsePower;

    private double PowerAtRest =>
        (double)_aeroplane.Propeller.FullThrottleAtRest(Air.StandardSeaLevel, _aeroplane.FullThrottle!).Power.Watts / HorsePower;

    private double FullOnFinal => Briefing.FullFlaps.Circuit!.Final.EngineSpeed.RevolutionsPerMinute;

    private double UpOnFinal => Briefing.Flapless.Circuit.Final.EngineSpeed.RevolutionsPerMinute;

    private double Climb(FlapSetting flaps, double multiple)
    {
        Configuration configuration = _aeroplane.Configure(flaps);
        return -configuration.ClimbAtFullThrottle(configuration.ReferenceSpeed(Air.StandardSeaLevel, multiple))!.SinkRate.FeetPerMinute;
    }

    private static double More(LandingResult full, LandingResult up) => 100 * (up.StopDistance / full.StopDistance - 1);

    private static double Sink(LandingResult result) => result.TouchdownSink.FeetPerMinute;

    private static double[] Range(IEnumerable<double> values)
    {
        double[] all = [.. values];
        return [all.Min(), all.Max()];
    }

    private static double[] Ends(IEnumerable<Outcome<LandingResult, LandingRefusal>> reports) =>
        [.. reports.Select(report => (double)report.Value.HoldOffEnd).Distinct().Order()];

    private static string End(double end) => (HoldOffEnd)(int)end == HoldOffEnd.Tail ? "tail" : "lift";

    private static string Percent(double percent) => percent.ToString("+0' %';−0' %'", CultureInfo.InvariantCulture);

    private static string Degrees(double degrees) => degrees.ToString("0.0'°';−0.0'°'", CultureInfo.InvariantCulture);

    private static Func<double, string> Whole(string unit) => value => value.ToString("0", CultureInfo.InvariantCulture) + unit;

    private LandingResult Result(FlapSetting flaps, LandingPilot? pilot = null) =>
        FlapAero.Landing.Fly(LandingSetup.For(_aeroplane.Configure(flaps), pilot: pilot)).Value;

    private LandingSetup Case(FlapSetting flaps, (double Mass, double Altitude, double Headwind) on)
    {
        Mass mass = UnitMath.Max(_aeroplane.MinimumMass, on.Mass * _aeroplane.MaximumMass);
        Air air = Air.Standard(Length.FromFeet(on.Altitude));
        return LandingSetup.For(
            _aeroplane.Configure(flaps, mass), air: air, headwind: Speed.FromKnots(on.Headwind));
    }

    // θ = γ + α − i_w, from the round-out to the touchdown.
    private double HighestAttitude(IEnumerable<Outcome<LandingResult, LandingRefusal>> reports, FlapSetting flaps) => reports
        .SelectMany(report => report.Value.Trajectory)
        .Where(point => point.Stage is LandingStage.HoldOff or LandingStage.Settling)
        .Max(point => Angle.FromRadians(LiftLaws.PitchAttitude(
            -Math.Asin(point.SinkRate / point.Airspeed),
            flaps.Lift.AngleOfAttack(point.LiftCoefficient).Radians,
            _aeroplane.Wing.Incidence.Radians)).Degrees);
}
