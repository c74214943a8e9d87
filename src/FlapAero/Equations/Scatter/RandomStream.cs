namespace FlapAero.Equations;

/// <summary>Numbers between 0 and 1, one for each slot: a stream that is drawn from in any order.</summary>
internal interface IUniforms
{
    /// <summary>The number of a slot, above 0 and below 1.</summary>
    double this[int slot] { get; }
}

/// <summary>What a stream is drawn for; streams of different purposes share no block.</summary>
internal enum StreamPurpose
{
    Scatter = 0,
    FirstMatrix = 1,
    SecondMatrix = 2,
    Bootstrap = 3,
}

/// <summary>
/// The random stream of one landing: the seed is the key of <see cref="Philox"/>, landing, slot and purpose are its counter. An
/// input has a slot of its own, so that its draws stay what they are when another input is made to vary or not.
/// </summary>
internal readonly struct RandomStream(ulong seed, ulong index, StreamPurpose purpose) : IUniforms
{
    private readonly ulong _seed = seed;
    private readonly ulong _index = index;
    private readonly StreamPurpose _purpose = purpose;

    /// <summary>
    /// The midpoint of one of 2⁵² equal cells: with 53 bits the last midpoint would round to 1, where a normal has no quantile.
    /// </summary>
    public double this[int slot]
    {
        get
        {
            (uint high, uint low, _, _) = Philox.Block(
                (uint)_index, (uint)(_index >> 32), (uint)slot, (uint)_purpose, (uint)_seed, (uint)(_seed >> 32));
            ulong cell = (((ulong)high << 32) | low) >> 12;
            return (cell + 0.5) * (1.0 / (1UL << 52));
        }
    }
}
