using System.CommandLine;
using System.Runtime.InteropServices;
using FlapAero.Handouts.Kernels;

namespace FlapAero.Cli;

/// <summary>The command as it calls itself to run lessons in processes of their own. Not for people, so not in the help.</summary>
internal static class LessonKernelCommand
{
    private const string Name = "lesson-kernel";

    public static Command Create()
    {
        var command = new Command(Name, "Runs the cells that another flapaero sends.") { Hidden = true };
        command.SetAction(async (_, cancellationToken) =>
        {
            await KernelServer.ServeAsync(cancellationToken);
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary>How to call it: by the runtime that runs this process, whoever started that.</summary>
    public static KernelCommand ToCall()
    {
        string host = OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet";
        string dotnet = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", "..", host));
        string command = typeof(LessonKernelCommand).Assembly.Location;
        return File.Exists(dotnet) ? new KernelCommand(dotnet, ["exec", command, Name]) : new KernelCommand(Environment.ProcessPath!, [Name]);
    }
}
