using FlapAero.AeroplaneFiles;

namespace FlapAero;

/// <summary>
/// The numbers that an aeroplane's flight manual gives, as printed there: masses, wing, flap settings, stalling speeds, glides, landings,
/// level flight, climb. Any table may be missing. <c>data/manuals/manual.schema.json</c> describes the file. Immutable.
/// </summary>
public sealed class Manual
{
    private Manual(Manuals.ManualContent content) => Content = content;

    /// <summary>The aeroplane's name.</summary>
    public string Name => Content.Name;

    internal Manuals.ManualContent Content { get; }

    /// <summary>The manual in a file.</summary>
    /// <param name="path">The file, UTF-8, ordinary (no device, no pipe) and of at most 1 MiB.</param>
    /// <returns>The manual.</returns>
    /// <exception cref="AeroplaneFileException">There is no such file, or its numbers go with no aeroplane; all faults at once.</exception>
    /// <exception cref="RefusedInputException">No path.</exception>
    public static Manual Read(string path)
    {
        Require.Words(path, "path of the file");
        return Parse(AeroplaneFile.ReadText(path), AeroplaneFile.NameOf(path));
    }

    /// <summary>The manual in a text.</summary>
    /// <param name="json">The text of a manual's file.</param>
    /// <param name="name">What messages call the text: the file's name.</param>
    /// <returns>The manual.</returns>
    /// <exception cref="AeroplaneFileException">The numbers go with no aeroplane; all faults at once.</exception>
    /// <exception cref="RefusedInputException">No text or no name.</exception>
    public static Manual Parse(string json, string name)
    {
        ArgumentNullException.ThrowIfNull(json);
        Require.Words(name, "name of the file");
        var faults = new FaultList();
        Manuals.ManualContent? content = JsonTreeReader.Read(json, faults) is { } tree ? Manuals.ManualReader.Read(tree, faults) : null;
        if (content is not null) Manuals.ManualRules.Check(content, faults);
        return content is not null && faults.IsEmpty ? new Manual(content) : throw new AeroplaneFileException(name, faults.ByLine());
    }

    /// <summary>Whether a text is an aeroplane's file, by the one key that every such file has and no manual.</summary>
    internal static bool IsAeroplane(string json) => JsonTreeReader.Read(json, new FaultList()) is ObjectItem tree
        && tree.Members.Any(member => member.Key is "zeroLiftDragCoefficient" || (member.Key is "$schema" && member.Item is TextItem { Text: "aeroplane.schema.json" }));

    /// <summary>The aeroplane's name.</summary>
    public override string ToString() => Name;
}
