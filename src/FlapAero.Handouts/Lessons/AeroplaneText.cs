namespace FlapAero.Handouts.Lessons;

/// <summary>The text of an aeroplane's file that was found to make an aeroplane.</summary>
internal sealed class AeroplaneText
{
    private AeroplaneText(string name, string json)
    {
        Name = name;
        Json = json;
    }

    /// <summary>The file's name without its folder.</summary>
    public string Name { get; }

    public string Json { get; }

    /// <summary>Reads and tests a file.</summary>
    /// <exception cref="HandoutException">There is no such file, or it makes no aeroplane; the message lists its faults.</exception>
    public static AeroplaneText Read(string path)
    {
        try
        {
            AeroplaneFile.Read(path);
            return new AeroplaneText(Path.GetFileName(path), File.ReadAllText(path).ReplaceLineEndings("\n"));
        }
        catch (Exception e) when (e is AeroplaneFileException or IOException or UnauthorizedAccessException)
        {
            throw new HandoutException(e.Message, e);
        }
    }
}
