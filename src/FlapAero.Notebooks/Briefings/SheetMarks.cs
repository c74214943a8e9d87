namespace FlapAero.Notebooks;

/// <summary>What a school puts on a sheet beside its numbers: its name, its addition to the caution, its foot, and how the flight was chosen. Immutable.</summary>
/// <param name="School">The school; none where the sheet is nobody's.</param>
/// <param name="Runway">The school's runway, with its landmarks.</param>
/// <param name="Notes">How runway, weight and weather were chosen: a term and what is so.</param>
internal sealed record SheetMarks(School? School, SchoolRunway? Runway, IReadOnlyList<(string Term, string Fact)> Notes)
{
    /// <summary>A sheet that is nobody's.</summary>
    public static SheetMarks None { get; } = new(null, null, []);

    /// <summary>The caution, with what the school adds.</summary>
    public string Caution => School is { Caution.Length: > 0 } school
        ? $"{BriefingSheet.Caution} {school.Name}: {school.Caution}" : BriefingSheet.Caution;

    /// <summary>The parts of a sheet with the school's before and behind.</summary>
    public IReadOnlyList<SheetPart> Round(IEnumerable<SheetPart> parts)
    {
        (string Term, string Fact)[] facts = [.. School is { } school ? [("School", school.Name)] : Array.Empty<(string, string)>(), .. Notes];
        return
        [
            .. facts.Length > 0 ? [new FactsPart("school", null, facts)] : Array.Empty<SheetPart>(),
            .. parts,
            .. School is { FootLine.Length: > 0 } with ? [new NotePart("foot", null, with.FootLine)] : Array.Empty<SheetPart>(),
        ];
    }
}
