using FlapAero.Handouts.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>Waits that outlast the browser protocol's own three minutes: on a shared machine a lesson takes longer.</summary>
internal static class TabWaits
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(10);

    /// <summary>Asks again until an expression is true.</summary>
    public static async Task UntilAsync(this Tab tab, string expression)
    {
        var began = System.Diagnostics.Stopwatch.StartNew();
        while (!await tab.AskAsync<bool>(expression))
        {
            Assert.True(began.Elapsed < Longest, $"after {Longest.TotalMinutes:0} minutes this is not so: {expression}");
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }
    }
}
