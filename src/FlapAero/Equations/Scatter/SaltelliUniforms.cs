namespace FlapAero.Equations;

/// <summary>
/// A row of Saltelli's matrices: the first matrix, A, in which the slots of a mask are taken from the second, B. No slot is A
/// itself, every slot B. Nothing is stored: both matrices are streams.
/// </summary>
internal readonly struct SaltelliUniforms(ulong seed, ulong row, ulong fromSecond) : IUniforms
{
    public const ulong First = 0;
    public const ulong Second = ulong.MaxValue;

    private readonly RandomStream _a = new(seed, row, StreamPurpose.FirstMatrix);
    private readonly RandomStream _b = new(seed, row, StreamPurpose.SecondMatrix);
    private readonly ulong _fromSecond = fromSecond;

    public double this[int slot] => ((_fromSecond >> slot) & 1) == 0 ? _a[slot] : _b[slot];

    /// <summary>The mask of some slots.</summary>
    public static ulong Mask(IEnumerable<int> slots) => slots.Aggregate(0ul, (mask, slot) => mask | (1ul << slot));
}
