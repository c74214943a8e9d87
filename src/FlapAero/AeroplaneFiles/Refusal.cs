namespace FlapAero.AeroplaneFiles;

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
        catch (RefusedInputException refused)
        {
            return argument is null || refused.ParamName == argument ? Said(refused) : null;
        }
        catch (ArgumentException foreign)
        {
            return argument is null || foreign.ParamName == argument ? OfWhole(PlainWords.Of(foreign)) : null;
        }
    }

    private static Refusal Said(RefusedInputException refused) => refused.IsOfOneValue
        ? new($"{refused.Quantity} {refused.Verdict}", refused.Permission)
        : OfWhole(refused.Message);

    private static Refusal OfWhole(string why) => new("the model refuses this", why);
}
