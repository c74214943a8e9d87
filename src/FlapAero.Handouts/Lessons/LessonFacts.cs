namespace FlapAero.Handouts.Lessons;

/// <summary>What a notebook's own metadata says about its lesson; no minutes where its cells have them.</summary>
internal sealed record LessonFacts(int Number, string Title, string Summary, int? Minutes);
