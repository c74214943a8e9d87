using System.CommandLine;
using System.CommandLine.Parsing;
using FlapAero.Files;

namespace FlapAero.Cli;

/// <summary>The command as a whole: reads the arguments, calls the subcommand, turns every failure into words and an exit code.</summary>
internal static class CommandLine
{
    public static async Task<int> RunAsync(
        string[] args, TextWriter anyOutput, TextWriter anyError, string workingFolder, CancellationToken cancellationToken)
    {
        using GuardedWriter output = GuardedWriter.Output(anyOutput), error = GuardedWriter.Error(anyError);
        if (FaultOfArgumentFiles(args, workingFolder) is { } unfit)
        {
            await error.WriteLineAsync(unfit);
            return ExitCode.WrongUsage;
        }

        var root = new RootCommand("FlapAero: the approach and landing of a light aeroplane with and without flaps, as lessons.")
        {
            HandoutsCommand.Create(output, error, workingFolder),
            LandingsCommand.Create(output, error, workingFolder),
            JupyterCommand.Create(output, error, workingFolder),
            CheckCommand.Create(output, error, workingFolder),
            NewCommand.Create(output, error, workingFolder),
            ExportCommand.Create(output, error, workingFolder),
            BriefCommand.Create(output, error, workingFolder),
            AeroplaneCommand.Create(output, error, workingFolder),
            LessonKernelCommand.Create(),
        };
        ParseResult parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (ParseError fault in parsed.Errors)
                await error.WriteLineAsync(fault.Message);
            await error.WriteLineAsync("Ask with --help for what is allowed.");
            return ExitCode.WrongUsage;
        }
        var invocation = new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false };
        try
        {
            return await parsed.InvokeAsync(invocation, cancellationToken);
        }
        catch (OperationCanceledException)
        {
            await error.WriteLineAsync("Stopped; nothing was written.");
            return ExitCode.Stopped;
        }
        catch (ClosedOutputException)
        {
            await error.WriteLineAsync("The standard output is closed or full, so nothing can be said there; give the command one that takes text.");
            return ExitCode.WrongUsage;
        }
        catch (Exception e)
        {
            await error.WriteLineAsync($"Unexpected: {e.Message.ReplaceLineEndings(" ")} ({e.GetType().Name})");
            return ExitCode.Failed;
        }
    }

    /// <summary>Options may stand in a file, <c>@flight.txt</c>; the parser reads whatever it is given.</summary>
    private static string? FaultOfArgumentFiles(string[] args, string workingFolder)
    {
        foreach (string file in args.Where(arg => arg.Length > 1 && arg[0] == '@').Select(arg => arg[1..]))
        {
            string path = Path.GetFullPath(file, workingFolder);
            if (OrdinaryFile.Fault(OrdinaryFile.KindOf(path)) is { } fault)
                return $"@{file} is not read: {fault}.";
        }

        return null;
    }
}
