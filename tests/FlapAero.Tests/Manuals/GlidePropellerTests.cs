namespace FlapAero.Tests.Manuals;

/// <summary>The propeller in a manual's glide is counted once, however it was.</summary>
public sealed class GlidePropellerTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Fit_GlideIdlingStoppedOrWithout_GivesTheSameAeroplane(int seed)
    {
        ManualFit[] fits = [.. new[] { "idling", "stopped", "none" }.Select(propeller =>
            ManualFit.Of(Manual.Parse(RandomAeroplane.Of(seed, propeller).Printed, "m")).Value)];

        foreach (string name in (string[])["C_D0", "Oswald factor, flaps up", "C_Lmax, flaps up"])
            foreach (ManualFit other in fits.Skip(1))
            {
                FittedValue first = fits[0].Value(name), second = other.Value(name);
                double together = Math.Sqrt(first.StandardError * first.StandardError + second.StandardError * second.StandardError);
                Assert.InRange((first.Value - second.Value) / together, -2.5, 2.5);
            }
    }

    [Fact]
    public void Manuals_OfOneAeroplane_PrintDifferentGlides() =>
        // Otherwise the test above could not fail: the propeller must cost something.
        Assert.Equal(3, new[] { "idling", "stopped", "none" }.Select(propeller =>
            Manual.Parse(RandomAeroplane.Of(1, propeller).Printed, "m").Content.Glides[0].Ratio!.Number).Distinct().Count());
}
