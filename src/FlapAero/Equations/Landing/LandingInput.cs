using System.Runtime.InteropServices;

namespace FlapAero.Equations;

/// <summary>
/// One landing, asked for in plain numbers (SI; the path angle in degrees, as the tables of landings have it). The fields stand in the
/// order of <see cref="LandingVariable"/>, by which <see cref="LandingColumn"/> names them: a row of a table is this struct's memory.
/// </summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly record struct LandingInput
{
    /// <summary>How many numbers.</summary>
    public const int Count = 30;

    /// <summary>A gust that has no strength: were it one, it would begin at the threshold and last five seconds.</summary>
    public const double CalmGustLength = 5;

    public LandingInput()
    {
    }

    public double Mass { get; init; }
    public double WingArea { get; init; }
    public double Span { get; init; }
    public double WingHeight { get; init; }
    public double ZeroLiftDrag { get; init; }
    public double Oswald { get; init; }
    public double MaximumLift { get; init; }
    public double Density { get; init; }
    public double Headwind { get; init; }
    public double ThresholdHeight { get; init; }
    public double ThresholdSpeed { get; init; }
    public double PathAngleDegrees { get; init; }
    public double FlareTimeConstant { get; init; }
    public double HoldOffHeight { get; init; }
    public double TouchdownLiftFraction { get; init; }
    public double PowerCutHeight { get; init; }
    public double PowerCutTime { get; init; }
    public double IdleThrust { get; init; }
    public double NoseHighLift { get; init; }
    public double NoseLowerSpeedFraction { get; init; }
    public double LevelLift { get; init; }
    public double RollingFriction { get; init; }
    public double BrakingFriction { get; init; }
    public double RunwaySlope { get; init; }
    public double GustChange { get; init; }
    public double GustStart { get; init; }
    public double GustLength { get; init; } = CalmGustLength;
    public double IdleThrustSlope { get; init; }
    public double IdleThrustCurvature { get; init; }
    public double SlipDrag { get; init; }

    /// <summary>The landing in a row of numbers in the order of the variables.</summary>
    public static LandingInput FromRow(ReadOnlySpan<double> row) => MemoryMarshal.Cast<double, LandingInput>(row)[0];

    /// <summary>The rows of numbers behind a list of landings.</summary>
    public static ReadOnlySpan<double> Rows(ReadOnlySpan<LandingInput> landings) =>
        MemoryMarshal.Cast<LandingInput, double>(landings);

    /// <summary>The numbers of one landing.</summary>
    public static Span<double> Row(ref LandingInput landing) =>
        MemoryMarshal.Cast<LandingInput, double>(new Span<LandingInput>(ref landing));
}
