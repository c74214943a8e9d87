using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;

namespace FlapAero.Handouts.Pages;

/// <summary>What one page puts into the shell that all pages share.</summary>
/// <param name="Title">The title of window and print.</param>
/// <param name="Kind">The class of the body: student, instructor, key, sheet or index.</param>
/// <param name="SkipTo">What the skip link says.</param>
/// <param name="Header">The inside of the page's header.</param>
/// <param name="Between">What stands between the caution and the main part.</param>
/// <param name="Main">The inside of the main part.</param>
internal sealed record PageFrame(string Title, string Kind, string SkipTo, string Header, string Between, string Main)
{
    /// <summary>Whether figures need plotly.js.</summary>
    public bool HasFigure { get; init; }

    /// <summary>Whether answers are checked on the page.</summary>
    public bool HasAnswers { get; init; }

    /// <summary>Whether predictions are compared on the page.</summary>
    public bool HasPredictions { get; init; }

    /// <summary>Whether a number can be changed on the page.</summary>
    public bool HasValues { get; init; }

    /// <summary>Under which name the browser keeps what is typed on the page; empty where nothing is kept.</summary>
    public string KeptAs { get; init; } = "";

    /// <summary>Whether the page can be shown to a class one idea at a time.</summary>
    public bool IsProjected { get; init; }

    /// <summary>Scripts in files beside the page, of the engine that runs cells; none where the page stands alone.</summary>
    public IReadOnlyList<string> Beside { get; init; } = [];

    /// <summary>The paper that the page asks for.</summary>
    public Paper Paper { get; init; }

    /// <summary>The marks of the school; none where the page is nobody's.</summary>
    public SchoolMarks? School { get; init; }
}
