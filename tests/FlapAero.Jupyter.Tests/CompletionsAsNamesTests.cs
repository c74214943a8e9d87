using FlapAero.KernelStart;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using LinePosition = Microsoft.DotNet.Interactive.LinePosition;

namespace FlapAero.Jupyter.Tests;

public sealed class CompletionsAsNamesTests
{
    [Theory]
    [InlineData("var one = 1;\naeroplane.Con", "Configure")]
    [InlineData("var one = 1;\naeroplane.con", "Configure")]
    [InlineData("var one = 1;\naeroplane.", "Configure,Mass")]
    public void OnNext_SnippetsOfTheKernel_ArePlainNamesThatBeginAsTyped(string code, string offered)
    {
        var produced = new CompletionsProduced(
            [new CompletionItem("Configure", "Method", insertText: "Configure($1)"), new CompletionItem("Mass", "Property", insertText: "Mass")],
            new RequestCompletions(code, new LinePosition(1, code.Split('\n')[1].Length)));

        new CompletionsAsNames().OnNext(produced);

        Assert.Equal(offered, string.Join(',', produced.Completions.Select(item => item.InsertText)));
    }
}
