using System.Globalization;
using System.Reflection;
using System.Text;
using FlapAero.Handouts.Lessons;
using FlapAero.Notebooks;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace FlapAero.Handouts.Kernels;

/// <summary>A fresh C# kernel inside this process. With <see cref="CSharpCells"/> all that knows the kernel's packages.</summary>
public sealed class InteractiveKernel : ILessonKernel
{
    private const string Html = "text/html";

    private readonly CSharpCells _kernel = new();

    private readonly int _cellOutput;

    /// <summary>Makes a kernel.</summary>
    /// <param name="cellOutput">The most characters a cell may put out.</param>
    public InteractiveKernel(int cellOutput = KernelLimits.StandardCellOutput)
    {
        _cellOutput = cellOutput;
        Formatters.KeepKeysApart();
        SchoolBeside.LookForNone();
    }

    /// <summary>What the kernel says while cells run.</summary>
    internal IObservable<KernelEvent> KernelEvents => _kernel.KernelEvents;

    /// <inheritdoc/>
    public void Expect(IReadOnlyList<string> cells) =>
        _kernel.Expect(cells.Select(Submitted).TakeWhile(cell => cell.Fault is null).Select(cell => cell.Code));

    /// <inheritdoc/>
    public async Task<CellResult> RunAsync(string code, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(code);
        (string submitted, string? fault) = Submitted(code);
        if (fault is not null)
            return new CellResult([], fault);
        // The culture travels with the call into the cell: pages must not depend on whose machine makes them.
        CultureInfo culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            using var meter = new OutputMeter(_kernel, _cellOutput);
            // A cell that never ends cannot be stopped from outside, only left behind.
            Task<KernelCommandResult> running = _kernel.RunAsync(submitted, cancellationToken);
            Task ended = await Task.WhenAny(running, meter.Overflow).WaitAsync(cancellationToken).ConfigureAwait(false);
            if (ended == meter.Overflow)
                return new CellResult([], KernelLimits.TooMuch(_cellOutput));
            KernelCommandResult result = await running.ConfigureAwait(false);
            cancellationToken.ThrowIfCancellationRequested();
            return new CellResult(OutputsOf(result.Events), FailureOf(result.Events));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _kernel.Dispose();

    /// <summary>The cell as it is run, or why it cannot be.</summary>
    private static (string Code, string? Fault) Submitted(string code)
    {
        try
        {
            return (WithLoadedAssemblies(code), null);
        }
        catch (HandoutException e)
        {
            return (code, e.Message);
        }
    }

    /// <summary>
    /// A lesson names our assembly by the path that suits a notebook. Here it gets the copy this process runs:
    /// a second copy would have types of its own, and formatters registered for the one would miss the other.
    /// </summary>
    private static string WithLoadedAssemblies(string code)
    {
        if (!code.Contains("#r", StringComparison.Ordinal))
            return code;
        foreach (CellReference reference in CellReference.In(CellNames.Parsed(code)).Reverse())
            if (NameOfOurs(reference) is { } name)
                code = code[..reference.Quoted.Start] + $"\"{PathOf(name)}\"" + code[reference.Quoted.End..];
        return code;
    }

    /// <summary>Our assembly is named by its path, as in the project's lessons, or by its package, as in a student's copy.</summary>
    private static string? NameOfOurs(CellReference reference) =>
        (reference.Package ?? (reference.Assembly is { } file && file.EndsWith(".dll", StringComparison.Ordinal) ? file[..^4] : null)) is { } name
            && name.StartsWith("FlapAero", StringComparison.Ordinal) ? name : null;

    private static string PathOf(string name)
    {
        try
        {
            return Assembly.Load(new AssemblyName(name)).Location;
        }
        catch (IOException e)
        {
            throw new HandoutException($"It asks for {name}.dll, which this command does not carry; lessons reference FlapAero.Notebooks.dll.", e);
        }
    }

    private static List<CellOutput> OutputsOf(IEnumerable<KernelEvent> events)
    {
        var outputs = new List<CellOutput>();
        var console = new StringBuilder();
        void FlushConsole()
        {
            if (console.ToString().Trim().Length > 0)
                outputs.Add(new CellOutput(console.ToString().TrimEnd(), isHtml: false));
            console.Clear();
        }

        foreach (DisplayEvent shown in events.OfType<DisplayEvent>())
        {
            FormattedValue? kept = shown.FormattedValues.FirstOrDefault(v => v.MimeType == KeyOutput.MimeType);
            FormattedValue? value = shown.FormattedValues.FirstOrDefault(v => v.MimeType == Html) ?? shown.FormattedValues.FirstOrDefault(v => v != kept);
            if (value?.Value is not { } text)
                continue;
            if (shown is StandardOutputValueProduced or StandardErrorValueProduced)
            {
                console.Append(text);
                continue;
            }
            FlushConsole();
            outputs.Add(new CellOutput(text, value.MimeType == Html, kept is null ? null : KeyOutput.Parse(kept.Value)));
        }
        FlushConsole();
        return outputs;
    }

    private static string? FailureOf(IReadOnlyList<KernelEvent> events)
    {
        CommandFailed? failed = events.OfType<CommandFailed>().FirstOrDefault();
        if (failed is null)
            return null;
        if (failed.Exception is CompilationErrorException uncompiled)
            return "It does not compile: " + string.Join("; ", uncompiled.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error)
                .Select(d => string.Create(CultureInfo.InvariantCulture, $"line {d.Location.GetLineSpan().StartLinePosition.Line + 1}: {d.GetMessage(CultureInfo.InvariantCulture)}"))
                .Distinct(StringComparer.Ordinal));
        return failed.Exception is { } exception ? WordsOf(exception) : FirstLine(failed.Message);
    }

    private static string WordsOf(Exception exception)
    {
        exception = PlainWords.Innermost(exception);
        Type type = exception.GetType();
        // A refusal of the library's own says everything in its message; any other failure also needs its kind.
        bool ours = IsOurs(type.Assembly);
        string words = PlainWords.Of(exception).ReplaceLineEndings(" ").Trim();
        return ours ? words : $"{words} ({type.Name})";
    }

    private static bool IsOurs(Assembly? assembly) =>
        assembly?.GetName().Name?.StartsWith("FlapAero", StringComparison.Ordinal) == true;

    private static string FirstLine(string text) => text.Split('\n')[0].Trim();

    /// <summary>Counts what a cell puts out while it runs: afterwards would be too late for the memory.</summary>
    private sealed class OutputMeter : IObserver<KernelEvent>, IDisposable
    {
        private readonly TaskCompletionSource _overflow = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly IDisposable _subscription;
        private readonly int _limit;
        private long _count;

        public OutputMeter(CSharpCells kernel, int limit)
        {
            _limit = limit;
            _subscription = kernel.KernelEvents.Subscribe(this);
        }

        public Task Overflow => _overflow.Task;

        public void OnNext(KernelEvent value)
        {
            if (value is DisplayEvent shown && Interlocked.Add(ref _count, shown.FormattedValues.Sum(v => (long)(v.Value?.Length ?? 0))) > _limit)
                _overflow.TrySetResult();
        }

        public void OnCompleted()
        {
        }

        public void OnError(Exception error)
        {
        }

        public void Dispose() => _subscription.Dispose();
    }
}
