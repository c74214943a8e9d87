using System.Runtime.CompilerServices;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;

namespace FlapAero.KernelStart;

/// <summary>
/// The Tab key: the kernel offers snippets for an editor that fills in arguments, such as Configure($1). Jupyter's does
/// not, and would put in the mark as it stands. So plain names are offered, and only those that begin as what is typed.
/// </summary>
internal sealed class CompletionsAsNames : IObserver<KernelEvent>
{
    public void OnNext(KernelEvent value)
    {
        if (value is not CompletionsProduced produced || value.Command is not RequestCompletions request)
            return;
        string typed = TypedBefore(request.Code, request.LinePosition.Line, request.LinePosition.Character);
        CompletionsOf(produced) =
        [
            .. produced.Completions
                .Where(item => item.DisplayText.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
                .Select(item => item.InsertText?.Contains("$1", StringComparison.Ordinal) == true
                    ? new CompletionItem(item.DisplayText, item.Kind, item.FilterText, item.SortText, item.DisplayText)
                    : item),
        ];
    }

    public void OnCompleted()
    {
    }

    public void OnError(Exception error)
    {
    }

    /// <summary>The part of a name that ends at the cursor; empty behind a dot.</summary>
    private static string TypedBefore(string code, int line, int character)
    {
        string[] lines = code.ReplaceLineEndings("\n").Split('\n');
        string before = line < lines.Length ? lines[line][..Math.Min(character, lines[line].Length)] : "";
        int start = before.Length;
        while (start > 0 && (char.IsLetterOrDigit(before[start - 1]) || before[start - 1] == '_'))
            start--;
        return before[start..];
    }

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "<Completions>k__BackingField")]
    private static extern ref IEnumerable<CompletionItem> CompletionsOf(CompletionsProduced produced);
}
