namespace FlapAero.Tests.Refusals;

/// <summary>What holds for every refusal.</summary>
internal static class RefusalFields
{
    /// <summary>The fields say it all, the message is made of them, and nobody sees the runtime's words or the end of its numbers.</summary>
    public static void Check(RefusedInputException refusal)
    {
        Assert.NotEmpty(refusal.Why);
        Assert.EndsWith(".", refusal.Why, StringComparison.Ordinal);
        string place = refusal.Place.Length == 0 ? "" : refusal.Place + ": ";
        string beside = refusal.Beside.Length == 0 ? "" : " " + refusal.Beside;
        string expected = refusal.Quantity.Length == 0
            ? refusal.Why
            : $"{refusal.Quantity}: {refusal.Given} is refused{beside}; allowed is {refusal.Allowed}. {refusal.Why}";
        Assert.Equal(place + expected, refusal.Message);
        Assert.Equal(refusal.Quantity.Length == 0, refusal.Given.Length == 0);
        Assert.Equal(refusal.Quantity.Length == 0, refusal.Allowed.Length == 0);
        Assert.DoesNotContain("(Parameter", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("e+308", refusal.Message, StringComparison.OrdinalIgnoreCase);
    }
}
