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
            string name = Path.GetFileName(path);
            string json = AeroplaneFile.ReadText(path);
            AeroplaneFile.Parse(json, name);
            return new AeroplaneText(name, json.TrimStart('\uFEFF').ReplaceLineEndings("\n"));
        }
        catch (AeroplaneFileException e)
        {
            throw new HandoutException(e.Message, e);
        }
    }
}
