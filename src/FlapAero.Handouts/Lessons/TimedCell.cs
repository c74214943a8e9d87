namespace FlapAero.Handouts.Lessons;

/// <summary>A cell that a note to the instructor names, with the minutes that it takes or saves there.</summary>
/// <param name="Cell">The cell's id.</param>
/// <param name="Minutes">Whole minutes.</param>
internal sealed record TimedCell(string Cell, int Minutes);
