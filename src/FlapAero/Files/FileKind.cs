namespace FlapAero.Files;

/// <summary>What stands at a path.</summary>
internal enum FileKind
{
    Missing,
    Ordinary,
    Folder,

    /// <summary>A device, a pipe or a socket.</summary>
    Other,
}
