using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>Which gusts make sense, and what is said of those that do not.</summary>
public sealed class GustInputTests
{
    // 60 kt are 30.867 m/s.
    [Theory]
    [InlineData(0, "gust change", "m/s", 30.866, 30.868, "-30.867 m/s to 30.867 m/s. Nobody trains in more.")]
    [InlineData(0, "gust change", "m/s", -30.866, -30.868, "-30.867 m/s to 30.867 m/s. Nobody trains in more.")]
    [InlineData(1, "gust start", "s", 3600, 3601, "-3600 s to 3600 s. A landing is over in minutes.")]
    [InlineData(1, "gust start", "s", -3600, -3601, "-3600 s to 3600 s. A landing is over in minutes.")]
    [InlineData(2, "gust length", "s", 0.2, 0.19, "0.2 s to 3600 s. A shorter one is smaller than the wing.")]
    [InlineData(2, "gust length", "s", 3600, 3601, "0.2 s to 3600 s. A shorter one is smaller than the wing.")]
    public void Fault_ValuesAtAnEdge_AreAllowedOrRefusedInWords(int place, string name, string unit, double allowed, double refused, string range)
    {
        LandingVariable column = LandingVariable.GustChange + place;
        LandingVoice voice = new QuantityVoice(variable => LandingVariables.Kind(variable)?.BaseUnitInfo.Value);
        Assert.Null(LandingCheck.Fault(allowed, column, voice));
        Assert.Equal(
            FormattableString.Invariant($"{name}: {refused:g5} {unit} is refused; allowed is {range}"),
            LandingCheck.Fault(refused, column, voice)!.Message);
        Assert.StartsWith($"{name}: NaN {unit} is refused", LandingCheck.Fault(double.NaN, column, voice)!.Message, StringComparison.Ordinal);
    }
}
