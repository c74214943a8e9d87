using CsCheck;
using FlapAero.Equations;

namespace FlapAero.Tests.Scatter;

/// <summary>The generator against its authors' known answers, and the numbers made of its bits.</summary>
public sealed class PhiloxTests
{
    // Counter, key, block: the three lines of the authors' suite for this generator, from memory and as transcribed by others.
    [Theory]
    [InlineData(0u, 0u, 0u, 0u, 0u, 0u, 0x6627e8d5u, 0xe169c58du, 0xbc57ac4cu, 0x9b00dbd8u)]
    [InlineData(
        0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu,
        0x408f276du, 0x41c83b0eu, 0xa20bc7c6u, 0x6d5451fdu)]
    [InlineData(
        0x243f6a88u, 0x85a308d3u, 0x13198a2eu, 0x03707344u, 0xa4093822u, 0x299f31d0u,
        0xd16cfe09u, 0x94fdccebu, 0x5001e420u, 0x24126ea1u)]
    public void Block_KnownCounters_GiveKnownAnswers(
        uint c0, uint c1, uint c2, uint c3, uint k0, uint k1, uint a, uint b, uint c, uint d) =>
        Assert.Equal((a, b, c, d), Philox.Block(c0, c1, c2, c3, k0, k1));

    [Fact]
    public void Stream_AnySeedLandingAndSlot_LiesBetweenZeroAndOne() =>
        Gen.Select(Gen.ULong, Gen.ULong, Gen.Int[0, 31]).Sample((seed, landing, slot) =>
        {
            double u = new RandomStream(seed, landing, StreamPurpose.Scatter)[slot];
            return u is > 0 and < 1 && 1 - u < 1 && double.IsFinite(StandardNormal.Quantile(u));
        });

    // 52 bits of a block choose a cell, of which the stream gives the middle.
    [Fact]
    public void Stream_IsTheMiddleOfTheCellThatItsBlockChooses()
    {
        (uint high, uint low, _, _) = Philox.Block(9, 2, 5, (uint)StreamPurpose.Bootstrap, 4, 3);
        double cell = high * 1048576.0 + (low >> 12);
        Assert.Equal(Math.ScaleB(2 * cell + 1, -53), new RandomStream((3UL << 32) + 4, (2UL << 32) + 9, StreamPurpose.Bootstrap)[5]);
    }

    [Fact]
    public void Stream_SeedsLandingsSlotsAndPurposes_AllDiffer()
    {
        HashSet<double> seen = [];
        foreach (ulong seed in (ulong[])[0, 1, 1UL << 32])
            foreach (ulong landing in (ulong[])[0, 1, 1UL << 32])
                foreach (int slot in (int[])[0, 1, 23])
                    foreach (StreamPurpose purpose in Enum.GetValues<StreamPurpose>())
                        Assert.True(seen.Add(new RandomStream(seed, landing, purpose)[slot]));
    }

    [Fact]
    public void Stream_OneSlotOverLandings_IsUniformByKolmogorovAndSmirnov()
    {
        const int count = 20_000;
        double[] sorted = [.. Enumerable.Range(0, count).Select(i => new RandomStream(7, (ulong)i, StreamPurpose.Scatter)[10]).Order()];
        Assert.True(Ks.Distance(sorted, u => u) < Ks.Limit(count));
    }

    [Fact]
    public void Stream_TwoSlots_AreUncorrelated()
    {
        const int count = 20_000;
        double[] Slot(int slot) => [.. Enumerable.Range(0, count).Select(i => new RandomStream(7, (ulong)i, StreamPurpose.Scatter)[slot])];
        double correlation = MathNet.Numerics.Statistics.Correlation.Pearson(Slot(9), Slot(10));
        Assert.InRange(correlation, -4 / Math.Sqrt(count), 4 / Math.Sqrt(count));
    }

    [Fact]
    public void SaltelliUniforms_MaskedSlots_ComeFromTheSecondMatrix()
    {
        SaltelliUniforms a = new(3, 5, SaltelliUniforms.First);
        Assert.Equal(new RandomStream(3, 5, StreamPurpose.FirstMatrix)[7], a[7]);
        SaltelliUniforms b = new(3, 5, SaltelliUniforms.Second);
        SaltelliUniforms mixed = new(3, 5, SaltelliUniforms.Mask([2, 23]));
        for (int slot = 0; slot < 24; slot++)
        {
            Assert.NotEqual(a[slot], b[slot]);
            Assert.Equal(slot is 2 or 23 ? b[slot] : a[slot], mixed[slot]);
        }
    }
}
