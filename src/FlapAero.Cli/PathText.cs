using System.CommandLine;
using System.CommandLine.Parsing;

namespace FlapAero.Cli;

/// <summary>Paths as arguments: an empty one, as of a shell's variable that is not set, is refused before anything is done.</summary>
internal static class PathText
{
    public static void NotEmpty(params Option[] options)
    {
        foreach (Option option in options) option.Validators.Add(result => Check(result.Tokens, option.Name, result.AddError));
    }

    public static void NotEmpty(Argument argument) =>
        argument.Validators.Add(result => Check(result.Tokens, argument.Name, result.AddError));

    private static void Check(IReadOnlyList<Token> tokens, string name, Action<string> refuse)
    {
        if (tokens.Any(token => string.IsNullOrWhiteSpace(token.Value)))
            refuse($"{name} is empty; allowed is the path of a file or folder.");
    }
}
