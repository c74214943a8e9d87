using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts.Pages;

/// <summary>Which artefacts are wanted, and for which paper.</summary>
/// <param name="Editions">The wanted editions.</param>
/// <param name="Paper">The paper that pages ask for.</param>
/// <param name="HasEngine">Whether a page in which the lesson's cells run is made beside.</param>
/// <param name="School">The marks of the school.</param>
internal sealed record ArtefactChoice(IReadOnlySet<Edition> Editions, Paper Paper = Paper.A4, bool HasEngine = false, SchoolMarks? School = null)
{
    /// <summary>What all pages have alike.</summary>
    public PageLook Look => new(Paper, School);

    /// <summary>Every edition.</summary>
    public static ArtefactChoice All { get; } = new(new HashSet<Edition>(Enum.GetValues<Edition>()));
}
