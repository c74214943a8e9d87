using UnitsNet;

namespace FlapAero.Notebooks.Tests;

/// <summary>A lesson of a school: its rules, the words for them, and the file beside the notebook.</summary>
public sealed class SchoolTests : IDisposable
{
    private const string Rules = """
        { "name": "A", "units": "si", "rules": { "referenceMultiples": { "flapsUp": 1.4, "fullFlaps": 1.25 }, "bankLimit": "15 deg",
          "thresholdHeight": "12 m", "headwindShare": 0.4, "gusts": { "share": 0.6, "most": "7 kt" } } }
        """;

    private static readonly Lesson OfSchool = Lesson.Begin(school: School.Parse(Rules, "school.json")), Usual = Lesson.Begin();

    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-school-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Begin_School_FliesItsRulesInItsUnits()
    {
        Configuration up = OfSchool.Aeroplane.WithFlapsUp(), full = OfSchool.Aeroplane.WithFullFlap();

        Assert.Equal(DisplayUnits.SI, OfSchool.Units);
        Assert.Equal(DisplayUnits.Aviation, Lesson.Begin(units: DisplayUnits.Aviation, school: OfSchool.School).Units);
        Assert.Equal(15, OfSchool.Rules.BankLimit.Degrees);
        Assert.Equal(1.4, up.ReferenceSpeed(Air.StandardSeaLevel).Calibrated / up.StallSpeed(Air.StandardSeaLevel).Calibrated, 1e-12);
        Assert.Equal(1.25, full.ReferenceSpeed(Air.StandardSeaLevel).Calibrated / full.StallSpeed(Air.StandardSeaLevel).Calibrated, 1e-12);
        Assert.Equal(12, LandingSetup.For(up).Technique.ThresholdHeight.Meters, 1e-9);
        Assert.Equal(1.3, OfSchool.Aeroplane.Configure(OfSchool.Aeroplane.FlapSettings[1]).ReferenceMultiple);
        Assert.Same(OfSchool.Rules, OfSchool.Climbing().Rules);
    }

    [Fact]
    public void Begin_NoSchool_FliesTheUsualRules()
    {
        Assert.Null(Usual.School);
        Assert.Same(BriefingRules.Usual, Usual.Rules);
        Assert.Same(DemoAeroplanes.TrainerH4, Usual.Aeroplane);
    }

    [Fact]
    public void Words_OfTheRules_AreTheSchools()
    {
        Assert.Equal("1.4 (with full flap 1.25)", OfSchool.Multiples().ToString());
        Assert.Equal("1.3", Usual.Multiples().ToString());
        Assert.False(OfSchool.HasOneMultiple());
        Assert.True(Usual.HasOneMultiple());
        Assert.Equal(("60\u00A0%", "60\u00A0% of the"), (OfSchool.GustShare(), OfSchool.GustShareOfThe()));
        Assert.Equal(("half", "half the"), (Usual.GustShare(), Usual.GustShareOfThe()));
        Assert.Equal(6, OfSchool.ForGusts(Speed.FromKnots(10)).Knots, 1e-9);
        Assert.Equal(7, OfSchool.ForGusts(Speed.FromKnots(20)).Knots, 1e-9);
        Assert.Equal(4, OfSchool.Planned(Speed.FromKnots(10)).Knots, 1e-9);
    }

    [Theory]
    [InlineData("", "notebooks")]
    [InlineData("notebooks", "notebooks")]
    public void Beside_FileAmongTheNotebooksOrAbove_IsTheSchool(string place, string notebooks)
    {
        string folder = Directory.CreateDirectory(Path.Combine(_folder, notebooks)).FullName;
        Assert.Null(SchoolBeside.In(folder));

        File.WriteAllText(Path.Combine(_folder, place, School.FileName), Rules);

        Assert.Equal("A", SchoolBeside.Read(folder)!.Name);
    }

    [Fact]
    public void Beside_BrokenFile_IsToldInWords()
    {
        File.WriteAllText(Path.Combine(_folder, School.FileName), """{ "name": "A", "rules": { "bankLimit": "80 deg" } }""");

        var refused = Assert.Throws<AeroplaneFileException>(() => SchoolBeside.Read(_folder));

        Assert.All([School.FileName, "1 fault", "line 1", "bankLimit", "80"], word => Assert.Contains(word, refused.Message, StringComparison.Ordinal));
    }
}
