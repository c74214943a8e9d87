using FlapAero.Handouts.Tests;

namespace FlapAero.Explorer.Tests;

/// <summary>Waits that outlast the browser protocol's own three minutes: on a shared machine a lesson takes longer.</summary>
internal static class TabWaits
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(10);

    /// <summary>What a cell puts out, written in the first that can be written in.</summary>
    public static async Task<string> RunInFirstCellAsync(this Tab tab, string code)
    {
        await tab.Page.EvaluateFunctionAsync("""
            code => {
              const cell = document.querySelector('.run-code:not(:has(textarea[readonly]))');
              delete cell.dataset.ran;
              cell.querySelector('textarea').value = code;
              cell.querySelector('[data-do=run]').click();
            }
            """, code);
        await tab.UntilAsync("document.querySelector('.run-code[data-ran]') !== null");
        return await tab.AskAsync<string>("document.querySelector('.run-code[data-ran] .output').textContent");
    }

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
