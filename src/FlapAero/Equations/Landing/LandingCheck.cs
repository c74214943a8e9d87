using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>Which landings make sense at all. What physics refuses is not here: that is an outcome.</summary>
internal static class LandingCheck
{
    internal const int NoRow = -1;

    /// <summary>Refuses an input that makes no sense; <paramref name="row"/> is its place among many, from 0.</summary>
    /// <exception cref="RefusedInputException">It names the input, its value, what is allowed and why.</exception>
    public static void Input(in LandingInput input, int row = NoRow, LandingVoice? voice = null)
    {
        int outside = FirstOutside(input);
        if (outside >= 0)
            throw Fault(LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input))[outside], (LandingVariable)outside, voice, row)!;
        if (FaultOfWhole(input, voice, row) is { } fault)
            throw fault;
    }

    /// <summary>Whether <see cref="Input"/> would let a landing pass.</summary>
    public static bool MakesSense(in LandingInput input) => FirstOutside(input) < 0 && FaultOfWhole(input) is null;

    /// <summary>All that is wrong with a landing, by the input; where each is inside its bounds, whether they go together.</summary>
    public static Dictionary<LandingVariable, RefusedInputException> Faults(in LandingInput input, LandingVoice voice)
    {
        Dictionary<LandingVariable, RefusedInputException> faults = [];
        ReadOnlySpan<double> values = LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input));
        foreach (LandingColumn column in LandingColumn.All)
        {
            if (Fault(values[(int)column.Variable], column.Variable, voice) is { } fault)
                faults.Add(column.Variable, fault);
        }

        if (faults.Count == 0 && FaultOfWhole(input, voice) is { } whole)
            faults.Add(input.ThresholdSpeed > input.Headwind ? LandingVariable.PathAngle : LandingVariable.ThresholdSpeed, whole);
        return faults;
    }

    /// <summary>What is wrong with a landing, without throwing it; null where nothing is.</summary>
    public static RefusedInputException? FaultOfWhole(in LandingInput input, LandingVoice? voice = null, int row = NoRow) =>
        input.ThresholdSpeed > input.Headwind && HasPath(input) ? null : Apart(input, voice ?? LandingVoice.OfTables, row);

    /// <summary>What is wrong with a value of an input, without throwing it; null where nothing is.</summary>
    public static RefusedInputException? Fault(double value, LandingVariable variable, LandingVoice? voice = null, int row = NoRow)
    {
        LandingBounds bounds = LandingColumn.Of(variable).Bounds;
        if (bounds.Allow(value))
            return null;
        voice ??= LandingVoice.OfTables;
        return Refused(variable, value, bounds.Words(variable, voice), bounds.Why, voice, row);
    }

    /// <summary>Refuses a landing whose numbers left what can be computed: finite, but of no aeroplane.</summary>
    /// <exception cref="RefusedInputException">
    /// A result is not a finite number although nothing refused the landing.
    /// </exception>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Computed(in LandingInput input, in LandingOutcome outcome, int row = NoRow, LandingVoice? voice = null)
    {
        if (outcome.Refusal != LandingRefusal.None)
            return;
        ReadOnlySpan<double> results = LandingOutcome.Results(outcome);
        for (int i = 0; i < results.Length; i++)
        {
            if (!double.IsFinite(results[i]))
                throw Uncomputed(input, i, row, voice ?? LandingVoice.OfTables);
        }
    }

    private static RefusedInputException Uncomputed(in LandingInput input, int result, int row, LandingVoice voice)
    {
        string mass = voice.Shown(LandingVariable.Mass, input.Mass);
        string area = voice.Shown(LandingVariable.WingArea, input.WingArea);
        string density = voice.Shown(LandingVariable.Density, input.Density);
        string speed = voice.Shown(LandingVariable.ThresholdSpeed, input.ThresholdSpeed);
        return RefusedInputException.OfWhole(
            null,
            $"{voice.Result(result)} cannot be computed (mass {mass}, wing area {area}, density {density}, threshold speed "
            + $"{speed}): the numbers are finite, but together they are of no aeroplane, and the speed collapses or the "
            + "arithmetic overflows.",
            place: At(row));
    }

    /// <summary>Which value is the first outside its bounds; −1 where none is.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static int FirstOutside(in LandingInput input)
    {
        ReadOnlySpan<double> values = LandingInput.Rows(new ReadOnlySpan<LandingInput>(in input));
        for (int i = 0; i < values.Length; i++)
        {
            if (!LandingColumn.All[i].Bounds.Allow(values[i]))
                return i;
        }

        return -1;
    }

    /// <summary>Whether the airspeed makes up for what the wind has across the path.</summary>
    private static bool HasPath(in LandingInput input) =>
        Math.Abs(input.Headwind) * Math.Sin(input.PathAngleDegrees * Math.PI / 180) < input.ThresholdSpeed;

    /// <summary>In what way the numbers do not go together; apart, so that the question itself stays small.</summary>
    private static RefusedInputException Apart(in LandingInput input, LandingVoice voice, int row)
    {
        string wind = voice.Value(LandingVariable.Headwind, input.Headwind);
        if (!(input.ThresholdSpeed > input.Headwind))
            return Refused(
                LandingVariable.ThresholdSpeed, input.ThresholdSpeed, $"more than the headwind, {wind}",
                "Against a faster wind the aeroplane flies backwards.", voice, row);
        string speed = voice.Value(LandingVariable.ThresholdSpeed, input.ThresholdSpeed);
        return Refused(
            LandingVariable.PathAngle, input.PathAngleDegrees, "an angle at which the airspeed can make the path over the ground",
            "With so much tailwind no flight path through the air does.", voice, row,
            $"with headwind {wind} and {voice.Input(LandingVariable.ThresholdSpeed)} {speed}");
    }

    private static RefusedInputException Refused(
        LandingVariable variable, double value, string allowed, string why, LandingVoice voice, int row,
        string beside = "") =>
        RefusedInputException.Of(
            voice.Argument(variable), voice.Input(variable), voice.Value(variable, value), allowed, why,
            voice.Actual(variable, value), beside, At(row));

    private static string At(int row) => row == NoRow ? "" : FormattableString.Invariant($"Landing {row + 1}");
}
