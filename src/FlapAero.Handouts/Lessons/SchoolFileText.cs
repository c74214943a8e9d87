namespace FlapAero.Handouts.Lessons;

/// <summary>The text of a school's file that was found to make a school: what a lesson begins with.</summary>
/// <param name="Name">The file's name without its folder.</param>
/// <param name="Json">The text, its lines ended alike.</param>
internal sealed record SchoolFileText(string Name, string Json)
{
    /// <summary>The text of a file that has been read once.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="AeroplaneFileException">It can no longer be read.</exception>
    public static SchoolFileText Of(string path) =>
        new(Path.GetFileName(path), AeroplaneFile.ReadText(path).TrimStart('\uFEFF').ReplaceLineEndings("\n"));
}
