namespace FlapAero.Handouts;

/// <summary>How far a lesson has run.</summary>
/// <param name="Lesson">The lesson's slug.</param>
/// <param name="Done">The cells done.</param>
/// <param name="Of">The cells it has.</param>
public sealed record HandoutProgress(string Lesson, int Done, int Of);
