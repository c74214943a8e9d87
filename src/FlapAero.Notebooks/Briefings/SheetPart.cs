namespace FlapAero.Notebooks;

/// <summary>A part of a briefing sheet, in words; page and terminal are both made from it and cannot disagree. Immutable.</summary>
/// <param name="Name">The class on a page.</param>
/// <param name="Heading">The heading; none where the part needs none.</param>
internal abstract record SheetPart(string Name, string? Heading);

/// <summary>A statement, its first sentence loud.</summary>
internal sealed record StatementPart(string Name, string Loud, string Quiet) : SheetPart(Name, null);

/// <summary>Terms and what is so.</summary>
internal sealed record FactsPart(string Name, string? Heading, IReadOnlyList<(string Term, string Fact)> Facts) : SheetPart(Name, Heading);

/// <summary>The few numbers to have in one's head: label, number, and what goes with it.</summary>
internal sealed record GlancePart(string Name, string Heading, IReadOnlyList<(string Label, string Number, string With)> Numbers) : SheetPart(Name, Heading);

/// <summary>A table; the first column heads its row.</summary>
internal sealed record TablePart(string Name, string Caption, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows)
    : SheetPart(Name, null);

/// <summary>A list.</summary>
internal sealed record ListPart(string Name, string Heading, IReadOnlyList<string> Items) : SheetPart(Name, Heading);

/// <summary>A paragraph.</summary>
internal sealed record NotePart(string Name, string? Heading, string Text) : SheetPart(Name, Heading);

/// <summary>What is done one after the other.</summary>
internal sealed record StepsPart(string Name, string Heading, IReadOnlyList<Step> Steps) : SheetPart(Name, Heading);

/// <summary>One step of an exercise; without numbers where it has none.</summary>
internal sealed record Step(string Name, string Do, string Numbers, string Error, int Lesson);

/// <summary>Errors and what is done about them.</summary>
internal sealed record DrillsPart(string Name, string Heading, IReadOnlyList<Drill> Drills) : SheetPart(Name, Heading);

/// <summary>One drill: how it is noticed, what is done, in which numbers, how far, and when to go around.</summary>
internal sealed record Drill(string Name, string Cue, string Action, string Numbers, string Limit, string GoAround);

/// <summary>Lines to write on.</summary>
internal sealed record BlanksPart(string Name, IReadOnlyList<string> Labels) : SheetPart(Name, null);
