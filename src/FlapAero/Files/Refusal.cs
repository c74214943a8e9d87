namespace FlapAero.Files;

/// <summary>
/// A constructor's refusal in a file's words. The ranges live in the constructors alone; a value is tried in the part of
/// the model that it is made for, the rest of which is a <see cref="StandIn"/>.
/// </summary>
internal sealed record Refusal(string Problem, string Expected)
{
    /// <summary>What a constructor says against one argument; none where it takes it, or stumbles over another.</summary>
    /// <param name="make">Calls the constructor.</param>
    /// <param name="argument">The argument's name; any where none is given.</param>
    public static Refusal? Of(Func<object> make, string? argument = null)
    {
        try
        {
            make();
            return null;
        }
        catch (ArgumentException refused)
        {
            return argument is null || refused.ParamName == argument ? Said(refused) : null;
        }
    }

    private static Refusal Said(ArgumentException refused)
    {
        // The runtime adds its own name for the argument, which a reader of the file has never seen.
        int parameter = refused.Message.LastIndexOf(" (Parameter '", StringComparison.Ordinal);
        string message = parameter < 0 ? refused.Message : refused.Message[..parameter];
        return message.Split("; ", 2) is [var problem, var expected]
            ? new Refusal(problem.Replace(": ", " ", StringComparison.Ordinal), expected)
            : new Refusal("the model refuses this", message);
    }
}
