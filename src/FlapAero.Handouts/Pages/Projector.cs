using FlapAero.Charts;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>
/// What the instructor's page needs to be shown to a class one idea at a time. All of it is hidden until its script finds
/// it, and nothing of it prints.
/// </summary>
internal static class Projector
{
    /// <summary>The way in, with what the class will and will not see.</summary>
    public const string Start = """
        <aside class="project" aria-label="For a class" hidden>
        <p><button type="button" id="project">Show on the projector</button></p>
        <p>One idea a screen, in large type. A prediction comes before what the model says; each hint and each answer waits for one more press. Notes for the instructor, program code and the numbers behind figures are not shown.</p>
        </aside>

        """;

    /// <summary>Where the class is, and the ways on, back and out.</summary>
    public static string Bar => $"""
        <nav class="screens" id="screens" aria-label="Screens" hidden>
        <button type="button" id="screen-back">Back</button>
        <button type="button" id="screen-next">Next</button>
        <p id="screen-said" role="status" aria-live="polite"></p>
        <div class="words">
        <p class="keys">Keys: → or Space next, ← back, Home, End, Esc to leave.</p>
        <p class="reminder">{HtmlText.Escape(Caution.Short)}</p>
        </div>
        <button type="button" id="screen-leave">Leave</button>
        </nav>

        """;
}
