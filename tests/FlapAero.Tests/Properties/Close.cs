namespace FlapAero.Tests.Properties;

/// <summary>Equality of computed numbers, relative to their size.</summary>
internal static class Close
{
    public static void To(double expected, double actual, double relative = 1e-12) =>
        Assert.True(
            Math.Abs(actual - expected) <= relative * Math.Max(Math.Abs(expected), 1e-300),
            FormattableString.Invariant($"{actual:r} is not within {relative:g2} of {expected:r}."));
}
