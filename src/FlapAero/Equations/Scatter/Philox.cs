using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// The counter-based generator Philox4x32-10: a block of random bits is a function of a counter and a key, and nothing is kept
/// between two blocks. Ours because neither .NET nor MathNet.Numerics has a generator that can be asked for the numbers of
/// landing 7 312 without having drawn those before it. Source: J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, "Parallel
/// Random Numbers: As Easy as 1, 2, 3", SC '11, 2011.
/// </summary>
internal static class Philox
{
    private const int Rounds = 10;
    private const uint FirstMultiplier = 0xD2511F53;
    private const uint SecondMultiplier = 0xCD9E8D57;
    private const uint FirstWeyl = 0x9E3779B9;
    private const uint SecondWeyl = 0xBB67AE85;

    /// <summary>128 random bits as four words.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static (uint A, uint B, uint C, uint D) Block(uint c0, uint c1, uint c2, uint c3, uint k0, uint k1)
    {
        for (int round = 0; round < Rounds; round++)
        {
            ulong first = (ulong)FirstMultiplier * c0;
            ulong second = (ulong)SecondMultiplier * c2;
            (c0, c1, c2, c3) = ((uint)(second >> 32) ^ c1 ^ k0, (uint)second, (uint)(first >> 32) ^ c3 ^ k1, (uint)first);
            k0 = unchecked(k0 + FirstWeyl);
            k1 = unchecked(k1 + SecondWeyl);
        }

        return (c0, c1, c2, c3);
    }
}
