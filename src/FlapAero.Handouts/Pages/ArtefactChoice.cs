using FlapAero.Handouts.Printing;

namespace FlapAero.Handouts.Pages;

/// <summary>Which artefacts are wanted, and for which paper.</summary>
/// <param name="Editions">The wanted editions.</param>
/// <param name="Paper">The paper that pages ask for.</param>
/// <param name="HasEngine">Whether a page in which the lesson's cells run is made beside.</param>
internal sealed record ArtefactChoice(IReadOnlySet<Edition> Editions, Paper Paper = Paper.A4, bool HasEngine = false)
{
    /// <summary>Every edition.</summary>
    public static ArtefactChoice All { get; } = new(new HashSet<Edition>(Enum.GetValues<Edition>()));
}
