using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts.Pages;

/// <summary>What all pages of a class have alike: the paper, and the marks of the school.</summary>
/// <param name="Paper">The paper that pages ask for.</param>
/// <param name="School">The school's marks; none where the pages are nobody's.</param>
internal sealed record PageLook(Paper Paper, SchoolMarks? School = null)
{
    public static implicit operator PageLook(Paper paper) => new(paper);
}
