namespace FlapAero.Notebooks.Tests;

/// <summary>Nobody sees what a rehearsal shows, and a kernel's process passes over its faults: here they would be seen.</summary>
public sealed class RehearsalTests
{
    [Fact]
    public void Run_ShowsEverythingWithoutAFault() => Assert.Null(Record.Exception(Rehearsal.Run));
}
