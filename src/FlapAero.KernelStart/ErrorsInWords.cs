using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;
using Diagnostic = Microsoft.DotNet.Interactive.Diagnostic;

namespace FlapAero.KernelStart;

/// <summary>
/// Puts the words for a student in place of compiler lines and stacks. It is the first to see each of the kernel's
/// events, and changes the event itself: what reads it next tells Jupyter.
/// </summary>
internal sealed class ErrorsInWords : IObserver<KernelEvent>
{
    private IReadOnlyCollection<Diagnostic> _faults = [];

    public void OnNext(KernelEvent value)
    {
        if (value is CodeSubmissionReceived)
            _faults = [];
        else if (value is DiagnosticsProduced produced && value.Command is SubmitCode)
            HoldBack(produced);
        else if (value is CommandFailed failed && failed.Command is SubmitCode cell)
            Reword(failed, cell.Code);
    }

    public void OnCompleted()
    {
    }

    public void OnError(Exception error)
    {
    }

    private void HoldBack(DiagnosticsProduced produced)
    {
        _faults = [.. produced.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error)];
        // Warnings of the compiler are for authors of libraries, not for students.
        FormattedOf(produced) = [];
    }

    private void Reword(CommandFailed failed, string code)
    {
        failed.Message = _faults.Count > 0
            ? ErrorWords.OfCompiler(_faults, code)
            : ErrorWords.Of(failed.Exception, failed.Message, code);
        ExceptionOf(failed) = null;
        _faults = [];
    }

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "<FormattedDiagnostics>k__BackingField")]
    private static extern ref IReadOnlyCollection<FormattedValue> FormattedOf(DiagnosticsProduced produced);

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "<Exception>k__BackingField")]
    private static extern ref Exception? ExceptionOf(CommandFailed failed);
}
