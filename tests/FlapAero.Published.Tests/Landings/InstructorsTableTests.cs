namespace FlapAero.Published.Tests.Landings;

/// <summary>docs/instructors-table.md says what the model says today, cell by cell, and hides nothing that is not as expected.</summary>
public sealed class InstructorsTableTests
{
    private const string Within = "as expected";

    private static readonly string Document =
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "instructors-table.md")).ReplaceLineEndings("\n");

    /// <summary>The table's lines below its head: what, expected, basis, H4, L2, where it differs.</summary>
    private static IReadOnlyList<string[]> Written { get; } =
    [
        .. Document.Split('\n').Where(line => line.StartsWith('|')).Skip(2)
            .Select(line => line.Trim('|').Split(" | ", StringSplitOptions.TrimEntries)),
    ];

    public static TheoryData<string> Names => [.. InstructorsTable.Rows.Select(row => row.Name)];

    [Theory, MemberData(nameof(Names))]
    public void Row_OfTheDocument_IsWhatTheModelGives(string name)
    {
        InstructorsTable.Row row = Computed(name);
        string[] written = Line(name);
        Assert.Equal(row.Expected, written[1]);
        Assert.Equal(row.Cell(InstructorsTable.H4), written[3]);
        Assert.Equal(row.Cell(InstructorsTable.L2), written[4]);
    }

    // A value that an instructor would not expect has its reason beside it; one that is as expected needs none.
    [Theory, MemberData(nameof(Names))]
    public void Row_NotAsExpected_SaysWhy(string name)
    {
        InstructorsTable.Row row = Computed(name);
        bool expected = row.IsAsExpected(InstructorsTable.H4) && row.IsAsExpected(InstructorsTable.L2);
        string said = Line(name)[5];
        Assert.True(
            expected == (said == Within),
            $"{name}: '{said}' beside {row.Cell(InstructorsTable.H4)} and {row.Cell(InstructorsTable.L2)}.");
        Assert.True(expected || (said.Length > 40 && said.EndsWith('.')), $"{name}: no reason is given.");
    }

    [Fact]
    public void Rows_OfTheDocument_AreAllComputed() =>
        Assert.Equal(InstructorsTable.Rows.Select(row => row.Name), Written.Select(cells => cells[0]));

    [Fact]
    public void Basis_OfEveryRow_IsNamed() => Assert.All(Written, cells => Assert.NotEmpty(cells[2]));

    [Fact]
    public void TailLimit_OfTheFiles_IsTheTables() => Assert.All(
        [InstructorsTable.H4, InstructorsTable.L2], table => Assert.Equal(9, table.TailLimit));

    // Where the document says that the difference leaves what is expected.
    [Fact]
    public void UpAgainstFull_BelowTheExpectation_IsLightAndLowInAStrongHeadwind() => Assert.All(
        [InstructorsTable.H4, InstructorsTable.L2],
        table =>
        {
            var less = InstructorsTable.Conditions.Zip(table.UpAgainstFullOfAll, table.PathOfTheFullFlapLandingOfAll)
                .Where(tried => tried.Second < 35).ToArray();
            Assert.NotEmpty(less);
            Assert.All(less, tried =>
            {
                Assert.True(tried.First is { Mass: <= 0.8, Altitude: <= 4000, Headwind: >= 15 }, $"{tried.First}");
                Assert.InRange(tried.Third, 0.5, 1);
            });
        });

    // Where engine speeds are compared, only the flaps and the speed that goes with them may differ.
    [Fact]
    public void Final_OfBothSettings_IsTheSamePathAtOnePointThreeTimesTheOwnStall() => Assert.All(
        [InstructorsTable.H4, InstructorsTable.L2],
        table => Assert.All([table.Briefing.Flapless.Circuit, table.Briefing.FullFlaps.Circuit!], circuit =>
        {
            SteadyFlight final = circuit.Final.Flight;
            Assert.Equal(LandingPilot.Usual.PathAngle.Degrees, final.GlideAngle.Degrees, 1e-6);
            Assert.Equal(
                1.3, final.Airspeed.Calibrated / final.Configuration.StallSpeed(Air.StandardSeaLevel).Calibrated, 1e-9);
        }));

    private static InstructorsTable.Row Computed(string name) => InstructorsTable.Rows.Single(row => row.Name == name);

    private static string[] Line(string name) => Assert.Single(Written, cells => cells[0] == name);
}
