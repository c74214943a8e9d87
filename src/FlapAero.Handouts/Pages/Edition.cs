namespace FlapAero.Handouts.Pages;

/// <summary>For whom a page is.</summary>
internal enum Edition
{
    /// <summary>The class: no answers, no notes.</summary>
    Class,

    /// <summary>The instructor: everything.</summary>
    Instructor,
}
