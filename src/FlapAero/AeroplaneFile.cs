using System.Security;
using System.Text;
using FlapAero.AeroplaneFiles;
using FlapAero.Files;

namespace FlapAero;

/// <summary>
/// Reads an aeroplane from a JSON file whose every value has its unit and its origin; <c>data/aeroplanes/aeroplane.schema.json</c>
/// describes it. A file that makes no aeroplane is refused with all its faults at once. Safe to call from any thread.
/// </summary>
public static class AeroplaneFile
{
    /// <summary>The aeroplane in a file.</summary>
    /// <param name="path">The file, UTF-8, ordinary (no device, no pipe) and of at most 1 MiB.</param>
    /// <returns>The aeroplane.</returns>
    /// <exception cref="AeroplaneFileException">There is no such file, or it makes no aeroplane.</exception>
    /// <exception cref="RefusedInputException">No path.</exception>
    public static Aeroplane Read(string path)
    {
        Require.Words(path, "path of the file");
        string name = NameOf(path);
        return Parse(ReadText(path), name);
    }

    /// <summary>The text of a file that is fit to be read, whether or not it makes an aeroplane.</summary>
    /// <exception cref="AeroplaneFileException">There is no such file, or it is no text.</exception>
    internal static string ReadText(string path)
    {
        string name = NameOf(path);
        return Utf8(Bytes(path, name), name);
    }

    internal static string NameOf(string path) => Path.GetFileName(path) is { Length: > 0 } file ? file : path;

    /// <summary>The aeroplane in a text.</summary>
    /// <param name="json">The text of an aeroplane's file.</param>
    /// <param name="name">What messages call the text: the file's name.</param>
    /// <returns>The aeroplane.</returns>
    /// <exception cref="AeroplaneFileException">The text makes no aeroplane.</exception>
    /// <exception cref="RefusedInputException">No text or no name.</exception>
    public static Aeroplane Parse(string json, string name)
    {
        ArgumentNullException.ThrowIfNull(json);
        Require.Words(name, "name of the file");
        var faults = new FaultList();
        Aeroplane? aeroplane = JsonTreeReader.Read(json, faults) is { } tree ? AeroplaneReader.Read(tree, faults) : null;
        return aeroplane is not null && faults.IsEmpty
            ? aeroplane
            : throw new AeroplaneFileException(name, faults.ByLine());
    }

    private static byte[] Bytes(string path, string name)
    {
        try
        {
            return OrdinaryFile.Read(path, OrdinaryFile.AeroplaneLimit);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            throw Unreadable(name, $"there is no file {PlainText.Quoted(path)}", "check the folder and the spelling of the name");
        }
        catch (UnfitFileException problem)
        {
            throw Unreadable(name, $"{PlainText.Quoted(path)} is not read", problem.Message);
        }
        catch (Exception problem) when (
            problem is IOException or UnauthorizedAccessException or NotSupportedException or SecurityException or ArgumentException)
        {
            throw Unreadable(
                name, $"{PlainText.Quoted(path)} cannot be read",
                "a file is wanted, not a folder, that you are allowed to read and that no other program holds");
        }
    }

    private static string Utf8(byte[] bytes, string name)
    {
        try
        {
            return new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException problem)
        {
            int line = 1 + bytes.AsSpan(0, Math.Clamp(problem.Index, 0, bytes.Length)).Count((byte)'\n');
            throw new AeroplaneFileException(
                name, [new AeroplaneFault(line, null, "", "a character is not UTF-8", "save the file as UTF-8 text")]);
        }
    }

    private static AeroplaneFileException Unreadable(string name, string problem, string expected) =>
        new(name, [new AeroplaneFault(null, null, "", problem, expected)]);
}
