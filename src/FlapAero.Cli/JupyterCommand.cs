using System.CommandLine;
using FlapAero.Cli.Jupyter;

namespace FlapAero.Cli;

/// <summary><c>flapaero jupyter</c>: makes the lessons of this checkout open in Jupyter, or takes that back.</summary>
internal static class JupyterCommand
{
    public static Command Create(TextWriter output, TextWriter error, string workingFolder)
    {
        var undo = new Option<bool>("--undo")
        {
            Description = "Takes the kernel out of Jupyter again, and nothing else.",
        };
        var command = new Command("jupyter",
            $"Adds the kernel \"{KernelSpec.DisplayName}\" to your Jupyter: fetches the pinned kernel tool, builds what the lessons reference, "
            + "and tells Jupyter where they are. Needs the network once, and never again. Safe to run again at any time.")
        {
            undo,
        };
        command.SetAction((parsed, cancellationToken) => RunAsync(parsed.GetValue(undo), output, error, workingFolder, cancellationToken));
        return command;
    }

    private static async Task<int> RunAsync(
        bool undo, TextWriter output, TextWriter error, string workingFolder, CancellationToken cancellationToken)
    {
        try
        {
            if (undo)
                await UndoAsync(output, cancellationToken);
            else
                await SetUpAsync(output, workingFolder, cancellationToken);
            return ExitCode.Done;
        }
        catch (SetupException e)
        {
            await error.WriteLineAsync(e.Message);
            return ExitCode.Failed;
        }
    }

    private static async Task SetUpAsync(TextWriter output, string workingFolder, CancellationToken cancellationToken)
    {
        Checkout checkout = Checkout.Above(workingFolder);
        JupyterProgram jupyter = await JupyterProgram.FindAsync(cancellationToken)
            ?? throw new SetupException(JupyterProgram.Missing);
        KernelTool tool = await KernelTool.RestoreAsync(checkout, output, cancellationToken);
        await checkout.BuildLessonAssemblyAsync(output, cancellationToken);
        var spec = new KernelSpec(jupyter.DataFolder);
        spec.Install(tool, checkout.LessonAssemblies);
        await output.WriteLineAsync($"Kernel \"{KernelSpec.DisplayName}\" ({tool.Version}) is set up in {spec.Folder}");
        string notebooks = Path.GetRelativePath(workingFolder, checkout.Notebooks);
        await output.WriteLineAsync($"The lessons in {notebooks} are the instructor's, with the answers. A student opens the notebooks that handouts writes.");
        await output.WriteLineAsync(jupyter.FrontEnd is { } frontEnd
            ? $"Open the lessons with: {frontEnd} {(notebooks.Contains(' ', StringComparison.Ordinal) ? $"\"{notebooks}\"" : notebooks)}"
            : $"Neither Jupyter Notebook nor JupyterLab is installed (pip install notebook); in VS Code open {notebooks} and choose this kernel.");
    }

    private static async Task UndoAsync(TextWriter output, CancellationToken cancellationToken)
    {
        // Jupyter itself may be gone by now; its folder is not.
        string dataFolder = (await JupyterProgram.FindAsync(cancellationToken))?.DataFolder ?? JupyterProgram.UsualDataFolder;
        var spec = new KernelSpec(dataFolder);
        await output.WriteLineAsync(spec.Remove()
            ? $"Kernel \"{KernelSpec.DisplayName}\" is taken out of {spec.Folder}"
            : $"Nothing to undo: there is no kernel in {spec.Folder}");
    }
}
