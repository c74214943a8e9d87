using FlapAero.Handouts.Kernels;

namespace FlapAero.Handouts.Lessons;

/// <summary>The problems of a lesson once more, drawn from another seed.</summary>
/// <param name="Number">The sheet's number, from 1.</param>
/// <param name="Seed">The seed its numbers come from.</param>
/// <param name="Outputs">What each problem cell put out, by the cell's id.</param>
internal sealed record RanSheet(int Number, int Seed, IReadOnlyDictionary<string, IReadOnlyList<CellOutput>> Outputs);
