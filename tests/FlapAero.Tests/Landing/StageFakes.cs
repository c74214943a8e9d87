using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>How many steps were tried: each makes all nodes ready once.</summary>
internal sealed class Count
{
    public int Steps { get; private set; }

    public void Prepared(int nodes) => Steps += nodes == Dop853.Nodes ? 1 : 0;
}

/// <summary>V̇ = −k V, until V has fallen to an end.</summary>
internal readonly struct DecayStage<T>(T rate, T end, Count count) : IStage<T, PathMotion<T>>
    where T : unmanaged, ILanes<T>
{
    private readonly T[] _at = new T[Dop853.Nodes];

    public void Prepare(ReadOnlySpan<T> times, in Segment<T> segment) => count.Prepared(times.Length);

    public PathMotion<T> Rates(int node, PathMotion<T> motion)
    {
        _at[node] = motion.Speed;
        return new(0 - rate * motion.Speed);
    }

    public T GroundSpeed(int node) => _at[node];

    public T End(int node, in PathMotion<T> motion) => end - motion.Speed;

    public T EndRate(int node, in PathMotion<T> motion, in PathMotion<T> rates) => 0 - rates.Speed;

    public T EndSize(in PathMotion<T> motion) => motion.Speed;

    public T Sound(int node, in PathMotion<T> motion) => ~(T)0;

    public T Share(in PathMotion<T> error, in PathMotion<T> motion) => T.Abs(error.Speed) / motion.Speed;
}

/// <summary>V̇ = ω cos ωt, so that V = sin ωt; it ends where V has risen to an end.</summary>
internal readonly struct SineStage(double end, double frequency, Count count) : IStage<ScalarLane, PathMotion<ScalarLane>>
{
    private readonly double[] _rates = new double[Dop853.Nodes];

    public void Prepare(ReadOnlySpan<ScalarLane> times, in Segment<ScalarLane> segment)
    {
        for (int i = 0; i < times.Length; i++)
            _rates[i] = frequency * Math.Cos(frequency * times[i].Value);
        count.Prepared(times.Length);
    }

    public PathMotion<ScalarLane> Rates(int node, PathMotion<ScalarLane> motion) => new(_rates[node]);

    public ScalarLane GroundSpeed(int node) => 1;

    public ScalarLane End(int node, in PathMotion<ScalarLane> motion) => motion.Speed - end;

    public ScalarLane EndRate(int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates) => rates.Speed;

    public ScalarLane EndSize(in PathMotion<ScalarLane> motion) => 1;

    public ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) => ScalarLane.True;

    public ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) => Math.Abs(error.Speed.Value);
}

/// <summary>V̇ is the throttle's share of the way to idle.</summary>
internal readonly struct ThrottleStage(Count count) : IStage<ScalarLane, PathMotion<ScalarLane>>
{
    private readonly double[] _closed = new double[Dop853.Nodes];

    public void Prepare(ReadOnlySpan<ScalarLane> times, in Segment<ScalarLane> segment)
    {
        for (int i = 0; i < times.Length; i++)
            _closed[i] = segment.Closed(times[i]).Value;
        count.Prepared(times.Length);
    }

    public PathMotion<ScalarLane> Rates(int node, PathMotion<ScalarLane> motion) => new(_closed[node]);

    public ScalarLane GroundSpeed(int node) => 1;

    public ScalarLane End(int node, in PathMotion<ScalarLane> motion) => -1;

    public ScalarLane EndRate(int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates) => 0;

    public ScalarLane EndSize(in PathMotion<ScalarLane> motion) => 1;

    public ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) => ScalarLane.True;

    public ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) => Math.Abs(error.Speed.Value);
}

/// <summary>V falls evenly, in a law that is meant for V above zero.</summary>
internal readonly struct CollapseStage(Lanes4 slope) : IStage<Lanes4, PathMotion<Lanes4>>
{
    public void Prepare(ReadOnlySpan<Lanes4> times, in Segment<Lanes4> segment)
    {
    }

    public PathMotion<Lanes4> Rates(int node, PathMotion<Lanes4> motion) => new(0 - slope);

    public Lanes4 GroundSpeed(int node) => 1;

    public Lanes4 End(int node, in PathMotion<Lanes4> motion) => -1;

    public Lanes4 EndRate(int node, in PathMotion<Lanes4> motion, in PathMotion<Lanes4> rates) => 0;

    public Lanes4 EndSize(in PathMotion<Lanes4> motion) => 1;

    public Lanes4 Sound(int node, in PathMotion<Lanes4> motion) => Lanes4.Less(0, motion.Speed);

    public Lanes4 Share(in PathMotion<Lanes4> error, in PathMotion<Lanes4> motion) => Lanes4.Abs(error.Speed);
}

/// <summary>Another stage, its steps counted.</summary>
internal readonly struct Counted<TStage>(TStage stage, Count count) : IStage<ScalarLane, PathMotion<ScalarLane>>
    where TStage : struct, IStage<ScalarLane, PathMotion<ScalarLane>>
{
    // In an array, so that what the stage keeps at its nodes is kept.
    private readonly TStage[] _stage = [stage];

    public void Prepare(ReadOnlySpan<ScalarLane> times, in Segment<ScalarLane> segment)
    {
        count.Prepared(times.Length);
        _stage[0].Prepare(times, segment);
    }

    public PathMotion<ScalarLane> Rates(int node, PathMotion<ScalarLane> motion) => _stage[0].Rates(node, motion);

    public ScalarLane GroundSpeed(int node) => _stage[0].GroundSpeed(node);

    public ScalarLane End(int node, in PathMotion<ScalarLane> motion) => _stage[0].End(node, motion);

    public ScalarLane EndRate(int node, in PathMotion<ScalarLane> motion, in PathMotion<ScalarLane> rates) =>
        _stage[0].EndRate(node, motion, rates);

    public ScalarLane EndSize(in PathMotion<ScalarLane> motion) => _stage[0].EndSize(motion);

    public ScalarLane Sound(int node, in PathMotion<ScalarLane> motion) => _stage[0].Sound(node, motion);

    public ScalarLane Share(in PathMotion<ScalarLane> error, in PathMotion<ScalarLane> motion) => _stage[0].Share(error, motion);
}
