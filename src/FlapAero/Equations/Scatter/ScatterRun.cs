using System.Runtime.ExceptionServices;

namespace FlapAero.Equations;

/// <summary>
/// Draws landings and flies them, in blocks of a fixed size: which landings lie side by side in the lanes of a vector depends on
/// their numbers alone, so that neither the number of threads nor their order can be seen in the results.
/// </summary>
internal static class ScatterRun
{
    /// <summary>Landings a block; a multiple of every number of lanes.</summary>
    public const int BlockSize = 128;

    private const int MostLanes = 8;

    /// <summary>Flies landings 0 to <paramref name="count"/> − 1 of a seed.</summary>
    /// <exception cref="RefusedInputException">A landing that cannot be computed; of several, the first.</exception>
    public static LandingOutcome[] Fly(LandingSampler sampler, int count, ulong seed, int threads, LandingVoice? voice = null) =>
        Fly(count, threads, (first, inputs) =>
        {
            for (int i = 0; i < inputs.Length; i++)
                sampler.Draw(new RandomStream(seed, (ulong)(first + i), StreamPurpose.Scatter), out inputs[i]);
        }, voice);

    /// <summary>Fills the inputs of a block whose first landing has the given number.</summary>
    internal delegate void Draw(int first, Span<LandingInput> inputs);

    internal static LandingOutcome[] Fly(int count, int threads, Draw draw, LandingVoice? voice = null)
    {
        // Up to a whole vector, so that a landing does not depend on how many follow it.
        int whole = (count + MostLanes - 1) / MostLanes * MostLanes;
        var outcomes = new LandingOutcome[whole];
        int blocks = (whole + BlockSize - 1) / BlockSize;
        if (threads == 1)
        {
            var room = new LandingInput[BlockSize];
            for (int block = 0; block < blocks; block++)
                FlyBlock(block, room, outcomes, draw, voice);
        }
        else
        {
            InParallel(blocks, threads, outcomes, draw, voice);
        }

        if (whole > count)
            Array.Resize(ref outcomes, count);
        return outcomes;
    }

    /// <summary>Draws a block into room for one, and flies it.</summary>
    internal static void FlyBlock(int block, LandingInput[] room, LandingOutcome[] outcomes, Draw draw, LandingVoice? voice = null)
    {
        int first = block * BlockSize;
        int length = Math.Min(BlockSize, outcomes.Length - first);
        Span<LandingInput> inputs = room.AsSpan(0, length);
        draw(first, inputs);
        try
        {
            LandingSolver.Solve(inputs, outcomes.AsSpan(first, length));
        }
        catch (RefusedInputException)
        {
            // The solver knows a landing by its place in the block, in SI: the same checks say it by its number, in the caller's units.
            for (int i = 0; i < length; i++)
                LandingCheck.Input(inputs[i], first + i, voice);
            for (int i = 0; i < length; i++)
                LandingCheck.Computed(inputs[i], outcomes[first + i], first + i, voice);
            throw;
        }
    }

    private static void InParallel(int blocks, int threads, LandingOutcome[] outcomes, Draw draw, LandingVoice? voice)
    {
        var faults = new Exception?[blocks];
        Parallel.For(
            0, blocks, new ParallelOptions { MaxDegreeOfParallelism = threads },
            () => new LandingInput[BlockSize],
            (block, _, room) =>
            {
                try
                {
                    FlyBlock(block, room, outcomes, draw, voice);
                }
                catch (RefusedInputException fault)
                {
                    faults[block] = fault;
                }

                return room;
            },
            _ => { });
        if (faults.FirstOrDefault(fault => fault is not null) is { } first)
            ExceptionDispatchInfo.Throw(first);
    }
}
