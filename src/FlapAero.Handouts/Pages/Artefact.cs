namespace FlapAero.Handouts.Pages;

/// <summary>One file made of a lesson.</summary>
/// <param name="Name">Its file name.</param>
/// <param name="Content">Its text, with LF line ends.</param>
/// <param name="IsForStudents">Whether students get it: then no answer is in it.</param>
/// <param name="IsPrintable">Whether it is a page that a PDF can be made of.</param>
internal sealed record Artefact(string Name, string Content, bool IsForStudents, bool IsPrintable);
