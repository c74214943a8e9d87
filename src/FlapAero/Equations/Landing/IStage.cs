using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>A stage in the air, or of the roll while throttle or wind still change: its law, and what ends it.</summary>
internal interface IStage<T, TMotion>
    where T : unmanaged, ILanes<T>
    where TMotion : unmanaged, IMotion<TMotion, T>
{
    /// <summary>
    /// Makes as many nodes ready as there are times: what depends on the time alone is worked out here, away from the chain in which each
    /// node waits for the one before, so that the hardware can overlap the costly functions.
    /// </summary>
    void Prepare(ReadOnlySpan<T> times, in Segment<T> segment);

    /// <summary>How the motion changes at a node that is ready.</summary>
    TMotion Rates(int node, TMotion motion);

    /// <summary>Speed over the ground where <see cref="Rates"/> was last asked at a node.</summary>
    T GroundSpeed(int node);

    /// <summary>Negative before the stage ends, zero where it does.</summary>
    T End(int node, in TMotion motion);

    /// <summary>How fast <see cref="End"/> grows.</summary>
    T EndRate(int node, in TMotion motion, in TMotion rates);

    /// <summary>About how much <see cref="End"/> changes where all of the motion is wrong by its own size.</summary>
    T EndSize(in TMotion motion);

    /// <summary>The mask of lanes in which a motion is one that the law is meant for; a step that leaves it is too long.</summary>
    T Sound(int node, in TMotion motion);

    /// <summary>How large an error is, as a share of the motion's own size.</summary>
    T Share(in TMotion error, in TMotion motion);
}

/// <summary>A value for each node of a step.</summary>
[InlineArray(Dop853.Nodes)]
internal struct AtNodes<TValue>
{
    private TValue _first;
}
