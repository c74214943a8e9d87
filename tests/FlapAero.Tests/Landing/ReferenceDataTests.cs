namespace FlapAero.Tests;

/// <summary>That no landing of the reference files is left out.</summary>
public sealed class ReferenceDataTests
{
    [Fact]
    public void Cases_Counted_AreAllOfTheFile() => Assert.Equal(60, ReferenceLandings.Cases.Count);

    [Fact]
    public void Refusals_Counted_AreAllOfTheFile() => Assert.Equal(21, ReferenceLandings.Refusals.Count);
}
