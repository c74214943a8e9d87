using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Which gusts make sense, and what is said of those that do not.</summary>
public sealed class GustInputTests
{
    // 60 kt are 30.867 m/s.
    [Theory]
    [InlineData(0, "gust change", 30.866, 30.868, "-30.867 to 30.867. Nobody trains in more.")]
    [InlineData(0, "gust change", -30.866, -30.868, "-30.867 to 30.867. Nobody trains in more.")]
    [InlineData(1, "gust start", 3600, 3601, "-3600 to 3600. A landing is over in minutes.")]
    [InlineData(1, "gust start", -3600, -3601, "-3600 to 3600. A landing is over in minutes.")]
    [InlineData(2, "gust length", 0.2, 0.19, "0.2 to 3600. A shorter one is smaller than the wing.")]
    [InlineData(2, "gust length", 3600, 3601, "0.2 to 3600. A shorter one is smaller than the wing.")]
    public void Fault_ValuesAtAnEdge_AreAllowedOrRefusedInWords(int place, string name, double allowed, double refused, string range)
    {
        Assert.Null(GustInput.Fault(allowed, place));
        Assert.Equal(FormattableString.Invariant($"{name}: {refused:g6} is refused; allowed is {range}"), GustInput.Fault(refused, place));
        Assert.StartsWith($"{name}: NaN is refused", GustInput.Fault(double.NaN, place), StringComparison.Ordinal);
    }
}
