using System.Collections.Concurrent;

namespace FlapAero.Handouts.Kernels;

/// <summary>Keeps the processes of kernels: one that has run a lesson runs the next sooner than a new one would.</summary>
internal sealed class KernelProcessPool(KernelCommand command, KernelLimits limits) : IDisposable
{
    private readonly ConcurrentBag<KernelProcess> _idle = [];

    /// <summary>A kernel in a process that no other lesson uses meanwhile.</summary>
    public ILessonKernel NewKernel() => new Kernel(this);

    public void Dispose()
    {
        while (_idle.TryTake(out KernelProcess? process))
            process.Dispose();
    }

    private async Task<KernelProcess> TakeAsync(IReadOnlyList<string> expected, CancellationToken cancellationToken)
    {
        while (_idle.TryTake(out KernelProcess? process))
        {
            CellResult fresh = await process.BeginAsync(expected, cancellationToken).ConfigureAwait(false);
            if (fresh.Failure is null)
                return process;
            process.Dispose();
        }
        return await KernelProcess.StartAsync(command, limits, expected, cancellationToken).ConfigureAwait(false);
    }

    private sealed class Kernel(KernelProcessPool pool) : ILessonKernel
    {
        private IReadOnlyList<string> _expected = [];
        private KernelProcess? _process;

        public void Expect(IReadOnlyList<string> cells) => _expected = cells;

        public async Task<CellResult> RunAsync(string code, CancellationToken cancellationToken)
        {
            ArgumentNullException.ThrowIfNull(code);
            _process ??= await pool.TakeAsync(_expected, cancellationToken).ConfigureAwait(false);
            return await _process.RunAsync(code, cancellationToken).ConfigureAwait(false);
        }

        public void Dispose()
        {
            if (_process is { IsSound: true } sound)
                pool._idle.Add(sound);
            else
                _process?.Dispose();
        }
    }
}
