using System.Runtime.InteropServices;

namespace FlapAero.Equations;

/// <summary>
/// What became of one canonical landing, SI. The first 13 fields are the columns of <see cref="ResultColumns"/>; in a
/// refused landing those that were not reached are NaN and none of them is a result.
/// </summary>
[StructLayout(LayoutKind.Sequential)]
internal record struct LandingOutcome
{
    public double ApproachThrust;
    public double FlareHeight;
    public double FlareStartDistance;
    public double FlareStartSpeed;
    public double HoldOffEndDistance;
    public double HoldOffEndSpeed;
    public double TouchdownDistance;
    public double TouchdownSpeed;
    public double TouchdownSink;
    public double TouchdownTime;
    public double NoseLowerDistance;
    public double StopDistance;
    public double StopTime;

    /// <summary>When the stages end, s from the threshold; the settling ends at <see cref="TouchdownTime"/>.</summary>
    public double FlareStartTime;
    public double HoldOffEndTime;
    public double HoldOffEndHeight;
    public double NoseLowerTime;

    /// <summary>Why the landing was refused, and the two values that show it.</summary>
    public LandingRefusal Refusal;
    public double Shown;
    public double Limit;

    /// <summary>The 13 results in the order of the columns.</summary>
    public static ReadOnlySpan<double> Results(in LandingOutcome outcome) =>
        MemoryMarshal.CreateReadOnlySpan(in outcome.ApproachThrust, ResultColumns.Count);

    public static LandingOutcome Unreached
    {
        get
        {
            LandingOutcome outcome = default;
            MemoryMarshal.CreateSpan(ref outcome.ApproachThrust, ResultColumns.Count + 4).Fill(double.NaN);
            return outcome;
        }
    }

    public void Refuse(LandingRefusal refusal, double shown, double limit) => (Refusal, Shown, Limit) = (refusal, shown, limit);

    /// <summary>Refuses the landings of a mask.</summary>
    public static void Refuse<T>(Span<LandingOutcome> outcomes, T mask, LandingRefusal refusal, T shown, T limit)
        where T : unmanaged, ILanes<T>
    {
        for (int i = 0; i < T.Count; i++)
        {
            if (double.IsNaN(mask[i]))
                outcomes[i].Refuse(refusal, shown[i], limit[i]);
        }
    }
}
