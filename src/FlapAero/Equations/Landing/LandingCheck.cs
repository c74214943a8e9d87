using System.Globalization;

namespace FlapAero.Equations;

/// <summary>Which landings make sense at all. What physics refuses is not here: that is an outcome.</summary>
internal static class LandingCheck
{
    private const string NoSuchBody = "No aeroplane and no air have it otherwise.";
    internal const int NoRow = -1;

    // By column: a low edge, whether the edge itself is allowed, a high edge that is not, and why.
    private static readonly (double Low, bool Included, double High, string Why)?[] Bounds =
    [
        (0, false, double.PositiveInfinity, NoSuchBody),
        (0, false, double.PositiveInfinity, NoSuchBody),
        (0, false, double.PositiveInfinity, NoSuchBody),
        (0, false, double.PositiveInfinity, "The ground effect needs the wing above its wheels."),
        (0, true, double.PositiveInfinity, NoSuchBody),
        (0, false, double.PositiveInfinity, NoSuchBody),
        (0, false, double.PositiveInfinity, NoSuchBody),
        (0, false, double.PositiveInfinity, NoSuchBody),
        null,
        (0, false, double.PositiveInfinity, "The landing begins above the runway."),
        (0, false, double.PositiveInfinity, "The landing begins in flight."),
        (0, false, 90, "The path goes down, and not straight down."),
        (0, false, double.PositiveInfinity, "The sink dies away over it."),
        (0, false, double.PositiveInfinity, "The hold-off is flown above the runway."),
        (0, false, 1, "A share of the lift before the stall: none is no flight, all of it is the stall."),
        null,
        (0, true, double.PositiveInfinity, "The throttle takes a while to close, or none."),
        null,
        null,
        (0, false, 1, "A share of the touchdown speed: the nose comes down after the touchdown and before the stop."),
        null,
        (0, true, double.PositiveInfinity, "Friction does not push."),
        (0, true, double.PositiveInfinity, "Friction does not push."),
        null,
    ];

    /// <summary>Refuses an input that makes no sense; <paramref name="row"/> is its place among many, from 0.</summary>
    /// <exception cref="ArgumentException">It names the input, its value, what is allowed and why.</exception>
    public static void Input(in LandingInput input, int row = NoRow)
    {
        ReadOnlySpan<double> values = LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input));
        for (int i = 0; i < values.Length; i++)
        {
            if (!IsAllowed(values[i], i))
                throw Refused(row, Fault(values[i], i)!, i);
        }

        if (!(input.ThresholdSpeed > input.Headwind))
            throw Refused(row, BelowWind(input), 10);
        if (!HasPath(input))
            throw Refused(row, NoPath(input), 11);
    }

    /// <summary>Whether <see cref="Input"/> would let a landing pass.</summary>
    public static bool MakesSense(in LandingInput input)
    {
        ReadOnlySpan<double> values = LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input));
        for (int i = 0; i < values.Length; i++)
        {
            if (!IsAllowed(values[i], i))
                return false;
        }

        return FaultOfWhole(input) is null;
    }

    /// <summary>What is wrong with a landing, without an exception; null where nothing is.</summary>
    public static string? FaultOfWhole(in LandingInput input) =>
        !(input.ThresholdSpeed > input.Headwind) ? BelowWind(input) : !HasPath(input) ? NoPath(input) : null;

    /// <summary>What is wrong with a value of a column; null where nothing is.</summary>
    public static string? Fault(double value, int column)
    {
        if (IsAllowed(value, column))
            return null;
        string allowed = Bounds[column] is not { } bounds
            ? "a finite number"
            : (bounds.Included, double.IsFinite(bounds.High)) switch
            {
                (true, _) => $"a finite number, {Number(bounds.Low)} or more",
                (false, false) => $"a finite number above {Number(bounds.Low)}",
                (false, true) => $"above {Number(bounds.Low)} and below {Number(bounds.High)}",
            };
        string why = Bounds[column]?.Why ?? "Nothing can be computed from it.";
        return $"{LandingColumns.Inputs[column]}: {Number(value)} is refused; allowed is {allowed}. {why}";
    }

    /// <summary>Refuses a landing whose numbers left what can be computed: finite, but of no aeroplane.</summary>
    /// <exception cref="ArgumentException">A result is not a finite number although nothing refused the landing.</exception>
    public static void Computed(in LandingInput input, in LandingOutcome outcome, int row = NoRow)
    {
        if (outcome.Refusal != LandingRefusal.None)
            return;
        ReadOnlySpan<double> results = LandingOutcome.Results(outcome);
        for (int i = 0; i < results.Length; i++)
        {
            if (double.IsFinite(results[i]))
                continue;
            throw new ArgumentException(string.Create(
                CultureInfo.InvariantCulture,
                $"{At(row)}{LandingColumns.Results[i]} cannot be computed (mass {input.Mass:g5} kg, wing area {input.WingArea:g5} m², density {input.Density:g5} kg/m³, threshold speed {input.ThresholdSpeed:g5} m/s): the numbers are finite, but together they are of no aeroplane, and the speed collapses or the arithmetic overflows."));
        }
    }

    private static bool IsAllowed(double value, int column)
    {
        if (!double.IsFinite(value))
            return false;
        return Bounds[column] is not { } bounds
            || ((value > bounds.Low || (bounds.Included && value == bounds.Low)) && value < bounds.High);
    }

    private static bool HasPath(in LandingInput input)
    {
        double slope = Math.Tan(input.PathAngleDegrees * Math.PI / 180);
        double speed = input.ThresholdSpeed * Math.Sqrt(1 + slope * slope);
        return Math.Abs(input.Headwind) * slope < speed;
    }

    private static string BelowWind(in LandingInput input) =>
        $"threshold_speed: {Number(input.ThresholdSpeed)} is refused; allowed is more than the headwind, {Number(input.Headwind)}. Against a faster wind the aeroplane flies backwards.";

    private static string NoPath(in LandingInput input) =>
        $"path_angle_deg: {Number(input.PathAngleDegrees)} is refused with headwind {Number(input.Headwind)} and threshold_speed {Number(input.ThresholdSpeed)}; allowed is an angle at which the airspeed can make the path over the ground. With so much tailwind no flight path through the air does.";

    private static ArgumentException Refused(int row, string fault, int column) =>
        new($"{At(row)}{fault}", LandingColumns.Inputs[column]);

    private static string At(int row) => row == NoRow ? "" : string.Create(CultureInfo.InvariantCulture, $"Landing {row + 1}: ");

    private static string Number(double value) => value.ToString("g6", CultureInfo.InvariantCulture);
}
