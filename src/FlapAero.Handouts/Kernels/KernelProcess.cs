using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace FlapAero.Handouts.Kernels;

/// <summary>
/// The command's end of a kernel's process. What a cell may do there, such as never ending, ends that process and not the command.
/// </summary>
internal sealed class KernelProcess : IDisposable
{
    /// <summary>Of what the process says on its way out, the first lines say why; the rest is a stack.</summary>
    private const int KeptWords = 400;

    /// <summary>How the runtime begins a line of a stack.</summary>
    private const string StackLine = "   at ";

    /// <summary>JSON may write a character in six.</summary>
    private const int BytesPerCharacter = 6;

    private static readonly TimeSpan StartLimit = TimeSpan.FromSeconds(120);

    private readonly Process _process;
    private readonly KernelLimits _limits;
    private readonly System.Text.StringBuilder _lastWords = new();
    private bool _isInStack;

    private KernelProcess(Process process, KernelLimits limits)
    {
        _process = process;
        _limits = limits;
        process.ErrorDataReceived += (_, line) => Keep(line.Data);
        process.BeginErrorReadLine();
    }

    /// <summary>Whether the process waits for a cell; after any failure of its own it does not.</summary>
    public bool IsSound { get; private set; }

    /// <summary>Starts a process and waits until it can run cells, these being expected.</summary>
    public static async Task<KernelProcess> StartAsync(
        KernelCommand command, KernelLimits limits, IReadOnlyList<string> expected, CancellationToken cancellationToken)
    {
        var start = new ProcessStartInfo(command.Program)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
            CreateNoWindow = true,
            // So short a life is spent compiling. Warm code is compiled once more only where it stays hot, a second after the last new code;
            // code is written where it runs (cells may run anything, there is nothing to guard); what the compiler of cells
            // drops is collected rarely and in one go. Numbers are hexadecimal. Nobody debugs it: what the runtime lays into the
            // temporary folder for a debugger stays behind where a process is killed, as this one mostly is.
            Environment =
            {
                ["DOTNET_TieredPGO"] = "0", ["DOTNET_TC_CallCountingDelayMs"] = "3E8", ["DOTNET_EnableWriteXorExecute"] = "0",
                ["DOTNET_GCgen0size"] = "4000000", ["DOTNET_gcConcurrent"] = "0",
                ["DOTNET_EnableDiagnostics"] = "0",
            },
        };
        foreach (string argument in command.Arguments)
            start.ArgumentList.Add(argument);
        KernelProcess started;
        try
        {
            started = new KernelProcess(Process.Start(start)!, limits);
        }
        catch (Win32Exception e)
        {
            throw new HandoutException($"The process that runs lessons ({command.Program}) does not start: {e.Message}.", e);
        }
        try
        {
            await started.GreetAsync(expected, cancellationToken).WaitAsync(StartLimit, cancellationToken).ConfigureAwait(false);
            started.IsSound = true;
            return started;
        }
        catch (Exception e)
        {
            string words = started.LastWords();
            started.Dispose();
            throw e is OperationCanceledException or HandoutException ? e : new HandoutException(
                $"The process that runs lessons did not start in order: {(words.Length > 0 ? words : e.Message)}. Build the command again.", e);
        }
    }

    /// <summary>Makes the kernel a fresh one that expects cells.</summary>
    public Task<CellResult> BeginAsync(IReadOnlyList<string> expected, CancellationToken cancellationToken) =>
        AnswerAsync(new KernelMessages.Request(null, expected), StartLimit, cancellationToken);

    /// <summary>Runs a cell.</summary>
    public Task<CellResult> RunAsync(string code, CancellationToken cancellationToken) =>
        AnswerAsync(new KernelMessages.Request(code, []), _limits.CellTime, cancellationToken);

    private async Task<CellResult> AnswerAsync(KernelMessages.Request request, TimeSpan limit, CancellationToken cancellationToken)
    {
        IsSound = false;
        using var late = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        late.CancelAfter(limit);
        try
        {
            KernelMessages.Reply reply = await AskAsync(request, late.Token).WaitAsync(late.Token).ConfigureAwait(false);
            IsSound = reply.Failure is null;
            return new CellResult([.. reply.Outputs.Select(o => o.ToCellOutput())], reply.Failure);
        }
        catch (OperationCanceledException) when (!cancellationToken.IsCancellationRequested)
        {
            return new CellResult([], _limits.TooLong);
        }
        catch (InvalidDataException)
        {
            return new CellResult([], "It wrote to the process's own output, past the console; write with Console.Write or return a value.");
        }
        catch (IOException)
        {
            return new CellResult([], EndedWords());
        }
    }

    /// <summary>Ends the process, whatever it is doing.</summary>
    public void Dispose()
    {
        try
        {
            _process.Kill(entireProcessTree: true);
            _process.WaitForExit(TimeSpan.FromSeconds(5));
        }
        catch (Exception e) when (e is InvalidOperationException or Win32Exception)
        {
            // It has ended already.
        }
        _process.Dispose();
    }

    private async Task GreetAsync(IReadOnlyList<string> expected, CancellationToken cancellationToken)
    {
        Stream input = _process.StandardInput.BaseStream;
        await KernelMessages.WriteAsync(input, new KernelMessages.Hello(KernelMessages.Build, _limits.CellOutput), cancellationToken).ConfigureAwait(false);
        KernelMessages.Hello there = await KernelMessages.ReadAsync<KernelMessages.Hello>(_process.StandardOutput.BaseStream, 1000, cancellationToken).ConfigureAwait(false);
        if (there.Build != KernelMessages.Build)
            throw new HandoutException("The command was built anew while it was running; call it again.");
        await AskAsync(new KernelMessages.Request(null, expected), cancellationToken).ConfigureAwait(false);
    }

    private async Task<KernelMessages.Reply> AskAsync(KernelMessages.Request request, CancellationToken cancellationToken)
    {
        await KernelMessages.WriteAsync(_process.StandardInput.BaseStream, request, cancellationToken).ConfigureAwait(false);
        return await KernelMessages.ReadAsync<KernelMessages.Reply>(
            _process.StandardOutput.BaseStream, Math.Max(1_000_000, checked(_limits.CellOutput * BytesPerCharacter)), cancellationToken).ConfigureAwait(false);
    }

    private string EndedWords()
    {
        string code = _process.WaitForExit(TimeSpan.FromSeconds(5))
            ? string.Create(CultureInfo.InvariantCulture, $" (exit code {_process.ExitCode})") : "";
        string words = LastWords();
        return $"It ended the process that runs the lesson{code}{(words.Length > 0 ? ": " + words : ".")}";
    }

    /// <summary>What the process said before its stack, if it said anything.</summary>
    private string LastWords()
    {
        lock (_lastWords)
            return _lastWords.ToString().Trim();
    }

    private void Keep(string? line)
    {
        lock (_lastWords)
        {
            _isInStack |= line?.StartsWith(StackLine, StringComparison.Ordinal) == true;
            if (line is { Length: > 0 } && !_isInStack && _lastWords.Length < KeptWords)
                _lastWords.Append(line.Trim()).Append(' ');
        }
    }
}
