namespace FlapAero.Handouts.Tests;

/// <summary>Cells write to the process's console and register formatters for it: whatever runs side by side, one kernel does at a time.</summary>
internal sealed class KernelTurn : IDisposable
{
    private static readonly SemaphoreSlim Free = new(1, 1);

    private KernelTurn()
    {
    }

    /// <summary>Waits until no other test runs cells in this process.</summary>
    public static async Task<KernelTurn> TakeAsync()
    {
        await Free.WaitAsync(TestContext.Current.CancellationToken);
        return new KernelTurn();
    }

    public void Dispose() => Free.Release();
}
