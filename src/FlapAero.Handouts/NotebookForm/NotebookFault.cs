namespace FlapAero.Handouts.NotebookForm;

/// <summary>One thing about a notebook that does not belong in the repository.</summary>
/// <param name="Words">File, cell, what it is and what is allowed, in one line.</param>
/// <param name="CanBePutRight">Whether it goes without losing anything that a person wrote.</param>
public sealed record NotebookFault(string Words, bool CanBePutRight)
{
    /// <summary>What it is one of, such as "outputs"; empty where each is told for itself.</summary>
    public string Kind { get; init; } = "";
}
