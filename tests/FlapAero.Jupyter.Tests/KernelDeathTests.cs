using System.Diagnostics;
using System.Globalization;

namespace FlapAero.Jupyter.Tests;

/// <summary>A kernel that dies in the middle of a run: the front end says so, and a restart is a fresh start.</summary>
[Collection<UsersOfTheServer>]
[Trait("Speed", "slow")]
public sealed class KernelDeathTests(InstalledJupyter jupyter)
{
    [Fact]
    public async Task Kernel_KilledInTheMiddleOfARun_IsTellingAndStartsAgain()
    {
        await jupyter.SetUpAsync();
        await File.WriteAllTextAsync(Path.Combine(jupyter.FrontEnd.Lessons, "killed.ipynb"), Notebooks.Of(
            ("who", "var kept = 5;\nEnvironment.ProcessId.ToString()"),
            ("long", "System.Threading.Thread.Sleep(600_000);"),
            ("after", "1.5.ToString()"),
            ("forgotten", "kept")), TestContext.Current.CancellationToken);
        try
        {
            await using NotebookPage page = await jupyter.FrontEnd.OpenAsync(await jupyter.FrontEnd.ServerAsync(), "killed.ipynb");
            await page.WaitForKernelAsync();
            await page.AskAsync<object>("Jupyter.notebook.execute_all_cells()");
            await page.WaitAsync("Jupyter.notebook.get_cell(0).output_area.outputs.length > 0");
            string id = await page.AskAsync<string>("Jupyter.notebook.get_cell(0).output_area.outputs[0].data['text/plain']");

            using (Process kernel = Process.GetProcessById(int.Parse(id, CultureInfo.InvariantCulture)))
                kernel.Kill();

            await page.WaitAsync("[...document.querySelectorAll('.modal-dialog')].some(d => d.textContent.includes('appears to have died'))");
            await page.WaitForKernelAsync();
            await page.AskAsync<object>("(document.querySelector('.modal-dialog .btn-primary')?.click(), Jupyter.notebook.execute_cells([2, 3]))");
            await page.WaitAsync("!Jupyter.notebook.kernel_busy && Jupyter.notebook.get_cell(3).output_area.outputs.length > 0");
            Assert.Equal("1.5", await page.AskAsync<string>("Jupyter.notebook.get_cell(2).output_area.outputs[0].data['text/plain']"));
            Assert.StartsWith("What: The name 'kept' does not exist",
                await page.AskAsync<string>("Jupyter.notebook.get_cell(3).output_area.outputs[0].traceback[0]"), StringComparison.Ordinal);
            await page.EndKernelAsync();
        }
        finally
        {
            File.Delete(Path.Combine(jupyter.FrontEnd.Lessons, "killed.ipynb"));
        }
    }
}
