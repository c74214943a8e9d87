using System.Runtime.InteropServices;

namespace FlapAero.Equations;

/// <summary>
/// One canonical landing, asked for in 24 plain numbers (SI; the path angle in degrees, as the tables of landings have it).
/// The order of the fields is that of <see cref="LandingColumns.Inputs"/>: a row of a table is this struct's memory.
/// </summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly record struct LandingInput
{
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

    /// <summary>The landing in a row of 24 numbers in the order of the columns.</summary>
    public static LandingInput FromRow(ReadOnlySpan<double> row) => MemoryMarshal.Cast<double, LandingInput>(row)[0];

    /// <summary>The rows of 24 numbers behind a list of landings.</summary>
    public static ReadOnlySpan<double> Rows(ReadOnlySpan<LandingInput> landings) =>
        MemoryMarshal.Cast<LandingInput, double>(landings);
}
